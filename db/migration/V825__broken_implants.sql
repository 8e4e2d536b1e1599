-- What was seen broken at a hospital is found without looking at every finding.
create index implant_finding_broken on implant_finding (site_id, seen_on) where finding = 'BROKEN';
