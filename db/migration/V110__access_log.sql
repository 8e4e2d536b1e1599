-- Who looked at whose record, who signed in, who was refused, what the operator changed. Rows are only ever added, and sealed in batches: a seal is
-- a hash over the seal before it and the rows since, so that a row changed, taken out or slipped in later breaks it.

create table access_entry (
    id uuid primary key,
    xid xid8 not null default pg_current_xact_id(),
    at timestamptz not null,
    staff_id uuid references staff,
    site_id uuid references site,
    deed text not null check (deed in ('OPENED', 'LISTED', 'FILM', 'DENIED', 'SIGNED_IN', 'SIGN_IN_FAILED',
        'MANAGED')),
    subject text not null,
    children uuid[] not null default '{}',
    film_id uuid,
    film_hour timestamptz,
    about_staff uuid references staff,
    check ((deed = 'FILM') = (film_id is not null and film_hour is not null)),
    check (deed not in ('OPENED', 'FILM') or cardinality(children) = 1),
    unique (staff_id, film_id, film_hour)
);
create index on access_entry (xid, id);
create index on access_entry (site_id, at desc);
create index on access_entry using gin (children);

alter table access_entry enable row level security;
alter table access_entry force row level security;
create policy access_entry_read on access_entry for select
    using (site_id = any((select my_sites_as('PRIVACY_OFFICER'))::uuid[])
        or (site_id is null and (select is_operator())));
create policy access_entry_add on access_entry for insert
    with check (staff_id is not distinct from (select current_staff()));
grant select on access_entry to espalier_app;
grant insert (id, at, staff_id, site_id, deed, subject, children, film_id, film_hour, about_staff)
    on access_entry to espalier_app, espalier_job;

-- Not the wall, which is the missing grant, but a guard against the owner's own mistakes.
create function refuse_change() returns trigger
    language plpgsql set search_path = espalier, pg_temp
as $$
begin
    raise exception '% is only ever added to', tg_table_name using errcode = 'ES002';
end $$;
create trigger access_entry_stays before update or delete on access_entry
    for each row execute function refuse_change();

-- Seals say nothing of whom or what.
create table access_seal (
    n bigint primary key,
    upto_xid xid8 not null,
    row_count bigint not null,
    hash bytea not null check (length(hash) = 32),
    at timestamptz not null
);
grant select on access_seal to espalier_app, espalier_job;
create trigger access_seal_stays before update or delete on access_seal
    for each row execute function refuse_change();

-- The bytes of a row: numbers as decimal digits, times as microseconds since 1970, nothing that a setting can re-format;
-- each part with its length, so that parts cannot flow into one another.
create function access_entry_bytes(e access_entry) returns bytea
    language sql stable set search_path = espalier, pg_temp
as $$
    select convert_to(string_agg(coalesce(octet_length(part) || ':' || part, '-'), '' order by place), 'UTF8')
    from unnest(array[
        e.xid::text, e.id::text, ((extract(epoch from e.at) * 1000000)::bigint)::text, e.staff_id::text, e.site_id::text,
        e.deed, e.subject, array_to_string(e.children, ','), e.film_id::text,
        ((extract(epoch from e.film_hour) * 1000000)::bigint)::text, e.about_staff::text
    ]) with ordinality as parts(part, place)
$$;

create function access_hash(previous bytea, after_xid xid8, upto_xid xid8) returns table (row_count bigint, hash bytea)
    language sql stable set search_path = espalier, pg_temp
as $$
    select count(*), sha256(previous || sha256(coalesce(string_agg(access_entry_bytes(e), ''::bytea order by e.xid, e.id), '')))
    from access_entry e where e.xid >= after_xid and e.xid < upto_xid
$$;

-- Seals every row whose transaction, and every transaction before it, is over. One at a time across all nodes.
create function seal_access_log(sealed_at timestamptz) returns bigint
    language plpgsql volatile security definer set search_path = espalier, pg_temp
as $$
declare
    last access_seal;
    horizon xid8;
    batch record;
begin
    perform pg_advisory_xact_lock(hashtext('espalier.access_seal'));
    select * into last from access_seal order by n desc limit 1;
    horizon := pg_snapshot_xmin(pg_current_snapshot());
    select * into batch from access_hash(coalesce(last.hash, ''), coalesce(last.upto_xid, '0'), horizon);
    if batch.row_count > 0 then
        insert into access_seal (n, upto_xid, row_count, hash, at)
        values (coalesce(last.n, 0) + 1, horizon, batch.row_count, batch.hash, sealed_at);
    end if;
    return batch.row_count;
end $$;

-- Computes every seal again: the number of the first that does not hold, or null when all hold.
create function broken_access_seal() returns bigint
    language plpgsql stable security definer set search_path = espalier, pg_temp
as $$
declare
    seal access_seal;
    batch record;
    previous bytea := '';
    after_xid xid8 := '0';
    expected bigint := 1;
begin
    for seal in select * from access_seal order by n loop
        select * into batch from access_hash(previous, after_xid, seal.upto_xid);
        if seal.n <> expected or batch.row_count <> seal.row_count or batch.hash <> seal.hash then
            return expected;
        end if;
        previous := seal.hash;
        after_xid := seal.upto_xid;
        expected := expected + 1;
    end loop;
    return null;
end $$;

grant execute on function seal_access_log(timestamptz), broken_access_seal() to espalier_app, espalier_job;
