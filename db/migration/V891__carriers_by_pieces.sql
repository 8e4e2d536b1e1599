-- Who carries a lot, first by the pieces that are recorded with procedures: also of what was placed elsewhere, and gone once the
-- implant came out, whether or not it was said where it went. Movements alone tell of operations without recorded pieces.

create function carriers_by_pieces(wanted uuid)
    returns table (child_id uuid, since date, surgeon text, certainty text)
    language sql stable set search_path = espalier, pg_temp
as $$
    with standing as (
        select s.* from procedure_session s
        where not s.withdrawn and not exists (select from procedure_session l where l.supersedes = s.id)
    ), placed as (
        select s.child_id, s.done_on, coalesce(s.surgeon_name, f.name, '') as surgeon,
            exists (
                select from procedure_act o join standing os on os.id = o.session_id
                where o.implant = a.implant and o.session_id <> a.session_id and os.done_on >= s.done_on
                    and (o.kind in ('PLATE_OUT', 'STAPLE_OUT', 'TRANSPHYSEAL_SCREW_OUT')
                        or p.role = 'METAPHYSEAL_SCREW'
                            and o.kind in ('METAPHYSEAL_SCREW_OUT', 'METAPHYSEAL_SCREW_EXCHANGED')
                        or p.role = 'EPIPHYSEAL_SCREW'
                            and o.kind in ('EPIPHYSEAL_SCREW_OUT', 'EPIPHYSEAL_SCREW_EXCHANGED'))) as gone,
            cardinality(p.lots) = 1 and not (p.role = 'SCREW' and exists (
                select from procedure_act o join standing os on os.id = o.session_id
                where o.implant = a.implant and o.kind in ('METAPHYSEAL_SCREW_OUT', 'METAPHYSEAL_SCREW_EXCHANGED',
                    'EPIPHYSEAL_SCREW_OUT', 'EPIPHYSEAL_SCREW_EXCHANGED'))) as certain
        from procedure_piece p join standing s on s.id = p.session_id
            join procedure_act a on a.session_id = p.session_id and a.number = p.act_number
            left join staff f on f.id = s.recorded_by
        where p.lots @> array[wanted] and p.role <> 'USED_UP'
    )
    select child_id, min(done_on), min(surgeon),
        case when bool_and(gone) then 'FORMER' when bool_or(certain and not gone) then 'CERTAIN' else 'POSSIBLE' end
    from placed group by child_id
$$;

create function carriers_by_movements(wanted uuid)
    returns table (child_id uuid, since date, surgeon text, certainty text)
    language sql stable set search_path = espalier, pg_temp
as $$
    select p.child_id, min(p.done_on), coalesce(min(p.surgeon_name), min(s.name), ''),
        case when sum(m.quantity) filter (where taken_out) >= sum(m.quantity) filter (where not taken_out) then 'FORMER'
            when bool_or(m.lot_id is not null and not taken_out) then 'CERTAIN' else 'POSSIBLE' end
    from (
        select m.*, t.kind <> 'CHILDREN' as taken_out from stock_movement m join stock_shelf t on t.id = m.to_shelf
        where m.holder is not null and m.reverses is null and m.id in (
            select id from stock_movement where lot_id = wanted
            union all select movement_id from stock_movement_lot where lot_id = wanted)
            and not exists (select from stock_movement r where r.reverses = m.id)
            and not exists (select from procedure_piece k where k.movement_id = m.id)
    ) m
    join procedure_session p on p.id = m.holder left join staff s on s.id = m.recorded_by
    group by p.child_id
    having bool_or(not taken_out)
$$;
revoke execute on function carriers_by_pieces(uuid), carriers_by_movements(uuid) from public;

create index on procedure_piece (movement_id) where movement_id is not null;

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
    on conflict (notice_id, child_id) do update set certainty = excluded.certainty
        where known.certainty <> excluded.certainty;
end $$;
