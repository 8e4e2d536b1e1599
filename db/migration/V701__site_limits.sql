-- The intervals and limits a site signed, each set in place of the one before. Facts; the newest holds.

create table site_limits (
    id uuid primary key,
    site_id uuid not null references site,
    content jsonb not null,
    reason text not null check (length(reason) between 3 and 400),
    signed_by uuid references staff,
    signed_at timestamptz not null
);
create index on site_limits (site_id, signed_at);
create trigger site_limits_stay before update or delete on site_limits
    for each row execute function refuse_changed_fact();

alter table site_limits enable row level security;
alter table site_limits force row level security;
create policy site_limits_read on site_limits for select using (site_id = any((select my_sites())::uuid[]));
create policy site_limits_add on site_limits for insert
    with check (site_id = any((select my_sites_as('SURGEON'))::uuid[]) and signed_by = (select current_staff()));
grant select, insert on site_limits to espalier_app;
grant select on site_limits to espalier_job;
