-- What a person is in the middle of typing or drawing. It is theirs alone, and outlives a dropped connection.

create table draft (
    id uuid primary key,
    staff_id uuid not null references staff,
    kind text not null check (kind ~ '^[a-z]+(-[a-z]+)*$'),
    subject uuid not null,
    revision bigint not null check (revision > 0),
    content jsonb not null,
    started_at timestamptz not null,
    saved_at timestamptz not null,
    unique (staff_id, kind, subject)
);

alter table draft enable row level security;
alter table draft force row level security;
create policy draft_read on draft for select using (staff_id = (select current_staff()));
create policy draft_add on draft for insert with check (staff_id = (select current_staff()));
create policy draft_change on draft for update
    using (staff_id = (select current_staff())) with check (staff_id = (select current_staff()));
create policy draft_discard on draft for delete using (staff_id = (select current_staff()));
grant select, insert, update, delete on draft to espalier_app;
