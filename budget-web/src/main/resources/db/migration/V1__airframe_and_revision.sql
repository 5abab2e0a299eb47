create sequence airframe_seq increment by 50;
create sequence revision_seq increment by 50;
create sequence line_row_seq increment by 50;

create table airframe (
  id bigint primary key,
  code varchar(40) not null,
  name varchar(200) not null,
  stage varchar(20) not null,
  head_revision_id bigint not null,
  head_number integer not null,
  head_author varchar(60) not null,
  head_moment timestamp(6) with time zone not null,
  head_title varchar(200) not null,
  target_mg bigint,
  basic_mg bigint not null,
  predicted_mg bigint not null,
  mass_verdict varchar(10) not null,
  line_count integer not null,
  cache_version integer not null,
  constraint airframe_code_once unique (code)
);

create table revision (
  id bigint primary key,
  airframe_id bigint not null references airframe (id),
  number integer not null,
  author varchar(60) not null,
  moment timestamp(6) with time zone not null,
  title varchar(200) not null,
  reason varchar(500) not null,
  nature varchar(10) not null,
  target_mg bigint,
  basic_mg bigint not null,
  predicted_mg bigint not null,
  mass_verdict varchar(10) not null,
  figures varchar(20000) not null,
  review_version integer not null,
  constraint revision_number_once unique (airframe_id, number)
);

create table revision_body (
  revision_id bigint primary key references revision (id),
  format varchar(40) not null,
  sha256 varchar(64) not null,
  document bytea not null,
  change_document bytea not null
);

create table line_row (
  id bigint primary key,
  airframe_id bigint not null references airframe (id),
  line_id varchar(40) not null,
  name varchar(200) not null,
  name_folded varchar(200) not null,
  part_code varchar(80),
  assembly varchar(40) not null,
  category varchar(20) not null,
  quantity integer not null,
  unit_mass_mg bigint,
  basis varchar(12) not null,
  constraint line_row_once unique (airframe_id, line_id)
);

create index line_row_part_code on line_row (part_code);
create index line_row_name on line_row (name_folded);
create index revision_moment on revision (moment);
