-- Children. Who a child is stands apart from what is the matter with it, so that roles without need see initials and
-- the month of birth only.

create table child (
    id uuid primary key,
    site_id uuid not null references site,
    recorded_site uuid not null references site,
    version bigint not null default 1 check (version > 0),
    initials text not null check (length(initials) between 1 and 12),
    birth_month date not null check (extract(day from birth_month) = 1),
    sex text check (sex in ('FEMALE', 'MALE')),
    recorded_by uuid references staff,
    recorded_at timestamptz not null,
    unique (site_id, id)
);
create index on child (site_id, recorded_at);

create table child_identity (
    child_id uuid primary key,
    site_id uuid not null,
    family_name text not null check (length(family_name) between 1 and 120),
    given_name text check (length(given_name) between 1 and 120),
    birth_date date not null,
    local_number text check (length(local_number) between 1 and 40),
    sort_name text not null,
    foreign key (site_id, child_id) references child (site_id, id) on update cascade
);
create unique index child_identity_local_number on child_identity (site_id, local_number);
create index on child_identity (site_id, sort_name);
create index on child_identity (site_id, birth_date);

create table limb (
    id uuid primary key,
    site_id uuid not null,
    child_id uuid not null,
    side text not null check (side in ('RIGHT', 'LEFT')),
    foreign key (site_id, child_id) references child (site_id, id) on update cascade,
    unique (child_id, side),
    unique (site_id, child_id, id)
);

create table physis (
    id uuid primary key,
    site_id uuid not null,
    child_id uuid not null,
    limb_id uuid not null,
    bone text not null check (bone in ('FEMUR', 'TIBIA', 'FIBULA')),
    bone_end text not null check (bone_end in ('PROXIMAL', 'DISTAL')),
    foreign key (site_id, child_id, limb_id) references limb (site_id, child_id, id) on update cascade,
    unique (limb_id, bone, bone_end),
    unique (site_id, child_id, id)
);

alter table child enable row level security;
alter table child force row level security;
create policy child_read on child for select
    using (site_id = any((select my_sites())::uuid[]) or id = any((select my_granted())::uuid[]));
create policy child_add on child for insert
    with check (site_id = any((select my_sites_as('SURGEON', 'NURSE', 'RADIOGRAPHER'))::uuid[])
        and recorded_site = site_id);
create policy child_change on child for update
    using (site_id = any((select my_sites_as('SURGEON', 'NURSE', 'RADIOGRAPHER'))::uuid[]))
    with check (site_id = any((select my_sites_as('SURGEON', 'NURSE', 'RADIOGRAPHER'))::uuid[]));
grant select, insert on child to espalier_app;
grant update (version, initials, birth_month, sex) on child to espalier_app;
grant select on child to espalier_job;

-- A colleague with a grant is shown the case, not the name.
alter table child_identity enable row level security;
alter table child_identity force row level security;
create policy child_identity_read on child_identity for select
    using (site_id = any((select my_sites_as('SURGEON', 'NURSE', 'RADIOGRAPHER', 'ARCHIVE'))::uuid[]));
create policy child_identity_add on child_identity for insert
    with check (site_id = any((select my_sites_as('SURGEON', 'NURSE', 'RADIOGRAPHER'))::uuid[]));
create policy child_identity_change on child_identity for update
    using (site_id = any((select my_sites_as('SURGEON', 'NURSE', 'RADIOGRAPHER'))::uuid[]))
    with check (site_id = any((select my_sites_as('SURGEON', 'NURSE', 'RADIOGRAPHER'))::uuid[]));
grant select, insert on child_identity to espalier_app;
grant update (family_name, given_name, birth_date, local_number, sort_name) on child_identity to espalier_app;
grant select on child_identity to espalier_job;

alter table limb enable row level security;
alter table limb force row level security;
create policy limb_read on limb for select
    using (site_id = any((select my_sites())::uuid[]) or child_id = any((select my_granted())::uuid[]));
create policy limb_add on limb for insert
    with check (site_id = any((select my_sites_as('SURGEON', 'NURSE', 'RADIOGRAPHER'))::uuid[]));
grant select, insert on limb to espalier_app;
grant select on limb to espalier_job;

alter table physis enable row level security;
alter table physis force row level security;
create policy physis_read on physis for select
    using (site_id = any((select my_sites())::uuid[]) or child_id = any((select my_granted())::uuid[]));
create policy physis_add on physis for insert
    with check (site_id = any((select my_sites_as('SURGEON', 'NURSE', 'RADIOGRAPHER'))::uuid[]));
grant select, insert on physis to espalier_app;
grant select on physis to espalier_job;
