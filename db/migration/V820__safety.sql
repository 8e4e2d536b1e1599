-- A safety notice for a lot: it goes to quarantine on every shelf of the network in one action, who carries it is found, and the
-- notice closes when everybody was told. The notice names no child; its carriers stand behind the walls of their hospitals.

create table safety_notice (
    id uuid primary key,
    lot_id uuid not null references stock_lot,
    source text not null check (length(source) between 2 and 200),
    why text not null check (length(why) between 3 and 1000),
    opened_at_site uuid not null references site,
    opened_by uuid not null references staff,
    opened_at timestamptz not null,
    closed_by uuid references staff,
    closed_at timestamptz,
    check ((closed_by is null) = (closed_at is null))
);
create unique index safety_notice_open on safety_notice (lot_id) where closed_at is null;
create index on safety_notice (opened_at);

create table safety_carrier (
    notice_id uuid not null references safety_notice,
    child_id uuid not null,
    site_id uuid not null,
    certainty text not null check (certainty in ('CERTAIN', 'POSSIBLE', 'FORMER')),
    since date not null,
    surgeon text not null,
    told_by uuid references staff,
    told_at timestamptz,
    told_how text check (length(told_how) between 3 and 400),
    primary key (notice_id, child_id),
    foreign key (site_id, child_id) references child (site_id, id) on update cascade,
    check ((told_by is null) = (told_at is null) and (told_at is null) = (told_how is null))
);
create index on safety_carrier (site_id, notice_id);
create index on safety_carrier (child_id);

-- Holds what lies usable of a lot anywhere: also the slots of mixed lots that may hold it. Goods on their way stay where they
-- are; they can only be received into quarantine.
create function quarantine_lot(held uuid, reason text, at timestamptz) returns int
    language plpgsql volatile security definer set search_path = espalier, pg_temp
as $$
declare
    nowhere constant uuid := '00000000-0000-0000-0000-000000000000';
    of_product uuid := (select product_id from stock_lot where id = held);
    line record;
    goal uuid;
    moved uuid;
    pieces int := 0;
begin
    perform pg_advisory_xact_lock_shared(800, 1);
    update stock_lot set held_since = at where id = held and held_since is null;
    insert into stock_shelf (id, site_id, kind)
    select uuidv7(), id, 'QUARANTINE' from site on conflict do nothing;
    for line in
        select b.shelf_id, b.slot, b.lot_id, b.site_id, b.quantity from stock_balance b
        where b.product_id = of_product and (b.lot_id = held or b.lot_id is null) and b.quantity > 0
        order by b.shelf_id, b.slot for no key update
    loop
        continue when not exists (
            select from stock_shelf where id = line.shelf_id and kind in ('STORE', 'TRAY', 'CONSIGNMENT'));
        continue when line.lot_id is null and not exists (
            select from stock_slot_lot
            where shelf_id = line.shelf_id and product_id = of_product and lot_id = held);
        goal := (select id from stock_shelf where site_id = line.site_id and kind = 'QUARANTINE');
        moved := uuidv7();
        insert into stock_movement (id, product_id, lot_id, quantity, from_shelf, from_site, from_lot, to_shelf, to_site, to_lot,
            why, recorded_by, recorded_at)
        values (moved, of_product, line.lot_id, line.quantity, line.shelf_id, line.site_id, line.lot_id, goal, line.site_id,
            line.lot_id, reason, current_staff(), at);
        update stock_balance set quantity = 0
        where shelf_id = line.shelf_id and product_id = of_product and slot = line.slot;
        insert into stock_balance as b (shelf_id, product_id, lot_id, site_id, quantity)
        values (goal, of_product, line.lot_id, line.site_id, line.quantity)
        on conflict (shelf_id, product_id, slot) do update set quantity = b.quantity + excluded.quantity;
        if line.lot_id is null then
            insert into stock_movement_lot (movement_id, lot_id, from_site, to_site)
            select moved, lot_id, line.site_id, line.site_id from stock_slot_lot
            where shelf_id = line.shelf_id and product_id = of_product;
            insert into stock_slot_lot (shelf_id, product_id, lot_id, site_id)
            select goal, product_id, lot_id, site_id from stock_slot_lot
            where shelf_id = line.shelf_id and product_id = of_product on conflict do nothing;
            delete from stock_slot_lot where shelf_id = line.shelf_id and product_id = of_product;
        end if;
        pieces := pieces + line.quantity;
    end loop;
    return pieces;
end $$;
revoke execute on function quarantine_lot(uuid, text, timestamptz) from public;

-- Who carries the lot, certainly or possibly, by what operations took and took out; what is known is not forgotten.
create function find_carriers(notice uuid) returns void
    language plpgsql volatile security definer set search_path = espalier, pg_temp
as $$
declare
    wanted uuid := (select lot_id from safety_notice where id = notice);
begin
    insert into safety_carrier as known (notice_id, child_id, site_id, certainty, since, surgeon)
    select notice, c.id, c.site_id,
        case when sum(m.quantity) filter (where taken_out) >= sum(m.quantity) filter (where not taken_out) then 'FORMER'
            when bool_or(m.lot_id is not null and not taken_out) then 'CERTAIN' else 'POSSIBLE' end,
        min(p.done_on), coalesce(min(p.surgeon_name), min(s.name), '')
    from (
        select m.*, t.kind <> 'CHILDREN' as taken_out from stock_movement m join stock_shelf t on t.id = m.to_shelf
        where m.holder is not null and m.reverses is null and m.id in (
            select id from stock_movement where lot_id = wanted
            union all select movement_id from stock_movement_lot where lot_id = wanted)
            and not exists (select from stock_movement r where r.reverses = m.id)
    ) m
    join procedure_session p on p.id = m.holder join child c on c.id = p.child_id left join staff s on s.id = m.recorded_by
    group by c.id, c.site_id
    having bool_or(not taken_out)
    on conflict (notice_id, child_id) do update set certainty = excluded.certainty
        where known.certainty <> excluded.certainty;
end $$;
revoke execute on function find_carriers(uuid) from public;

-- One action: the notice, the quarantine, the carriers. Says how many pieces went to quarantine; null when the lot has an open
-- notice already or the caller may not.
create function open_safety_notice(notice uuid, held uuid, hospital uuid, told_by_whom text, because text, at timestamptz)
    returns int
    language plpgsql volatile security definer set search_path = espalier, pg_temp
as $$
declare
    pieces int;
begin
    if not hospital = any(my_sites_as('STOREKEEPER', 'SURGEON')) then
        return null;
    end if;
    insert into safety_notice (id, lot_id, source, why, opened_at_site, opened_by, opened_at)
    values (notice, held, told_by_whom, because, hospital, current_staff(), at) on conflict do nothing;
    if not found then
        return null;
    end if;
    pieces := quarantine_lot(held, left('Safety notice: ' || told_by_whom, 400), at);
    perform find_carriers(notice);
    return pieces;
end $$;
revoke execute on function open_safety_notice(uuid, uuid, uuid, text, text, timestamptz) from public;
grant execute on function open_safety_notice(uuid, uuid, uuid, text, text, timestamptz) to espalier_app;

-- Looks for the lot and its carriers again: what was on its way, or written down late.
create function renew_safety_notice(notice uuid, at timestamptz) returns int
    language plpgsql volatile security definer set search_path = espalier, pg_temp
as $$
declare
    open_one safety_notice;
    pieces int;
begin
    select * into open_one from safety_notice where id = notice and closed_at is null for update;
    if not found or cardinality(my_sites_as('STOREKEEPER', 'SURGEON', 'NURSE')) = 0 then
        return null;
    end if;
    pieces := quarantine_lot(open_one.lot_id, left('Safety notice: ' || open_one.source, 400), at);
    perform find_carriers(notice);
    return pieces;
end $$;
revoke execute on function renew_safety_notice(uuid, timestamptz) from public;
grant execute on function renew_safety_notice(uuid, timestamptz) to espalier_app;

-- Closes when everybody who carries it, or may, was told.
create function close_safety_notice(notice uuid, at timestamptz) returns boolean
    language plpgsql volatile security definer set search_path = espalier, pg_temp
as $$
begin
    if cardinality(my_sites_as('STOREKEEPER', 'SURGEON', 'NURSE')) = 0 then
        return false;
    end if;
    perform from safety_notice where id = notice for update;
    perform find_carriers(notice);
    update safety_notice n set closed_by = current_staff(), closed_at = at
    where n.id = notice and n.closed_at is null and not exists (
        select from safety_carrier c
        where c.notice_id = n.id and c.certainty <> 'FORMER' and c.told_at is null);
    return found;
end $$;
revoke execute on function close_safety_notice(uuid, timestamptz) from public;
grant execute on function close_safety_notice(uuid, timestamptz) to espalier_app;

-- How far each hospital is, in numbers alone.
create function safety_progress(notice uuid)
    returns table (site_id uuid, quarantined bigint, elsewhere bigint, certain bigint, possible bigint, former bigint, told bigint)
    language sql stable security definer set search_path = espalier, pg_temp
as $$
    with lot as (
        select l.id, l.product_id from safety_notice n join stock_lot l on l.id = n.lot_id
        where n.id = notice and cardinality(my_sites_as('STOREKEEPER', 'SURGEON', 'NURSE')) > 0
    ), lying as (
        select b.site_id, sum(b.quantity) filter (where s.kind in ('QUARANTINE', 'ANALYSIS', 'DISPOSED', 'KEPT')) as quarantined,
            sum(b.quantity) filter (where s.kind in ('STORE', 'TRAY', 'CONSIGNMENT', 'IN_TRANSIT')) as elsewhere
        from lot join stock_balance b on b.product_id = lot.product_id join stock_shelf s on s.id = b.shelf_id
        where b.quantity > 0 and (b.lot_id = lot.id or b.lot_id is null and exists (
            select from stock_slot_lot x
            where x.shelf_id = b.shelf_id and x.product_id = b.product_id and x.lot_id = lot.id))
        group by b.site_id
    ), carried as (
        select c.site_id, count(*) filter (where certainty = 'CERTAIN') as certain,
            count(*) filter (where certainty = 'POSSIBLE') as possible, count(*) filter (where certainty = 'FORMER') as former,
            count(*) filter (where certainty <> 'FORMER' and told_at is not null) as told
        from lot join safety_carrier c on c.notice_id = notice group by c.site_id
    )
    select coalesce(l.site_id, c.site_id), coalesce(l.quarantined, 0), coalesce(l.elsewhere, 0), coalesce(c.certain, 0),
        coalesce(c.possible, 0), coalesce(c.former, 0), coalesce(c.told, 0)
    from lying l full join carried c on c.site_id = l.site_id
$$;
revoke execute on function safety_progress(uuid) from public;
grant execute on function safety_progress(uuid) to espalier_app;

alter table safety_notice enable row level security;
alter table safety_notice force row level security;
create policy safety_notice_read on safety_notice for select
    using (cardinality((select my_sites_as('STOREKEEPER', 'SURGEON', 'NURSE'))) > 0);
grant select on safety_notice to espalier_app;

alter table safety_carrier enable row level security;
alter table safety_carrier force row level security;
create policy safety_carrier_read on safety_carrier for select
    using (site_id = any((select my_sites_as('SURGEON', 'NURSE'))::uuid[]));
create policy safety_carrier_tell on safety_carrier for update
    using (site_id = any((select my_sites_as('SURGEON', 'NURSE'))::uuid[]) and told_at is null)
    with check (site_id = any((select my_sites_as('SURGEON', 'NURSE'))::uuid[]) and told_by = (select current_staff()));
grant select on safety_carrier to espalier_app;
grant update (told_by, told_at, told_how) on safety_carrier to espalier_app;

-- What broke, bent or came loose in a child, with the lots it may be of: a report for the maker and the authority.
create table device_incident (
    id uuid primary key,
    site_id uuid not null,
    recorded_site uuid not null references site,
    child_id uuid not null,
    implant_id uuid not null,
    part text not null check (length(part) between 2 and 40),
    seen_on date not null,
    product text not null check (length(product) between 2 and 240),
    lots text not null check (length(lots) between 1 and 400),
    what text not null check (length(what) between 3 and 1000),
    reported_by uuid not null references staff,
    reported_at timestamptz not null,
    foreign key (site_id, child_id) references child (site_id, id) on update cascade,
    unique (implant_id, part, seen_on)
);
create index on device_incident (site_id, reported_at);
create index on device_incident (child_id);
create trigger device_incident_is_a_fact before update on device_incident
    for each row when ((old.id, old.child_id, old.implant_id, old.part, old.seen_on, old.product, old.lots, old.what,
        old.reported_by, old.reported_at) is distinct from (new.id, new.child_id, new.implant_id, new.part, new.seen_on,
        new.product, new.lots, new.what, new.reported_by, new.reported_at)) execute function refuse_changed_fact();

alter table device_incident enable row level security;
alter table device_incident force row level security;
create policy device_incident_read on device_incident for select
    using (site_id = any((select my_sites_as('SURGEON', 'NURSE'))::uuid[])
        or recorded_site = any((select my_sites_as('SURGEON', 'NURSE'))::uuid[]));
create policy device_incident_add on device_incident for insert
    with check (site_id = any((select my_sites_as('SURGEON', 'NURSE'))::uuid[])
        and recorded_site = any((select my_sites_as('SURGEON', 'NURSE'))::uuid[])
        and reported_by = (select current_staff()));
grant select, insert on device_incident to espalier_app;
