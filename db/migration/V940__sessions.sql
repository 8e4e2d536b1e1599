-- The sessions of people, so that a person sees and ends their own, and whatever changes how they get in ends the others.
-- Begun and used by the door before anybody speaks; seen by their owner alone. What is older than a month is forgotten.
create table person_session (
    id uuid primary key,
    staff_id uuid not null references staff,
    device text not null,
    began_at timestamptz not null,
    used_at timestamptz not null,
    ended_at timestamptz
);
create index on person_session (staff_id);
alter table person_session enable row level security;
alter table person_session force row level security;
create policy person_session_read on person_session for select using (staff_id = (select current_staff()));
grant select on person_session to espalier_app;

create function begin_person_session(new_id uuid, whose uuid, new_device text, at timestamptz) returns void
    language sql volatile security definer set search_path = espalier, pg_temp
as $$
    delete from person_session where staff_id = whose and began_at < at - interval '30 days';
    insert into person_session (id, staff_id, device, began_at, used_at) values (new_id, whose, new_device, at, at);
$$;

-- Whether the session still stands; a deed of its person is noted by the minute.
create function use_person_session(asked uuid, is_deed boolean, at timestamptz) returns boolean
    language plpgsql volatile security definer set search_path = espalier, pg_temp
as $$
begin
    if is_deed then
        update person_session set used_at = at
        where id = asked and ended_at is null and used_at < at - interval '1 minute';
    end if;
    return exists (select from person_session where id = asked and ended_at is null);
end $$;

create function end_person_session(asked uuid, at timestamptz) returns boolean
    language plpgsql volatile security definer set search_path = espalier, pg_temp
as $$
begin
    update person_session set ended_at = at where id = asked and staff_id = current_staff() and ended_at is null;
    return found;
end $$;

-- Everybody their own but the one they sit at; the operator another's.
create function end_person_sessions(whose uuid, but uuid, at timestamptz) returns void
    language plpgsql volatile security definer set search_path = espalier, pg_temp
as $$
begin
    if whose <> current_staff() and not is_operator() then
        raise exception 'not the sessions of the caller' using errcode = 'insufficient_privilege';
    end if;
    update person_session set ended_at = at
    where staff_id = whose and ended_at is null and id is distinct from but;
end $$;

-- Since when a password stands that its owner has not chosen yet; of an operator, who chose it at the first start, never.
create function first_password_since(asked uuid) returns timestamptz
    language sql stable security definer set search_path = espalier, pg_temp
as $$
    select p.changed_at from staff_password p join staff s on s.id = p.staff_id
    where p.staff_id = asked and p.must_change and not s.operator
$$;

grant execute on function begin_person_session(uuid, uuid, text, timestamptz),
    use_person_session(uuid, boolean, timestamptz), end_person_session(uuid, timestamptz),
    end_person_sessions(uuid, uuid, timestamptz), first_password_since(uuid) to espalier_app;
