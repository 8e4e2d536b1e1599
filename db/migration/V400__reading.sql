-- Readings: one person's landmarks on one film and the numbers computed from them once. Facts: a reading is superseded
-- by at most one later one, with a reason, and both stay.

create table reading (
    id uuid primary key,
    site_id uuid not null,
    recorded_site uuid not null references site,
    child_id uuid not null,
    film_id uuid not null references film,
    reader uuid not null references staff,
    started_at timestamptz not null,
    signed_at timestamptz not null check (signed_at >= started_at),
    marks jsonb not null,
    limbs text not null check (limbs in ('RIGHT', 'LEFT', 'BOTH')),
    calibration text not null
        check (calibration in ('NONE', 'DETECTOR_PLANE', 'TAG_GEOMETRY', 'TAG_FIDUCIAL', 'BALL')),
    mm_per_px_x double precision check (mm_per_px_x > 0),
    mm_per_px_y double precision check (mm_per_px_y > 0),
    ball_diameter_mm double precision check (ball_diameter_mm > 0),
    ball_diameter_px double precision check (ball_diameter_px > 0),
    stance text not null check (stance in ('NOT_RECORDED', 'STANDING_ALONE', 'HELD', 'SUPINE')),
    patella text not null check (patella in
        ('NOT_RECORDED', 'FORWARD', 'TURNED_IN', 'TURNED_OUT', 'NOT_OSSIFIED', 'DISLOCATING')),
    knee_flexion_deg smallint check (knee_flexion_deg between 0 and 90),
    supersedes uuid unique,
    reason text check (length(reason) between 3 and 400),
    foreign key (site_id, child_id) references child (site_id, id) on update cascade,
    unique (site_id, child_id, id),
    unique (film_id, id),
    foreign key (film_id, supersedes) references reading (film_id, id),
    check ((calibration = 'NONE') = (mm_per_px_x is null) and (mm_per_px_x is null) = (mm_per_px_y is null)),
    check ((calibration = 'BALL') = (ball_diameter_mm is not null)
        and (ball_diameter_mm is null) = (ball_diameter_px is null)),
    check ((supersedes is null) = (reason is null))
);
create index on reading (site_id, child_id);

create table reading_number (
    reading_id uuid not null,
    site_id uuid not null,
    recorded_site uuid not null references site,
    child_id uuid not null,
    side text not null check (side in ('RIGHT', 'LEFT')),
    quantity text not null,
    value double precision not null check (value between -100000 and 100000),
    unit text not null check (unit in ('deg', 'mm', 'percent')),
    doubtful boolean not null,
    primary key (reading_id, side, quantity),
    foreign key (site_id, child_id, reading_id) references reading (site_id, child_id, id) on update cascade
);
create index on reading_number (site_id, child_id);

-- Only the site that has care may change as a row moves with its child.
create trigger reading_is_a_fact before update on reading for each row
    when ((to_jsonb(old) - 'site_id') is distinct from (to_jsonb(new) - 'site_id'))
    execute function refuse_changed_fact();
create trigger reading_stays before delete on reading for each row execute function refuse_changed_fact();
create trigger reading_number_is_a_fact before update on reading_number for each row
    when ((to_jsonb(old) - 'site_id') is distinct from (to_jsonb(new) - 'site_id'))
    execute function refuse_changed_fact();
create trigger reading_number_stays before delete on reading_number
    for each row execute function refuse_changed_fact();

alter table reading enable row level security;
alter table reading force row level security;
create policy reading_read on reading for select
    using (site_id = any((select my_sites_as('SURGEON', 'NURSE', 'RADIOGRAPHER', 'AUDITOR'))::uuid[])
        or recorded_site = any((select my_sites_as('SURGEON', 'NURSE', 'RADIOGRAPHER', 'AUDITOR'))::uuid[])
        or child_id = any((select my_granted())::uuid[]));
create policy reading_add on reading for insert
    with check (site_id = any((select my_sites_as('SURGEON'))::uuid[])
        and recorded_site = site_id and reader = (select current_staff()));
grant select, insert on reading to espalier_app;
grant select on reading to espalier_job;

alter table reading_number enable row level security;
alter table reading_number force row level security;
create policy reading_number_read on reading_number for select
    using (site_id = any((select my_sites_as('SURGEON', 'NURSE', 'RADIOGRAPHER', 'AUDITOR'))::uuid[])
        or recorded_site = any((select my_sites_as('SURGEON', 'NURSE', 'RADIOGRAPHER', 'AUDITOR'))::uuid[])
        or child_id = any((select my_granted())::uuid[]));
create policy reading_number_add on reading_number for insert
    with check (site_id = any((select my_sites_as('SURGEON'))::uuid[]) and recorded_site = site_id);
grant select, insert on reading_number to espalier_app;
grant select on reading_number to espalier_job;
