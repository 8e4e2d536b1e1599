-- Count sheets: what the books said and what was counted, both kept. A difference becomes a movement when the sheet is closed.

create table stock_count (
    id uuid primary key,
    site_id uuid not null references site,
    shelf_id uuid not null,
    opened_by uuid not null references staff,
    opened_at timestamptz not null,
    closed_by uuid references staff,
    closed_at timestamptz,
    foreign key (site_id, shelf_id) references stock_shelf (site_id, id),
    unique (site_id, id),
    check ((closed_by is null) = (closed_at is null))
);
create unique index stock_count_open on stock_count (shelf_id) where closed_at is null;
create index on stock_count (site_id, opened_at);

create table stock_count_line (
    count_id uuid not null,
    site_id uuid not null,
    product_id uuid not null references stock_product,
    slot uuid not null generated always as (coalesce(lot_id, '00000000-0000-0000-0000-000000000000'::uuid)) stored,
    lot_id uuid references stock_lot,
    expected int not null check (expected >= 0),
    counted int not null check (counted >= 0),
    counted_by uuid not null references staff,
    counted_at timestamptz not null,
    primary key (count_id, product_id, slot),
    foreign key (site_id, count_id) references stock_count (site_id, id)
);

-- What planned operations need: a product, or any piece of a kind within a range. The holder is the id of the plan.
create table stock_reservation (
    id uuid primary key,
    site_id uuid not null references site,
    holder uuid not null,
    needed_on date not null,
    made_by uuid not null references staff,
    made_at timestamptz not null,
    ended_by uuid references staff,
    ended_at timestamptz,
    unique (site_id, id),
    check ((ended_by is null) = (ended_at is null))
);
create unique index stock_reservation_open on stock_reservation (holder) where ended_at is null;
create index on stock_reservation (site_id, needed_on) where ended_at is null;

create table stock_need (
    reservation_id uuid not null,
    line int not null check (line > 0),
    site_id uuid not null,
    kind text not null check (kind in ('PLATE', 'SCREW', 'WIRE', 'STAPLE', 'FRAME', 'CONSUMABLE', 'INSTRUMENT', 'TRAY',
        'RESCUE_SET')),
    product_id uuid references stock_product,
    diameter_mm numeric(6, 2) check (diameter_mm > 0),
    from_mm numeric(6, 1) check (from_mm > 0),
    to_mm numeric(6, 1),
    driver text check (length(driver) between 1 and 60),
    quantity int not null check (quantity > 0),
    primary key (reservation_id, line),
    foreign key (site_id, reservation_id) references stock_reservation (site_id, id),
    check ((from_mm is null) = (to_mm is null) and from_mm <= to_mm)
);

alter table stock_count enable row level security;
alter table stock_count force row level security;
create policy stock_count_read on stock_count for select
    using (site_id = any((select my_sites_as('STOREKEEPER'))::uuid[]));
create policy stock_count_add on stock_count for insert
    with check (site_id = any((select my_sites_as('STOREKEEPER'))::uuid[]) and closed_at is null);
create policy stock_count_close on stock_count for update
    using (site_id = any((select my_sites_as('STOREKEEPER'))::uuid[]) and closed_at is null)
    with check (site_id = any((select my_sites_as('STOREKEEPER'))::uuid[]) and closed_at is not null);
grant select, insert on stock_count to espalier_app;
grant update (closed_by, closed_at) on stock_count to espalier_app;

alter table stock_count_line enable row level security;
alter table stock_count_line force row level security;
create policy stock_count_line_read on stock_count_line for select
    using (site_id = any((select my_sites_as('STOREKEEPER'))::uuid[]));
create policy stock_count_line_add on stock_count_line for insert
    with check (site_id = any((select my_sites_as('STOREKEEPER'))::uuid[]) and count_id in (
        select id from stock_count where closed_at is null));
create policy stock_count_line_change on stock_count_line for update
    using (site_id = any((select my_sites_as('STOREKEEPER'))::uuid[]) and count_id in (
        select id from stock_count where closed_at is null))
    with check (site_id = any((select my_sites_as('STOREKEEPER'))::uuid[]));
grant select, insert on stock_count_line to espalier_app;
grant update (expected, counted, counted_by, counted_at) on stock_count_line to espalier_app;

alter table stock_reservation enable row level security;
alter table stock_reservation force row level security;
create policy stock_reservation_read on stock_reservation for select
    using (site_id = any((select my_sites_as('STOREKEEPER', 'SURGEON', 'NURSE'))::uuid[]));
create policy stock_reservation_add on stock_reservation for insert
    with check (site_id = any((select my_sites_as('STOREKEEPER', 'SURGEON', 'NURSE'))::uuid[]) and ended_at is null);
create policy stock_reservation_end on stock_reservation for update
    using (site_id = any((select my_sites_as('STOREKEEPER', 'SURGEON', 'NURSE'))::uuid[]) and ended_at is null)
    with check (site_id = any((select my_sites_as('STOREKEEPER', 'SURGEON', 'NURSE'))::uuid[]));
grant select, insert on stock_reservation to espalier_app;
grant update (ended_by, ended_at) on stock_reservation to espalier_app;

alter table stock_need enable row level security;
alter table stock_need force row level security;
create policy stock_need_read on stock_need for select
    using (site_id = any((select my_sites_as('STOREKEEPER', 'SURGEON', 'NURSE'))::uuid[]));
create policy stock_need_add on stock_need for insert
    with check (site_id = any((select my_sites_as('STOREKEEPER', 'SURGEON', 'NURSE'))::uuid[]));
grant select, insert on stock_need to espalier_app;

-- What operations took in the last time, operation by operation: the statistics of demand.
create index stock_movement_of_operations on stock_movement (from_site, product_id, holder) where holder is not null;
