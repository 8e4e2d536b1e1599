-- How the caller's own advice fared, with where and when in their own words.
drop function my_advice_fared();
create function my_advice_fared()
    returns table (thread_id uuid, view_id uuid, advice text, place text, due text, sure text, given_at timestamptz,
        decided text, closed_at timestamptz, horizon text, done text, result text, months int)
    language sql stable security definer set search_path = espalier, pg_temp
as $$
    select v.thread_id, v.id, v.advice, v.place, v.due, v.sure, v.at, c.decided, c.closed_at,
        o.horizon, o.done, o.result, o.months
    from opinion_view v join opinion_close c on c.thread_id = v.thread_id
    left join opinion_outcome o on o.thread_id = v.thread_id
    where v.author = current_staff() and not exists (select from opinion_view later where later.supersedes = v.id)
$$;
grant execute on function my_advice_fared() to espalier_app;

-- Of what is closed, what came of it is asked once at each of two times: a year later, and when the child is mature or has
-- left care straight or grown up. What is known at maturity is not asked again for the year.
create function opinion_outcome_due(thread uuid, moment timestamptz) returns text
    language sql stable set search_path = espalier, pg_temp
as $$
    select case
        when exists (select from opinion_outcome o where o.thread_id = x.thread_id and o.horizon = 'MATURITY') then null
        when (
            select k.kind = 'MATURE' or k.kind = 'ENDED' and k.reason in ('STRAIGHT', 'ADULT_CARE')
            from opinion_case c join care_change k on k.child_id = c.child_id
            where c.thread_id = x.thread_id order by k.recorded_at desc limit 1) then 'MATURITY'
        when x.closed_at < moment - interval '1 year'
            and not exists (select from opinion_outcome o where o.thread_id = x.thread_id) then 'YEAR'
    end
    from opinion_close x where x.thread_id = thread
$$;
grant execute on function opinion_outcome_due(uuid, timestamptz) to espalier_app, espalier_job;

-- Counts for the morning's word to a hospital's staff: opinions wanted of them, those of them that are due by a day, threads with
-- something new for somebody there, and closed ones of which it is asked what came of them. Nothing of what is in them.
create function opinion_reminders(site uuid, moment timestamptz, due_until date)
    returns table (wanted bigint, due bigint, unread bigint, outcomes bigint)
    language sql stable security definer set search_path = espalier, pg_temp
as $$
    with mine (thread_id, staff_id, asked, due_by) as (
        select m.thread_id, m.staff_id, true, t.due_by
        from opinion_member m join opinion_thread t on t.id = m.thread_id
        where m.scope = 'ANSWER' and m.opens_at <= moment and m.ends_at > moment
            and exists (select from membership s join staff p on p.id = s.staff_id
                where s.staff_id = m.staff_id and s.site_id = site and s.role = 'SURGEON' and s.valid @> current_date
                    and p.active)
        union all
        select t.id, t.asker, false, t.due_by
        from opinion_case c join opinion_thread t on t.id = c.thread_id where c.site_id = site
    ), open (thread_id, staff_id, asked, due_by) as (
        select * from mine
        where site = any(my_sites()) and not exists (select from opinion_close x where x.thread_id = mine.thread_id)
    ), unanswered (due_by) as (
        select o.due_by from open o where o.asked
            and not exists (select from opinion_view v where v.thread_id = o.thread_id and v.author = o.staff_id)
    ), news (thread_id) as (
        select distinct o.thread_id from open o
        left join opinion_seen s on s.thread_id = o.thread_id and s.staff_id = o.staff_id
        where exists (select from opinion_message m where m.thread_id = o.thread_id and m.author <> o.staff_id
                and m.at > coalesce(s.seen_at, '-infinity'))
            or exists (select from opinion_view v where v.thread_id = o.thread_id and v.author <> o.staff_id
                and v.at > coalesce(s.seen_at, '-infinity'))
    )
    select (select count(*) from unanswered), (select count(*) from unanswered where due_by <= due_until),
        (select count(*) from news),
        (select count(*) from opinion_case c
            where c.site_id = site and site = any(my_sites()) and opinion_outcome_due(c.thread_id, moment) is not null)
$$;
grant execute on function opinion_reminders(uuid, timestamptz, date) to espalier_app, espalier_job;
