-- A family that moved passes to another hospital of the network with its record. Until that hospital accepts, the old one
-- keeps visit and recall; the acceptance is one statement's work, so that there is no moment without an owner.

create table transfer (
    id uuid primary key,
    child_id uuid not null references child,
    from_site uuid not null references site,
    to_site uuid not null references site,
    child_name text not null check (length(child_name) between 1 and 240),
    birth_date date not null,
    why text not null check (length(why) between 3 and 400),
    state text not null default 'ASKED' check (state in ('ASKED', 'ACCEPTED', 'DECLINED', 'WITHDRAWN')),
    asked_by uuid references staff,
    asked_at timestamptz not null,
    answered_by uuid references staff,
    answered_at timestamptz,
    answer text check (length(answer) between 1 and 400),
    check (from_site <> to_site),
    check ((state = 'ASKED') = (answered_at is null))
);
create unique index transfer_open on transfer (child_id) where state = 'ASKED';
create index on transfer (from_site, asked_at);
create index on transfer (to_site, asked_at);

alter table transfer enable row level security;
alter table transfer force row level security;
create policy transfer_read on transfer for select
    using (from_site = any((select my_sites_as('SURGEON', 'NURSE'))::uuid[])
        or to_site = any((select my_sites_as('SURGEON', 'NURSE'))::uuid[]));
create policy transfer_add on transfer for insert
    with check (from_site = any((select my_sites_as('SURGEON', 'NURSE'))::uuid[]) and state = 'ASKED');
create policy transfer_change on transfer for update
    using (state = 'ASKED' and (from_site = any((select my_sites_as('SURGEON', 'NURSE'))::uuid[])
        or to_site = any((select my_sites_as('SURGEON', 'NURSE'))::uuid[])))
    with check (state = 'WITHDRAWN' and from_site = any((select my_sites_as('SURGEON', 'NURSE'))::uuid[])
        or state = 'DECLINED' and to_site = any((select my_sites_as('SURGEON', 'NURSE'))::uuid[]));
grant select, insert on transfer to espalier_app;
grant update (state, answered_by, answered_at, answer) on transfer to espalier_app;

-- Moves the child with every fact to the hospital that accepts, all or nothing. The old hospital's date and local number
-- do not hold at the new one; the visit and its due day go on.
create function accept_transfer(asked uuid, accepted_at timestamptz) returns uuid
    language plpgsql volatile security definer set search_path = espalier, pg_temp
as $$
declare
    wanted transfer;
begin
    select * into wanted from transfer
    where id = asked and state = 'ASKED' and to_site = any(my_sites_as('SURGEON', 'NURSE')) for update;
    if not found then
        return null;
    end if;
    update transfer set state = 'ACCEPTED', answered_by = current_staff(), answered_at = accepted_at where id = asked;
    update child_identity set local_number = null where child_id = wanted.child_id;
    update visit set version = version + 1, appointment_on = null, appointment_at = null, booking = null
    where child_id = wanted.child_id and closed_at is null;
    update child set site_id = wanted.to_site where id = wanted.child_id and site_id = wanted.from_site;
    if not found then
        raise exception 'the child is not at the hospital that asked' using errcode = 'ES003';
    end if;
    insert into visit_step (id, site_id, recorded_site, child_id, visit_id, kind, on_day, source, recorded_by, recorded_at)
    select uuidv7(), wanted.to_site, wanted.to_site, wanted.child_id, v.id, 'CAME_WITH_TRANSFER',
        cast(accepted_at at time zone s.time_zone as date), 'TRANSFER', current_staff(), accepted_at
    from visit v join site s on s.id = wanted.to_site where v.child_id = wanted.child_id and v.closed_at is null;
    return wanted.child_id;
end $$;
grant execute on function accept_transfer(uuid, timestamptz) to espalier_app;
