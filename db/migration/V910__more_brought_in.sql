-- What a clinic brings along now holds plans, targets, complications, the lots that went into a child and how its family is
-- reached. The policies name the hospital a job works for already; what it lacked were the rights to add.
grant insert on treatment_plan, treatment_target, complication, procedure_piece, family to espalier_job;

-- An operation that is brought in ends what was kept ready for its plan; null where no person ended it but the house itself.
alter table stock_reservation drop constraint stock_reservation_check;
alter table stock_reservation add constraint stock_reservation_ended check (ended_by is null or ended_at is not null);
grant select, update (ended_by, ended_at) on stock_reservation to espalier_job;
