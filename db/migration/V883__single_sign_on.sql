-- Who somebody is at the provider of single sign-on: told by the operator, never guessed from a name or an address.

create table staff_subject (
    issuer text not null check (length(issuer) between 8 and 400),
    subject text not null check (length(subject) between 1 and 255),
    staff_id uuid not null references staff,
    added_by uuid not null references staff,
    added_at timestamptz not null,
    primary key (issuer, subject),
    unique (staff_id, issuer)
);
alter table staff_subject enable row level security;
alter table staff_subject force row level security;
create policy staff_subject_read on staff_subject for select using ((select is_operator()));
create policy staff_subject_add on staff_subject for insert
    with check ((select is_operator()) and added_by = (select current_staff()));
create policy staff_subject_remove on staff_subject for delete using ((select is_operator()));
grant select, insert, delete on staff_subject to espalier_app;

create function staff_by_subject(asked_issuer text, asked_subject text) returns uuid
    language sql stable security definer set search_path = espalier, pg_temp
as $$
    select s.id from staff_subject l join staff s on s.id = l.staff_id
    where l.issuer = asked_issuer and l.subject = asked_subject and s.kind = 'person' and s.active
$$;
grant execute on function staff_by_subject(text, text) to espalier_app;
