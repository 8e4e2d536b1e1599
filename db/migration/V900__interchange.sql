-- What a clinic brings along from its own records: taken in by a job of the house that speaks for one hospital, and for no
-- other. Every policy already names the hospitals the caller works at, which for a job is the one it works for; what it
-- lacked were the rights to add.

grant insert on child, child_identity, limb, physis, body_size, bone_age, diagnosis, clinical_examination, lab_result,
    bone_disease, imaging_report, tibia_vara_stage, procedure_session, procedure_act, physis_maturity, visit, visit_step,
    care_change, film, film_label, film_assignment, reading, reading_number, stock_product, stock_lot to espalier_job;
grant update (version, initials, birth_month, sex, needs_visit, open_visit) on child to espalier_job;
grant update (family_name, given_name, birth_date, local_number, sort_name) on child_identity to espalier_job;
grant update (asked_by, asked_why, appointment_on, appointment_at, booking, closed_at, closed_by, outcome, outcome_on,
    outcome_reason, outcome_note) on visit to espalier_job;
grant update (taken_on) on film to espalier_job;
grant select on stock_product_code to espalier_job;
grant insert (id, site_id, kind, name, to_site, owner_name, back_by) on stock_shelf to espalier_job;
grant execute on function open_stock(uuid), move_stock(uuid, uuid, uuid, uuid, uuid, uuid[], int, uuid, uuid, text,
    numeric, text, timestamptz) to espalier_job;

-- Of the catalogue too: null where no person wrote it down but the house itself.
alter table stock_product alter column changed_by drop not null;
alter table stock_lot alter column recorded_by drop not null;
create policy stock_product_bring_in on stock_product for insert with check ((select job_site()) is not null);
create policy stock_lot_bring_in on stock_lot for insert
    with check (held_since is null and (select job_site()) is not null);

-- Who read a film before this record began is known by name alone: a reader that nobody can sign in as.
alter table staff drop constraint staff_kind_check;
alter table staff add constraint staff_kind_check check (kind in ('person', 'archive', 'reader'));
create policy reading_bring_in on reading for insert
    with check (site_id = (select job_site()) and recorded_site = site_id);

create function earlier_reader(reader_id uuid, reader_name text) returns uuid
    language plpgsql volatile security definer set search_path = espalier, pg_temp
as $$
begin
    if job_site() is null then
        raise exception 'only a job brings readings in' using errcode = 'ES001';
    end if;
    insert into staff (id, login, name, kind)
    values (reader_id, 'reader-' || reader_id, reader_name, 'reader') on conflict (id) do nothing;
    return reader_id;
end $$;
revoke execute on function earlier_reader(uuid, text) from public;
grant execute on function earlier_reader(uuid, text) to espalier_job;

-- A command names a hospital by its code before it can speak for it.
create function site_with_code(wanted text) returns uuid
    language sql stable security definer set search_path = espalier, pg_temp
as $$
    select id from site where code = wanted
$$;
revoke execute on function site_with_code(text) from public;
grant execute on function site_with_code(text) to espalier_app;

-- Each time something was brought in: by whom, and how much.
create table records_brought_in (
    id uuid primary key,
    site_id uuid not null references site,
    taken_by uuid references staff,
    taken_at timestamptz not null,
    counts text not null check (length(counts) between 1 and 2000)
);
create index on records_brought_in (site_id, taken_at);
create trigger records_brought_in_is_a_fact before update on records_brought_in for each row
    execute function refuse_changed_fact();
create trigger records_brought_in_stays before delete on records_brought_in for each row
    execute function refuse_changed_fact();
alter table records_brought_in enable row level security;
alter table records_brought_in force row level security;
create policy records_brought_in_read on records_brought_in for select
    using (site_id = any((select my_sites_as('SURGEON', 'NURSE', 'PRIVACY_OFFICER'))::uuid[]));
create policy records_brought_in_add on records_brought_in for insert with check (site_id = (select job_site()));
grant select on records_brought_in to espalier_app;
grant select, insert on records_brought_in to espalier_job;

alter table visit_step drop constraint visit_step_source_check;
alter table visit_step add constraint visit_step_source_check
    check (source in ('HAND', 'BOOKING_FILE', 'PROCEDURE', 'TRANSFER', 'BROUGHT_IN'));
