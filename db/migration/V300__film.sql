-- Films. The bytes lie in the film folder under their hash; what is here says whose they are, where they came from and
-- whether they can be shown. The same bytes are one film at a site; the same instance with other bytes is kept aside.

create table film (
    id uuid primary key,
    site_id uuid not null references site,
    recorded_site uuid not null references site,
    child_id uuid,
    version bigint not null default 1 check (version > 0),
    state text not null check (state in ('RECEIVED', 'READY', 'KEPT_ASIDE')),
    kind text not null check (kind in ('DICOM', 'PHOTO')),
    sha256 text not null check (sha256 ~ '^[0-9a-f]{64}$'),
    size_bytes bigint not null check (size_bytes > 0),
    transfer_syntax_uid text,
    sop_class_uid text,
    sop_instance_uid text,
    study_uid text,
    series_uid text,
    modality text,
    view text,
    study_date date,
    taken_on date,
    width int check (width > 0),
    height int check (height > 0),
    scale_source text not null
        check (scale_source in ('NONE', 'DETECTOR_PLANE', 'UNDETERMINED', 'GEOMETRY', 'FIDUCIAL', 'UNSTATED')),
    mm_per_px_x double precision check (mm_per_px_x > 0),
    mm_per_px_y double precision check (mm_per_px_y > 0),
    magnification double precision check (magnification > 0),
    aside_reason text,
    aside_detail text,
    recorded_by uuid references staff,
    recorded_at timestamptz not null,
    foreign key (site_id, child_id) references child (site_id, id) on update cascade,
    unique (site_id, id),
    unique (recorded_site, sha256),
    check ((state = 'KEPT_ASIDE') = (aside_reason is not null)),
    check ((scale_source = 'NONE') = (mm_per_px_x is null) and (mm_per_px_x is null) = (mm_per_px_y is null)),
    check (state <> 'READY' or (width is not null and height is not null))
);
create unique index film_instance on film (recorded_site, sop_instance_uid) where state <> 'KEPT_ASIDE';
create index on film (child_id, taken_on);
create index film_tray on film (site_id, recorded_at) where child_id is null;
create index on film (site_id, study_date desc, study_uid);
create index on film (site_id, study_uid, series_uid);

-- What the film itself says about whom it shows: kept apart, for those who must match it.
create table film_label (
    film_id uuid primary key,
    site_id uuid not null,
    original_name text not null,
    patient_name text,
    local_number text,
    birth_date date,
    sex text,
    accession_number text,
    study_description text,
    series_description text,
    foreign key (site_id, film_id) references film (site_id, id) on update cascade
);
create index on film_label (site_id, local_number);

-- Whose film it is: facts, each superseded by at most one later one. A row without a child lays the film back in the tray.
create table film_assignment (
    id uuid primary key,
    site_id uuid not null references site,
    recorded_site uuid not null references site,
    film_id uuid not null references film,
    child_id uuid,
    taken_on date,
    manner text not null check (manner in ('MATCHED', 'BY_HAND')),
    supersedes uuid unique,
    reason text check (length(reason) between 1 and 400),
    recorded_by uuid references staff,
    recorded_at timestamptz not null,
    foreign key (site_id, child_id) references child (site_id, id) on update cascade,
    unique (film_id, id),
    foreign key (film_id, supersedes) references film_assignment (film_id, id),
    check ((supersedes is null) = (reason is null))
);
create unique index film_assignment_first on film_assignment (film_id) where supersedes is null;
create trigger film_assignment_is_a_fact before update on film_assignment for each row
    when ((to_jsonb(old) - 'site_id') is distinct from (to_jsonb(new) - 'site_id'))
    execute function refuse_changed_fact();
create trigger film_assignment_stays before delete on film_assignment for each row
    execute function refuse_changed_fact();

alter table film enable row level security;
alter table film force row level security;
create policy film_read on film for select
    using (site_id = any((select my_sites_as('SURGEON', 'NURSE', 'RADIOGRAPHER', 'AUDITOR', 'ARCHIVE'))::uuid[])
        or recorded_site = any((select my_sites_as('SURGEON', 'NURSE', 'RADIOGRAPHER', 'AUDITOR', 'ARCHIVE'))::uuid[])
        or child_id = any((select my_granted())::uuid[]));
create policy film_add on film for insert
    with check (site_id = any((select my_sites_as('SURGEON', 'NURSE', 'RADIOGRAPHER', 'ARCHIVE'))::uuid[])
        and recorded_site = site_id);
create policy film_change on film for update
    using (site_id = any((select my_sites_as('SURGEON', 'NURSE', 'RADIOGRAPHER', 'ARCHIVE'))::uuid[]))
    with check (site_id = any((select my_sites_as('SURGEON', 'NURSE', 'RADIOGRAPHER', 'ARCHIVE'))::uuid[]));
grant select, insert on film to espalier_app;
grant update (child_id, version, taken_on) on film to espalier_app;
grant select on film to espalier_job;
grant update (state, version, width, height, aside_reason, aside_detail, child_id) on film to espalier_job;

alter table film_label enable row level security;
alter table film_label force row level security;
create policy film_label_read on film_label for select
    using (site_id = any((select my_sites_as('SURGEON', 'NURSE', 'RADIOGRAPHER', 'ARCHIVE'))::uuid[]));
create policy film_label_add on film_label for insert
    with check (site_id = any((select my_sites_as('SURGEON', 'NURSE', 'RADIOGRAPHER', 'ARCHIVE'))::uuid[]));
grant select, insert on film_label to espalier_app;
grant select on film_label to espalier_job;

alter table film_assignment enable row level security;
alter table film_assignment force row level security;
create policy film_assignment_read on film_assignment for select
    using (site_id = any((select my_sites_as('SURGEON', 'NURSE', 'RADIOGRAPHER', 'AUDITOR', 'ARCHIVE'))::uuid[])
        or recorded_site = any((select my_sites_as('SURGEON', 'NURSE', 'RADIOGRAPHER', 'AUDITOR', 'ARCHIVE'))::uuid[])
        or child_id = any((select my_granted())::uuid[]));
create policy film_assignment_add on film_assignment for insert
    with check (site_id = any((select my_sites_as('SURGEON', 'NURSE', 'RADIOGRAPHER', 'ARCHIVE'))::uuid[])
        and recorded_site = site_id);
grant select, insert on film_assignment to espalier_app;
grant select on film_assignment to espalier_job;
