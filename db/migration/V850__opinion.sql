-- Opinions: a case put before colleagues of other hospitals, for as long as they are asked. What they see is a frozen,
-- de-identified copy in these tables alone; no policy of a child's own tables asks for a thread.

create table opinion_panel (
    id uuid primary key,
    name text not null unique check (length(name) between 2 and 80),
    made_by uuid not null references staff,
    made_at timestamptz not null
);

create table opinion_panel_member (
    panel_id uuid not null references opinion_panel,
    staff_id uuid not null references staff,
    primary key (panel_id, staff_id)
);

create table opinion_thread (
    id uuid primary key,
    site_id uuid not null references site,
    asker uuid not null references staff,
    question text not null check (length(question) between 10 and 4000),
    wanted text[] not null check (cardinality(wanted) > 0
        and wanted <@ array['WATCH', 'PLATE', 'CUT', 'WAIT', 'DIAGNOSIS', 'OTHER']),
    place text check (length(place) between 1 and 200),
    due_by date not null,
    has_frame boolean not null,
    has_mri boolean not null,
    theatre_wait_weeks int check (theatre_wait_weeks between 0 and 200),
    everybody boolean not null,
    consent text not null check (length(consent) between 3 and 400),
    asked_at timestamptz not null,
    open_until timestamptz not null check (open_until > asked_at),
    words tsvector not null generated always as (to_tsvector('simple', question)) stored
);
create index on opinion_thread using gin (words);

-- Whose case it is: known to the hospital that has care, and to nobody who is asked.
create table opinion_case (
    thread_id uuid primary key references opinion_thread,
    site_id uuid not null,
    child_id uuid not null,
    foreign key (site_id, child_id) references child (site_id, id) on update cascade
);
create index on opinion_case (site_id);
create index on opinion_case (child_id);

-- What each thing shown was made from, so that it is not shown twice and newer facts are noticed.
create table opinion_source (
    thread_id uuid not null references opinion_thread,
    source_id uuid not null,
    primary key (thread_id, source_id)
);

-- A grant: who, for which thread, what for, from when to when. Nothing else hangs on it.
create table opinion_member (
    thread_id uuid not null references opinion_thread,
    staff_id uuid not null references staff,
    scope text not null check (scope in ('ANSWER', 'LOOK')),
    panel_id uuid references opinion_panel,
    granted_by uuid not null references staff,
    opens_at timestamptz not null,
    ends_at timestamptz not null check (ends_at >= opens_at),
    why_ended text check (why_ended in ('WITHDRAWN', 'CLOSED', 'HANDED_ON')),
    primary key (thread_id, staff_id)
);
create index on opinion_member (staff_id);

create table opinion_shown (
    id uuid primary key,
    thread_id uuid not null references opinion_thread,
    kind text not null check (kind in ('CHILD', 'DIAGNOSIS', 'EXAMINATION', 'BODY_SIZE', 'BONE_AGE', 'LABORATORY', 'IMAGING',
        'READING', 'PROCEDURE', 'PLAN', 'FORECAST')),
    months int check (months between -300 and 300),
    content jsonb not null,
    added_by uuid not null references staff,
    added_at timestamptz not null
);
create index on opinion_shown (thread_id);

create table opinion_film (
    id uuid primary key,
    thread_id uuid not null references opinion_thread,
    months int check (months between -300 and 300),
    title text not null check (length(title) between 1 and 200),
    sha256 text not null check (sha256 ~ '^[0-9a-f]{64}$'),
    size_bytes bigint not null check (size_bytes > 0),
    width int not null check (width > 0),
    height int not null check (height > 0),
    scale_source text not null,
    mm_per_px_x double precision check (mm_per_px_x > 0),
    mm_per_px_y double precision check (mm_per_px_y > 0),
    magnification double precision check (magnification > 0),
    covered int not null check (covered >= 0),
    checked_by uuid not null references staff,
    added_at timestamptz not null
);
create index on opinion_film (thread_id);

create table opinion_message (
    id uuid primary key,
    thread_id uuid not null references opinion_thread,
    film_id uuid references opinion_film,
    author uuid not null references staff,
    kind text not null check (kind in ('TEXT', 'REMINDER', 'FACTS_ADDED', 'INVITED', 'JOINED', 'HANDED_ON', 'WITHDRAWN',
        'CLOSED')),
    text text not null check (length(text) <= 8000 and (kind <> 'TEXT' or length(text) > 0)),
    at timestamptz not null,
    words tsvector not null generated always as (to_tsvector('simple', text)) stored
);
create index on opinion_message (thread_id, at);
create index on opinion_message (author);
create index on opinion_message using gin (words);

-- One person's layer of a film as it was kept; the latest of each person is shown, the earlier ones stay.
create table opinion_mark (
    id uuid primary key,
    thread_id uuid not null references opinion_thread,
    film_id uuid not null references opinion_film,
    author uuid not null references staff,
    marks jsonb not null,
    at timestamptz not null
);
create index on opinion_mark (film_id, author, at desc);

create table opinion_reading (
    id uuid primary key,
    thread_id uuid not null references opinion_thread,
    film_id uuid not null references opinion_film,
    reader uuid not null references staff,
    marks jsonb not null,
    numbers jsonb not null,
    at timestamptz not null,
    unique (film_id, reader)
);
create index on opinion_reading (thread_id);

create table opinion_view (
    id uuid primary key,
    thread_id uuid not null references opinion_thread,
    author uuid not null references staff,
    advice text not null check (advice in ('WATCH', 'PLATE', 'CUT', 'WAIT', 'DIAGNOSIS', 'OTHER')),
    place text not null check (length(place) <= 400),
    due text not null check (length(due) <= 400),
    sure text not null check (sure in ('SURE', 'FAIRLY_SURE', 'UNSURE')),
    change_mind text not null check (length(change_mind) <= 2000),
    text text not null check (length(text) <= 8000),
    supersedes uuid unique,
    at timestamptz not null,
    words tsvector not null
        generated always as (to_tsvector('simple', place || ' ' || due || ' ' || change_mind || ' ' || text)) stored,
    unique (thread_id, author, id),
    foreign key (thread_id, author, supersedes) references opinion_view (thread_id, author, id)
);
create unique index opinion_view_first on opinion_view (thread_id, author) where supersedes is null;
create index on opinion_view (author);
create index on opinion_view using gin (words);

create table opinion_hand_over (
    id uuid primary key,
    thread_id uuid not null references opinion_thread,
    from_staff uuid not null references staff,
    to_staff uuid not null references staff,
    asked_at timestamptz not null,
    agreed_by uuid references staff,
    agreed_at timestamptz,
    check (from_staff <> to_staff),
    check ((agreed_by is null) = (agreed_at is null)),
    unique (thread_id, from_staff, to_staff)
);

create table opinion_close (
    thread_id uuid primary key references opinion_thread,
    decided text not null check (decided in ('WATCH', 'PLATE', 'CUT', 'WAIT', 'DIAGNOSIS', 'OTHER')),
    text text not null check (length(text) between 3 and 4000),
    decided_by text not null check (length(decided_by) between 2 and 200),
    pdf_sha256 text not null check (pdf_sha256 ~ '^[0-9a-f]{64}$'),
    pdf_bytes bigint not null check (pdf_bytes > 0),
    closed_by uuid not null references staff,
    closed_at timestamptz not null
);

create table opinion_outcome (
    id uuid primary key,
    thread_id uuid not null references opinion_thread,
    horizon text not null check (horizon in ('YEAR', 'MATURITY')),
    done text not null check (done in ('WATCH', 'PLATE', 'CUT', 'WAIT', 'DIAGNOSIS', 'OTHER')),
    result text not null check (result in ('STRAIGHT', 'BETTER', 'UNCHANGED', 'WORSE', 'PAST_TARGET')),
    text text not null check (length(text) <= 4000),
    months int not null check (months between 0 and 300),
    recorded_by uuid not null references staff,
    recorded_at timestamptz not null,
    unique (thread_id, horizon)
);

-- Until when a person has read a thread.
create table opinion_seen (
    thread_id uuid not null references opinion_thread,
    staff_id uuid not null references staff,
    seen_at timestamptz not null,
    primary key (thread_id, staff_id)
);

-- Threads of children in the caller's care.
create function my_asked_threads(variadic roles text[]) returns uuid[]
    language sql stable parallel safe security definer set search_path = espalier, pg_temp
as $$
    select coalesce(array_agg(thread_id), '{}') from opinion_case where site_id = any(my_sites_as(variadic roles))
$$;

-- Threads with a grant to the caller that is open just now.
create function my_granted_threads(variadic scopes text[]) returns uuid[]
    language sql stable parallel safe security definer set search_path = espalier, pg_temp
as $$
    select coalesce(array_agg(thread_id), '{}') from opinion_member
    where staff_id = current_staff() and opens_at <= now() and ends_at > now() and scope = any(scopes)
$$;

create function my_threads() returns uuid[]
    language sql stable parallel safe security definer set search_path = espalier, pg_temp
as $$
    select my_granted_threads('ANSWER', 'LOOK') || my_asked_threads('SURGEON', 'NURSE', 'RADIOGRAPHER')
$$;

-- Where the caller may write: asked to answer, or treating the child; not once it is closed.
create function my_writing_threads() returns uuid[]
    language sql stable parallel safe security definer set search_path = espalier, pg_temp
as $$
    select coalesce(array_agg(t.id), '{}')
    from unnest(my_granted_threads('ANSWER') || my_asked_threads('SURGEON')) as t (id)
    where not exists (select from opinion_close c where c.thread_id = t.id)
$$;

-- Films that the caller has read blind, so that the readings of others no longer lead.
create function my_read_films() returns uuid[]
    language sql stable parallel safe security definer set search_path = espalier, pg_temp
as $$
    select coalesce(array_agg(film_id), '{}') from opinion_reading where reader = current_staff()
$$;

grant execute on function my_asked_threads(text[]), my_granted_threads(text[]), my_threads(), my_writing_threads(),
    my_read_films() to espalier_app;

-- The surgeons of the network by name and hospital, for who asks; the network is small and its hospitals know each other.
create function surgeons_of_network() returns table (staff_id uuid, name text, site_name text)
    language sql stable security definer set search_path = espalier, pg_temp
as $$
    select s.id, s.name, string_agg(distinct h.name, ', ' order by h.name)
    from staff s join membership m on m.staff_id = s.id join site h on h.id = m.site_id
    where cardinality(my_sites_as('SURGEON')) > 0 and m.role = 'SURGEON' and m.valid @> current_date and s.active
        and s.kind = 'person'
    group by s.id, s.name
$$;

-- Calls to any surgeon of the network that the caller has not taken: what is asked, not what is shown.
create function open_opinion_calls()
    returns table (thread_id uuid, asker text, site_name text, wanted text[], asked_at timestamptz, due_by date)
    language sql stable security definer set search_path = espalier, pg_temp
as $$
    select t.id, a.name, h.name, t.wanted, t.asked_at, t.due_by
    from opinion_thread t join staff a on a.id = t.asker join site h on h.id = t.site_id
    where cardinality(my_sites_as('SURGEON')) > 0 and t.everybody and t.open_until > now()
        and not t.site_id = any(my_sites())
        and not exists (select from opinion_close c where c.thread_id = t.id)
        and not exists (select from opinion_member m where m.thread_id = t.id and m.staff_id = current_staff())
$$;

-- A surgeon takes up such a call: from now on it is a grant like any other.
create function take_opinion_call(thread uuid, at timestamptz) returns boolean
    language plpgsql volatile security definer set search_path = espalier, pg_temp
as $$
begin
    insert into opinion_member (thread_id, staff_id, scope, granted_by, opens_at, ends_at)
    select t.id, current_staff(), 'ANSWER', t.asker, least(at, now()), t.open_until
    from opinion_thread t join open_opinion_calls() c on c.thread_id = t.id where t.id = thread
    on conflict do nothing;
    return found;
end $$;

-- Writes a look at a thread into the log of the hospital that has care, without telling the looker whose case it is.
create function look_at_opinion(entry uuid, thread uuid, film uuid, at timestamptz) returns boolean
    language plpgsql volatile security definer set search_path = espalier, pg_temp
as $$
begin
    if not thread = any(my_threads()) then
        return false;
    end if;
    insert into access_entry (id, at, staff_id, site_id, deed, subject, children, film_id, film_hour)
    select entry, look_at_opinion.at, current_staff(), c.site_id, case when film is null then 'OPENED' else 'FILM' end,
        'opinion', array[c.child_id], film,
        case when film is not null then date_trunc('hour', look_at_opinion.at) end
    from opinion_case c where c.thread_id = thread
    on conflict do nothing;
    return true;
end $$;

-- What of which kind was written down since and is not shown; counts alone.
create function newer_opinion_facts(thread uuid) returns table (kind text, many bigint)
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
        union all
        select 'EXAMINATION', e.id from asked a
            join clinical_examination e on e.child_id = a.child_id and e.recorded_at > a.asked_at
        union all
        select 'PROCEDURE', p.id from asked a
            join procedure_session p on p.child_id = a.child_id and p.recorded_at > a.asked_at
    )
    select n.kind, count(*) from newer n
    where not exists (select from opinion_source s where s.thread_id = thread and s.source_id = n.id)
    group by n.kind
$$;

-- How the caller's own advice fared: what was decided and what came of it, in the words of a list.
create function my_advice_fared()
    returns table (thread_id uuid, view_id uuid, advice text, sure text, given_at timestamptz, decided text, closed_at timestamptz,
        horizon text, done text, result text, months int)
    language sql stable security definer set search_path = espalier, pg_temp
as $$
    select v.thread_id, v.id, v.advice, v.sure, v.at, c.decided, c.closed_at, o.horizon, o.done, o.result, o.months
    from opinion_view v join opinion_close c on c.thread_id = v.thread_id
    left join opinion_outcome o on o.thread_id = v.thread_id
    where v.author = current_staff() and not exists (select from opinion_view later where later.supersedes = v.id)
$$;

grant execute on function surgeons_of_network(), open_opinion_calls(), take_opinion_call(uuid, timestamptz),
    look_at_opinion(uuid, uuid, uuid, timestamptz), newer_opinion_facts(uuid), my_advice_fared() to espalier_app;

-- Tells every node which thread changed: its id, and nothing of what is in it.
create function tell_of_opinion() returns trigger
    language plpgsql set search_path = espalier, pg_temp
as $$
begin
    perform pg_notify('espalier_notice', 'opinion ' || new.thread_id);
    return null;
end $$;
create trigger opinion_message_told after insert on opinion_message for each row execute function tell_of_opinion();
create trigger opinion_mark_told after insert on opinion_mark for each row execute function tell_of_opinion();
create trigger opinion_reading_told after insert on opinion_reading for each row execute function tell_of_opinion();
create trigger opinion_view_told after insert on opinion_view for each row execute function tell_of_opinion();
create trigger opinion_shown_told after insert on opinion_shown for each row execute function tell_of_opinion();
create trigger opinion_film_told after insert on opinion_film for each row execute function tell_of_opinion();
create trigger opinion_hand_over_told after insert or update on opinion_hand_over
    for each row execute function tell_of_opinion();
create trigger opinion_member_told after insert or update on opinion_member
    for each row execute function tell_of_opinion();
create trigger opinion_close_told after insert on opinion_close for each row execute function tell_of_opinion();
create trigger opinion_outcome_told after insert on opinion_outcome for each row execute function tell_of_opinion();

create trigger opinion_thread_is_a_fact before update or delete on opinion_thread
    for each row execute function refuse_changed_fact();
create trigger opinion_shown_is_a_fact before update or delete on opinion_shown
    for each row execute function refuse_changed_fact();
create trigger opinion_film_is_a_fact before update or delete on opinion_film
    for each row execute function refuse_changed_fact();
create trigger opinion_message_is_a_fact before update or delete on opinion_message
    for each row execute function refuse_changed_fact();
create trigger opinion_mark_is_a_fact before update or delete on opinion_mark
    for each row execute function refuse_changed_fact();
create trigger opinion_reading_is_a_fact before update or delete on opinion_reading
    for each row execute function refuse_changed_fact();
create trigger opinion_view_is_a_fact before update or delete on opinion_view
    for each row execute function refuse_changed_fact();
create trigger opinion_close_is_a_fact before update or delete on opinion_close
    for each row execute function refuse_changed_fact();
create trigger opinion_outcome_is_a_fact before update or delete on opinion_outcome
    for each row execute function refuse_changed_fact();

alter table opinion_panel enable row level security;
alter table opinion_panel force row level security;
create policy opinion_panel_read on opinion_panel for select using ((select current_staff()) is not null);
create policy opinion_panel_add on opinion_panel for insert
    with check (made_by = (select current_staff()) and cardinality((select my_sites_as('SURGEON'))) > 0);
grant select, insert on opinion_panel to espalier_app;

alter table opinion_panel_member enable row level security;
alter table opinion_panel_member force row level security;
create policy opinion_panel_member_read on opinion_panel_member for select using ((select current_staff()) is not null);
create policy opinion_panel_member_add on opinion_panel_member for insert
    with check (panel_id in (select id from opinion_panel where made_by = (select current_staff())));
create policy opinion_panel_member_leave on opinion_panel_member for delete
    using (staff_id = (select current_staff())
        or panel_id in (select id from opinion_panel where made_by = (select current_staff())));
grant select, insert, delete on opinion_panel_member to espalier_app;

alter table opinion_thread enable row level security;
alter table opinion_thread force row level security;
create policy opinion_thread_read on opinion_thread for select using (id = any((select my_threads())::uuid[]));
create policy opinion_thread_add on opinion_thread for insert
    with check (site_id = any((select my_sites_as('SURGEON'))::uuid[]) and asker = (select current_staff()));
grant select, insert on opinion_thread to espalier_app;

alter table opinion_case enable row level security;
alter table opinion_case force row level security;
create policy opinion_case_read on opinion_case for select
    using (site_id = any((select my_sites_as('SURGEON', 'NURSE', 'RADIOGRAPHER'))::uuid[]));
create policy opinion_case_add on opinion_case for insert
    with check (site_id = any((select my_sites_as('SURGEON'))::uuid[]));
grant select, insert on opinion_case to espalier_app;

alter table opinion_source enable row level security;
alter table opinion_source force row level security;
create policy opinion_source_read on opinion_source for select
    using (thread_id = any((select my_asked_threads('SURGEON', 'NURSE', 'RADIOGRAPHER'))::uuid[]));
create policy opinion_source_add on opinion_source for insert
    with check (thread_id = any((select my_asked_threads('SURGEON'))::uuid[]));
grant select, insert on opinion_source to espalier_app;

alter table opinion_member enable row level security;
alter table opinion_member force row level security;
create policy opinion_member_read on opinion_member for select
    using (thread_id = any((select my_threads())::uuid[]) or staff_id = (select current_staff()));
create policy opinion_member_add on opinion_member for insert
    with check (thread_id = any((select my_asked_threads('SURGEON'))::uuid[]) and granted_by = (select current_staff()));
create policy opinion_member_change on opinion_member for update
    using (thread_id = any((select my_asked_threads('SURGEON'))::uuid[]))
    with check (thread_id = any((select my_asked_threads('SURGEON'))::uuid[]));
grant select, insert on opinion_member to espalier_app;
grant update (ends_at, why_ended) on opinion_member to espalier_app;

alter table opinion_shown enable row level security;
alter table opinion_shown force row level security;
create policy opinion_shown_read on opinion_shown for select using (thread_id = any((select my_threads())::uuid[]));
create policy opinion_shown_add on opinion_shown for insert
    with check (thread_id = any((select my_asked_threads('SURGEON'))::uuid[]) and added_by = (select current_staff()));
grant select, insert on opinion_shown to espalier_app;

alter table opinion_film enable row level security;
alter table opinion_film force row level security;
create policy opinion_film_read on opinion_film for select using (thread_id = any((select my_threads())::uuid[]));
create policy opinion_film_add on opinion_film for insert
    with check (thread_id = any((select my_asked_threads('SURGEON'))::uuid[]) and checked_by = (select current_staff()));
grant select, insert on opinion_film to espalier_app;

-- After the end a colleague keeps their own words.
alter table opinion_message enable row level security;
alter table opinion_message force row level security;
create policy opinion_message_read on opinion_message for select
    using (thread_id = any((select my_threads())::uuid[]) or author = (select current_staff()));
create policy opinion_message_add on opinion_message for insert
    with check (thread_id = any((select my_writing_threads())::uuid[]) and author = (select current_staff()));
grant select, insert on opinion_message to espalier_app;

alter table opinion_mark enable row level security;
alter table opinion_mark force row level security;
create policy opinion_mark_read on opinion_mark for select using (thread_id = any((select my_threads())::uuid[]));
create policy opinion_mark_add on opinion_mark for insert
    with check (thread_id = any((select my_writing_threads())::uuid[]) and author = (select current_staff()));
grant select, insert on opinion_mark to espalier_app;

-- Nobody sees how others read a film before having read it: neither those asked nor who asks.
alter table opinion_reading enable row level security;
alter table opinion_reading force row level security;
create policy opinion_reading_read on opinion_reading for select
    using (thread_id = any((select my_threads())::uuid[])
        and (reader = (select current_staff()) or film_id = any((select my_read_films())::uuid[])
            or thread_id = any((select my_asked_threads('SURGEON', 'NURSE', 'RADIOGRAPHER'))::uuid[])));
create policy opinion_reading_add on opinion_reading for insert
    with check (thread_id = any((select my_writing_threads())::uuid[]) and reader = (select current_staff()));
grant select, insert on opinion_reading to espalier_app;

alter table opinion_view enable row level security;
alter table opinion_view force row level security;
create policy opinion_view_read on opinion_view for select
    using (thread_id = any((select my_threads())::uuid[]) or author = (select current_staff()));
create policy opinion_view_add on opinion_view for insert
    with check (thread_id = any((select my_writing_threads())::uuid[]) and author = (select current_staff()));
grant select, insert on opinion_view to espalier_app;

alter table opinion_hand_over enable row level security;
alter table opinion_hand_over force row level security;
create policy opinion_hand_over_read on opinion_hand_over for select
    using (thread_id = any((select my_threads())::uuid[]));
create policy opinion_hand_over_add on opinion_hand_over for insert
    with check (thread_id = any((select my_granted_threads('ANSWER'))::uuid[])
        and from_staff = (select current_staff()) and agreed_at is null);
create policy opinion_hand_over_agree on opinion_hand_over for update
    using (thread_id = any((select my_asked_threads('SURGEON'))::uuid[]) and agreed_at is null)
    with check (thread_id = any((select my_asked_threads('SURGEON'))::uuid[]) and agreed_by = (select current_staff()));
grant select, insert on opinion_hand_over to espalier_app;
grant update (agreed_by, agreed_at) on opinion_hand_over to espalier_app;

alter table opinion_close enable row level security;
alter table opinion_close force row level security;
create policy opinion_close_read on opinion_close for select using (thread_id = any((select my_threads())::uuid[]));
create policy opinion_close_add on opinion_close for insert
    with check (thread_id = any((select my_asked_threads('SURGEON'))::uuid[]) and closed_by = (select current_staff()));
grant select, insert on opinion_close to espalier_app;

alter table opinion_outcome enable row level security;
alter table opinion_outcome force row level security;
create policy opinion_outcome_read on opinion_outcome for select using (thread_id = any((select my_threads())::uuid[]));
create policy opinion_outcome_add on opinion_outcome for insert
    with check (thread_id = any((select my_asked_threads('SURGEON'))::uuid[]) and recorded_by = (select current_staff())
        and thread_id in (select thread_id from opinion_close));
grant select, insert on opinion_outcome to espalier_app;

alter table opinion_seen enable row level security;
alter table opinion_seen force row level security;
create policy opinion_seen_read on opinion_seen for select using (staff_id = (select current_staff()));
create policy opinion_seen_add on opinion_seen for insert
    with check (staff_id = (select current_staff()) and thread_id = any((select my_threads())::uuid[]));
create policy opinion_seen_change on opinion_seen for update
    using (staff_id = (select current_staff())) with check (staff_id = (select current_staff()));
grant select, insert on opinion_seen to espalier_app;
grant update (seen_at) on opinion_seen to espalier_app;
