-- What lies on which shelf. A movement takes a number of one product from one shelf to another and is never changed; what a
-- shelf holds follows from the movements and is kept beside them for speed. No child is named here: who was given an implant
-- is the opaque id of whoever recorded it.

create table stock_product (
    id uuid primary key,
    version int not null default 1,
    kind text not null check (kind in ('PLATE', 'SCREW', 'WIRE', 'STAPLE', 'FRAME', 'CONSUMABLE', 'INSTRUMENT', 'TRAY',
        'RESCUE_SET')),
    name text not null check (length(name) between 2 and 160),
    reference text not null check (length(reference) between 1 and 60),
    diameter_mm numeric(6, 2) check (diameter_mm > 0),
    core_mm numeric(6, 2) check (core_mm > 0),
    length_mm numeric(6, 1) check (length_mm > 0),
    build text check (build in ('SOLID', 'CANNULATED')),
    material text check (material in ('TITANIUM', 'TITANIUM_ALLOY', 'STEEL', 'COBALT_CHROMIUM', 'POLYMER', 'OTHER')),
    driver text check (length(driver) between 1 and 60),
    magnet text not null check (magnet in ('NOT_KNOWN', 'SAFE', 'CONDITIONAL', 'UNSAFE')),
    traced boolean not null,
    sterile boolean not null,
    changed_by uuid not null references staff,
    changed_at timestamptz not null,
    check (core_mm is null or diameter_mm is null or core_mm <= diameter_mm)
);
create unique index on stock_product (lower(reference));
create index on stock_product (kind, diameter_mm, length_mm);

create table stock_product_code (
    scheme text not null check (scheme in ('GTIN', 'HIBC')),
    code text not null check (length(code) between 4 and 40),
    product_id uuid not null references stock_product,
    primary key (scheme, code)
);
create index on stock_product_code (product_id);

create table stock_lot (
    id uuid primary key,
    product_id uuid not null references stock_product,
    number text not null check (length(number) between 1 and 40),
    expires_on date,
    held_since timestamptz,
    recorded_by uuid not null references staff,
    recorded_at timestamptz not null,
    unique (product_id, number),
    unique (product_id, id)
);
create index on stock_lot (lower(number) text_pattern_ops);

-- Where goods may be. SUPPLIER, CHILDREN and DIFFERENCE are the ends of the book: what comes from or goes there is written,
-- what is there is not counted. IN_TRANSIT is one shelf for each transfer; it is the sender's until the goods are received.
create table stock_shelf (
    id uuid primary key,
    site_id uuid not null references site,
    kind text not null check (kind in ('STORE', 'TRAY', 'CONSIGNMENT', 'QUARANTINE', 'IN_TRANSIT', 'DISPOSED', 'KEPT',
        'ANALYSIS', 'SUPPLIER', 'CHILDREN', 'DIFFERENCE')),
    name text check (length(name) between 1 and 80),
    version int not null default 1,
    to_site uuid references site,
    owner_name text check (length(owner_name) between 1 and 120),
    back_by date,
    sterilising boolean not null default false,
    used_on date,
    used_for uuid,
    closed_on date,
    counted boolean not null generated always as (kind not in ('SUPPLIER', 'CHILDREN', 'DIFFERENCE')) stored,
    unique (site_id, id),
    check ((kind = 'IN_TRANSIT') = (to_site is not null) and to_site <> site_id),
    check ((kind in ('STORE', 'TRAY', 'CONSIGNMENT')) = (name is not null)),
    check (kind = 'TRAY' or not sterilising and used_on is null),
    check ((used_on is null) = (used_for is null))
);
create unique index stock_shelf_one on stock_shelf (site_id, kind)
    where kind in ('QUARANTINE', 'DISPOSED', 'KEPT', 'ANALYSIS', 'SUPPLIER', 'CHILDREN', 'DIFFERENCE');
create unique index stock_shelf_name on stock_shelf (site_id, lower(name));
create index on stock_shelf (to_site) where to_site is not null;

-- The shelves and ends that every hospital has: made when its stock is first looked at.
create function open_stock(hospital uuid) returns void
    language plpgsql volatile security definer set search_path = espalier, pg_temp
as $$
begin
    if hospital = any(my_sites_as('STOREKEEPER', 'SURGEON', 'NURSE', 'COST_ADMINISTRATOR')) then
        insert into stock_shelf (id, site_id, kind)
        select uuidv7(), hospital, kind
        from unnest(array['QUARANTINE', 'DISPOSED', 'KEPT', 'ANALYSIS', 'SUPPLIER', 'CHILDREN', 'DIFFERENCE']) kind
        on conflict do nothing;
    end if;
end $$;
revoke execute on function open_stock(uuid) from public;
grant execute on function open_stock(uuid) to espalier_app;

-- The lot is null where it is not certain: a tray holds the screws of several lots in one slot. The lots they may be of then
-- stand in stock_movement_lot. from_lot and to_lot say on which line of the shelf the pieces stood and came to stand.
create table stock_movement (
    id uuid primary key,
    written_at timestamptz not null default clock_timestamp(),
    product_id uuid not null references stock_product,
    lot_id uuid,
    quantity int not null check (quantity > 0),
    from_shelf uuid not null,
    from_site uuid not null,
    from_lot uuid,
    to_shelf uuid not null,
    to_site uuid not null,
    to_lot uuid,
    holder uuid,
    reverses uuid unique references stock_movement,
    why text check (length(why) between 3 and 400),
    unit_cost numeric(12, 2) check (unit_cost >= 0),
    currency text check (currency ~ '^[A-Z]{3}$'),
    recorded_by uuid references staff,
    recorded_at timestamptz not null,
    foreign key (product_id, lot_id) references stock_lot (product_id, id),
    foreign key (from_site, from_shelf) references stock_shelf (site_id, id),
    foreign key (to_site, to_shelf) references stock_shelf (site_id, id),
    check (from_shelf <> to_shelf),
    check (from_lot is null or from_lot = lot_id),
    check (to_lot is null or to_lot = lot_id),
    check ((unit_cost is null) = (currency is null))
);
create index on stock_movement (from_site, recorded_at);
create index on stock_movement (to_site, recorded_at);
create index on stock_movement (product_id, recorded_at);
create index on stock_movement (lot_id) where lot_id is not null;
create index on stock_movement (holder) where holder is not null;
create trigger stock_movement_is_a_fact before update on stock_movement
    for each row when (old.* is distinct from new.*) execute function refuse_changed_fact();

create table stock_movement_lot (
    movement_id uuid not null references stock_movement,
    lot_id uuid not null references stock_lot,
    from_site uuid not null,
    to_site uuid not null,
    primary key (movement_id, lot_id)
);
create index on stock_movement_lot (lot_id);

-- Derived, and kept by move_stock alone. A line stands for a lot on a shelf, or for the slot of a product whose lots are mixed.
create table stock_balance (
    shelf_id uuid not null,
    product_id uuid not null references stock_product,
    slot uuid not null generated always as (coalesce(lot_id, '00000000-0000-0000-0000-000000000000'::uuid)) stored,
    lot_id uuid references stock_lot,
    site_id uuid not null,
    to_site uuid,
    quantity int not null check (quantity >= 0),
    primary key (shelf_id, product_id, slot),
    foreign key (site_id, shelf_id) references stock_shelf (site_id, id)
) with (fillfactor = 80);
create index on stock_balance (site_id, product_id);
create index on stock_balance (lot_id) where lot_id is not null;

-- The lots the pieces in a slot of mixed lots may be of.
create table stock_slot_lot (
    shelf_id uuid not null references stock_shelf,
    product_id uuid not null references stock_product,
    lot_id uuid not null references stock_lot,
    site_id uuid not null,
    to_site uuid,
    primary key (shelf_id, product_id, lot_id)
);
create index on stock_slot_lot (lot_id);
create index on stock_slot_lot (site_id);

-- What a hospital last paid for one piece of a lot, or of a product without lots.
create table stock_cost (
    site_id uuid not null references site,
    product_id uuid not null references stock_product,
    slot uuid not null,
    unit_cost numeric(12, 2) not null check (unit_cost >= 0),
    currency text not null check (currency ~ '^[A-Z]{3}$'),
    primary key (site_id, product_id, slot)
);

-- Goods on their way: signed by who sent them and by who received them.
create table stock_transfer (
    shelf_id uuid primary key references stock_shelf,
    from_site uuid not null references site,
    to_site uuid not null references site,
    sent_by uuid not null references staff,
    sent_at timestamptz not null,
    received_by uuid references staff,
    received_at timestamptz,
    check ((received_by is null) = (received_at is null)),
    check (received_at is null or received_by <> sent_by)
);
create index on stock_transfer (from_site, sent_at);
create index on stock_transfer (to_site, sent_at);

-- Moves pieces, all or nothing, and says what came of it: nothing is changed unless the answer is MOVED. A movement that is
-- sent twice happens once. Both lines are locked in the order of their shelves; taking is an update, only what arrives is
-- added to a line that may not be there yet.
create function move_stock(movement uuid, of_product uuid, taken_from uuid, taken_to uuid, known_lot uuid, known_lots uuid[],
    pieces int, for_holder uuid, undone uuid, reason text, cost numeric, cost_currency text, happened_at timestamptz,
    out outcome text, out available int, out lots uuid[], out expires date)
    language plpgsql volatile security definer set search_path = espalier, pg_temp
as $$
declare
    nowhere constant uuid := '00000000-0000-0000-0000-000000000000';
    mine uuid[] := my_sites_as('STOREKEEPER', 'SURGEON', 'NURSE');
    f stock_shelf;
    t stock_shelf;
    seen stock_movement;
    taken_lot uuid;
    certain uuid;
    left_lot uuid;
begin
    available := 0;
    lots := '{}';
    select * into f from stock_shelf where id = taken_from;
    select * into t from stock_shelf where id = taken_to;
    if f.id is null or t.id is null or not (f.site_id = any(mine) or f.to_site = any(mine)) or not t.site_id = any(mine) then
        outcome := 'NOT_THERE';
        return;
    end if;
    if t.closed_on is not null then
        outcome := 'CLOSED';
        return;
    end if;
    perform pg_advisory_xact_lock_shared(800, 1);
    perform from stock_balance where product_id = of_product and shelf_id in (taken_from, taken_to)
        order by shelf_id, slot for no key update;
    select * into seen from stock_movement where id = movement;
    if found then
        outcome := case when seen.product_id = of_product and seen.from_shelf = taken_from and seen.to_shelf = taken_to
            and seen.quantity = pieces and seen.holder is not distinct from for_holder then 'REPEATED' else 'OTHER' end;
        lots := case when seen.lot_id is not null then array[seen.lot_id]
            else array(select lot_id from stock_movement_lot where movement_id = movement order by lot_id) end;
        expires := (select min(expires_on) from stock_lot where id = any(lots));
        return;
    end if;
    taken_lot := case when f.kind <> 'TRAY' and f.counted then known_lot end;
    if f.counted then
        select quantity into available from stock_balance
        where shelf_id = taken_from and product_id = of_product and slot = coalesce(taken_lot, nowhere);
        available := coalesce(available, 0);
        if available = 0 and taken_lot is not null then
            taken_lot := null;
            select b.quantity into available from stock_balance b join stock_slot_lot l using (shelf_id, product_id)
            where b.shelf_id = taken_from and b.product_id = of_product and b.slot = nowhere and l.lot_id = known_lot;
            available := coalesce(available, 0);
        end if;
        if available < pieces then
            outcome := 'SHORT';
            return;
        end if;
    end if;
    if known_lot is not null then
        lots := array[known_lot];
    elsif known_lots is not null then
        lots := known_lots;
    elsif f.counted then
        lots := array(select lot_id from stock_slot_lot where shelf_id = taken_from and product_id = of_product order by lot_id);
    end if;
    if f.counted and taken_lot is null and known_lot is not null and not exists (
            select from stock_slot_lot where shelf_id = taken_from and product_id = of_product and lot_id = known_lot) then
        outcome := 'NOT_OF_THIS_LOT';
        return;
    end if;
    if undone is null and t.kind in ('STORE', 'TRAY', 'CONSIGNMENT', 'IN_TRANSIT')
            and exists (select from stock_lot where id = any(lots) and held_since is not null) then
        outcome := 'HELD';
        return;
    end if;
    if cardinality(lots) = 1 then
        certain := lots[1];
    elsif cardinality(lots) = 0 and f.kind <> 'CHILDREN' and undone is null
            and exists (select from stock_product where id = of_product and traced) then
        outcome := 'LOT_WANTED';
        return;
    end if;
    left_lot := case when t.kind <> 'TRAY' then certain end;
    if f.kind = 'IN_TRANSIT' then
        select unit_cost, currency into cost, cost_currency from stock_movement
        where to_shelf = f.id and from_site = f.site_id and product_id = of_product and lot_id is not distinct from certain
        order by recorded_at desc limit 1;
    end if;
    insert into stock_movement (id, product_id, lot_id, quantity, from_shelf, from_site, from_lot, to_shelf, to_site, to_lot,
        holder, reverses, why, unit_cost, currency, recorded_by, recorded_at)
    values (movement, of_product, certain, pieces, f.id, f.site_id, taken_lot, t.id, t.site_id, left_lot, for_holder, undone,
        reason, cost, cost_currency, current_staff(), happened_at)
    on conflict (id) do nothing;
    if not found then
        outcome := 'REPEATED';
        return;
    end if;
    if certain is null then
        insert into stock_movement_lot (movement_id, lot_id, from_site, to_site)
        select movement, lot, f.site_id, t.site_id from unnest(lots) lot;
    end if;
    if f.counted then
        update stock_balance set quantity = quantity - pieces
        where shelf_id = taken_from and product_id = of_product and slot = coalesce(taken_lot, nowhere);
        if taken_lot is null and available = pieces then
            delete from stock_slot_lot where shelf_id = taken_from and product_id = of_product;
        end if;
    end if;
    if t.counted then
        insert into stock_balance as b (shelf_id, product_id, lot_id, site_id, to_site, quantity)
        values (t.id, of_product, left_lot, t.site_id, t.to_site, pieces)
        on conflict (shelf_id, product_id, slot) do update set quantity = b.quantity + excluded.quantity;
        if left_lot is null then
            insert into stock_slot_lot (shelf_id, product_id, lot_id, site_id, to_site)
            select t.id, of_product, lot, t.site_id, t.to_site from unnest(lots) lot on conflict do nothing;
        end if;
    end if;
    if cost is not null and (f.kind = 'SUPPLIER' or f.site_id <> t.site_id) then
        insert into stock_cost (site_id, product_id, slot, unit_cost, currency)
        values (t.site_id, of_product, coalesce(certain, nowhere), cost, cost_currency)
        on conflict (site_id, product_id, slot) do update set unit_cost = excluded.unit_cost, currency = excluded.currency;
    end if;
    if f.kind = 'TRAY' and t.kind = 'CHILDREN' then
        update stock_shelf set sterilising = true, used_for = for_holder,
            used_on = (happened_at at time zone (select time_zone from site where id = f.site_id))::date
        where id = f.id and used_for is distinct from for_holder;
    end if;
    expires := (select min(expires_on) from stock_lot where id = any(lots));
    outcome := 'MOVED';
end $$;
revoke execute on function move_stock(uuid, uuid, uuid, uuid, uuid, uuid[], int, uuid, uuid, text, numeric, text, timestamptz)
    from public;
grant execute on function move_stock(uuid, uuid, uuid, uuid, uuid, uuid[], int, uuid, uuid, text, numeric, text, timestamptz)
    to espalier_app;

-- What the lines of a hospital must be by its movements alone.
create function stock_by_movements(hospital uuid)
    returns table (shelf_id uuid, product_id uuid, lot_id uuid, quantity bigint)
    language sql stable set search_path = espalier, pg_temp
as $$
    select shelf, product_id, lot, sum(pieces)
    from (
        select to_shelf as shelf, product_id, to_lot as lot, quantity as pieces from stock_movement where to_site = hospital
        union all
        select from_shelf, product_id, from_lot, -quantity from stock_movement where from_site = hospital
    ) sides
    join stock_shelf s on s.id = shelf and s.counted
    group by shelf, product_id, lot
$$;

-- The lots a slot may hold by its movements alone: those that came into it since it was last empty.
create function stock_slots_by_movements(hospital uuid)
    returns table (shelf_id uuid, product_id uuid, lot_id uuid)
    language sql stable set search_path = espalier, pg_temp
as $$
    with sides as (
        select m.id, m.written_at, m.to_shelf as shelf, m.product_id, m.quantity as pieces, m.lot_id from stock_movement m
        where m.to_site = hospital and m.to_lot is null
        union all
        select m.id, m.written_at, m.from_shelf, m.product_id, -m.quantity, m.lot_id from stock_movement m
        where m.from_site = hospital and m.from_lot is null
    ), running as (
        select sides.*, sum(pieces) over (partition by shelf, product_id order by written_at, sides.id) as held
        from sides join stock_shelf s on s.id = shelf and s.counted
    ), since as (
        select running.*, max(written_at) filter (where held = 0) over (partition by shelf, product_id) as emptied from running
    )
    select distinct s.shelf, s.product_id, coalesce(s.lot_id, l.lot_id)
    from since s left join stock_movement_lot l on l.movement_id = s.id and s.lot_id is null
    where s.pieces > 0 and s.written_at > coalesce(s.emptied, '-infinity') and coalesce(s.lot_id, l.lot_id) is not null
$$;

-- Makes the lines of a hospital anew from its movements, while none is under way.
create function rebuild_stock(hospital uuid) returns void
    language plpgsql volatile security definer set search_path = espalier, pg_temp
as $$
begin
    if not hospital = any(my_sites_as('STOREKEEPER')) then
        raise exception 'only a storekeeper or a job of the hospital rebuilds its stock' using errcode = 'ES003';
    end if;
    perform pg_advisory_xact_lock(800, 1);
    delete from stock_slot_lot where site_id = hospital;
    delete from stock_balance where site_id = hospital;
    insert into stock_balance (shelf_id, product_id, lot_id, site_id, to_site, quantity)
    select m.shelf_id, m.product_id, m.lot_id, s.site_id, s.to_site, m.quantity
    from stock_by_movements(hospital) m join stock_shelf s on s.id = m.shelf_id;
    insert into stock_slot_lot (shelf_id, product_id, lot_id, site_id, to_site)
    select m.shelf_id, m.product_id, m.lot_id, s.site_id, s.to_site
    from stock_slots_by_movements(hospital) m join stock_shelf s on s.id = m.shelf_id;
end $$;
revoke execute on function stock_by_movements(uuid), stock_slots_by_movements(uuid), rebuild_stock(uuid) from public;
grant execute on function stock_by_movements(uuid), stock_slots_by_movements(uuid), rebuild_stock(uuid)
    to espalier_app, espalier_job;

-- The catalogue is the network's; what lies on the shelves is each hospital's.
alter table stock_product enable row level security;
alter table stock_product force row level security;
create policy stock_product_read on stock_product for select
    using ((select current_staff()) is not null or (select job_site()) is not null);
create policy stock_product_add on stock_product for insert
    with check (cardinality((select my_sites_as('STOREKEEPER'))) > 0);
create policy stock_product_change on stock_product for update
    using (cardinality((select my_sites_as('STOREKEEPER'))) > 0)
    with check (cardinality((select my_sites_as('STOREKEEPER'))) > 0);
grant select, insert, update on stock_product to espalier_app;
grant select on stock_product to espalier_job;

alter table stock_product_code enable row level security;
alter table stock_product_code force row level security;
create policy stock_product_code_read on stock_product_code for select
    using ((select current_staff()) is not null or (select job_site()) is not null);
create policy stock_product_code_add on stock_product_code for insert
    with check (cardinality((select my_sites_as('STOREKEEPER'))) > 0);
create policy stock_product_code_remove on stock_product_code for delete
    using (cardinality((select my_sites_as('STOREKEEPER'))) > 0);
grant select, insert, delete on stock_product_code to espalier_app;

alter table stock_lot enable row level security;
alter table stock_lot force row level security;
create policy stock_lot_read on stock_lot for select
    using ((select current_staff()) is not null or (select job_site()) is not null);
create policy stock_lot_add on stock_lot for insert
    with check (held_since is null and cardinality((select my_sites_as('STOREKEEPER', 'SURGEON', 'NURSE'))) > 0);
grant select, insert on stock_lot to espalier_app;
grant select on stock_lot to espalier_job;

alter table stock_shelf enable row level security;
alter table stock_shelf force row level security;
create policy stock_shelf_read on stock_shelf for select
    using (site_id = any((select my_sites_as('STOREKEEPER', 'SURGEON', 'NURSE', 'COST_ADMINISTRATOR'))::uuid[])
        or to_site = any((select my_sites_as('STOREKEEPER', 'SURGEON', 'NURSE', 'COST_ADMINISTRATOR'))::uuid[]));
create policy stock_shelf_add on stock_shelf for insert
    with check (site_id = any((select my_sites_as('STOREKEEPER'))::uuid[]));
create policy stock_shelf_change on stock_shelf for update
    using (site_id = any((select my_sites_as('STOREKEEPER', 'NURSE'))::uuid[]))
    with check (site_id = any((select my_sites_as('STOREKEEPER', 'NURSE'))::uuid[]));
grant select on stock_shelf to espalier_app, espalier_job;
grant insert (id, site_id, kind, name, to_site, owner_name, back_by) on stock_shelf to espalier_app;
grant update (version, name, owner_name, back_by, sterilising, used_on, used_for, closed_on) on stock_shelf to espalier_app;

alter table stock_movement enable row level security;
alter table stock_movement force row level security;
create policy stock_movement_read on stock_movement for select
    using (from_site = any((select my_sites_as('STOREKEEPER', 'SURGEON', 'NURSE', 'COST_ADMINISTRATOR'))::uuid[])
        or to_site = any((select my_sites_as('STOREKEEPER', 'SURGEON', 'NURSE', 'COST_ADMINISTRATOR'))::uuid[]));
grant select on stock_movement to espalier_app, espalier_job;

alter table stock_movement_lot enable row level security;
alter table stock_movement_lot force row level security;
create policy stock_movement_lot_read on stock_movement_lot for select
    using (from_site = any((select my_sites_as('STOREKEEPER', 'SURGEON', 'NURSE', 'COST_ADMINISTRATOR'))::uuid[])
        or to_site = any((select my_sites_as('STOREKEEPER', 'SURGEON', 'NURSE', 'COST_ADMINISTRATOR'))::uuid[]));
grant select on stock_movement_lot to espalier_app, espalier_job;

alter table stock_balance enable row level security;
alter table stock_balance force row level security;
create policy stock_balance_read on stock_balance for select
    using (site_id = any((select my_sites_as('STOREKEEPER', 'SURGEON', 'NURSE', 'COST_ADMINISTRATOR'))::uuid[])
        or to_site = any((select my_sites_as('STOREKEEPER', 'SURGEON', 'NURSE', 'COST_ADMINISTRATOR'))::uuid[]));
grant select on stock_balance to espalier_app, espalier_job;

alter table stock_slot_lot enable row level security;
alter table stock_slot_lot force row level security;
create policy stock_slot_lot_read on stock_slot_lot for select
    using (site_id = any((select my_sites_as('STOREKEEPER', 'SURGEON', 'NURSE', 'COST_ADMINISTRATOR'))::uuid[])
        or to_site = any((select my_sites_as('STOREKEEPER', 'SURGEON', 'NURSE', 'COST_ADMINISTRATOR'))::uuid[]));
grant select on stock_slot_lot to espalier_app, espalier_job;

alter table stock_cost enable row level security;
alter table stock_cost force row level security;
create policy stock_cost_read on stock_cost for select
    using (site_id = any((select my_sites_as('STOREKEEPER', 'SURGEON', 'NURSE', 'COST_ADMINISTRATOR'))::uuid[]));
grant select on stock_cost to espalier_app, espalier_job;

alter table stock_transfer enable row level security;
alter table stock_transfer force row level security;
create policy stock_transfer_read on stock_transfer for select
    using (from_site = any((select my_sites_as('STOREKEEPER'))::uuid[])
        or to_site = any((select my_sites_as('STOREKEEPER'))::uuid[]));
create policy stock_transfer_add on stock_transfer for insert
    with check (from_site = any((select my_sites_as('STOREKEEPER'))::uuid[]) and sent_by = (select current_staff())
        and received_by is null);
create policy stock_transfer_sign on stock_transfer for update
    using (to_site = any((select my_sites_as('STOREKEEPER'))::uuid[]) and received_by is null)
    with check (to_site = any((select my_sites_as('STOREKEEPER'))::uuid[]) and received_by = (select current_staff()));
grant select, insert on stock_transfer to espalier_app;
grant update (received_by, received_at) on stock_transfer to espalier_app;
