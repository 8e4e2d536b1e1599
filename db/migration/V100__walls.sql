-- Sites, staff, who works where, and the functions every wall is built from.

create table site (
    id uuid primary key,
    code text not null unique check (code ~ '^[A-Z0-9]{2,12}$'),
    name text not null,
    time_zone text not null
);

create table staff (
    id uuid primary key,
    login text not null unique check (login = lower(login) and length(login) between 3 and 120),
    name text not null,
    kind text not null check (kind in ('person', 'archive')),
    operator boolean not null default false
);

create table membership (
    staff_id uuid not null references staff,
    site_id uuid not null references site,
    role text not null check (role in ('SURGEON', 'NURSE', 'RADIOGRAPHER', 'STOREKEEPER', 'COST_ADMINISTRATOR',
        'PRIVACY_OFFICER', 'AUDITOR', 'ARCHIVE')),
    valid daterange not null check (not isempty(valid)),
    primary key (staff_id, site_id, role, valid without overlaps)
);

create table access_grant (
    id uuid primary key,
    staff_id uuid not null references staff,
    child_id uuid not null,
    valid tstzrange not null check (not isempty(valid)),
    reason text not null
);
create index on access_grant (staff_id);

-- Who asks. Raises when nobody does: an empty list would read "nobody is late".
create function current_staff() returns uuid
    language plpgsql stable parallel safe set search_path = espalier, pg_temp
as $$
declare
    asked text := current_setting('espalier.staff', true);
begin
    if asked is null or asked = '' then
        raise exception 'no caller: this transaction does not say for whom it speaks' using errcode = 'ES001';
    end if;
    return case when asked <> 'system' then asked::uuid end;
end $$;

-- The site a job of the house works for; null for everybody else. Only the job role may speak for the system.
create function job_site() returns uuid
    language plpgsql stable parallel safe set search_path = espalier, pg_temp
as $$
begin
    if current_setting('espalier.staff', true) is distinct from 'system' then
        return null;
    end if;
    if session_user <> 'espalier_job' then
        raise exception 'only a job may speak for the system' using errcode = 'ES001';
    end if;
    return nullif(current_setting('espalier.site', true), '')::uuid;
end $$;

create function my_sites() returns uuid[]
    language sql stable parallel safe security definer set search_path = espalier, pg_temp
as $$
    select coalesce(array_agg(distinct site_id), '{}')
    from (
        select site_id from membership where staff_id = current_staff() and valid @> current_date
        union all
        select job_site() where job_site() is not null
    ) mine
$$;

create function my_sites_as(variadic roles text[]) returns uuid[]
    language sql stable parallel safe security definer set search_path = espalier, pg_temp
as $$
    select coalesce(array_agg(distinct site_id), '{}')
    from (
        select site_id from membership
        where staff_id = current_staff() and valid @> current_date and role = any(roles)
        union all
        select job_site() where job_site() is not null
    ) mine
$$;

create function my_granted() returns uuid[]
    language sql stable parallel safe security definer set search_path = espalier, pg_temp
as $$
    select coalesce(array_agg(distinct child_id), '{}')
    from access_grant where staff_id = current_staff() and valid @> now()
$$;

create function is_operator() returns boolean
    language sql stable parallel safe security definer set search_path = espalier, pg_temp
as $$
    select exists (select from staff where id = current_staff() and operator)
$$;

grant execute on function current_staff(), job_site(), my_sites(), my_sites_as(text[]), my_granted(), is_operator()
    to espalier_app, espalier_job;

-- The network is small and its hospitals know each other: whoever works in it sees its sites and its staff's names.
alter table site enable row level security;
alter table site force row level security;
create policy site_read on site for select
    using ((select current_staff()) is not null or id = (select job_site()));
create policy site_add on site for insert with check ((select is_operator()));
create policy site_change on site for update using ((select is_operator())) with check ((select is_operator()));
grant select, insert, update on site to espalier_app;
grant select on site to espalier_job;

alter table staff enable row level security;
alter table staff force row level security;
create policy staff_read on staff for select
    using ((select current_staff()) is not null or (select job_site()) is not null);
create policy staff_add on staff for insert with check ((select is_operator()));
create policy staff_change on staff for update using ((select is_operator())) with check ((select is_operator()));
grant select, insert, update on staff to espalier_app;
grant select on staff to espalier_job;

alter table membership enable row level security;
alter table membership force row level security;
create policy membership_read on membership for select
    using (staff_id = (select current_staff()) or site_id = any((select my_sites())::uuid[]) or (select is_operator()));
create policy membership_add on membership for insert with check ((select is_operator()));
create policy membership_change on membership for update
    using ((select is_operator())) with check ((select is_operator()));
grant select, insert, update on membership to espalier_app;
grant select on membership to espalier_job;

alter table access_grant enable row level security;
alter table access_grant force row level security;
create policy access_grant_read on access_grant for select using (staff_id = (select current_staff()));
grant select on access_grant to espalier_app;

-- Jobs: names, due times and ids, nothing of what they are about.
create table scheduled_tasks (
    task_name text not null,
    task_instance text not null,
    task_data bytea,
    execution_time timestamptz not null,
    picked boolean not null,
    picked_by text,
    last_success timestamptz,
    last_failure timestamptz,
    consecutive_failures int,
    last_heartbeat timestamptz,
    version bigint not null,
    priority smallint,
    primary key (task_name, task_instance)
);
create index on scheduled_tasks (execution_time);
create index on scheduled_tasks (last_heartbeat);
grant select, insert, update, delete on scheduled_tasks to espalier_app, espalier_job;
