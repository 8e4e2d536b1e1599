-- By which limits and wait for theatre the dates of a visit were worked out. Where a hospital goes by others now, the night
-- works them out anew; so it does once for every visit that says nothing of it.

alter table visit add column rules_mark text;
grant update (rules_mark) on visit to espalier_app, espalier_job;
