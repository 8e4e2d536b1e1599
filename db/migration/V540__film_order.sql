-- Films that are asked for, or that none is needed, and what became of each: facts. An order ends once; an exposure that
-- cannot be used does not end it. A dose keeps the unit the machine showed.

create table film_order (
    id uuid primary key,
    site_id uuid not null,
    recorded_site uuid not null references site,
    child_id uuid not null,
    asked_on date not null,
    for_day date not null,
    needed boolean not null,
    sides text check (sides in ('RIGHT', 'LEFT', 'BOTH')),
    protocol text,
    lift_side text check (lift_side in ('RIGHT', 'LEFT')),
    lift_mm smallint check (lift_mm between 1 and 150),
    ball boolean,
    reason text check (length(reason) between 1 and 400),
    recorded_by uuid references staff,
    recorded_at timestamptz not null,
    foreign key (site_id, child_id) references child (site_id, id) on update cascade,
    unique (child_id, id),
    check (for_day >= asked_on),
    check (num_nonnulls(sides, protocol, ball) = case when needed then 3 else 0 end),
    check (needed or (reason is not null and lift_side is null)),
    check ((lift_side is null) = (lift_mm is null))
);
create index on film_order (site_id, for_day);
create index on film_order (child_id, for_day);

create table film_order_step (
    id uuid primary key,
    site_id uuid not null,
    recorded_site uuid not null references site,
    child_id uuid not null,
    order_id uuid not null,
    kind text not null check (kind in ('EXPOSURE_REJECTED', 'TAKEN', 'NOT_TAKEN', 'WITHDRAWN')),
    rejected text,
    reason text check (length(reason) between 1 and 400),
    dose numeric(9, 3) check (dose > 0),
    dose_unit text,
    recorded_by uuid references staff,
    recorded_at timestamptz not null,
    foreign key (site_id, child_id) references child (site_id, id) on update cascade,
    foreign key (child_id, order_id) references film_order (child_id, id),
    check ((dose is null) = (dose_unit is null)),
    check ((kind = 'EXPOSURE_REJECTED') = (rejected is not null)),
    check (kind not in ('NOT_TAKEN', 'WITHDRAWN') or (reason is not null and dose is null))
);
create unique index film_order_end on film_order_step (order_id) where kind <> 'EXPOSURE_REJECTED';
create index on film_order_step (order_id);

create trigger film_order_is_a_fact before update on film_order for each row
    when ((to_jsonb(old) - 'site_id') is distinct from (to_jsonb(new) - 'site_id'))
    execute function refuse_changed_fact();
create trigger film_order_stays before delete on film_order for each row execute function refuse_changed_fact();
create trigger film_order_step_is_a_fact before update on film_order_step for each row
    when ((to_jsonb(old) - 'site_id') is distinct from (to_jsonb(new) - 'site_id'))
    execute function refuse_changed_fact();
create trigger film_order_step_stays before delete on film_order_step for each row
    execute function refuse_changed_fact();

alter table film_order enable row level security;
alter table film_order force row level security;
create policy film_order_read on film_order for select
    using (site_id = any((select my_sites_as('SURGEON', 'NURSE', 'RADIOGRAPHER', 'AUDITOR'))::uuid[])
        or recorded_site = any((select my_sites_as('SURGEON', 'NURSE', 'RADIOGRAPHER', 'AUDITOR'))::uuid[])
        or child_id = any((select my_granted())::uuid[]));
create policy film_order_add on film_order for insert
    with check (site_id = any((select my_sites_as('SURGEON', 'NURSE', 'RADIOGRAPHER'))::uuid[])
        and recorded_site = site_id);
grant select, insert on film_order to espalier_app;
grant select on film_order to espalier_job;

alter table film_order_step enable row level security;
alter table film_order_step force row level security;
create policy film_order_step_read on film_order_step for select
    using (site_id = any((select my_sites_as('SURGEON', 'NURSE', 'RADIOGRAPHER', 'AUDITOR'))::uuid[])
        or recorded_site = any((select my_sites_as('SURGEON', 'NURSE', 'RADIOGRAPHER', 'AUDITOR'))::uuid[])
        or child_id = any((select my_granted())::uuid[]));
create policy film_order_step_add on film_order_step for insert
    with check (site_id = any((select my_sites_as('SURGEON', 'NURSE', 'RADIOGRAPHER'))::uuid[])
        and recorded_site = site_id);
grant select, insert on film_order_step to espalier_app;
grant select on film_order_step to espalier_job;
