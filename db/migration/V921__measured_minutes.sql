-- How long an operation took by the clock, where somebody recorded it; it is then charged in place of what was agreed.

alter table procedure_session
    add column theatre_minutes smallint check (theatre_minutes between 1 and 1440),
    add column anaesthesia_minutes smallint check (anaesthesia_minutes between 1 and 1440);
