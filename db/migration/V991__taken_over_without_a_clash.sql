-- Some hold on to a child first and change its visit or its name then, as what follows from a reading; some the other way
-- round, as closing a visit. Accepting a transfer wants all three, and waits for one only while it holds none: else two who
-- meet wait for each other and one is thrown out.
create or replace function accept_transfer(asked uuid, accepted_at timestamptz) returns uuid
    language plpgsql volatile security definer set search_path = espalier, pg_temp
as $$
declare
    wanted transfer;
    today date;
begin
    select * into wanted from transfer
    where id = asked and state = 'ASKED' and to_site = any(my_sites_as('SURGEON', 'NURSE')) for update;
    if not found then
        return null;
    end if;
    loop
        begin
            perform from child where id = wanted.child_id for update;
            perform from child_identity where child_id = wanted.child_id for update nowait;
            perform from visit where child_id = wanted.child_id and closed_at is null for update nowait;
            exit;
        exception when lock_not_available then
            perform pg_sleep(0.05);
        end;
    end loop;
    update transfer set state = 'ACCEPTED', answered_by = current_staff(), answered_at = accepted_at where id = asked;
    update child_identity set local_number = null where child_id = wanted.child_id;
    update visit set version = version + 1, appointment_on = null, appointment_at = null, booking = null
    where child_id = wanted.child_id and closed_at is null;
    update child set site_id = wanted.to_site where id = wanted.child_id and site_id = wanted.from_site;
    if not found then
        raise exception 'the child is not at the hospital that asked' using errcode = 'ES003';
    end if;
    today := (select cast(accepted_at at time zone s.time_zone as date) from site s where s.id = wanted.to_site);
    insert into visit_step (id, site_id, recorded_site, child_id, visit_id, kind, on_day, source, recorded_by, recorded_at)
    select uuidv7(), wanted.to_site, wanted.to_site, wanted.child_id, v.id, 'CAME_WITH_TRANSFER', today, 'TRANSFER',
        current_staff(), accepted_at
    from visit v where v.child_id = wanted.child_id and v.closed_at is null;
    insert into care_step (id, site_id, recorded_site, child_id, happened_on, side, step, recorded_by, recorded_at)
    select uuidv7(), wanted.to_site, words.site, wanted.child_id, today, limb.side, words.step, current_staff(),
        accepted_at + words.after
    from (values ('RIGHT'), ('LEFT')) limb (side)
    cross join (values (wanted.from_site, 'TRANSFERRED', interval '0'),
        (wanted.to_site, 'TAKEN_UP', interval '1 microsecond')) words (site, step, after)
    where coalesce((
        select c.step from care_step c
        where c.child_id = wanted.child_id and (c.side is null or c.side = limb.side) and not c.withdrawn
            and not exists (select from care_step later where later.supersedes = c.id)
        order by c.happened_on desc, c.recorded_at desc limit 1), '') <> 'ENDED';
    return wanted.child_id;
end $$;
