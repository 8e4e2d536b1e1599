-- Which growth plate would come to harm, into which deformity, and within what bounds: an angle is not told without them.

alter table visit
    add column harm_side text,
    add column harm_bone text,
    add column harm_bone_end text,
    add column harm_into text check (harm_into in ('VARUS', 'VALGUS')),
    add column harm_low double precision check (harm_low >= 0),
    add column harm_high double precision check (harm_high >= harm_low),
    add check ((harm_side is null) = (harm_bone is null) and (harm_side is null) = (harm_bone_end is null)),
    add check ((harm_into is null) = (harm_low is null) and (harm_into is null) = (harm_high is null));
grant update (harm_side, harm_bone, harm_bone_end, harm_into, harm_low, harm_high) on visit to espalier_app, espalier_job;
