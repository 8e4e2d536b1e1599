-- Three ways to a child of another hospital, each for reading alone: a grant to one colleague (there already), emergency
-- access of a surgeon for 24 hours, which the hospital is told of and its privacy officer reviews, and care shared between
-- two hospitals, which begins when the other accepts and ends when either ends it.

alter table access_entry drop constraint access_entry_deed_check;
alter table access_entry add constraint access_entry_deed_check check (deed in ('OPENED', 'LISTED', 'FILM', 'DENIED',
    'SIGNED_IN', 'SIGN_IN_FAILED', 'MANAGED', 'EMERGENCY', 'REVIEWED'));

create table emergency_access (
    id uuid primary key,
    site_id uuid not null references site,
    child_id uuid not null references child,
    staff_id uuid not null references staff,
    reason text not null check (length(reason) between 10 and 400),
    taken_at timestamptz not null,
    valid tstzrange not null check (not isempty(valid)),
    unique (id, site_id)
);
create index on emergency_access (staff_id);
create index on emergency_access (site_id, taken_at);
create trigger emergency_access_stays before update or delete on emergency_access
    for each row execute function refuse_change();

alter table emergency_access enable row level security;
alter table emergency_access force row level security;
create policy emergency_access_read on emergency_access for select
    using (staff_id = (select current_staff())
        or site_id = any((select my_sites_as('PRIVACY_OFFICER', 'SURGEON', 'NURSE'))::uuid[]));
grant select on emergency_access to espalier_app;

create table emergency_review (
    id uuid primary key,
    emergency_id uuid not null unique,
    site_id uuid not null,
    justified boolean not null,
    note text not null check (length(note) between 3 and 400),
    reviewed_by uuid not null references staff,
    reviewed_at timestamptz not null,
    foreign key (emergency_id, site_id) references emergency_access (id, site_id)
);
create index on emergency_review (site_id);
create trigger emergency_review_stays before update or delete on emergency_review
    for each row execute function refuse_change();

alter table emergency_review enable row level security;
alter table emergency_review force row level security;
create policy emergency_review_read on emergency_review for select
    using (site_id = any((select my_sites_as('PRIVACY_OFFICER', 'SURGEON', 'NURSE'))::uuid[]));
create policy emergency_review_add on emergency_review for insert
    with check (site_id = any((select my_sites_as('PRIVACY_OFFICER'))::uuid[])
        and reviewed_by = (select current_staff()));
grant select, insert on emergency_review to espalier_app;

create table shared_care (
    id uuid primary key,
    site_id uuid not null references site,
    to_site uuid not null references site,
    child_id uuid not null references child,
    child_name text not null check (length(child_name) between 1 and 240),
    birth_date date not null,
    why text not null check (length(why) between 3 and 400),
    state text not null default 'ASKED' check (state in ('ASKED', 'ACCEPTED', 'DECLINED', 'WITHDRAWN', 'ENDED')),
    asked_by uuid references staff,
    asked_at timestamptz not null,
    answered_by uuid references staff,
    answered_at timestamptz,
    ended_by uuid references staff,
    ended_at timestamptz,
    words text check (length(words) between 1 and 400),
    check (site_id <> to_site),
    check ((state in ('ACCEPTED', 'DECLINED', 'ENDED')) = (answered_at is not null)),
    check ((state in ('WITHDRAWN', 'ENDED')) = (ended_at is not null))
);
create unique index shared_care_open on shared_care (child_id, to_site) where state in ('ASKED', 'ACCEPTED');
create index on shared_care (site_id, asked_at);
create index on shared_care (to_site, asked_at);

alter table shared_care enable row level security;
alter table shared_care force row level security;
create policy shared_care_read on shared_care for select
    using (site_id = any((select my_sites_as('SURGEON', 'NURSE'))::uuid[])
        or to_site = any((select my_sites_as('SURGEON', 'NURSE'))::uuid[]));
create policy shared_care_add on shared_care for insert
    with check (site_id = any((select my_sites_as('SURGEON', 'NURSE'))::uuid[]) and state = 'ASKED');
create policy shared_care_change on shared_care for update
    using (state in ('ASKED', 'ACCEPTED') and (site_id = any((select my_sites_as('SURGEON', 'NURSE'))::uuid[])
        or to_site = any((select my_sites_as('SURGEON', 'NURSE'))::uuid[])))
    with check (state = 'WITHDRAWN' and site_id = any((select my_sites_as('SURGEON', 'NURSE'))::uuid[])
        or state in ('ACCEPTED', 'DECLINED') and to_site = any((select my_sites_as('SURGEON', 'NURSE'))::uuid[])
        or state = 'ENDED' and (site_id = any((select my_sites_as('SURGEON', 'NURSE'))::uuid[])
            or to_site = any((select my_sites_as('SURGEON', 'NURSE'))::uuid[])));
grant select, insert on shared_care to espalier_app;
grant update (state, answered_by, answered_at, ended_by, ended_at, words) on shared_care to espalier_app;

-- A child that was passed on to a third hospital is not shared any more: that hospital did not ask.
create function my_shared() returns uuid[]
    language sql stable parallel safe security definer set search_path = espalier, pg_temp
as $$
    select coalesce(array_agg(distinct s.child_id), '{}')
    from shared_care s join child c on c.id = s.child_id and c.site_id = s.site_id
    where s.state = 'ACCEPTED' and s.to_site = any(my_sites_as('SURGEON', 'NURSE', 'RADIOGRAPHER'))
$$;

-- Whoever is no surgeon any more has no emergency either.
create function my_emergencies() returns uuid[]
    language sql stable parallel safe security definer set search_path = espalier, pg_temp
as $$
    select coalesce(array_agg(distinct e.child_id), '{}')
    from emergency_access e
    where e.staff_id = current_staff() and e.valid @> now()
        and not exists (select from emergency_review r where r.emergency_id = e.id and not r.justified)
        and exists (select from membership m
            where m.staff_id = e.staff_id and m.role = 'SURGEON' and m.valid @> current_date)
$$;

-- Whose name is seen without working at their hospital: who asked for the child by its number, or shares its care.
create function my_named() returns uuid[]
    language sql stable parallel safe security definer set search_path = espalier, pg_temp
as $$
    select my_shared() || my_emergencies()
$$;

create or replace function my_granted() returns uuid[]
    language sql stable parallel safe security definer set search_path = espalier, pg_temp
as $$
    select coalesce(array_agg(distinct g.child_id), '{}') || my_named()
    from access_grant g join staff s on s.id = g.staff_id
    where g.staff_id = current_staff() and g.valid @> now() and s.active and s.kind = 'person'
$$;

drop policy child_identity_read on child_identity;
create policy child_identity_read on child_identity for select
    using (site_id = any((select my_sites_as('SURGEON', 'NURSE', 'RADIOGRAPHER', 'ARCHIVE'))::uuid[])
        or child_id = any((select my_named())::uuid[]));

-- Finds the child by its number and day of birth at the hospital named, and opens it to the caller for 24 hours. A number
-- nobody has, another day of birth, and too many questions tell nothing of who is there: questions are counted first, and
-- one that finds nobody is answered the same whatever was wrong.
create function take_emergency_access(
        new_id uuid, asked_site uuid, asked_number text, asked_birth date, why text, asked_at timestamptz)
    returns table (outcome text, child_id uuid, wait_seconds double precision, until timestamptz)
    language plpgsql volatile security definer set search_path = espalier, pg_temp
as $$
declare
    waits double precision;
    found_child uuid;
    ends timestamptz := asked_at + interval '24 hours';
begin
    if cardinality(my_sites_as('SURGEON')) = 0 then
        raise exception 'only a surgeon of the network has emergencies' using errcode = 'insufficient_privilege';
    end if;
    waits := count_sign_in('emergency ' || current_staff(), 5, 3600, asked_at);
    if waits > 0 then
        return query select 'WAIT', null::uuid, waits, null::timestamptz;
        return;
    end if;
    select i.child_id into found_child from child_identity i
    where i.site_id = asked_site and i.local_number = asked_number and i.birth_date = asked_birth
        and not asked_site = any(my_sites());
    if found_child is null then
        return query select 'NOT_FOUND', null::uuid, 0::double precision, null::timestamptz;
        return;
    end if;
    insert into emergency_access (id, site_id, child_id, staff_id, reason, taken_at, valid)
    values (new_id, asked_site, found_child, current_staff(), why, asked_at, tstzrange(asked_at, ends));
    return query select 'TAKEN', found_child, 0::double precision, ends;
end $$;

grant execute on function my_shared(), my_emergencies(), my_named() to espalier_app, espalier_job;
grant execute on function take_emergency_access(uuid, uuid, text, date, text, timestamptz) to espalier_app;
