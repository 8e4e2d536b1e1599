-- Which child a privacy officer asks about, by the number its hospital gave it; nothing else of who it is. These serve the
-- access log alone, for an officer reads no record.

create function child_of_number(asked text) returns table (site_id uuid, child_id uuid)
    language sql stable security definer set search_path = espalier, pg_temp
as $$
    select site_id, child_id from child_identity
    where site_id = any((select my_sites_as('PRIVACY_OFFICER'))::uuid[]) and local_number = asked
$$;

create function numbers_of_children(asked uuid[]) returns table (child_id uuid, local_number text)
    language sql stable security definer set search_path = espalier, pg_temp
as $$
    select child_id, local_number from child_identity
    where site_id = any((select my_sites_as('PRIVACY_OFFICER'))::uuid[]) and child_id = any(asked)
$$;

grant execute on function child_of_number(text), numbers_of_children(uuid[]) to espalier_app;
