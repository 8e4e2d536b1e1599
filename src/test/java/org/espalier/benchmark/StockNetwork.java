package org.espalier.benchmark;

import org.springframework.jdbc.core.simple.JdbcClient;

/**
 * Thirty hospitals with 2,000 products in 6,000 lots, a million movements and sixty planned operations each, all
 * invented.
 */
final class StockNetwork {

    private static final String FILL = """
            insert into site (id, code, name, time_zone)
            select gen_random_uuid(), 'B' || n, 'Bench ' || n, 'UTC' from generate_series(10, 39) n;
            insert into stock_shelf (id, site_id, kind, name)
            select gen_random_uuid(), s.id, k, case when k in ('STORE', 'TRAY', 'CONSIGNMENT') then k || ' ' || n end
            from site s, unnest(array['STORE', 'TRAY', 'CONSIGNMENT', 'QUARANTINE', 'DISPOSED', 'KEPT', 'ANALYSIS',
                'SUPPLIER',
                'CHILDREN', 'DIFFERENCE']) k, generate_series(1, 2) n
            where s.code like 'B__' and (n = 1 or k in ('STORE', 'TRAY', 'CONSIGNMENT'));
            insert into stock_product (id, kind, name, reference, diameter_mm, length_mm, magnet, traced, sterile,
                changed_by,
                changed_at)
            select gen_random_uuid(), (array['PLATE', 'SCREW', 'WIRE', 'STAPLE'])[1 + n % 4], 'Bench product ' || n,
                'R-' || n,
                1 + n % 7, 10 + n % 50, 'SAFE', true, false, (select id from staff limit 1), now()
            from generate_series(1, 2000) n;
            insert into stock_lot (id, product_id, number, expires_on, recorded_by, recorded_at)
            select gen_random_uuid(), p.id, 'L' || n, current_date + (n * 97 % 900) - 100, p.changed_by, now()
            from stock_product p, generate_series(1, 3) n where p.reference like 'R-%';
            insert into stock_movement (id, product_id, lot_id, quantity, from_shelf, from_site, from_lot, to_shelf,
                to_site,
                to_lot, holder, unit_cost, currency, recorded_at)
            select gen_random_uuid(), l.product_id, l.id, case when step = 1 then 40 else 1 end, f.id, f.site_id,
                case when f.kind <> 'SUPPLIER' then l.id end, t.id, t.site_id, l.id,
                case when t.kind = 'CHILDREN' then gen_random_uuid() end, 10, 'EUR',
                now() - interval '700 days' + (step * 120 || ' days')::interval
            from (select id, product_id, row_number() over (order by id) as place from stock_lot where number like 'L_')
                l
            join (select id, row_number() over (order by code) as at from site where code like 'B__') s on true
            cross join generate_series(1, 6) step
            join stock_shelf f on f.site_id = s.id and f.kind = case when step = 1 then 'SUPPLIER' else 'STORE' end
                and coalesce(f.name, '') in ('', 'STORE 1')
            join stock_shelf t on t.site_id = s.id and t.kind = case when step = 1 then 'STORE' when step = 2
                then 'CONSIGNMENT' else 'CHILDREN' end and coalesce(t.name, '') in ('', 'STORE 1', 'CONSIGNMENT 1');
            insert into stock_balance (shelf_id, product_id, lot_id, site_id, quantity)
            select m.shelf_id, m.product_id, m.lot_id, s.id, m.quantity
            from site s, stock_by_movements(s.id) m where s.code like 'B__';
            insert into stock_cost (site_id, product_id, slot, unit_cost, currency)
            select distinct to_site, product_id, lot_id, 10, 'EUR' from stock_movement where unit_cost is not null
            on conflict do nothing
            """;

    private static final String PLANNED = """
            insert into stock_reservation (id, site_id, holder, needed_on, made_by, made_at)
            select gen_random_uuid(), s.id, gen_random_uuid(), current_date + n, (select id from staff limit 1), now()
            from site s, generate_series(1, 60) n where s.code like 'B__';
            insert into stock_need (reservation_id, line, site_id, kind, from_mm, to_mm, quantity)
            select r.id, n, r.site_id, (array['PLATE', 'SCREW', 'SCREW'])[n], 10 + n, 40, 2 * n
            from stock_reservation r join site s on s.id = r.site_id and s.code like 'B__', generate_series(1, 3) n
            """;

    private StockNetwork() {}

    static void fill(JdbcClient owner) {
        owner.sql("begin; " + FILL + "; " + PLANNED + "; commit").update();
        owner.sql("vacuum analyze").update();
    }
}
