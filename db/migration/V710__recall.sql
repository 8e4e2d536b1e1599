-- How a family is reached, and what was tried.

create table family (
    child_id uuid primary key,
    site_id uuid not null,
    version bigint not null default 1 check (version > 0),
    phones jsonb not null default '[]',
    language text not null default 'en' check (language ~ '^[a-z]{2,3}$'),
    interpreter boolean not null default false,
    transport text check (length(transport) between 1 and 400),
    school text check (length(school) between 1 and 400),
    do_not_contact text check (length(do_not_contact) between 1 and 400),
    safeguarding_lead text check (length(safeguarding_lead) between 1 and 400),
    foreign key (site_id, child_id) references child (site_id, id) on update cascade
);
create index on family (site_id);

create table attempt (
    id uuid primary key,
    site_id uuid not null,
    recorded_site uuid not null references site,
    child_id uuid not null,
    visit_id uuid not null references visit,
    channel text not null check (channel in ('CALL', 'MESSAGE', 'LETTER', 'RELATIVE', 'SCHOOL', 'HOME_VISIT',
        'SAFEGUARDING_LEAD')),
    outcome text not null check (outcome in ('REACHED', 'PROMISED', 'DATE_GIVEN', 'REMINDED', 'NO_ANSWER', 'WRONG_NUMBER',
        'SENT', 'CAME_BACK', 'DECLINED', 'MOVED', 'OTHER')),
    consent_of text check (length(consent_of) between 1 and 200),
    note text check (length(note) between 1 and 400),
    next_step text check (length(next_step) between 1 and 200),
    next_on date,
    made_on date not null,
    recorded_by uuid references staff,
    recorded_at timestamptz not null,
    foreign key (site_id, child_id) references child (site_id, id) on update cascade,
    check (channel not in ('RELATIVE', 'SCHOOL', 'HOME_VISIT') or consent_of is not null)
);
create index on attempt (child_id, recorded_at);
create index on attempt (visit_id);
create trigger attempt_is_a_fact before update on attempt for each row
    when ((to_jsonb(old) - 'site_id') is distinct from (to_jsonb(new) - 'site_id'))
    execute function refuse_changed_fact();
create trigger attempt_stays before delete on attempt for each row execute function refuse_changed_fact();

alter table family enable row level security;
alter table family force row level security;
create policy family_read on family for select
    using (site_id = any((select my_sites_as('SURGEON', 'NURSE', 'RADIOGRAPHER'))::uuid[]));
create policy family_add on family for insert
    with check (site_id = any((select my_sites_as('SURGEON', 'NURSE'))::uuid[]));
create policy family_change on family for update
    using (site_id = any((select my_sites_as('SURGEON', 'NURSE'))::uuid[]))
    with check (site_id = any((select my_sites_as('SURGEON', 'NURSE'))::uuid[]));
grant select, insert on family to espalier_app;
grant update (version, phones, language, interpreter, transport, school, do_not_contact, safeguarding_lead)
    on family to espalier_app;
grant select on family to espalier_job;

alter table attempt enable row level security;
alter table attempt force row level security;
create policy attempt_read on attempt for select
    using (site_id = any((select my_sites_as('SURGEON', 'NURSE', 'RADIOGRAPHER', 'AUDITOR'))::uuid[])
        or recorded_site = any((select my_sites_as('SURGEON', 'NURSE', 'RADIOGRAPHER', 'AUDITOR'))::uuid[])
        or child_id = any((select my_granted())::uuid[]));
create policy attempt_add on attempt for insert
    with check (site_id = any((select my_sites_as('SURGEON', 'NURSE'))::uuid[]) and recorded_site = site_id);
grant select, insert on attempt to espalier_app;
grant select on attempt to espalier_job;
