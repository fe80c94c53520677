-- Each statement may be run again: where it was cut off, it is begun once more.
-- The sum of a step's text, and of a row of houses, by which damage is told.
alter table step add column if not exists mark bigint;
alter table house add column if not exists mark bigint;

-- Which store this is, and how many changes of it were stored: held against the mark beside the file.
create table if not exists tally (
    store varchar not null,
    changes bigint not null
);

insert into tally
    select cast(random_uuid() as varchar), coalesce((select sum(version) from house), 0)
    where not exists (select * from tally);
