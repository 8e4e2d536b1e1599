-- Options of a limb as they were compared on a day, in the words shown then, with what the surgeon meant and expected of it. Facts:
-- what came of it is judged later against what was said before.

create table plan_comparison (
    id uuid primary key,
    site_id uuid not null,
    recorded_site uuid not null references site,
    child_id uuid not null,
    side text not null check (side in ('RIGHT', 'LEFT')),
    compared_on date not null,
    meant text check (length(meant) between 3 and 60),
    aim text check (length(aim) between 3 and 400),
    expectation text check (length(expectation) between 3 and 400),
    expected_hka_deg numeric(4, 1) check (expected_hka_deg between -30 and 30),
    expected_by date,
    options jsonb not null,
    recorded_by uuid references staff,
    recorded_at timestamptz not null,
    foreign key (site_id, child_id) references child (site_id, id) on update cascade,
    check (num_nonnulls(meant, aim, expectation) in (0, 3)),
    check (meant is not null or (expected_hka_deg is null and expected_by is null)),
    check (expected_hka_deg is null or expected_by is not null)
);
create index on plan_comparison (child_id, recorded_at);
create index on plan_comparison (site_id, compared_on);
create trigger plan_comparison_is_a_fact before update on plan_comparison for each row
    when ((to_jsonb(old) - 'site_id') is distinct from (to_jsonb(new) - 'site_id'))
    execute function refuse_changed_fact();
create trigger plan_comparison_stays before delete on plan_comparison for each row execute function refuse_changed_fact();

alter table plan_comparison enable row level security;
alter table plan_comparison force row level security;
create policy plan_comparison_read on plan_comparison for select
    using (site_id = any((select my_sites_as('SURGEON', 'NURSE', 'RADIOGRAPHER', 'AUDITOR'))::uuid[])
        or recorded_site = any((select my_sites_as('SURGEON', 'NURSE', 'RADIOGRAPHER', 'AUDITOR'))::uuid[])
        or child_id = any((select my_granted())::uuid[]));
create policy plan_comparison_add on plan_comparison for insert
    with check (site_id = any((select my_sites_as('SURGEON'))::uuid[]) and recorded_site = site_id);
grant select, insert on plan_comparison to espalier_app;
grant select on plan_comparison to espalier_job;
