-- Photos of the legs and short clips of children walking. The bytes lie in the film folder under their hash; a row says whose
-- they are, how long a clip is, and who agreed to their being kept. A withdrawal ends the showing; both are facts.

create table clinical_picture (
    id uuid primary key,
    site_id uuid not null,
    recorded_site uuid not null references site,
    child_id uuid not null,
    kind text not null check (kind in ('JPEG', 'PNG', 'MP4', 'WEBM')),
    sha256 text not null check (sha256 ~ '^[0-9a-f]{64}$'),
    size_bytes bigint not null check (size_bytes > 0),
    length_ms int check (length_ms > 0),
    taken_on date not null,
    consent_by text not null check (consent_by in ('PARENT', 'GUARDIAN', 'YOUNG_PERSON')),
    consent_on date not null,
    recorded_by uuid references staff,
    recorded_at timestamptz not null,
    foreign key (site_id, child_id) references child (site_id, id) on update cascade,
    unique (child_id, id),
    check ((kind in ('MP4', 'WEBM')) = (length_ms is not null))
);
create index on clinical_picture (child_id, taken_on);

create table clinical_picture_withdrawal (
    picture_id uuid primary key,
    site_id uuid not null,
    recorded_site uuid not null references site,
    child_id uuid not null,
    reason text not null check (length(reason) between 1 and 400),
    recorded_by uuid references staff,
    recorded_at timestamptz not null,
    foreign key (site_id, child_id) references child (site_id, id) on update cascade,
    foreign key (child_id, picture_id) references clinical_picture (child_id, id)
);

create trigger clinical_picture_is_a_fact before update on clinical_picture for each row
    when ((to_jsonb(old) - 'site_id') is distinct from (to_jsonb(new) - 'site_id'))
    execute function refuse_changed_fact();
create trigger clinical_picture_stays before delete on clinical_picture for each row
    execute function refuse_changed_fact();
create trigger clinical_picture_withdrawal_is_a_fact before update on clinical_picture_withdrawal for each row
    when ((to_jsonb(old) - 'site_id') is distinct from (to_jsonb(new) - 'site_id'))
    execute function refuse_changed_fact();
create trigger clinical_picture_withdrawal_stays before delete on clinical_picture_withdrawal for each row
    execute function refuse_changed_fact();

-- A face may be in it: read by those who treat the child alone, and by whom the child was granted to.
alter table clinical_picture enable row level security;
alter table clinical_picture force row level security;
create policy clinical_picture_read on clinical_picture for select
    using (site_id = any((select my_sites_as('SURGEON', 'NURSE', 'RADIOGRAPHER'))::uuid[])
        or recorded_site = any((select my_sites_as('SURGEON', 'NURSE', 'RADIOGRAPHER'))::uuid[])
        or child_id = any((select my_granted())::uuid[]));
create policy clinical_picture_add on clinical_picture for insert
    with check (site_id = any((select my_sites_as('SURGEON', 'NURSE', 'RADIOGRAPHER'))::uuid[])
        and recorded_site = site_id);
grant select, insert on clinical_picture to espalier_app;
grant select on clinical_picture to espalier_job;

alter table clinical_picture_withdrawal enable row level security;
alter table clinical_picture_withdrawal force row level security;
create policy clinical_picture_withdrawal_read on clinical_picture_withdrawal for select
    using (site_id = any((select my_sites_as('SURGEON', 'NURSE', 'RADIOGRAPHER'))::uuid[])
        or recorded_site = any((select my_sites_as('SURGEON', 'NURSE', 'RADIOGRAPHER'))::uuid[])
        or child_id = any((select my_granted())::uuid[]));
create policy clinical_picture_withdrawal_add on clinical_picture_withdrawal for insert
    with check (site_id = any((select my_sites_as('SURGEON', 'NURSE', 'RADIOGRAPHER'))::uuid[])
        and recorded_site = site_id);
grant select, insert on clinical_picture_withdrawal to espalier_app;
grant select on clinical_picture_withdrawal to espalier_job;
