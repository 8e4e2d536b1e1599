-- What is measured and found on a child over time: facts, each superseded by at most one later one. A fact that was
-- entered on the wrong child is superseded by a row that only says so (withdrawn).

create table body_size (
    id uuid primary key,
    site_id uuid not null,
    recorded_site uuid not null references site,
    child_id uuid not null,
    measured_on date not null,
    height_cm numeric(4, 1) check (height_cm between 30 and 230),
    weight_kg numeric(4, 1) check (weight_kg between 1 and 300),
    supersedes uuid unique,
    withdrawn boolean not null default false,
    reason text,
    recorded_by uuid references staff,
    recorded_at timestamptz not null,
    foreign key (site_id, child_id) references child (site_id, id) on update cascade,
    unique (child_id, id),
    foreign key (child_id, supersedes) references body_size (child_id, id),
    check (height_cm is not null or weight_kg is not null or withdrawn),
    check ((supersedes is null) = (reason is null)),
    check (not withdrawn or supersedes is not null)
);
create index on body_size (child_id, measured_on);

create table bone_age (
    id uuid primary key,
    site_id uuid not null,
    recorded_site uuid not null references site,
    child_id uuid not null,
    assessed_on date not null,
    bone_age_months smallint check (bone_age_months between 0 and 240),
    method text,
    supersedes uuid unique,
    withdrawn boolean not null default false,
    reason text,
    recorded_by uuid references staff,
    recorded_at timestamptz not null,
    foreign key (site_id, child_id) references child (site_id, id) on update cascade,
    unique (child_id, id),
    foreign key (child_id, supersedes) references bone_age (child_id, id),
    check (bone_age_months is not null and method is not null or withdrawn),
    check ((supersedes is null) = (reason is null)),
    check (not withdrawn or supersedes is not null)
);
create index on bone_age (child_id, assessed_on);

create table diagnosis (
    id uuid primary key,
    site_id uuid not null,
    recorded_site uuid not null references site,
    child_id uuid not null,
    diagnosed_on date not null,
    kind text,
    sides text check (sides in ('RIGHT', 'LEFT', 'BOTH')),
    scheme text,
    onset text,
    onset_age_months smallint check (onset_age_months between 0 and 240),
    note text check (length(note) between 1 and 400),
    supersedes uuid unique,
    withdrawn boolean not null default false,
    reason text,
    recorded_by uuid references staff,
    recorded_at timestamptz not null,
    foreign key (site_id, child_id) references child (site_id, id) on update cascade,
    unique (child_id, id),
    foreign key (child_id, supersedes) references diagnosis (child_id, id),
    check (kind is not null or withdrawn),
    check (kind <> 'OTHER' or note is not null),
    check ((scheme is null) = (onset is null)),
    check ((supersedes is null) = (reason is null)),
    check (not withdrawn or supersedes is not null)
);
create index on diagnosis (child_id, diagnosed_on);

-- Only the site that has care may change as a row moves with its child.
create trigger body_size_is_a_fact before update on body_size for each row
    when ((to_jsonb(old) - 'site_id') is distinct from (to_jsonb(new) - 'site_id'))
    execute function refuse_changed_fact();
create trigger body_size_stays before delete on body_size for each row execute function refuse_changed_fact();
create trigger bone_age_is_a_fact before update on bone_age for each row
    when ((to_jsonb(old) - 'site_id') is distinct from (to_jsonb(new) - 'site_id'))
    execute function refuse_changed_fact();
create trigger bone_age_stays before delete on bone_age for each row execute function refuse_changed_fact();
create trigger diagnosis_is_a_fact before update on diagnosis for each row
    when ((to_jsonb(old) - 'site_id') is distinct from (to_jsonb(new) - 'site_id'))
    execute function refuse_changed_fact();
create trigger diagnosis_stays before delete on diagnosis for each row execute function refuse_changed_fact();

-- Read by those who treat and by the auditor; the storekeeper and the cost administrator have no need of them.
alter table body_size enable row level security;
alter table body_size force row level security;
create policy body_size_read on body_size for select
    using (site_id = any((select my_sites_as('SURGEON', 'NURSE', 'RADIOGRAPHER', 'AUDITOR'))::uuid[])
        or recorded_site = any((select my_sites_as('SURGEON', 'NURSE', 'RADIOGRAPHER', 'AUDITOR'))::uuid[])
        or child_id = any((select my_granted())::uuid[]));
create policy body_size_add on body_size for insert
    with check (site_id = any((select my_sites_as('SURGEON', 'NURSE', 'RADIOGRAPHER'))::uuid[])
        and recorded_site = site_id);
grant select, insert on body_size to espalier_app;
grant select on body_size to espalier_job;

alter table bone_age enable row level security;
alter table bone_age force row level security;
create policy bone_age_read on bone_age for select
    using (site_id = any((select my_sites_as('SURGEON', 'NURSE', 'RADIOGRAPHER', 'AUDITOR'))::uuid[])
        or recorded_site = any((select my_sites_as('SURGEON', 'NURSE', 'RADIOGRAPHER', 'AUDITOR'))::uuid[])
        or child_id = any((select my_granted())::uuid[]));
create policy bone_age_add on bone_age for insert
    with check (site_id = any((select my_sites_as('SURGEON', 'NURSE', 'RADIOGRAPHER'))::uuid[])
        and recorded_site = site_id);
grant select, insert on bone_age to espalier_app;
grant select on bone_age to espalier_job;

alter table diagnosis enable row level security;
alter table diagnosis force row level security;
create policy diagnosis_read on diagnosis for select
    using (site_id = any((select my_sites_as('SURGEON', 'NURSE', 'RADIOGRAPHER', 'AUDITOR'))::uuid[])
        or recorded_site = any((select my_sites_as('SURGEON', 'NURSE', 'RADIOGRAPHER', 'AUDITOR'))::uuid[])
        or child_id = any((select my_granted())::uuid[]));
create policy diagnosis_add on diagnosis for insert
    with check (site_id = any((select my_sites_as('SURGEON', 'NURSE', 'RADIOGRAPHER'))::uuid[])
        and recorded_site = site_id);
grant select, insert on diagnosis to espalier_app;
grant select on diagnosis to espalier_job;
