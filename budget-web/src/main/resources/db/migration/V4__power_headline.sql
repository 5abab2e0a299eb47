-- What the supply of the newest revision can carry, for the fleet; made from the record at the next start, so the defaults are never shown.
alter table airframe add column power_verdict varchar(10) default 'UNKNOWN' not null;
alter table airframe add column power_margin_percent double precision;
alter table airframe add column power_endurance_minutes double precision;
