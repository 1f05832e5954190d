// Why: how the tables came to be, in order; one that has been published is never changed, only followed by another.

export interface Migration {
  readonly name: string;
  readonly statements: readonly string[];
}

export const migrations: readonly Migration[] = [
  {
    name: '0001-entry',
    statements: [
      `create table walkwright.entry (
        dealership text collate "C" not null,
        unit text collate "C" not null,
        position bigint not null check (position > 0),
        id text collate "C" not null,
        kind text not null,
        at_ms bigint not null,
        entry json not null,
        primary key (dealership, unit, position),
        unique (dealership, position),
        unique (dealership, id)
      )`,
      `create function walkwright.refuse_change() returns trigger language plpgsql as $$
        begin
          raise exception 'walkwright.% is append-only: % refused', tg_table_name, tg_op using errcode = 'restrict_violation';
        end $$`,
      `create trigger append_only before update or delete or truncate on walkwright.entry
        for each statement execute function walkwright.refuse_change()`,
      `alter table walkwright.entry enable always trigger append_only`,
    ],
  },
  {
    name: '0002-index-state',
    statements: [
      `create table walkwright.index_state (
        one boolean primary key default true check (one),
        n bigint not null,
        sum text not null,
        lines bigint not null
      )`,
    ],
  },
];
