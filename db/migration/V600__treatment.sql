-- What was done to a child's limbs and what is meant to be done: facts, each superseded by at most one later one. What
-- state a physis is in follows from them and is kept nowhere.

-- One treatment on one day: in one anaesthetic, in one cast room visit. Its acts are in procedure_act.
create table procedure_session (
    id uuid primary key,
    site_id uuid not null,
    recorded_site uuid not null references site,
    child_id uuid not null,
    done_on date not null,
    elsewhere boolean not null default false,
    surgeon_name text check (length(surgeon_name) between 1 and 120),
    note text check (length(note) between 1 and 2000),
    next_on date,
    next_why text check (length(next_why) between 1 and 200),
    supersedes uuid unique,
    withdrawn boolean not null default false,
    reason text,
    recorded_by uuid references staff,
    recorded_at timestamptz not null,
    foreign key (site_id, child_id) references child (site_id, id) on update cascade,
    unique (child_id, id),
    foreign key (child_id, supersedes) references procedure_session (child_id, id),
    check (withdrawn or next_on is not null and next_why is not null),
    check (next_on >= done_on),
    check ((supersedes is null) = (reason is null)),
    check (not withdrawn or supersedes is not null)
);
create index on procedure_session (child_id, done_on);
create index on procedure_session (site_id, done_on);

-- A deliberate reversal: a plate on the side that makes the deformity grow, wanted all the same. It holds only with the
-- consent of a second person, who speaks for themselves.
create table side_reversal (
    id uuid primary key,
    site_id uuid not null,
    recorded_site uuid not null references site,
    child_id uuid not null,
    side text not null check (side in ('RIGHT', 'LEFT')),
    bone text not null check (bone in ('FEMUR', 'TIBIA', 'FIBULA')),
    bone_end text not null check (bone_end in ('PROXIMAL', 'DISTAL')),
    plate_side text not null check (plate_side in ('MEDIAL', 'LATERAL', 'ANTERIOR', 'POSTERIOR')),
    because text not null check (length(because) between 1 and 400),
    asked_by uuid not null references staff,
    asked_at timestamptz not null,
    foreign key (site_id, child_id) references child (site_id, id) on update cascade,
    unique (child_id, id),
    unique (id, asked_by)
);
create index on side_reversal (child_id);

create table side_reversal_consent (
    reversal_id uuid primary key,
    site_id uuid not null,
    recorded_site uuid not null references site,
    child_id uuid not null,
    asked_by uuid not null,
    consented_by uuid not null references staff,
    consented_at timestamptz not null,
    by_password boolean not null,
    foreign key (site_id, child_id) references child (site_id, id) on update cascade,
    foreign key (child_id, reversal_id) references side_reversal (child_id, id),
    foreign key (reversal_id, asked_by) references side_reversal (id, asked_by),
    check (consented_by <> asked_by)
);
create index on side_reversal_consent (child_id);

-- A wanted procedure on one physis: decided, asked for, given a day in theatre. Listed is a plan that was asked for.
create table treatment_plan (
    id uuid primary key,
    site_id uuid not null,
    recorded_site uuid not null references site,
    child_id uuid not null,
    planned_on date not null,
    kind text,
    side text check (side in ('RIGHT', 'LEFT')),
    bone text check (bone in ('FEMUR', 'TIBIA', 'FIBULA')),
    bone_end text check (bone_end in ('PROXIMAL', 'DISTAL')),
    plate_side text check (plate_side in ('MEDIAL', 'LATERAL', 'ANTERIOR', 'POSTERIOR')),
    deformity text check (deformity in ('VARUS', 'VALGUS', 'FLEXION', 'RECURVATUM', 'OVERLENGTH')),
    implants text check (length(implants) between 1 and 200),
    intent text check (length(intent) between 1 and 400),
    expectation text check (length(expectation) between 1 and 400),
    asked_on date,
    theatre_on date,
    past_target_deg numeric(4, 1) check (past_target_deg between -60 and 60),
    supersedes uuid unique,
    withdrawn boolean not null default false,
    reason text,
    recorded_by uuid references staff,
    recorded_at timestamptz not null,
    foreign key (site_id, child_id) references child (site_id, id) on update cascade,
    unique (child_id, id),
    foreign key (child_id, supersedes) references treatment_plan (child_id, id),
    check (withdrawn or kind is not null and side is not null),
    check ((bone is null) = (bone_end is null)),
    check (asked_on >= planned_on and (theatre_on is null or theatre_on >= asked_on)),
    check (theatre_on is null or asked_on is not null),
    check ((supersedes is null) = (reason is null)),
    check (not withdrawn or supersedes is not null)
);
create index on treatment_plan (child_id);
create index on treatment_plan (site_id, theatre_on);

create table procedure_act (
    session_id uuid not null,
    number smallint not null check (number > 0),
    site_id uuid not null,
    recorded_site uuid not null references site,
    child_id uuid not null,
    kind text not null,
    side text not null check (side in ('RIGHT', 'LEFT')),
    bone text check (bone in ('FEMUR', 'TIBIA', 'FIBULA')),
    bone_end text check (bone_end in ('PROXIMAL', 'DISTAL')),
    plate_side text check (plate_side in ('MEDIAL', 'LATERAL', 'ANTERIOR', 'POSTERIOR')),
    implant uuid,
    implants text not null check (length(implants) between 1 and 200),
    implant_count smallint not null check (implant_count between 0 and 40),
    answers jsonb not null default '{}',
    plan uuid,
    reversal uuid,
    primary key (session_id, number),
    foreign key (site_id, child_id) references child (site_id, id) on update cascade,
    foreign key (child_id, session_id) references procedure_session (child_id, id),
    foreign key (child_id, plan) references treatment_plan (child_id, id),
    foreign key (child_id, reversal) references side_reversal (child_id, id),
    check ((bone is null) = (bone_end is null))
);
create index on procedure_act (child_id);
create index on procedure_act (implant);

-- The angle a physis, or the deviation a limb, is guided to: explicit, signed, reasoned.
create table treatment_target (
    id uuid primary key,
    site_id uuid not null,
    recorded_site uuid not null references site,
    child_id uuid not null,
    signed_on date not null,
    side text check (side in ('RIGHT', 'LEFT')),
    bone text check (bone in ('FEMUR', 'TIBIA', 'FIBULA')),
    bone_end text check (bone_end in ('PROXIMAL', 'DISTAL')),
    angle_deg numeric(4, 1) check (angle_deg between -30 and 130),
    because text check (length(because) between 1 and 400),
    supersedes uuid unique,
    withdrawn boolean not null default false,
    reason text,
    recorded_by uuid references staff,
    recorded_at timestamptz not null,
    foreign key (site_id, child_id) references child (site_id, id) on update cascade,
    unique (child_id, id),
    foreign key (child_id, supersedes) references treatment_target (child_id, id),
    check (withdrawn or side is not null and angle_deg is not null and because is not null),
    check ((bone is null) = (bone_end is null)),
    check ((supersedes is null) = (reason is null)),
    check (not withdrawn or supersedes is not null)
);
create index on treatment_target (child_id);

-- What was seen of an implant in place.
create table implant_finding (
    id uuid primary key,
    site_id uuid not null,
    recorded_site uuid not null references site,
    child_id uuid not null,
    seen_on date not null,
    implant uuid,
    part text check (part in ('METAPHYSEAL_SCREW', 'EPIPHYSEAL_SCREW', 'BODY')),
    finding text check (finding in ('SOUND', 'EXPOSED', 'BENT', 'LOOSE', 'BROKEN', 'FRAGMENT_RETAINED')),
    told_on date,
    note text check (length(note) between 1 and 400),
    supersedes uuid unique,
    withdrawn boolean not null default false,
    reason text,
    recorded_by uuid references staff,
    recorded_at timestamptz not null,
    foreign key (site_id, child_id) references child (site_id, id) on update cascade,
    unique (child_id, id),
    foreign key (child_id, supersedes) references implant_finding (child_id, id),
    check (withdrawn or implant is not null and part is not null and finding is not null),
    check ((supersedes is null) = (reason is null)),
    check (not withdrawn or supersedes is not null)
);
create index on implant_finding (child_id);

-- A physis was seen closed, by a named reader, on a film of that day. What is still in is to stay or to come out.
create table physis_maturity (
    id uuid primary key,
    site_id uuid not null,
    recorded_site uuid not null references site,
    child_id uuid not null,
    film_on date not null,
    side text check (side in ('RIGHT', 'LEFT')),
    bone text check (bone in ('FEMUR', 'TIBIA', 'FIBULA')),
    bone_end text check (bone_end in ('PROXIMAL', 'DISTAL')),
    reader_name text check (length(reader_name) between 1 and 120),
    retained_told_on date,
    remove_by date,
    supersedes uuid unique,
    withdrawn boolean not null default false,
    reason text,
    recorded_by uuid references staff,
    recorded_at timestamptz not null,
    foreign key (site_id, child_id) references child (site_id, id) on update cascade,
    unique (child_id, id),
    foreign key (child_id, supersedes) references physis_maturity (child_id, id),
    check (withdrawn or side is not null and bone is not null and bone_end is not null and reader_name is not null),
    check (retained_told_on is null or remove_by is null),
    check ((supersedes is null) = (reason is null)),
    check (not withdrawn or supersedes is not null)
);
create index on physis_maturity (child_id);

-- Care of a limb, or of both, ends, is handed over, or is taken up again.
create table care_step (
    id uuid primary key,
    site_id uuid not null,
    recorded_site uuid not null references site,
    child_id uuid not null,
    happened_on date not null,
    side text check (side in ('RIGHT', 'LEFT')),
    step text check (step in ('ENDED', 'TRANSFERRED', 'TAKEN_UP')),
    why_ended text check (why_ended in ('STRAIGHT', 'ADULT_CARE', 'LEFT_NETWORK', 'DECLINED', 'DIED')),
    note text check (length(note) between 1 and 400),
    supersedes uuid unique,
    withdrawn boolean not null default false,
    reason text,
    recorded_by uuid references staff,
    recorded_at timestamptz not null,
    foreign key (site_id, child_id) references child (site_id, id) on update cascade,
    unique (child_id, id),
    foreign key (child_id, supersedes) references care_step (child_id, id),
    check (withdrawn or step is not null),
    check (coalesce(step = 'ENDED', false) = (why_ended is not null)),
    check ((supersedes is null) = (reason is null)),
    check (not withdrawn or supersedes is not null)
);
create index on care_step (child_id);

-- Grade I to V: no treatment needed; minor treatment; operation or admission not planned; limb or life in danger; death.
create table complication (
    id uuid primary key,
    site_id uuid not null,
    recorded_site uuid not null references site,
    child_id uuid not null,
    seen_on date not null,
    session_id uuid,
    side text check (side in ('RIGHT', 'LEFT')),
    kind text check (kind in ('STIFFNESS', 'INFECTION', 'NERVE', 'COMPARTMENT', 'NEW_BAR', 'DEVICE', 'OTHER')),
    grade smallint check (grade between 1 and 5),
    note text check (length(note) between 1 and 400),
    supersedes uuid unique,
    withdrawn boolean not null default false,
    reason text,
    recorded_by uuid references staff,
    recorded_at timestamptz not null,
    foreign key (site_id, child_id) references child (site_id, id) on update cascade,
    unique (child_id, id),
    foreign key (child_id, supersedes) references complication (child_id, id),
    foreign key (child_id, session_id) references procedure_session (child_id, id),
    check (withdrawn or kind is not null and grade is not null),
    check ((supersedes is null) = (reason is null)),
    check (not withdrawn or supersedes is not null)
);
create index on complication (child_id);

-- What was asked before and after an operation. What has no answer was not recorded.
create table theatre_check (
    id uuid primary key,
    site_id uuid not null,
    recorded_site uuid not null references site,
    child_id uuid not null,
    checked_on date not null,
    phase text check (phase in ('BEFORE', 'AFTER')),
    answers jsonb,
    supersedes uuid unique,
    withdrawn boolean not null default false,
    reason text,
    recorded_by uuid references staff,
    recorded_at timestamptz not null,
    foreign key (site_id, child_id) references child (site_id, id) on update cascade,
    unique (child_id, id),
    foreign key (child_id, supersedes) references theatre_check (child_id, id),
    check (withdrawn or phase is not null and answers is not null),
    check ((supersedes is null) = (reason is null)),
    check (not withdrawn or supersedes is not null)
);
create index on theatre_check (child_id);

-- The same walls about each: read by those who treat and by the auditor, added at the site that has care, never changed
-- but for the site as a row moves with its child. Targets, maturity and asking for a reversal are the surgeon's.
do $$
declare
    fact text;
    writers text;
begin
    foreach fact in array array['procedure_session', 'procedure_act', 'side_reversal', 'side_reversal_consent',
        'treatment_plan', 'treatment_target', 'implant_finding', 'physis_maturity', 'care_step', 'complication',
        'theatre_check']
    loop
        writers := case when fact in ('treatment_target', 'physis_maturity', 'side_reversal')
            then '''SURGEON''' else '''SURGEON'', ''NURSE''' end;
        execute format('alter table %I enable row level security', fact);
        execute format('alter table %I force row level security', fact);
        execute format($policy$
            create policy %I on %I for select
                using (site_id = any((select my_sites_as('SURGEON', 'NURSE', 'RADIOGRAPHER', 'AUDITOR'))::uuid[])
                    or recorded_site = any((select my_sites_as('SURGEON', 'NURSE', 'RADIOGRAPHER', 'AUDITOR'))::uuid[])
                    or child_id = any((select my_granted())::uuid[]))
            $policy$, fact || '_read', fact);
        execute format($policy$
            create policy %I on %I for insert
                with check (site_id = any((select my_sites_as(%s))::uuid[]) and recorded_site = site_id %s)
            $policy$, fact || '_add', fact, writers,
            case fact when 'side_reversal' then 'and asked_by = (select current_staff())'
                when 'side_reversal_consent' then 'and consented_by = (select current_staff())' else '' end);
        execute format('grant select, insert on %I to espalier_app', fact);
        execute format('grant select on %I to espalier_job', fact);
        execute format($trigger$
            create trigger %I before update on %I for each row
                when ((to_jsonb(old) - 'site_id') is distinct from (to_jsonb(new) - 'site_id'))
                execute function refuse_changed_fact()
            $trigger$, fact || '_is_a_fact', fact);
        execute format('create trigger %I before delete on %I for each row execute function refuse_changed_fact()',
            fact || '_stays', fact);
    end loop;
end $$;
