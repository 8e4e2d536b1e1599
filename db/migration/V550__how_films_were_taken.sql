-- How a film was taken goes into one document beside the marks: it is read whole, by its reader's own record, and grows with
-- the questions asked. What earlier readings recorded moves along; one flexion was asked of both knees. The rewrite is done
-- by the table's definition, so that no fact is updated.

alter table reading
    add column taken jsonb not null default '{}',
    add column screws jsonb not null default '[]' check (jsonb_typeof(screws) = 'array'),
    add column second_of uuid,
    add constraint reading_second_of_fkey foreign key (film_id, second_of) references reading (film_id, id),
    add constraint reading_not_second_of_itself check (second_of <> id);

alter table reading alter column taken drop default;
alter table reading alter column taken type jsonb using jsonb_strip_nulls(jsonb_build_object(
    'stance', case stance when 'HELD' then 'STANDING_HELD' else stance end,
    'patellaRight', patella,
    'patellaLeft', patella,
    'flexionRight', knee_flexion_deg,
    'flexionLeft', knee_flexion_deg,
    'ballMm', ball_diameter_mm));
alter table reading
    add check (jsonb_typeof(taken) = 'object'),
    drop column stance,
    drop column patella,
    drop column knee_flexion_deg;

-- A second reading is read blind to the first, by another reader, once each.
create unique index reading_second_once on reading (second_of, reader) where supersedes is null;
