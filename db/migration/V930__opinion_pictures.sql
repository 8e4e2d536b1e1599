-- Photos of the legs and clips of walking shown to colleagues, as copies, behind the walls of films. Which picture a copy was made
-- from is known to the hospital that has care alone; a picture that is withdrawn is shown nowhere any more, in no thread either.

alter table opinion_film add column kind text not null default 'FILM' check (kind in ('FILM', 'PHOTO'));

create table opinion_clip (
    id uuid primary key,
    thread_id uuid not null references opinion_thread,
    months int check (months between -300 and 300),
    title text not null check (length(title) between 1 and 200),
    kind text not null check (kind in ('MP4', 'WEBM')),
    sha256 text not null check (sha256 ~ '^[0-9a-f]{64}$'),
    size_bytes bigint not null check (size_bytes > 0),
    length_ms int not null check (length_ms > 0),
    checked_by uuid not null references staff,
    added_at timestamptz not null
);
create index on opinion_clip (thread_id);

create table opinion_picture (
    copy_id uuid primary key,
    thread_id uuid not null references opinion_thread,
    picture_id uuid not null references clinical_picture
);
create index on opinion_picture (picture_id);
create index on opinion_picture (thread_id);

create trigger opinion_clip_told after insert on opinion_clip for each row execute function tell_of_opinion();
create trigger opinion_clip_is_a_fact before update or delete on opinion_clip
    for each row execute function refuse_changed_fact();
create trigger opinion_picture_is_a_fact before update or delete on opinion_picture
    for each row execute function refuse_changed_fact();

-- Copies in the caller's threads of pictures that are shown no more.
create function my_withdrawn_copies() returns uuid[]
    language sql stable parallel safe security definer set search_path = espalier, pg_temp
as $$
    select coalesce(array_agg(p.copy_id), '{}')
    from opinion_picture p join clinical_picture_withdrawal w on w.picture_id = p.picture_id
    where p.thread_id = any(my_threads())
$$;

-- Tells every node at once, so that an open page lets the picture go.
create function tell_of_withdrawn_picture() returns trigger
    language plpgsql security definer set search_path = espalier, pg_temp
as $$
begin
    perform pg_notify('espalier_notice', 'opinion ' || p.thread_id)
    from opinion_picture p where p.picture_id = new.picture_id;
    return null;
end $$;
create trigger opinion_picture_withdrawn after insert on clinical_picture_withdrawal
    for each row execute function tell_of_withdrawn_picture();

alter table opinion_clip enable row level security;
alter table opinion_clip force row level security;
create policy opinion_clip_read on opinion_clip for select
    using (thread_id = any((select my_threads())::uuid[]) and id <> all((select my_withdrawn_copies())::uuid[]));
create policy opinion_clip_add on opinion_clip for insert
    with check (thread_id = any((select my_asked_threads('SURGEON'))::uuid[]) and checked_by = (select current_staff()));
grant select, insert on opinion_clip to espalier_app;

alter table opinion_picture enable row level security;
alter table opinion_picture force row level security;
create policy opinion_picture_read on opinion_picture for select
    using (thread_id = any((select my_asked_threads('SURGEON', 'NURSE', 'RADIOGRAPHER'))::uuid[]));
create policy opinion_picture_add on opinion_picture for insert
    with check (thread_id = any((select my_asked_threads('SURGEON'))::uuid[]));
grant select, insert on opinion_picture to espalier_app;

drop policy opinion_film_read on opinion_film;
create policy opinion_film_read on opinion_film for select
    using (thread_id = any((select my_threads())::uuid[]) and id <> all((select my_withdrawn_copies())::uuid[]));

grant execute on function my_withdrawn_copies() to espalier_app;

alter table opinion_shown drop constraint opinion_shown_kind_check;
alter table opinion_shown add constraint opinion_shown_kind_check check (kind in ('CHILD', 'DIAGNOSIS', 'EXAMINATION',
    'BODY_SIZE', 'BONE_AGE', 'LABORATORY', 'IMAGING', 'READING', 'PROCEDURE', 'PLAN', 'COMPARISON', 'FORECAST'));

-- What of which kind was written down since and is not shown; counts alone.
create or replace function newer_opinion_facts(thread uuid) returns table (kind text, many bigint)
    language sql stable security definer set search_path = espalier, pg_temp
as $$
    with asked as (
        select c.child_id, t.asked_at from opinion_case c join opinion_thread t on t.id = c.thread_id
        where t.id = thread and thread = any(my_threads())
    ), newer (kind, id) as (
        select 'FILM', f.id from asked a join film f on f.child_id = a.child_id and f.recorded_at > a.asked_at
            where f.state <> 'KEPT_ASIDE'
        union all
        select 'READING', r.id from asked a join reading r on r.child_id = a.child_id and r.signed_at > a.asked_at
            where not exists (select from reading l where l.supersedes = r.id)
        union all
        select 'EXAMINATION', e.id from asked a
            join clinical_examination e on e.child_id = a.child_id and e.recorded_at > a.asked_at and not e.withdrawn
            where not exists (select from clinical_examination l where l.supersedes = e.id)
        union all
        select 'PROCEDURE', p.id from asked a
            join procedure_session p on p.child_id = a.child_id and p.recorded_at > a.asked_at and not p.withdrawn
            where not exists (select from procedure_session l where l.supersedes = p.id)
        union all
        select 'DIAGNOSIS', d.id from asked a
            join diagnosis d on d.child_id = a.child_id and d.recorded_at > a.asked_at and not d.withdrawn
            where not exists (select from diagnosis l where l.supersedes = d.id)
        union all
        select 'BODY_SIZE', b.id from asked a
            join body_size b on b.child_id = a.child_id and b.recorded_at > a.asked_at and not b.withdrawn
            where not exists (select from body_size l where l.supersedes = b.id)
        union all
        select 'BONE_AGE', b.id from asked a
            join bone_age b on b.child_id = a.child_id and b.recorded_at > a.asked_at and not b.withdrawn
            where not exists (select from bone_age l where l.supersedes = b.id)
        union all
        select 'LABORATORY', r.id from asked a
            join lab_result r on r.child_id = a.child_id and r.recorded_at > a.asked_at and not r.withdrawn
            where not exists (select from lab_result l where l.supersedes = r.id)
        union all
        select 'IMAGING', i.id from asked a
            join imaging_report i on i.child_id = a.child_id and i.recorded_at > a.asked_at and not i.withdrawn
            where not exists (select from imaging_report l where l.supersedes = i.id)
        union all
        select 'PICTURE', p.id from asked a
            join clinical_picture p on p.child_id = a.child_id and p.recorded_at > a.asked_at
            where not exists (select from clinical_picture_withdrawal w where w.picture_id = p.id)
        union all
        select 'COMPARISON', p.id from asked a
            join plan_comparison p on p.child_id = a.child_id and p.recorded_at > a.asked_at
    )
    select n.kind, count(*) from newer n
    where not exists (select from opinion_source s where s.thread_id = thread and s.source_id = n.id)
    group by n.kind
$$;
