-- What the radio and the outputs of the newest revision have room for, for the fleet; made from the record at the next start, so the defaults are never shown.
alter table airframe add column radio_verdict varchar(10) default 'UNKNOWN' not null;
alter table airframe add column radio_channels_needed integer;
alter table airframe add column radio_channels_available integer;
alter table airframe add column radio_shared_pairs integer;
alter table airframe add column outputs_verdict varchar(10) default 'UNKNOWN' not null;
alter table airframe add column outputs_needed integer;
alter table airframe add column outputs_available integer;
