-- How far each night's work has come at each hospital: one cursor for all that goes through a hospital's rows at night.
create table night_work (
    site_id uuid not null references site,
    work text not null check (work ~ '^[a-z]+(-[a-z]+)*$'),
    night date not null,
    after_id uuid not null,
    looked int not null check (looked >= 0),
    renewed int not null check (renewed >= 0),
    finished boolean not null,
    primary key (site_id, work)
);
alter table night_work enable row level security;
alter table night_work force row level security;
create policy night_work_read on night_work for select using (site_id = (select job_site()));
create policy night_work_add on night_work for insert with check (site_id = (select job_site()));
create policy night_work_change on night_work for update
    using (site_id = (select job_site())) with check (site_id = (select job_site()));
grant select, insert on night_work to espalier_job;
grant update (night, after_id, looked, renewed, finished) on night_work to espalier_job;

insert into night_work (site_id, work, night, after_id, looked, renewed, finished)
select site_id, 'forecast-nightly', night, after_child, looked, renewed, finished from forecast_night
union all
select site_id, 'recall-nightly', night, after_visit, renewed, renewed, finished from visit_night;
drop table forecast_night;
drop table visit_night;
