#!/bin/sh
# Runs once, when the database server is new: makes the roles of db/bootstrap/roles.sql with the passwords of the secrets.
set -eu
psql -v ON_ERROR_STOP=1 -v database=espalier --username "$POSTGRES_USER" --dbname espalier <<SQL
select set_config('espalier.owner', '$(cat /run/secrets/db_owner)', false) is not null,
    set_config('espalier.app', '$(cat /run/secrets/db_app)', false) is not null,
    set_config('espalier.job', '$(cat /run/secrets/db_job)', false) is not null,
    set_config('espalier.backup', '$(cat /run/secrets/db_backup)', false) is not null;
\i /bootstrap/roles.sql
SQL
