-- What a letter says of the hospital: where it is and whom the family calls. Without a number no letter is written.

create table letterhead (
    site_id uuid primary key references site,
    address text not null check (length(address) between 3 and 400),
    phone text not null check (length(phone) between 3 and 60),
    version bigint not null default 1 check (version > 0)
);
alter table letterhead enable row level security;
alter table letterhead force row level security;
create policy letterhead_read on letterhead for select using (site_id = any((select my_sites())::uuid[]));
create policy letterhead_add on letterhead for insert
    with check (site_id = any((select my_sites_as('SURGEON', 'NURSE'))::uuid[]));
create policy letterhead_change on letterhead for update
    using (site_id = any((select my_sites_as('SURGEON', 'NURSE'))::uuid[]))
    with check (site_id = any((select my_sites_as('SURGEON', 'NURSE'))::uuid[]));
grant select, insert on letterhead to espalier_app;
grant update (address, phone, version) on letterhead to espalier_app;
grant select on letterhead to espalier_job;
