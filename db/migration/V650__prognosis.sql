-- Forecasts as they were given, to be judged later; the rates of each centre learnt from its own limbs; how far the night's work
-- has come. What is shown today is computed anew from the facts: these rows are never the only copy of anything.

-- One forecast of one plate as it was given: from which facts, by which rates and version, and what it said. The same facts
-- give the same row.
create table forecast (
    id uuid primary key,
    site_id uuid not null,
    recorded_site uuid not null references site,
    child_id uuid not null,
    side text not null check (side in ('RIGHT', 'LEFT')),
    bone text not null check (bone in ('FEMUR', 'TIBIA')),
    bone_end text not null check (bone_end in ('PROXIMAL', 'DISTAL')),
    plate_on date not null,
    version int not null check (version > 0),
    input_hash text not null check (length(input_hash) = 64),
    inputs jsonb not null,
    outcome jsonb not null,
    recorded_at timestamptz not null,
    foreign key (site_id, child_id) references child (site_id, id) on update cascade,
    unique (child_id, side, bone, bone_end, version, input_hash)
);
create index on forecast (site_id, child_id, side, bone, bone_end, plate_on, recorded_at);
create trigger forecast_is_a_fact before update on forecast for each row
    when ((to_jsonb(old) - 'site_id') is distinct from (to_jsonb(new) - 'site_id'))
    execute function refuse_changed_fact();
create trigger forecast_stays before delete on forecast for each row execute function refuse_changed_fact();

alter table forecast enable row level security;
alter table forecast force row level security;
create policy forecast_read on forecast for select
    using (site_id = any((select my_sites_as('SURGEON', 'NURSE', 'RADIOGRAPHER', 'AUDITOR'))::uuid[])
        or recorded_site = any((select my_sites_as('SURGEON', 'NURSE', 'RADIOGRAPHER', 'AUDITOR'))::uuid[])
        or child_id = any((select my_granted())::uuid[]));
create policy forecast_add on forecast for insert
    with check (site_id = (select job_site()) and recorded_site = site_id);
grant select on forecast to espalier_app;
grant select, insert on forecast to espalier_job;

-- From which facts the forecasts of a child were last made: a mark that changes with any of them. Kept for speed; without it
-- everything is computed once more and nothing is kept twice.
create table forecast_mark (
    child_id uuid primary key,
    site_id uuid not null,
    mark text not null,
    foreign key (site_id, child_id) references child (site_id, id) on update cascade
);

alter table forecast_mark enable row level security;
alter table forecast_mark force row level security;
create policy forecast_mark_read on forecast_mark for select using (site_id = any((select my_sites())::uuid[]));
create policy forecast_mark_add on forecast_mark for insert with check (site_id = (select job_site()));
create policy forecast_mark_change on forecast_mark for update
    using (site_id = (select job_site())) with check (site_id = (select job_site()));
grant select, insert on forecast_mark to espalier_job;
grant update (mark) on forecast_mark to espalier_job;

-- What a centre's own limbs said of rates and film noise on a night. Facts; the newest holds.
create table centre_rates (
    id uuid primary key,
    site_id uuid not null references site,
    version int not null check (version > 0),
    limbs int not null check (limbs >= 0),
    learnt_from text not null check (length(learnt_from) = 64),
    rate_values double precision[] not null,
    rate_spreads double precision[] not null,
    learnt_at timestamptz not null
);
create index on centre_rates (site_id, learnt_at);
create trigger centre_rates_stay before update or delete on centre_rates
    for each row execute function refuse_changed_fact();

alter table centre_rates enable row level security;
alter table centre_rates force row level security;
create policy centre_rates_read on centre_rates for select using (site_id = any((select my_sites())::uuid[]));
create policy centre_rates_add on centre_rates for insert with check (site_id = (select job_site()));
grant select on centre_rates to espalier_app;
grant select, insert on centre_rates to espalier_job;

-- Whether a centre forecasts by its own rates or by the published ones. Facts; the newest holds, own ones without any.
create table centre_rates_choice (
    id uuid primary key,
    site_id uuid not null references site,
    own boolean not null,
    reason text not null check (length(reason) between 3 and 400),
    chosen_by uuid not null references staff,
    chosen_at timestamptz not null
);
create index on centre_rates_choice (site_id, chosen_at);
create trigger centre_rates_choice_stays before update or delete on centre_rates_choice
    for each row execute function refuse_changed_fact();

alter table centre_rates_choice enable row level security;
alter table centre_rates_choice force row level security;
create policy centre_rates_choice_read on centre_rates_choice for select
    using (site_id = any((select my_sites())::uuid[]));
create policy centre_rates_choice_add on centre_rates_choice for insert
    with check (site_id = any((select my_sites_as('SURGEON'))::uuid[]) and chosen_by = (select current_staff()));
grant select, insert on centre_rates_choice to espalier_app;
grant select on centre_rates_choice to espalier_job;

-- How far a night's work has come at a site, so that a stop resumes where it was.
create table forecast_night (
    site_id uuid primary key references site,
    night date not null,
    after_child uuid not null,
    looked int not null,
    renewed int not null,
    finished boolean not null
);

alter table forecast_night enable row level security;
alter table forecast_night force row level security;
create policy forecast_night_read on forecast_night for select using (site_id = any((select my_sites())::uuid[]));
create policy forecast_night_add on forecast_night for insert with check (site_id = (select job_site()));
create policy forecast_night_change on forecast_night for update
    using (site_id = (select job_site())) with check (site_id = (select job_site()));
grant select, insert on forecast_night to espalier_job;
grant update (night, after_child, looked, renewed, finished) on forecast_night to espalier_job;

-- The sites a night's work goes through: ids and nothing else, as no caller is there yet to ask for.
create function sites_of_the_night() returns setof uuid
    language sql stable security definer set search_path = espalier, pg_temp
as $$
    select id from site order by id
$$;
revoke execute on function sites_of_the_night() from public;
grant execute on function sites_of_the_night() to espalier_app, espalier_job;
