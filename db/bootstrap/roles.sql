-- Run once by a superuser in a new, empty database, before the application's first start. db/README.md says what each
-- role is for. The passwords come from the session settings espalier.owner, .app, .job and .backup.
do $$
declare
    role record;
begin
    for role in
        select * from (values
            ('owner', 'bypassrls'),
            ('app', 'nobypassrls'),
            ('job', 'nobypassrls'),
            ('backup', 'bypassrls')) as r(name, wall)
    loop
        if not exists (select from pg_roles where rolname = 'espalier_' || role.name) then
            execute format('create role espalier_%s', role.name);
        end if;
        execute format(
            'alter role espalier_%s login nosuperuser nocreatedb nocreaterole inherit %s password %L',
            role.name, role.wall, current_setting('espalier.' || role.name));
        execute format('grant connect on database %I to espalier_%s', current_database(), role.name);
    end loop;
end $$;

revoke all on schema public from public;
revoke temporary on database :database from public;
create schema if not exists espalier authorization espalier_owner;
grant usage on schema espalier to espalier_app, espalier_job, espalier_backup;
alter default privileges for role espalier_owner in schema espalier grant select on tables to espalier_backup;
alter default privileges for role espalier_owner in schema espalier revoke execute on functions from public;
alter default privileges for role espalier_owner revoke execute on functions from public;

create schema if not exists extensions;
grant usage on schema extensions to public;
create extension if not exists btree_gist schema extensions;
create extension if not exists pg_trgm schema extensions;
create extension if not exists pgcrypto schema extensions;
alter role espalier_owner set search_path = espalier, extensions;
alter role espalier_app set search_path = espalier, extensions;
alter role espalier_job set search_path = espalier, extensions;
alter role espalier_backup set search_path = espalier, extensions;
