-- Where the newest revision balances, for the fleet; made from the record at the next start, so the defaults are never shown.
alter table airframe add column balance_verdict varchar(10) default 'UNKNOWN' not null;
alter table airframe add column cg_x_mm double precision;
alter table airframe add column cg_percent_mac double precision;
alter table airframe add column forward_limit_x_mm double precision;
alter table airframe add column aft_limit_x_mm double precision;
alter table airframe add column forward_limit_percent_mac double precision;
alter table airframe add column aft_limit_percent_mac double precision;
