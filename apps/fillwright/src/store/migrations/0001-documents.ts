import type { Migration } from '../migration.ts';

/**
 * Documents as immutable versions. `at` is text, since the hash is over the text as it was kept.
 * A version cannot be changed or removed; the head of a chain only moves forward by one.
 */
export const documents: Migration = {
  number: 1,
  statements: [
    `create table fillwright.document (
       site text not null, kind text not null, id text not null,
       version integer not null check (version >= 1),
       status text not null check (status in ('draft', 'saved')),
       text text not null,
       sha256 text not null check (length(sha256) = 64),
       previous text check (length(previous) = 64),
       by text not null, at text not null, reason text,
       primary key (site, kind, id, version),
       check ((version = 1) = (previous is null))
     )`,
    `create table fillwright.head (
       site text not null, kind text not null, id text not null,
       version integer not null check (version >= 0),
       sha256 text not null,
       primary key (site, kind, id)
     )`,
    `create function fillwright.refuse() returns trigger language plpgsql as $$
       begin raise exception '% is append-only: % refused', tg_table_name, lower(tg_op); end $$`,
    `create function fillwright.forward() returns trigger language plpgsql as $$
       begin
         if new.site <> old.site or new.kind <> old.kind or new.id <> old.id or new.version <> old.version + 1 then
           raise exception 'head only moves forward by one: update refused';
         end if;
         return new;
       end $$`,
    `create trigger append_only before update or delete or truncate on fillwright.document
       for each statement execute function fillwright.refuse()`,
    `create trigger append_only before delete or truncate on fillwright.head
       for each statement execute function fillwright.refuse()`,
    `create trigger forward_only before update on fillwright.head
       for each row execute function fillwright.forward()`,
  ],
};
