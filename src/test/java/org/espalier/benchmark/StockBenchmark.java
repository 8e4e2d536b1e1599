package org.espalier.benchmark;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Locale;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.Executors;
import java.util.function.Supplier;
import org.espalier.TestNetwork;
import org.espalier.access.SiteId;
import org.espalier.platform.Ids;
import org.espalier.safety.SafetyService;
import org.espalier.stock.CatalogueService;
import org.espalier.stock.LotId;
import org.espalier.stock.ProductId;
import org.espalier.stock.ReservationService;
import org.espalier.stock.ShelfId;
import org.espalier.stock.StockHammer;
import org.espalier.stock.StockOverviewService;
import org.espalier.stock.StockService;
import org.espalier.stock.UseService;
import org.springframework.jdbc.core.simple.JdbcClient;

/**
 * Eight writers and 20,000 movements, with and without connections cut under them, beside the bare insert of the same row in
 * the same run; then a million movements of 2,000 products at 30 sites, and how fast each screen of the stock is answered.
 */
final class StockBenchmark {

    private static final int WRITERS = 8;
    private static final int MOVEMENTS = 20_000;
    private static final int PLATES = 100;
    private static final int TIMES = 21;
    private static final double TIMES_THE_BARE_INSERT = 3;
    private static final double SCREEN_MILLISECONDS = 200;
    private static final double NOTICE_SECONDS = 2;

    private static final String BARE_TABLE = """
            create table bench_movement (like stock_movement including all);
            alter table bench_movement add foreign key (product_id) references stock_product;
            alter table bench_movement add foreign key (from_site, from_shelf) references stock_shelf (site_id, id);
            alter table bench_movement add foreign key (to_site, to_shelf) references stock_shelf (site_id, id);
            alter table bench_movement enable row level security;
            create policy bench_add on bench_movement for insert
                with check (from_site = any((select my_sites_as('STOREKEEPER'))::uuid[]));
            grant insert on bench_movement to espalier_app
            """;
    private static final String BARE_INSERT = """
            insert into bench_movement (id, product_id, quantity, from_shelf, from_site, to_shelf, to_site, recorded_at)
            values (:id, :product, 1, :from, :site, :to, :site, current_timestamp)
            """;
    private static final String FILL = """
            insert into site (id, code, name, time_zone)
            select gen_random_uuid(), 'B' || n, 'Bench ' || n, 'UTC' from generate_series(10, 39) n;
            insert into stock_shelf (id, site_id, kind, name)
            select gen_random_uuid(), s.id, k, case when k in ('STORE', 'TRAY', 'CONSIGNMENT') then k || ' ' || n end
            from site s, unnest(array['STORE', 'TRAY', 'CONSIGNMENT', 'QUARANTINE', 'DISPOSED', 'KEPT', 'ANALYSIS', 'SUPPLIER',
                'CHILDREN', 'DIFFERENCE']) k, generate_series(1, 2) n
            where s.code like 'B__' and (n = 1 or k in ('STORE', 'TRAY', 'CONSIGNMENT'));
            insert into stock_product (id, kind, name, reference, diameter_mm, length_mm, magnet, traced, sterile, changed_by,
                changed_at)
            select gen_random_uuid(), (array['PLATE', 'SCREW', 'WIRE', 'STAPLE'])[1 + n % 4], 'Bench product ' || n, 'R-' || n,
                1 + n % 7, 10 + n % 50, 'SAFE', true, false, (select id from staff limit 1), now()
            from generate_series(1, 2000) n;
            insert into stock_lot (id, product_id, number, expires_on, recorded_by, recorded_at)
            select gen_random_uuid(), p.id, 'L' || n, current_date + (n * 97 % 900) - 100, p.changed_by, now()
            from stock_product p, generate_series(1, 3) n where p.reference like 'R-%';
            insert into stock_movement (id, product_id, lot_id, quantity, from_shelf, from_site, from_lot, to_shelf, to_site,
                to_lot, holder, unit_cost, currency, recorded_at)
            select gen_random_uuid(), l.product_id, l.id, case when step = 1 then 40 else 1 end, f.id, f.site_id,
                case when f.kind <> 'SUPPLIER' then l.id end, t.id, t.site_id, l.id,
                case when t.kind = 'CHILDREN' then gen_random_uuid() end, 10, 'EUR',
                now() - interval '700 days' + (step * 120 || ' days')::interval
            from (select id, product_id, row_number() over (order by id) as place from stock_lot where number like 'L_') l
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

    private final TestNetwork network;
    private final StockHammer hammer;
    private final StockService stock;
    private final CatalogueService catalogue;
    private final UseService uses;
    private final StockOverviewService overview;
    private final ReservationService reservations;
    private final SafetyService safety;
    private final JdbcClient jdbc;
    private final Ids ids;
    private boolean met = true;

    private StockBenchmark(org.springframework.context.ApplicationContext house) {
        network = house.getBean(TestNetwork.class);
        hammer = house.getBean(StockHammer.class);
        stock = house.getBean(StockService.class);
        catalogue = house.getBean(CatalogueService.class);
        uses = house.getBean(UseService.class);
        overview = house.getBean(StockOverviewService.class);
        reservations = house.getBean(ReservationService.class);
        safety = house.getBean(SafetyService.class);
        jdbc = house.getBean(JdbcClient.class);
        ids = house.getBean(Ids.class);
    }

    public static void main(String[] arguments) throws Exception {
        boolean met;
        try (var house = BenchmarkHouse.open()) {
            met = new StockBenchmark(house).run();
        }
        System.exit(met ? 0 : 1);
    }

    private boolean run() throws Exception {
        hammer.strike(WRITERS, MOVEMENTS / 5, 0, PLATES);
        var blows = hammer.strike(WRITERS, MOVEMENTS, 0, PLATES);
        double bare = bareInserts(blows.stocked());
        say("movements a second, 8 writers", blows.perSecond(), "");
        say("bare inserts a second, 8 writers, the same row", bare, "");
        demand("time of a movement, times the bare insert", bare / blows.perSecond(), TIMES_THE_BARE_INSERT);
        var cut = hammer.strike(WRITERS, MOVEMENTS, 250, 1);
        var here = cut.stocked();
        say("connections cut under 20,000 movements", cut.cut(), "");
        demand(
                "lines that do not equal their movements after it",
                network.as(here.keeper(), () -> stock.check(here.site())).size(),
                0);
        int written = network.owner()
                .sql("select count(*) from stock_movement where from_site = ? and id = any(?)")
                .params(here.site().value(), cut.moved().toArray(UUID[]::new))
                .query(Integer.class)
                .single();
        demand("acknowledged movements lost or doubled", Math.abs(cut.moved().size() - written), 0);
        screens();
        return met;
    }

    private double bareInserts(org.espalier.stock.TestStock.Stocked here) throws Exception {
        for (var statement : BARE_TABLE.split(";")) {
            network.owner().sql(statement).update();
        }
        insertBare(here, MOVEMENTS / 10);
        long start = System.nanoTime();
        insertBare(here, MOVEMENTS);
        return MOVEMENTS / ((System.nanoTime() - start) / 1e9);
    }

    private void insertBare(org.espalier.stock.TestStock.Stocked here, int rows) throws Exception {
        var insert = new ArrayList<Callable<Integer>>();
        for (int writer = 0; writer < WRITERS; writer++) {
            insert.add(() -> {
                for (int row = 0; row < rows / WRITERS; row++) {
                    network.as(here.keeper(), () -> jdbc.sql(BARE_INSERT)
                            .param("id", ids.next())
                            .param("product", here.plate().id().value())
                            .param("from", here.store().value())
                            .param("to", here.tray().value())
                            .param("site", here.site().value())
                            .update());
                }
                return rows;
            });
        }
        try (var pool = Executors.newFixedThreadPool(WRITERS)) {
            for (var one : pool.invokeAll(insert)) {
                one.get();
            }
        }
    }

    private void screens() {
        network.owner().sql("begin; " + FILL + "; commit; analyze").update();
        say("movements in all", one("select count(*) from stock_movement", Long.class), "");
        var site = new SiteId(one("select id from site where code = 'B25'", UUID.class));
        var keeper = network.staff(site.value(), "STOREKEEPER");
        var shelf = new ShelfId(one(
                "select id from stock_shelf where site_id = '" + site.value() + "' and name = 'STORE 1'", UUID.class));
        var product = new ProductId(one("select id from stock_product where reference = 'R-77'", UUID.class));
        var lot = new LotId(
                one("select id from stock_lot where product_id = '" + product.value() + "' limit 1", UUID.class));
        screen("a shelf with 6,000 lines", keeper, () -> stock.on(shelf));
        screen("last movements", keeper, () -> stock.latest(site));
        screen("a product: where, and its movements", keeper, () -> {
            stock.of(site, product);
            return stock.history(site, product);
        });
        screen("a lot: where, its movements, for whom", keeper, () -> {
            stock.ofLot(site, lot);
            stock.historyOfLot(site, lot);
            return uses.ofLot(lot);
        });
        notice(site, keeper, lot);
        screen("search the catalogue", keeper, () -> catalogue.search("duct 19", java.util.Optional.empty()));
        screen("the stock of a hospital as a whole", keeper, () -> {
            overview.shelves(site);
            overview.expiring(site);
            overview.value(site);
            return reservations.coverage(site);
        });
        screen("what operations used in a year", keeper, () -> overview.demand(site));
        screen("propose for an operation", keeper, () -> uses.proposals(site, product));
    }

    /** The lot lies on every store and every tray of the network. */
    private void notice(SiteId site, UUID keeper, LotId lot) {
        long start = System.nanoTime();
        var pieces = network.as(keeper, () -> safety.open(ids.next(), lot, site, "Invented maker", "heads may break"));
        demand("a safety notice over the network, s", (System.nanoTime() - start) / 1e9, NOTICE_SECONDS);
        say("pieces it sent to quarantine", pieces.orElse(0), "");
        met &= pieces.orElse(0) > 0;
    }

    private <T> T one(String sql, Class<T> type) {
        return network.owner().sql(sql).query(type).single();
    }

    private void screen(String what, UUID keeper, Supplier<?> work) {
        demand("screen: " + what + ", ms", median(() -> network.as(keeper, work::get)), SCREEN_MILLISECONDS);
    }

    private static double median(Supplier<?> work) {
        var times = new double[TIMES];
        for (int i = -5; i < TIMES; i++) {
            long start = System.nanoTime();
            var _ = work.get();
            times[Math.max(0, i)] = (System.nanoTime() - start) / 1e6;
        }
        Arrays.sort(times);
        return times[TIMES / 2];
    }

    private void demand(String what, double figure, double atMost) {
        met &= figure <= atMost;
        System.out.printf(Locale.ROOT, "%-70s %10.2f goal at most %.0f%n", what, figure, atMost);
    }

    private static void say(String what, double figure, String unit) {
        System.out.printf(Locale.ROOT, "%-70s %10.2f %s%n", what, figure, unit);
    }
}
