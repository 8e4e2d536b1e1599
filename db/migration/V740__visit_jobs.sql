-- For the jobs of the house: which hospitals there are, how far a night has come at each, and where the day's word about the
-- recall is sent, which names nobody.

create function sites_with_visits() returns setof uuid
    language sql stable security definer set search_path = espalier, pg_temp
as $$
    select id from site
$$;
grant execute on function sites_with_visits() to espalier_app, espalier_job;

create table visit_night (
    site_id uuid primary key references site,
    night date not null,
    after_visit uuid not null,
    renewed int not null check (renewed >= 0),
    finished boolean not null
);
alter table visit_night enable row level security;
alter table visit_night force row level security;
create policy visit_night_read on visit_night for select using (site_id = (select job_site()));
create policy visit_night_add on visit_night for insert with check (site_id = (select job_site()));
create policy visit_night_change on visit_night for update
    using (site_id = (select job_site())) with check (site_id = (select job_site()));
grant select, insert, update on visit_night to espalier_job;

alter table letterhead add column staff_mail text check (staff_mail like '%_@_%' and length(staff_mail) <= 200);
grant update (staff_mail) on letterhead to espalier_app;
