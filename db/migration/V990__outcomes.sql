-- What came of the plates that were placed, and of what was foretold of them. Derived from the record every night and soon after
-- it changes, kept for speed: nothing here is the only copy of anything. A row belongs for good to the hospital that wrote it,
-- recorded_site; a child that moves on leaves there what was known that day.

create table outcome_plate (
    child_id uuid not null,
    recorded_site uuid not null references site,
    site_id uuid not null,
    side text not null check (side in ('RIGHT', 'LEFT')),
    bone text not null check (bone in ('FEMUR', 'TIBIA', 'FIBULA')),
    bone_end text not null check (bone_end in ('PROXIMAL', 'DISTAL')),
    plate_on date not null,
    left_out text check (left_out in ('ELSEWHERE', 'NOT_FRONTAL')),
    came text check (came in ('STRAIGHT', 'OVERSHOT', 'SHORT', 'GROWTH_ENDED', 'FAILED', 'NOT_FILMED')),
    to_day date not null check (to_day >= plate_on),
    past_deg double precision,
    after_release text not null check (after_release in ('NOT_DUE', 'FILMED', 'NOT_FILMED', 'HELD_AGAIN')),
    drift_deg double precision,
    complication boolean not null,
    came_back boolean not null,
    diagnosis text not null,
    age_years int not null,
    growth_years double precision check (growth_years >= 0),
    never_foretold double precision check (never_foretold between 0 and 1),
    reached_on date,
    primary key (recorded_site, child_id, side, bone, bone_end, plate_on),
    foreign key (site_id, child_id) references child (site_id, id) on update cascade,
    check ((after_release = 'FILMED') = (drift_deg is not null))
);
create index on outcome_plate (recorded_site, plate_on);
create index on outcome_plate (site_id, child_id);

-- Of each limb one forecast as it was given, with the film that came later, in degrees left to its target.
create table outcome_forecast (
    child_id uuid not null,
    recorded_site uuid not null references site,
    site_id uuid not null,
    side text not null check (side in ('RIGHT', 'LEFT')),
    bone text not null check (bone in ('FEMUR', 'TIBIA')),
    bone_end text not null check (bone_end in ('PROXIMAL', 'DISTAL')),
    from_day date not null,
    film_on date not null check (film_on > from_day),
    beforehand boolean not null,
    left_deg double precision[] not null check (cardinality(left_deg) = 5),
    came_deg double precision not null,
    line_deg double precision,
    primary key (recorded_site, child_id, side),
    foreign key (site_id, child_id) references child (site_id, id) on update cascade
);
create index on outcome_forecast (site_id, child_id);

alter table outcome_plate enable row level security;
alter table outcome_plate force row level security;
create policy outcome_plate_read on outcome_plate for select
    using (recorded_site = any((select my_sites_as('SURGEON', 'AUDITOR'))::uuid[]));
create policy outcome_plate_add on outcome_plate for insert with check (recorded_site = (select job_site()));
create policy outcome_plate_drop on outcome_plate for delete using (recorded_site = (select job_site()));
grant select on outcome_plate to espalier_app;
grant select, insert, delete on outcome_plate to espalier_job;

alter table outcome_forecast enable row level security;
alter table outcome_forecast force row level security;
create policy outcome_forecast_read on outcome_forecast for select
    using (recorded_site = any((select my_sites_as('SURGEON', 'AUDITOR'))::uuid[]));
create policy outcome_forecast_add on outcome_forecast for insert with check (recorded_site = (select job_site()));
create policy outcome_forecast_drop on outcome_forecast for delete using (recorded_site = (select job_site()));
grant select on outcome_forecast to espalier_app;
grant select, insert, delete on outcome_forecast to espalier_job;

-- What crosses the walls: how many children of each hospital, never which. One growth plate stands for a child, the first of
-- those placed in the span, the right before the left. Told to surgeons and auditors alone; who shows it hides what is small.
create function outcome_counts(first_day date, last_day date)
    returns table (site_id uuid, what text, which text, children int)
    language sql stable security definer set search_path = espalier, pg_temp
as $$
    with one as (
        select distinct on (recorded_site, child_id) recorded_site, came, diagnosis,
            case when age_years < 6 then 'UNDER_6' when age_years < 10 then 'FROM_6' when age_years < 13 then 'FROM_10'
                else 'FROM_13' end as age,
            case when growth_years is null then 'NOT_KNOWN' when growth_years < 2 then 'UNDER_2'
                when growth_years < 4 then 'FROM_2' else 'FROM_4' end as growth
        from outcome_plate
        where left_out is null and plate_on between first_day and last_day
            and cardinality(my_sites_as('SURGEON', 'AUDITOR')) > 0
        order by recorded_site, child_id, plate_on, side desc, bone, bone_end desc)
    select recorded_site, kind, value, count(*)::int
    from one, lateral (values ('CAME', came), ('DIAGNOSIS', diagnosis), ('AGE', age), ('GROWTH', growth)) as told (kind, value)
    where value is not null
    group by recorded_site, kind, value
    order by recorded_site, kind, value
$$;
revoke execute on function outcome_counts(date, date) from public;
grant execute on function outcome_counts(date, date) to espalier_app;
