-- What a key of an archive is for: sending films, fetching films, or both. Keys issued before may do both, as they could.

alter table site_token add column scopes text[] not null default '{SEND,FETCH}'
    check (cardinality(scopes) > 0 and scopes <@ array['SEND', 'FETCH']);
alter table site_token alter column scopes drop default;
grant select (scopes) on site_token to espalier_app;

drop function site_token_holder(bytea);
create function site_token_holder(secret_hash bytea) returns table (staff_id uuid, name text, scopes text[])
    language sql stable security definer set search_path = espalier, pg_temp
as $$
    select s.id, s.name, t.scopes
    from site_token t join staff s on s.id = t.staff_id
    where t.secret_sha256 = secret_hash and t.revoked_at is null and s.active
$$;
grant execute on function site_token_holder(bytea) to espalier_app;
