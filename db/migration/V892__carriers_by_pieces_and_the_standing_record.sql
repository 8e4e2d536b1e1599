-- Carriers by their recorded pieces, and by movements alone where there are none; in both the day and the surgeon are those of
-- the record that stands, and what is known better replaces what was known before.

create or replace function carriers_by_movements(wanted uuid)
    returns table (child_id uuid, since date, surgeon text, certainty text)
    language sql stable set search_path = espalier, pg_temp
as $$
    with recursive taken as (
        select m.*, t.kind <> 'CHILDREN' as taken_out from stock_movement m join stock_shelf t on t.id = m.to_shelf
        where m.holder is not null and m.reverses is null and m.id in (
            select id from stock_movement where lot_id = wanted
            union all select movement_id from stock_movement_lot where lot_id = wanted)
            and not exists (select from stock_movement r where r.reverses = m.id)
            and not exists (select from procedure_piece k where k.movement_id = m.id)
    ), record as (
        select p.id as holder, p.id, p.child_id, p.done_on, p.surgeon_name from procedure_session p
        where p.id in (select holder from taken)
        union all
        select r.holder, p.id, p.child_id, p.done_on, p.surgeon_name
        from record r join procedure_session p on p.supersedes = r.id
    ), standing as (
        select r.* from record r where not exists (select from procedure_session p where p.supersedes = r.id)
    )
    select p.child_id,
        min(p.done_on) filter (where not taken_out),
        coalesce(min(p.surgeon_name) filter (where not taken_out), min(s.name) filter (where not taken_out), ''),
        case when sum(m.quantity) filter (where taken_out) >= sum(m.quantity) filter (where not taken_out) then 'FORMER'
            when bool_or(m.lot_id is not null and not taken_out) then 'CERTAIN' else 'POSSIBLE' end
    from taken m join standing p on p.holder = m.holder left join staff s on s.id = m.recorded_by
    group by p.child_id
    having bool_or(not taken_out)
$$;

create or replace function find_carriers(notice uuid) returns void
    language plpgsql volatile security definer set search_path = espalier, pg_temp
as $$
declare
    wanted uuid := (select lot_id from safety_notice where id = notice);
begin
    insert into safety_carrier as known (notice_id, child_id, site_id, certainty, since, surgeon)
    select notice, c.id, c.site_id, f.certainty, f.since, f.surgeon
    from (
        select * from carriers_by_pieces(wanted)
        union all
        select * from carriers_by_movements(wanted) m
        where not exists (select from carriers_by_pieces(wanted) p where p.child_id = m.child_id)
    ) f join child c on c.id = f.child_id
    on conflict (notice_id, child_id) do update
        set certainty = excluded.certainty, since = excluded.since, surgeon = excluded.surgeon
        where (known.certainty, known.since, known.surgeon) <> (excluded.certainty, excluded.since, excluded.surgeon);
end $$;
