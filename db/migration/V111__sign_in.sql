-- How staff and archives prove who they are. Secrets lie behind walls without a door: no role of the application may read
-- or write them but through the functions below.

alter table staff add column active boolean not null default true;

create table staff_password (
    staff_id uuid primary key references staff,
    hash text not null,
    must_change boolean not null,
    changed_at timestamptz not null
);
alter table staff_password enable row level security;
alter table staff_password force row level security;

create function sign_in_of(asked text) returns table (staff_id uuid, name text, hash text, must_change boolean)
    language sql stable security definer set search_path = espalier, pg_temp
as $$
    select s.id, s.name, p.hash, p.must_change
    from staff s join staff_password p on p.staff_id = s.id
    where s.login = lower(asked) and s.kind = 'person' and s.active
$$;

create function sign_in_by_staff(asked uuid) returns table (login text, name text, must_change boolean)
    language sql stable security definer set search_path = espalier, pg_temp
as $$
    select s.login, s.name, coalesce(p.must_change, false)
    from staff s left join staff_password p on p.staff_id = s.id
    where s.id = asked and s.kind = 'person' and s.active
$$;

-- Everybody may change their own; the operator may set another's, which must then be changed.
create function set_password(whose uuid, new_hash text, set_at timestamptz) returns void
    language plpgsql volatile security definer set search_path = espalier, pg_temp
as $$
begin
    if whose <> current_staff() and not is_operator() then
        raise exception 'not the password of the caller' using errcode = 'insufficient_privilege';
    end if;
    insert into staff_password (staff_id, hash, must_change, changed_at)
    values (whose, new_hash, whose <> current_staff(), set_at)
    on conflict (staff_id) do update
        set hash = excluded.hash, must_change = excluded.must_change, changed_at = excluded.changed_at;
end $$;

-- Makes the first operator of an empty network; does nothing once there is one.
create function add_first_operator(new_id uuid, new_login text, new_hash text, added_at timestamptz) returns boolean
    language plpgsql volatile security definer set search_path = espalier, pg_temp
as $$
begin
    perform pg_advisory_xact_lock(hashtext('espalier.first_operator'));
    if exists (select from staff where operator) then
        return false;
    end if;
    insert into staff (id, login, name, kind, operator) values (new_id, lower(new_login), new_login, 'person', true);
    insert into staff_password (staff_id, hash, must_change, changed_at) values (new_id, new_hash, true, added_at);
    return true;
end $$;

-- The first operator signs in before there is any site; so does a name nobody has. Both then stand without a site.
create function log_sign_in(asked text, succeeded boolean, attempted_at timestamptz) returns void
    language sql volatile security definer set search_path = espalier, pg_temp
as $$
    insert into access_entry (id, at, staff_id, site_id, deed, subject)
    select uuidv7(), attempted_at, s.id, m.site_id, case when succeeded then 'SIGNED_IN' else 'SIGN_IN_FAILED' end,
        case when s.id is null then 'unknown name' else 'sign-in' end
    from (select lower(asked)) as name (login)
    left join staff s on s.login = name.login
    left join (select distinct staff_id, site_id from membership where valid @> current_date) m on m.staff_id = s.id
$$;

-- Attempts to sign in, counted before the password is looked at, so that many at once count as many; shared by all nodes.
-- A key is a hash of a name or of a source address.
create table sign_in_throttle (
    key text primary key,
    attempts int not null,
    last_attempt timestamptz not null,
    blocked_until timestamptz not null
);
create index on sign_in_throttle (last_attempt);
alter table sign_in_throttle enable row level security;
alter table sign_in_throttle force row level security;

-- Counts one attempt under the key and says how many seconds are left to wait; when it says more than 0 nothing is counted.
-- The first attempts are free, then the wait doubles up to the ceiling.
create function count_sign_in(counted text, free int, ceiling_seconds int, attempted_at timestamptz)
    returns double precision
    language plpgsql volatile set search_path = espalier, pg_temp
as $$
declare
    kept sign_in_throttle;
    wait_seconds double precision;
begin
    insert into sign_in_throttle values (counted, 0, attempted_at, attempted_at) on conflict do nothing;
    select * into kept from sign_in_throttle where key = counted for update;
    wait_seconds := extract(epoch from kept.blocked_until - attempted_at);
    if wait_seconds > 0 then
        return wait_seconds;
    end if;
    if kept.last_attempt < attempted_at - interval '1 day' then
        kept.attempts := 0;
    end if;
    update sign_in_throttle set
        attempts = kept.attempts + 1,
        last_attempt = attempted_at,
        blocked_until = attempted_at + case when kept.attempts + 1 > free
            then least(ceiling_seconds, power(2, least(kept.attempts + 1 - free, 20))) * interval '1 second'
            else interval '0' end
    where key = counted;
    return 0;
end $$;

create function begin_sign_in(account text, source text, attempted_at timestamptz) returns double precision
    language plpgsql volatile security definer set search_path = espalier, pg_temp
as $$
declare
    wait_seconds double precision;
begin
    delete from sign_in_throttle where key in (
        select key from sign_in_throttle where last_attempt < attempted_at - interval '2 days'
        limit 100 for update skip locked);
    wait_seconds := count_sign_in('account ' || account, 5, 900, attempted_at);
    if wait_seconds > 0 then
        return wait_seconds;
    end if;
    return count_sign_in('source ' || source, 50, 300, attempted_at);
end $$;

create function end_sign_in(account text, source text) returns void
    language plpgsql volatile security definer set search_path = espalier, pg_temp
as $$
begin
    delete from sign_in_throttle where key = 'account ' || account;
    update sign_in_throttle set attempts = greatest(0, attempts - 1) where key = 'source ' || source;
end $$;

create table passkey (
    credential bytea primary key,
    staff_id uuid not null references staff,
    public_key bytea not null,
    signature_count bigint not null,
    verified boolean not null,
    backup_eligible boolean not null,
    backup_state boolean not null,
    transports text not null,
    attestation bytea not null,
    client_data bytea not null,
    label text not null,
    created_at timestamptz not null,
    last_used_at timestamptz not null
);
create index on passkey (staff_id);
alter table passkey enable row level security;
alter table passkey force row level security;
create policy passkey_read on passkey for select using (staff_id = (select current_staff()));
create policy passkey_add on passkey for insert with check (staff_id = (select current_staff()));
create policy passkey_remove on passkey for delete using (staff_id = (select current_staff()));
grant select, insert, delete on passkey to espalier_app;

-- For whoever is not signed in yet but holds the key.
create function passkey_by_credential(asked bytea) returns setof passkey
    language sql stable security definer set search_path = espalier, pg_temp
as $$
    select p.* from passkey p join staff s on s.id = p.staff_id where p.credential = asked and s.active
$$;

create function note_passkey_use(used bytea, new_count bigint, new_backup_state boolean, used_at timestamptz)
    returns boolean
    language plpgsql volatile security definer set search_path = espalier, pg_temp
as $$
begin
    update passkey set signature_count = new_count, backup_state = new_backup_state, last_used_at = used_at
    where credential = used;
    return found;
end $$;

create table site_token (
    id uuid primary key,
    staff_id uuid not null references staff,
    site_id uuid not null references site,
    label text not null,
    secret_sha256 bytea not null unique check (length(secret_sha256) = 32),
    issued_at timestamptz not null,
    issued_by uuid not null references staff,
    revoked_at timestamptz
);
create index on site_token (site_id);
alter table site_token enable row level security;
alter table site_token force row level security;
create policy site_token_read on site_token for select using ((select is_operator()));
create policy site_token_add on site_token for insert with check ((select is_operator()));
create policy site_token_change on site_token for update
    using ((select is_operator())) with check ((select is_operator()));
grant select (id, staff_id, site_id, label, issued_at, issued_by, revoked_at), insert, update (revoked_at)
    on site_token to espalier_app;

create function site_token_holder(secret_hash bytea) returns table (staff_id uuid, name text)
    language sql stable security definer set search_path = espalier, pg_temp
as $$
    select s.id, s.name
    from site_token t join staff s on s.id = t.staff_id
    where t.secret_sha256 = secret_hash and t.revoked_at is null and s.active
$$;

grant execute on function sign_in_of(text), sign_in_by_staff(uuid), set_password(uuid, text, timestamptz),
    add_first_operator(uuid, text, text, timestamptz), log_sign_in(text, boolean, timestamptz),
    begin_sign_in(text, text, timestamptz), end_sign_in(text, text), passkey_by_credential(bytea),
    note_passkey_use(bytea, bigint, boolean, timestamptz), site_token_holder(bytea) to espalier_app;

-- A membership given by mistake and not begun yet can be taken back whole; any other only ends.
create policy membership_remove on membership for delete using ((select is_operator()) and lower(valid) >= current_date);
grant delete on membership to espalier_app;
