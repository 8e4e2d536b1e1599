-- What went in by an act, or was used up in it, piece by piece: from which shelf and lot, or from where else. Its lots stand
-- here too, so that a child tells its lots wherever care of it goes. What came out follows from the acts; where it went is
-- said with the act.

alter table procedure_act add column explant_fate text check (explant_fate in ('DISPOSED', 'KEPT', 'ANALYSIS'));

create table procedure_piece (
    session_id uuid not null,
    act_number smallint not null,
    number smallint not null check (number > 0),
    site_id uuid not null,
    recorded_site uuid not null references site,
    child_id uuid not null,
    role text not null check (role in ('BODY', 'METAPHYSEAL_SCREW', 'EPIPHYSEAL_SCREW', 'SCREW', 'USED_UP')),
    product_id uuid references stock_product,
    what text not null check (length(what) between 1 and 200),
    lot_numbers text check (length(lot_numbers) between 1 and 400),
    expires_on date,
    lots uuid[] not null default '{}',
    shelf_id uuid references stock_shelf,
    outside text check (outside in ('LOAN', 'EMERGENCY', 'OTHER')),
    movement_id uuid references stock_movement,
    primary key (session_id, act_number, number),
    foreign key (site_id, child_id) references child (site_id, id) on update cascade,
    foreign key (session_id, act_number) references procedure_act (session_id, number),
    check ((shelf_id is null) <> (outside is null)),
    check (shelf_id is null or movement_id is not null and product_id is not null)
);
create index on procedure_piece (child_id);
create index on procedure_piece using gin (lots);

alter table procedure_piece enable row level security;
alter table procedure_piece force row level security;
create policy procedure_piece_read on procedure_piece for select
    using (site_id = any((select my_sites_as('SURGEON', 'NURSE', 'RADIOGRAPHER', 'AUDITOR'))::uuid[])
        or recorded_site = any((select my_sites_as('SURGEON', 'NURSE', 'RADIOGRAPHER', 'AUDITOR'))::uuid[])
        or child_id = any((select my_granted())::uuid[]));
create policy procedure_piece_add on procedure_piece for insert
    with check (site_id = any((select my_sites_as('SURGEON', 'NURSE'))::uuid[]) and recorded_site = site_id);
grant select, insert on procedure_piece to espalier_app;
grant select on procedure_piece to espalier_job;
create trigger procedure_piece_is_a_fact before update on procedure_piece for each row
    when ((to_jsonb(old) - 'site_id') is distinct from (to_jsonb(new) - 'site_id'))
    execute function refuse_changed_fact();
create trigger procedure_piece_stays before delete on procedure_piece for each row execute function refuse_changed_fact();
