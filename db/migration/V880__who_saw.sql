-- Who saw a child, on one page: every look at its record, for those who treat it, and for the privacy officer of its
-- hospital; the officer of a hospital that had it before sees the looks of that time. A list names one child here, however
-- many it showed.

create function who_saw(asked uuid, most int) returns table (
        at timestamptz, cared_at uuid, staff_id uuid, who text, works_at uuid[], deed text, subject text, sealed boolean)
    language sql stable security definer set search_path = espalier, pg_temp
as $$
    select e.at, (select c.site_id from child c where c.id = asked), e.staff_id, s.name,
        coalesce((select array_agg(distinct m.site_id) from membership m
            where m.staff_id = e.staff_id and m.valid @> cast(e.at as date)), '{}'),
        e.deed, e.subject, e.xid < coalesce((select max(upto_xid) from access_seal), '0')
    from access_entry e left join staff s on s.id = e.staff_id
    where e.children @> array[asked]
        and (e.site_id = any((select my_sites_as('PRIVACY_OFFICER'))::uuid[])
            or exists (select from child c where c.id = asked
                and c.site_id = any((select my_sites_as('PRIVACY_OFFICER', 'SURGEON', 'NURSE'))::uuid[])))
    order by e.at desc, e.id desc
    limit most
$$;

-- What came of computing all seals again. Says nothing of whom or what.
create table access_seal_check (
    id uuid primary key,
    at timestamptz not null,
    seals bigint not null,
    first_broken bigint,
    rows_then bigint,
    rows_now bigint,
    rows_from timestamptz,
    rows_until timestamptz,
    check ((first_broken is null) = (rows_then is null and rows_now is null))
);
create index on access_seal_check (at);
grant select on access_seal_check to espalier_app, espalier_job;
create trigger access_seal_check_stays before update or delete on access_seal_check
    for each row execute function refuse_change();

-- Computes all seals again and keeps the answer. Of the first that does not hold: how many rows it had and has, and the
-- time they are of.
create function check_access_seals(new_id uuid, checked_at timestamptz) returns setof access_seal_check
    language plpgsql volatile security definer set search_path = espalier, pg_temp
as $$
declare
    broken bigint := broken_access_seal();
begin
    insert into access_seal_check
    select new_id, checked_at, (select count(*) from access_seal), broken, found.rows_then, found.rows_now,
        found.rows_from, found.rows_until
    from (select) as once left join (
        select coalesce(max(seal.row_count), 0) as rows_then, count(e.id) as rows_now, min(e.at) as rows_from,
            max(e.at) as rows_until
        from (select broken as n) as first
        left join access_seal seal on seal.n = first.n
        left join access_seal before on before.n = first.n - 1
        left join access_entry e on e.xid >= coalesce(before.upto_xid, '0') and e.xid < seal.upto_xid
        where broken is not null group by first.n) as found on true;
    return query select * from access_seal_check where id = new_id;
end $$;

grant execute on function who_saw(uuid, int), check_access_seals(uuid, timestamptz) to espalier_app;
