-- What a clinic brings along now holds the care of its limbs; the policy names the hospital a job works for already.
grant insert on care_step to espalier_job;
