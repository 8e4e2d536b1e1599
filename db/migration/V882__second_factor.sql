-- The second factor: codes by time (RFC 6238) whose secret the application keeps encrypted with a key the database never
-- sees, and recovery codes of 120 random bits, kept as SHA-256 and used once. Like passwords they lie behind walls
-- without a door.

create table second_factor (
    staff_id uuid primary key references staff,
    secret bytea,
    pending bytea,
    last_step bigint not null default 0,
    set_at timestamptz not null
);
alter table second_factor enable row level security;
alter table second_factor force row level security;

create table recovery_code (
    staff_id uuid not null references staff,
    hash bytea not null check (length(hash) = 32),
    used_at timestamptz,
    primary key (staff_id, hash)
);
alter table recovery_code enable row level security;
alter table recovery_code force row level security;

-- Where a second factor must be: for a role at a site, and for operators where there is no site.
create table second_factor_rule (
    site_id uuid references site,
    role text not null check (role in ('SURGEON', 'NURSE', 'RADIOGRAPHER', 'STOREKEEPER', 'COST_ADMINISTRATOR',
        'PRIVACY_OFFICER', 'AUDITOR', 'OPERATOR')),
    check ((role = 'OPERATOR') = (site_id is null)),
    unique nulls not distinct (site_id, role)
);
alter table second_factor_rule enable row level security;
alter table second_factor_rule force row level security;
create policy second_factor_rule_read on second_factor_rule for select using ((select is_operator()));
create policy second_factor_rule_add on second_factor_rule for insert with check ((select is_operator()));
create policy second_factor_rule_remove on second_factor_rule for delete using ((select is_operator()));
grant select, insert, delete on second_factor_rule to espalier_app;

-- What a person must still do after their password: give a code, come by passkey instead, set up codes, or nothing. Who
-- has a first password chooses their own before they set up codes, but gives a code if they have them: a password that
-- was renewed does not open what the code guards.
create function second_step_of(asked uuid) returns text
    language sql stable security definer set search_path = espalier, pg_temp
as $$
    select case
        when exists (select from second_factor f where f.staff_id = asked and f.secret is not null) then 'CODE'
        when not exists (select from second_factor_rule r
                join membership m on m.site_id = r.site_id and m.role = r.role
                where m.staff_id = asked and m.valid @> current_date)
            and not exists (select from second_factor_rule r join staff s on s.operator
                where r.role = 'OPERATOR' and s.id = asked) then 'NONE'
        when exists (select from passkey p where p.staff_id = asked) then 'PASSKEY'
        when exists (select from staff_password p where p.staff_id = asked and p.must_change) then 'NONE'
        else 'SET_UP'
    end
$$;

create function my_second_factor() returns table (secret bytea, pending bytea, last_step bigint, codes_left bigint)
    language sql stable security definer set search_path = espalier, pg_temp
as $$
    select f.secret, f.pending, f.last_step,
        (select count(*) from recovery_code c where c.staff_id = f.staff_id and c.used_at is null)
    from second_factor f where f.staff_id = current_staff()
$$;

-- What is set up opens nothing and takes nothing away until a code of it was given.
create function begin_second_factor(new_secret bytea, at timestamptz) returns void
    language sql volatile security definer set search_path = espalier, pg_temp
as $$
    insert into second_factor (staff_id, pending, set_at) values (current_staff(), new_secret, at)
    on conflict (staff_id) do update set pending = excluded.pending
$$;

create function confirm_second_factor(step bigint, hashes bytea[], at timestamptz) returns boolean
    language plpgsql volatile security definer set search_path = espalier, pg_temp
as $$
begin
    update second_factor set secret = pending, pending = null, last_step = step, set_at = at
    where staff_id = current_staff() and pending is not null;
    if not found then
        return false;
    end if;
    delete from recovery_code where staff_id = current_staff();
    insert into recovery_code (staff_id, hash) select current_staff(), unnest(hashes);
    return true;
end $$;

-- A code is taken once, and none before one that was taken.
create function use_second_factor(step bigint) returns boolean
    language plpgsql volatile security definer set search_path = espalier, pg_temp
as $$
begin
    update second_factor set last_step = step
    where staff_id = current_staff() and secret is not null and last_step < step;
    return found;
end $$;

create function use_recovery_code(given bytea, at timestamptz) returns boolean
    language plpgsql volatile security definer set search_path = espalier, pg_temp
as $$
begin
    update recovery_code set used_at = at where staff_id = current_staff() and hash = given and used_at is null;
    return found;
end $$;

-- Everybody their own; the operator another's, whose holder lost it.
create function remove_second_factor(whose uuid) returns void
    language plpgsql volatile security definer set search_path = espalier, pg_temp
as $$
begin
    if whose <> current_staff() and not is_operator() then
        raise exception 'not the second factor of the caller' using errcode = 'insufficient_privilege';
    end if;
    delete from recovery_code where staff_id = whose;
    delete from second_factor where staff_id = whose;
    if whose <> current_staff() then
        delete from passkey where staff_id = whose;
    end if;
end $$;

grant execute on function second_step_of(uuid), my_second_factor(), begin_second_factor(bytea, timestamptz),
    confirm_second_factor(bigint, bytea[], timestamptz), use_second_factor(bigint), use_recovery_code(bytea, timestamptz),
    remove_second_factor(uuid) to espalier_app;
