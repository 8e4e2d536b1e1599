-- From which hospital somebody comes who opened a child in an emergency, told to themselves and to the hospital that was asked.
create function emergency_from(asked uuid) returns text
    language sql stable security definer set search_path = espalier, pg_temp
as $$
    select string_agg(distinct s.name, ', ' order by s.name)
    from emergency_access e
    join membership m on m.staff_id = e.staff_id and m.role = 'SURGEON' and m.valid @> cast(e.taken_at as date)
    join site s on s.id = m.site_id
    where e.id = asked and (e.staff_id = current_staff() or e.site_id = any(my_sites()))
$$;
grant execute on function emergency_from(uuid) to espalier_app;
