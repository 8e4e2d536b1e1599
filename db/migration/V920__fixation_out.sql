-- Frames and what holds a cut bone come out too: by a frame off, or a fixation out, of the limb or of one physis. What lies at
-- no recorded place of the limb may then be out, so it is carried possibly.

create or replace function carriers_by_pieces(wanted uuid)
    returns table (child_id uuid, since date, surgeon text, certainty text)
    language sql stable set search_path = espalier, pg_temp
as $$
    with standing as (
        select s.* from procedure_session s
        where not s.withdrawn and not exists (select from procedure_session l where l.supersedes = s.id)
    ), fixed as (
        select p.*, s.done_on, s.recorded_at, s.surgeon_name, s.recorded_by, a.implant, a.side, a.bone, a.bone_end,
            case when a.kind in ('FRAME_ON', 'FRAME_ADJUSTED') then 'FRAME_OFF' else 'FIXATION_OUT' end as comes_by
        from procedure_piece p join standing s on s.id = p.session_id
            join procedure_act a on a.session_id = p.session_id and a.number = p.act_number
        where p.lots @> array[wanted] and p.role <> 'USED_UP'
    ), fixation_out as (
        select f.session_id, f.act_number, f.number,
            bool_or(o.bone is null or o.bone = f.bone and o.bone_end = f.bone_end) as out
        from fixed f join procedure_act o on o.child_id = f.child_id and o.kind = f.comes_by and o.side = f.side
            join standing os on os.id = o.session_id
        where f.implant is null and (o.bone is null or f.bone is null or o.bone = f.bone and o.bone_end = f.bone_end)
            and (os.done_on, os.recorded_at, o.number) > (f.done_on, f.recorded_at, f.act_number)
        group by f.session_id, f.act_number, f.number
    ), placed as (
        select p.child_id, p.done_on, coalesce(p.surgeon_name, s.name, '') as surgeon,
            coalesce(x.out, false) or exists (
                select from procedure_act o join standing os on os.id = o.session_id
                where o.implant = p.implant and o.session_id <> p.session_id and os.done_on >= p.done_on
                    and (o.kind in ('PLATE_OUT', 'STAPLE_OUT', 'TRANSPHYSEAL_SCREW_OUT')
                        or p.role = 'METAPHYSEAL_SCREW'
                            and o.kind in ('METAPHYSEAL_SCREW_OUT', 'METAPHYSEAL_SCREW_EXCHANGED')
                        or p.role = 'EPIPHYSEAL_SCREW'
                            and o.kind in ('EPIPHYSEAL_SCREW_OUT', 'EPIPHYSEAL_SCREW_EXCHANGED'))) as gone,
            cardinality(p.lots) = 1 and x.session_id is null and not (p.role = 'SCREW' and exists (
                select from procedure_act o join standing os on os.id = o.session_id
                where o.implant = p.implant and o.kind in ('METAPHYSEAL_SCREW_OUT', 'METAPHYSEAL_SCREW_EXCHANGED',
                    'EPIPHYSEAL_SCREW_OUT', 'EPIPHYSEAL_SCREW_EXCHANGED'))) as certain
        from fixed p left join staff s on s.id = p.recorded_by
            left join fixation_out x using (session_id, act_number, number)
    )
    select child_id, min(done_on), min(surgeon),
        case when bool_and(gone) then 'FORMER' when bool_or(certain and not gone) then 'CERTAIN' else 'POSSIBLE' end
    from placed group by child_id
$$;
