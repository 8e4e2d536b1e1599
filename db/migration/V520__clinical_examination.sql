-- The examination at a visit and the work-up: facts as those of height, weight, bone age and diagnosis. What is null was
-- not recorded and is not taken for normal. Angles of a leg are whole degrees; outward, and short of straight, are positive.

alter table bone_age add column reader text check (length(reader) between 1 and 120);

create table clinical_examination (
    id uuid primary key,
    site_id uuid not null,
    recorded_site uuid not null references site,
    child_id uuid not null,
    examined_on date not null,
    intercondylar_mm smallint check (intercondylar_mm between 0 and 400),
    intermalleolar_mm smallint check (intermalleolar_mm between 0 and 400),
    hypermobility smallint check (hypermobility between 0 and 9),
    sleep text,
    note text check (length(note) between 1 and 1000),
    right_knee_extension_lack_deg smallint check (right_knee_extension_lack_deg between -30 and 90),
    right_knee_flexion_deg smallint check (right_knee_flexion_deg between 0 and 170),
    right_foot_progression_deg smallint check (right_foot_progression_deg between -60 and 60),
    right_hip_internal_rotation_deg smallint check (right_hip_internal_rotation_deg between 0 and 100),
    right_hip_external_rotation_deg smallint check (right_hip_external_rotation_deg between 0 and 100),
    right_thigh_foot_deg smallint check (right_thigh_foot_deg between -60 and 70),
    right_thrust text,
    right_lateral_laxity text,
    right_medial_laxity text,
    right_patella text,
    right_pain text,
    right_nerve text,
    right_pulse text,
    left_knee_extension_lack_deg smallint check (left_knee_extension_lack_deg between -30 and 90),
    left_knee_flexion_deg smallint check (left_knee_flexion_deg between 0 and 170),
    left_foot_progression_deg smallint check (left_foot_progression_deg between -60 and 60),
    left_hip_internal_rotation_deg smallint check (left_hip_internal_rotation_deg between 0 and 100),
    left_hip_external_rotation_deg smallint check (left_hip_external_rotation_deg between 0 and 100),
    left_thigh_foot_deg smallint check (left_thigh_foot_deg between -60 and 70),
    left_thrust text,
    left_lateral_laxity text,
    left_medial_laxity text,
    left_patella text,
    left_pain text,
    left_nerve text,
    left_pulse text,
    supersedes uuid unique,
    withdrawn boolean not null default false,
    reason text,
    recorded_by uuid references staff,
    recorded_at timestamptz not null,
    foreign key (site_id, child_id) references child (site_id, id) on update cascade,
    unique (child_id, id),
    foreign key (child_id, supersedes) references clinical_examination (child_id, id),
    check ((supersedes is null) = (reason is null)),
    check (not withdrawn or supersedes is not null)
);
create index on clinical_examination (child_id, examined_on);

create table lab_result (
    id uuid primary key,
    site_id uuid not null,
    recorded_site uuid not null references site,
    child_id uuid not null,
    sampled_on date not null,
    analyte text,
    value numeric(7, 2) check (value > 0),
    unit text,
    lab_range text check (length(lab_range) between 1 and 60),
    supersedes uuid unique,
    withdrawn boolean not null default false,
    reason text,
    recorded_by uuid references staff,
    recorded_at timestamptz not null,
    foreign key (site_id, child_id) references child (site_id, id) on update cascade,
    unique (child_id, id),
    foreign key (child_id, supersedes) references lab_result (child_id, id),
    check (num_nonnulls(analyte, value, unit) = 3 or withdrawn),
    check ((supersedes is null) = (reason is null)),
    check (not withdrawn or supersedes is not null)
);
create index on lab_result (child_id, sampled_on);

create table bone_disease (
    id uuid primary key,
    site_id uuid not null,
    recorded_site uuid not null references site,
    child_id uuid not null,
    since date not null,
    control text,
    note text check (length(note) between 1 and 400),
    supersedes uuid unique,
    withdrawn boolean not null default false,
    reason text,
    recorded_by uuid references staff,
    recorded_at timestamptz not null,
    foreign key (site_id, child_id) references child (site_id, id) on update cascade,
    unique (child_id, id),
    foreign key (child_id, supersedes) references bone_disease (child_id, id),
    check (control is not null or withdrawn),
    check ((supersedes is null) = (reason is null)),
    check (not withdrawn or supersedes is not null)
);
create index on bone_disease (child_id, since);

create table imaging_report (
    id uuid primary key,
    site_id uuid not null,
    recorded_site uuid not null references site,
    child_id uuid not null,
    imaged_on date not null,
    modality text,
    sides text check (sides in ('RIGHT', 'LEFT', 'BOTH')),
    bar text,
    bar_share_percent smallint check (bar_share_percent between 1 and 100),
    femoral_torsion_deg smallint check (femoral_torsion_deg between -40 and 90),
    tibial_torsion_deg smallint check (tibial_torsion_deg between -60 and 90),
    reported_by text check (length(reported_by) between 1 and 120),
    report text check (length(report) between 1 and 4000),
    supersedes uuid unique,
    withdrawn boolean not null default false,
    reason text,
    recorded_by uuid references staff,
    recorded_at timestamptz not null,
    foreign key (site_id, child_id) references child (site_id, id) on update cascade,
    unique (child_id, id),
    foreign key (child_id, supersedes) references imaging_report (child_id, id),
    check (num_nonnulls(modality, sides, reported_by) = 3 or withdrawn),
    check (bar_share_percent is null or bar in ('BONY', 'FIBROCARTILAGINOUS')),
    check ((supersedes is null) = (reason is null)),
    check (not withdrawn or supersedes is not null)
);
create index on imaging_report (child_id, imaged_on);

create table tibia_vara_stage (
    id uuid primary key,
    site_id uuid not null,
    recorded_site uuid not null references site,
    child_id uuid not null,
    film_on date not null,
    side text check (side in ('RIGHT', 'LEFT')),
    stage text check (stage in ('I', 'II', 'III', 'IV', 'V', 'VI')),
    supersedes uuid unique,
    withdrawn boolean not null default false,
    reason text,
    recorded_by uuid references staff,
    recorded_at timestamptz not null,
    foreign key (site_id, child_id) references child (site_id, id) on update cascade,
    unique (child_id, id),
    foreign key (child_id, supersedes) references tibia_vara_stage (child_id, id),
    check (num_nonnulls(side, stage) = 2 or withdrawn),
    check ((supersedes is null) = (reason is null)),
    check (not withdrawn or supersedes is not null)
);
create index on tibia_vara_stage (child_id, film_on);

-- Only the site that has care may change as a row moves with its child.
create trigger clinical_examination_is_a_fact before update on clinical_examination for each row
    when ((to_jsonb(old) - 'site_id') is distinct from (to_jsonb(new) - 'site_id'))
    execute function refuse_changed_fact();
create trigger clinical_examination_stays before delete on clinical_examination for each row execute function refuse_changed_fact();
create trigger lab_result_is_a_fact before update on lab_result for each row
    when ((to_jsonb(old) - 'site_id') is distinct from (to_jsonb(new) - 'site_id'))
    execute function refuse_changed_fact();
create trigger lab_result_stays before delete on lab_result for each row execute function refuse_changed_fact();
create trigger bone_disease_is_a_fact before update on bone_disease for each row
    when ((to_jsonb(old) - 'site_id') is distinct from (to_jsonb(new) - 'site_id'))
    execute function refuse_changed_fact();
create trigger bone_disease_stays before delete on bone_disease for each row execute function refuse_changed_fact();
create trigger imaging_report_is_a_fact before update on imaging_report for each row
    when ((to_jsonb(old) - 'site_id') is distinct from (to_jsonb(new) - 'site_id'))
    execute function refuse_changed_fact();
create trigger imaging_report_stays before delete on imaging_report for each row execute function refuse_changed_fact();
create trigger tibia_vara_stage_is_a_fact before update on tibia_vara_stage for each row
    when ((to_jsonb(old) - 'site_id') is distinct from (to_jsonb(new) - 'site_id'))
    execute function refuse_changed_fact();
create trigger tibia_vara_stage_stays before delete on tibia_vara_stage for each row execute function refuse_changed_fact();

-- Read by those who treat and by the auditor; the storekeeper and the cost administrator have no need of them.
alter table clinical_examination enable row level security;
alter table clinical_examination force row level security;
create policy clinical_examination_read on clinical_examination for select
    using (site_id = any((select my_sites_as('SURGEON', 'NURSE', 'RADIOGRAPHER', 'AUDITOR'))::uuid[])
        or recorded_site = any((select my_sites_as('SURGEON', 'NURSE', 'RADIOGRAPHER', 'AUDITOR'))::uuid[])
        or child_id = any((select my_granted())::uuid[]));
create policy clinical_examination_add on clinical_examination for insert
    with check (site_id = any((select my_sites_as('SURGEON', 'NURSE', 'RADIOGRAPHER'))::uuid[])
        and recorded_site = site_id);
grant select, insert on clinical_examination to espalier_app;
grant select on clinical_examination to espalier_job;

alter table lab_result enable row level security;
alter table lab_result force row level security;
create policy lab_result_read on lab_result for select
    using (site_id = any((select my_sites_as('SURGEON', 'NURSE', 'RADIOGRAPHER', 'AUDITOR'))::uuid[])
        or recorded_site = any((select my_sites_as('SURGEON', 'NURSE', 'RADIOGRAPHER', 'AUDITOR'))::uuid[])
        or child_id = any((select my_granted())::uuid[]));
create policy lab_result_add on lab_result for insert
    with check (site_id = any((select my_sites_as('SURGEON', 'NURSE', 'RADIOGRAPHER'))::uuid[])
        and recorded_site = site_id);
grant select, insert on lab_result to espalier_app;
grant select on lab_result to espalier_job;

alter table bone_disease enable row level security;
alter table bone_disease force row level security;
create policy bone_disease_read on bone_disease for select
    using (site_id = any((select my_sites_as('SURGEON', 'NURSE', 'RADIOGRAPHER', 'AUDITOR'))::uuid[])
        or recorded_site = any((select my_sites_as('SURGEON', 'NURSE', 'RADIOGRAPHER', 'AUDITOR'))::uuid[])
        or child_id = any((select my_granted())::uuid[]));
create policy bone_disease_add on bone_disease for insert
    with check (site_id = any((select my_sites_as('SURGEON', 'NURSE', 'RADIOGRAPHER'))::uuid[])
        and recorded_site = site_id);
grant select, insert on bone_disease to espalier_app;
grant select on bone_disease to espalier_job;

alter table imaging_report enable row level security;
alter table imaging_report force row level security;
create policy imaging_report_read on imaging_report for select
    using (site_id = any((select my_sites_as('SURGEON', 'NURSE', 'RADIOGRAPHER', 'AUDITOR'))::uuid[])
        or recorded_site = any((select my_sites_as('SURGEON', 'NURSE', 'RADIOGRAPHER', 'AUDITOR'))::uuid[])
        or child_id = any((select my_granted())::uuid[]));
create policy imaging_report_add on imaging_report for insert
    with check (site_id = any((select my_sites_as('SURGEON', 'NURSE', 'RADIOGRAPHER'))::uuid[])
        and recorded_site = site_id);
grant select, insert on imaging_report to espalier_app;
grant select on imaging_report to espalier_job;

alter table tibia_vara_stage enable row level security;
alter table tibia_vara_stage force row level security;
create policy tibia_vara_stage_read on tibia_vara_stage for select
    using (site_id = any((select my_sites_as('SURGEON', 'NURSE', 'RADIOGRAPHER', 'AUDITOR'))::uuid[])
        or recorded_site = any((select my_sites_as('SURGEON', 'NURSE', 'RADIOGRAPHER', 'AUDITOR'))::uuid[])
        or child_id = any((select my_granted())::uuid[]));
create policy tibia_vara_stage_add on tibia_vara_stage for insert
    with check (site_id = any((select my_sites_as('SURGEON', 'NURSE', 'RADIOGRAPHER'))::uuid[])
        and recorded_site = site_id);
grant select, insert on tibia_vara_stage to espalier_app;
grant select on tibia_vara_stage to espalier_job;
