-- Visits. Every child in care has exactly one open visit: the index allows no second, and the child's own reference to it,
-- checked at commit, allows no gap. What happened to a visit are facts; the visit itself says where it stands.

create table visit (
    id uuid primary key,
    site_id uuid not null,
    child_id uuid not null,
    version bigint not null default 1 check (version > 0),
    opened_for text not null check (opened_for in ('REGISTERED', 'NEXT_LOOK', 'NOT_BROUGHT', 'CANCELLED', 'PROCEDURE',
        'CARE_RESUMED', 'ON_RECORD')),
    opened_by uuid references staff,
    opened_at timestamptz not null,
    asked_by date,
    asked_why text check (length(asked_why) between 1 and 400),
    look_by date not null,
    list_by date,
    decide_by date,
    film boolean not null default true,
    rule text not null default 'FIRST_LOOK',
    rule_side text check (rule_side in ('RIGHT', 'LEFT')),
    rule_bone text,
    rule_bone_end text,
    risk text not null default 'NOT_KNOWN',
    risk_now double precision,
    risk_in_a_month double precision,
    harm double precision not null default 0,
    harm_reason text not null default 'OVERDUE',
    appointment_on date,
    appointment_at time,
    booking text check (length(booking) between 1 and 80),
    closed_at timestamptz,
    closed_by uuid references staff,
    outcome text check (outcome in ('ARRIVED', 'NOT_BROUGHT', 'CANCELLED', 'CARE_ENDED')),
    outcome_on date,
    outcome_reason text,
    outcome_note text check (length(outcome_note) between 1 and 400),
    is_open boolean generated always as (case when closed_at is null then true end) stored,
    -- From six weeks before the last good day unless there is a date in time; else from the day after the date.
    recall_from date not null generated always as (
        case when appointment_on is null or appointment_on > look_by then look_by - 42 else appointment_on + 1 end) stored,
    foreign key (site_id, child_id) references child (site_id, id) on update cascade,
    unique (id, child_id, is_open),
    check ((closed_at is null) = (outcome is null) and (outcome is null) = (outcome_on is null)),
    check (appointment_on is not null or (appointment_at is null and booking is null)),
    check (risk_now between 0 and 1 and risk_in_a_month between 0 and 1)
);
create unique index visit_open on visit (child_id) where closed_at is null;
create index visit_of_child on visit (child_id, opened_at);
create index visit_recall on visit (site_id, harm desc, look_by) where closed_at is null;
create index visit_appointment on visit (site_id, appointment_on) where closed_at is null;
create unique index visit_booking on visit (site_id, booking) where closed_at is null;

alter table child add column needs_visit boolean;
alter table child add column open_visit uuid;

insert into visit (id, site_id, child_id, opened_for, opened_at, look_by)
select uuidv7(), site_id, id, 'ON_RECORD', now(), current_date + 28 from child;
update child set needs_visit = true, open_visit = v.id from visit v where v.child_id = child.id;

alter table child alter column needs_visit set not null, alter column needs_visit set default true;
alter table child add column open_flag boolean
    generated always as (case when open_visit is not null then true end) stored;
alter table child add constraint child_in_care_has_a_visit check (needs_visit = (open_visit is not null));
alter table child add constraint child_open_visit foreign key (open_visit, id, open_flag)
    references visit (id, child_id, is_open) deferrable initially deferred;
grant update (needs_visit, open_visit) on child to espalier_app;

-- What happened to a visit, each with its day and reason.
create table visit_step (
    id uuid primary key,
    site_id uuid not null,
    recorded_site uuid not null references site,
    child_id uuid not null,
    visit_id uuid not null references visit,
    kind text not null check (kind in ('BOOKED', 'MOVED', 'DATE_TAKEN_BACK', 'ARRIVED', 'NOT_BROUGHT', 'CANCELLED',
        'CARE_ENDED', 'CAME_WITH_TRANSFER')),
    on_day date not null,
    at_time time,
    reason text,
    note text check (length(note) between 1 and 400),
    source text not null check (source in ('HAND', 'BOOKING_FILE', 'PROCEDURE', 'TRANSFER')),
    recorded_by uuid references staff,
    recorded_at timestamptz not null,
    foreign key (site_id, child_id) references child (site_id, id) on update cascade
);
create index on visit_step (child_id, recorded_at);
create index on visit_step (visit_id);

-- A child leaves care only as mature or ended, and may come back.
create table care_change (
    id uuid primary key,
    site_id uuid not null,
    recorded_site uuid not null references site,
    child_id uuid not null,
    kind text not null check (kind in ('MATURE', 'ENDED', 'RESUMED')),
    reason text check (reason in ('STRAIGHT', 'ADULT_CARE', 'LEFT_NETWORK', 'DECLINED', 'DIED')),
    on_day date not null,
    note text check (length(note) between 1 and 400),
    recorded_by uuid references staff,
    recorded_at timestamptz not null,
    foreign key (site_id, child_id) references child (site_id, id) on update cascade,
    check ((kind = 'ENDED') = (reason is not null))
);
create index on care_change (child_id, recorded_at);

create trigger visit_step_is_a_fact before update on visit_step for each row
    when ((to_jsonb(old) - 'site_id') is distinct from (to_jsonb(new) - 'site_id'))
    execute function refuse_changed_fact();
create trigger visit_step_stays before delete on visit_step for each row execute function refuse_changed_fact();
create trigger care_change_is_a_fact before update on care_change for each row
    when ((to_jsonb(old) - 'site_id') is distinct from (to_jsonb(new) - 'site_id'))
    execute function refuse_changed_fact();
create trigger care_change_stays before delete on care_change for each row execute function refuse_changed_fact();

-- A visit that is over stays as it was.
create trigger visit_closed_stays after update on visit for each row
    when (old.closed_at is not null and (to_jsonb(old) - 'site_id') is distinct from (to_jsonb(new) - 'site_id'))
    execute function refuse_changed_fact();
create trigger visit_stays before delete on visit for each row execute function refuse_changed_fact();

alter table visit enable row level security;
alter table visit force row level security;
create policy visit_read on visit for select
    using (site_id = any((select my_sites_as('SURGEON', 'NURSE', 'RADIOGRAPHER', 'COST_ADMINISTRATOR', 'AUDITOR'))::uuid[])
        or child_id = any((select my_granted())::uuid[]));
create policy visit_add on visit for insert
    with check (site_id = any((select my_sites_as('SURGEON', 'NURSE', 'RADIOGRAPHER'))::uuid[]));
create policy visit_change on visit for update
    using (site_id = any((select my_sites_as('SURGEON', 'NURSE', 'RADIOGRAPHER'))::uuid[]))
    with check (site_id = any((select my_sites_as('SURGEON', 'NURSE', 'RADIOGRAPHER'))::uuid[]));
grant select, insert on visit to espalier_app;
grant update (version, asked_by, asked_why, look_by, list_by, decide_by, film, rule, rule_side, rule_bone, rule_bone_end,
    risk, risk_now, risk_in_a_month, harm, harm_reason, appointment_on, appointment_at, booking, closed_at, closed_by,
    outcome, outcome_on, outcome_reason, outcome_note) on visit to espalier_app;
grant select on visit to espalier_job;
grant update (version, look_by, list_by, decide_by, film, rule, rule_side, rule_bone, rule_bone_end, risk, risk_now,
    risk_in_a_month, harm, harm_reason) on visit to espalier_job;

alter table visit_step enable row level security;
alter table visit_step force row level security;
create policy visit_step_read on visit_step for select
    using (site_id = any((select my_sites_as('SURGEON', 'NURSE', 'RADIOGRAPHER', 'COST_ADMINISTRATOR', 'AUDITOR'))::uuid[])
        or recorded_site = any((select my_sites_as('SURGEON', 'NURSE', 'RADIOGRAPHER', 'AUDITOR'))::uuid[])
        or child_id = any((select my_granted())::uuid[]));
create policy visit_step_add on visit_step for insert
    with check (site_id = any((select my_sites_as('SURGEON', 'NURSE', 'RADIOGRAPHER'))::uuid[])
        and recorded_site = site_id);
grant select, insert on visit_step to espalier_app;
grant select on visit_step to espalier_job;

alter table care_change enable row level security;
alter table care_change force row level security;
create policy care_change_read on care_change for select
    using (site_id = any((select my_sites_as('SURGEON', 'NURSE', 'RADIOGRAPHER', 'AUDITOR'))::uuid[])
        or recorded_site = any((select my_sites_as('SURGEON', 'NURSE', 'RADIOGRAPHER', 'AUDITOR'))::uuid[])
        or child_id = any((select my_granted())::uuid[]));
create policy care_change_add on care_change for insert
    with check (site_id = any((select my_sites_as('SURGEON', 'NURSE'))::uuid[]) and recorded_site = site_id);
grant select, insert on care_change to espalier_app;
grant select on care_change to espalier_job;
