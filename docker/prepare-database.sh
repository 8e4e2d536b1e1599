#!/bin/sh
# Runs once, when the database server is new: makes the roles of db/bootstrap/roles.sql with the passwords of the secrets.
set -eu
psql -v ON_ERROR_STOP=1 -v database=espalier --username "$POSTGRES_USER" --dbname espalier <<'SQL'
\set owner `cat /run/secrets/db_owner`
\set app `cat /run/secrets/db_app`
\set job `cat /run/secrets/db_job`
\set backup `cat /run/secrets/db_backup`
select set_config('espalier.owner', :'owner', false) is not null,
    set_config('espalier.app', :'app', false) is not null,
    set_config('espalier.job', :'job', false) is not null,
    set_config('espalier.backup', :'backup', false) is not null;
\i /bootstrap/roles.sql
SQL
