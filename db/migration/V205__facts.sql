-- Facts are superseded, never changed. No role but the owner may update or delete them; this stops the owner too.
-- A fact's table fires it "before update ... when (the content differs)", so that the site that has care can cascade.

create function refuse_changed_fact() returns trigger
    language plpgsql set search_path = espalier, pg_temp
as $$
begin
    raise exception 'a row of % is a fact: it can be superseded, not changed', tg_table_name using errcode = 'ES002';
end $$;
