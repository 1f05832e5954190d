// Why: brings the tables up to date, once, whichever of several processes comes first.
import { type Kysely, sql } from 'kysely';
import { KeepProblem } from '../problem.ts';
import { type Migration, migrations } from './migrations.ts';
import type { Tables } from './schema.ts';

/** Any number, as long as it is always the same: two processes must not migrate at once. */
const migrationLock = 727_310_422;

/** Runs what has not been run yet, all or nothing. Throws `database-newer` where a migration is not known here. */
export async function migrate(db: Kysely<Tables>, list: readonly Migration[] = migrations): Promise<void> {
  await db.transaction().execute(async (trx) => {
    await sql`select pg_advisory_xact_lock(${sql.lit(migrationLock)})`.execute(trx);
    await sql`create schema if not exists walkwright`.execute(trx);
    await sql`create table if not exists walkwright.migration (
      name text primary key, at timestamptz not null default now())`.execute(trx);
    const done = new Set(
      (await trx.selectFrom('walkwright.migration').select('name').execute()).map((row) => row.name),
    );
    const known = new Set(list.map((migration) => migration.name));
    for (const name of done)
      if (!known.has(name)) throw new KeepProblem('database-newer', { migration: name });
    for (const migration of list) {
      if (done.has(migration.name)) continue;
      for (const statement of migration.statements) await sql.raw(statement).execute(trx);
      await trx.insertInto('walkwright.migration').values({ name: migration.name }).execute();
    }
  });
}
