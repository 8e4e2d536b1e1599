-- What care costs. Tariffs of each hospital with the days they hold for; charges that follow from facts by rule and are never
-- changed, only reversed by another. Who the child is stands nowhere here: a hospital's cost administrator knows it by a
-- pseudonym drawn by lot. A charge belongs for good to the hospital where it arose, recorded_site.

create table cost_tariff (
    id uuid primary key,
    site_id uuid not null references site,
    item text not null check (item in ('THEATRE_MINUTE', 'ANAESTHESIA_MINUTE', 'BED_DAY', 'VISIT', 'FILM', 'MRI', 'CAST', 'BRACE',
        'PHYSIOTHERAPY', 'FRAME_DAY', 'LETTER', 'MISSED_VISIT', 'IMPLANT', 'OVERHEAD', 'OVERHEAD_IMPLANT')),
    payer text not null default '' check (length(payer) <= 80),
    valid daterange not null check (not isempty(valid) and not lower_inf(valid)),
    -- Filled when another took its place before it held for a day: it then stands beside the others and holds for nothing.
    replaced uuid not null default '00000000-0000-0000-0000-000000000000',
    price numeric(12, 4) not null check (price >= 0),
    currency text check (currency ~ '^[A-Z]{3}$'),
    tax text not null check (tax in ('EXCLUDED', 'INCLUDED', 'NONE')),
    source text not null check (length(source) between 3 and 200),
    recorded_by uuid references staff,
    recorded_at timestamptz not null,
    check ((item in ('OVERHEAD', 'OVERHEAD_IMPLANT')) = (currency is null)),
    check (currency is not null or price <= 200),
    unique (site_id, item, payer, replaced, valid without overlaps)
);
create index on cost_tariff (site_id);

-- How much of an item an operation takes by agreement, for what nobody measures: minutes, nights, sessions.
create table cost_allowance (
    id uuid primary key,
    site_id uuid not null references site,
    kind text not null check (kind ~ '^[A-Z_]{3,40}$'),
    item text not null check (item in ('THEATRE_MINUTE', 'ANAESTHESIA_MINUTE', 'BED_DAY', 'PHYSIOTHERAPY', 'MRI', 'CAST',
        'BRACE')),
    quantity numeric(8, 2) not null check (quantity >= 0),
    valid daterange not null check (not isempty(valid) and not lower_inf(valid)),
    replaced uuid not null default '00000000-0000-0000-0000-000000000000',
    recorded_by uuid references staff,
    recorded_at timestamptz not null,
    unique (site_id, kind, item, replaced, valid without overlaps)
);
create index on cost_allowance (site_id);

-- The pseudonym of a child at a hospital, and who pays there.
create table cost_account (
    child_id uuid not null,
    recorded_site uuid not null references site,
    site_id uuid not null,
    pseudonym text not null check (pseudonym ~ '^[2-9A-HJ-NP-Z]{4}-[2-9A-HJ-NP-Z]{4}$'),
    payer text not null default '' check (length(payer) <= 80),
    primary key (recorded_site, child_id),
    unique (recorded_site, pseudonym),
    foreign key (site_id, child_id) references child (site_id, id) on update cascade
);
create index on cost_account (site_id, child_id);

create table charge (
    id uuid primary key,
    site_id uuid not null,
    recorded_site uuid not null references site,
    child_id uuid not null,
    source text not null check (source in ('PROCEDURE', 'VISIT', 'FILM', 'IMAGING', 'LETTER', 'HAND')),
    source_id uuid not null,
    rule text not null check (rule ~ '^[A-Z_]{3,40}$'),
    item text not null,
    side text check (side in ('RIGHT', 'LEFT')),
    on_day date not null,
    until_day date not null check (until_day >= on_day),
    quantity numeric(10, 2) not null check (quantity <> 0),
    unit_price numeric(12, 4) check (unit_price >= 0),
    currency text check (currency ~ '^[A-Z]{3}$'),
    amount numeric(14, 4),
    overhead_percent numeric(8, 4) check (overhead_percent between 0 and 200),
    overhead numeric(14, 4),
    tariff_id uuid references cost_tariff,
    movement_id uuid,
    reverses uuid unique references charge,
    adjusts uuid references charge,
    reason text check (length(reason) between 3 and 400),
    recorded_by uuid references staff,
    recorded_at timestamptz not null,
    foreign key (site_id, child_id) references child (site_id, id) on update cascade,
    check ((quantity < 0) = (reverses is not null)),
    check ((unit_price is null) = (currency is null) and (unit_price is null) = (amount is null)
        and (unit_price is null) = (overhead is null) and (unit_price is null) = (overhead_percent is null)),
    check (reverses is null and adjusts is null and source <> 'HAND' or reason is not null)
);
create index on charge (recorded_site, on_day);
create index on charge (recorded_site, child_id);
create index on charge (site_id, child_id);
create index on charge (child_id, source, source_id);
create trigger charge_is_a_fact before update on charge for each row
    when ((to_jsonb(old) - 'site_id') is distinct from (to_jsonb(new) - 'site_id')) execute function refuse_changed_fact();
create trigger charge_stays before delete on charge for each row execute function refuse_changed_fact();

-- Derived from treatment by a job of the house, kept for speed and so that the cost administrator reads no record of
-- treatment: one line for the care of each limb, and what is still to come.
create table cost_episode (
    child_id uuid not null,
    recorded_site uuid not null references site,
    site_id uuid not null,
    side text not null check (side in ('RIGHT', 'LEFT')),
    began date not null,
    ended date check (ended >= began),
    pathway text not null check (pathway in ('WATCH', 'BRACE', 'GUIDED_GROWTH', 'OSTEOTOMY', 'FRAME', 'SALVAGE_AFTER')),
    operations int not null check (operations >= 0),
    elsewhere boolean not null,
    diagnosis text not null,
    age_years int not null,
    degrees double precision check (degrees >= 0),
    on_target boolean,
    primary key (recorded_site, child_id, side),
    foreign key (site_id, child_id) references child (site_id, id) on update cascade
);
create index on cost_episode (recorded_site, ended);
create index on cost_episode (site_id, child_id);

create table cost_expected (
    id uuid primary key,
    child_id uuid not null,
    recorded_site uuid not null references site,
    site_id uuid not null,
    what text not null check (what in ('OPERATION', 'VISIT')),
    kind text,
    listed boolean not null,
    on_day date,
    film boolean not null,
    foreign key (site_id, child_id) references child (site_id, id) on update cascade,
    check ((what = 'OPERATION') = (kind is not null)),
    check (what = 'OPERATION' or on_day is not null)
);
create index on cost_expected (recorded_site, on_day);
create index on cost_expected (site_id, child_id);

alter table cost_tariff enable row level security;
alter table cost_tariff force row level security;
create policy cost_tariff_read on cost_tariff for select using (site_id = any((select my_sites())::uuid[]));
create policy cost_tariff_add on cost_tariff for insert
    with check (site_id = any((select my_sites_as('COST_ADMINISTRATOR'))::uuid[])
        and recorded_by is not distinct from (select current_staff()));
create policy cost_tariff_end on cost_tariff for update
    using (site_id = any((select my_sites_as('COST_ADMINISTRATOR'))::uuid[]))
    with check (site_id = any((select my_sites_as('COST_ADMINISTRATOR'))::uuid[]));
grant select, insert on cost_tariff to espalier_app;
grant update (valid, replaced) on cost_tariff to espalier_app;
grant select on cost_tariff to espalier_job;

alter table cost_allowance enable row level security;
alter table cost_allowance force row level security;
create policy cost_allowance_read on cost_allowance for select using (site_id = any((select my_sites())::uuid[]));
create policy cost_allowance_add on cost_allowance for insert
    with check (site_id = any((select my_sites_as('COST_ADMINISTRATOR'))::uuid[])
        and recorded_by is not distinct from (select current_staff()));
create policy cost_allowance_end on cost_allowance for update
    using (site_id = any((select my_sites_as('COST_ADMINISTRATOR'))::uuid[]))
    with check (site_id = any((select my_sites_as('COST_ADMINISTRATOR'))::uuid[]));
grant select, insert on cost_allowance to espalier_app;
grant update (valid, replaced) on cost_allowance to espalier_app;
grant select on cost_allowance to espalier_job;

-- Whoever records what costs something adds to the account; the archive that sends a film reads nothing of it. The hospital
-- that the child moves to keeps an account of its own; its surgeon sees both.
alter table cost_account enable row level security;
alter table cost_account force row level security;
create policy cost_account_read on cost_account for select
    using (recorded_site = any((select my_sites_as('COST_ADMINISTRATOR', 'SURGEON', 'NURSE', 'RADIOGRAPHER'))::uuid[])
        or site_id = any((select my_sites_as('SURGEON', 'NURSE', 'RADIOGRAPHER'))::uuid[]));
create policy cost_account_open on cost_account for insert
    with check (recorded_site = site_id
        and site_id = any((select my_sites_as('SURGEON', 'NURSE', 'RADIOGRAPHER', 'ARCHIVE'))::uuid[]) and payer = '');
create policy cost_account_payer on cost_account for update
    using (recorded_site = any((select my_sites_as('COST_ADMINISTRATOR'))::uuid[]))
    with check (recorded_site = any((select my_sites_as('COST_ADMINISTRATOR'))::uuid[]));
grant select, insert on cost_account to espalier_app, espalier_job;
grant update (payer) on cost_account to espalier_app;

alter table charge enable row level security;
alter table charge force row level security;
create policy charge_read on charge for select
    using (recorded_site = any((select my_sites_as('COST_ADMINISTRATOR', 'SURGEON', 'NURSE', 'RADIOGRAPHER'))::uuid[])
        or site_id = any((select my_sites_as('SURGEON', 'NURSE', 'RADIOGRAPHER'))::uuid[]));
create policy charge_add on charge for insert
    with check (recorded_site = any((select my_sites_as('SURGEON', 'NURSE', 'RADIOGRAPHER', 'ARCHIVE', 'COST_ADMINISTRATOR'))::uuid[])
        and recorded_by is not distinct from (select current_staff()));
grant select, insert on charge to espalier_app, espalier_job;

alter table cost_episode enable row level security;
alter table cost_episode force row level security;
create policy cost_episode_read on cost_episode for select
    using (recorded_site = any((select my_sites_as('COST_ADMINISTRATOR', 'SURGEON'))::uuid[])
        or site_id = any((select my_sites_as('SURGEON'))::uuid[]));
create policy cost_episode_add on cost_episode for insert
    with check (recorded_site = (select job_site()));
create policy cost_episode_drop on cost_episode for delete using (recorded_site = (select job_site()));
grant select on cost_episode to espalier_app;
grant select, insert, delete on cost_episode to espalier_job;

alter table cost_expected enable row level security;
alter table cost_expected force row level security;
create policy cost_expected_read on cost_expected for select
    using (recorded_site = any((select my_sites_as('COST_ADMINISTRATOR', 'SURGEON'))::uuid[]));
create policy cost_expected_add on cost_expected for insert
    with check (recorded_site = (select job_site()));
create policy cost_expected_drop on cost_expected for delete using (recorded_site = (select job_site()));
grant select on cost_expected to espalier_app;
grant select, insert, delete on cost_expected to espalier_job;

-- Where the night looks: hospitals that have set a tariff.
create function sites_with_tariffs() returns setof uuid
    language sql stable security definer set search_path = espalier, pg_temp
as $$ select distinct site_id from cost_tariff order by site_id $$;
revoke execute on function sites_with_tariffs() from public;
grant execute on function sites_with_tariffs() to espalier_app, espalier_job;
