// Why: one suite for whatever keeps the log: the folder on this machine and a real PostgreSQL must answer alike.
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Kysely, PostgresDialect, sql } from 'kysely';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { madeEntries, madeEntry, unitId } from '../../test/faults/keep-entries.ts';
import { type Postgres, startPostgres } from '../../test/postgres.ts';
import { workerDialect } from './index-pglite/dialect.ts';
import { startWorker } from './index-pglite/start-worker.ts';
import type { Kept, Log } from './log.ts';
import { type Keeper, openKeeper } from './open-keeper.ts';
import { openPool } from './postgres/open-pool.ts';
import { migrate } from './tables/migrate.ts';
import { insertRows, toRow } from './tables/queries.ts';
import type { Tables } from './tables/schema.ts';

let postgres: Postgres;
let scratch: string;
let made = 0;

beforeAll(async () => {
  scratch = await mkdtemp(join(tmpdir(), 'walkwright-log-'));
  postgres = await startPostgres();
});
afterAll(async () => {
  await postgres.stop();
  await rm(scratch, { recursive: true, force: true });
});

const freshFolder = (): string => join(scratch, `keeper-${++made}`);
async function freshDatabase(): Promise<string> {
  const name = `keeper_${++made}`;
  const pool = await openPool(postgres.url);
  await pool.query(`create database ${name}`);
  await pool.end();
  return postgres.url.replace(/[^/]*$/, name);
}

const dealership = 'invented-yard';
const contents = async (log: Log): Promise<unknown[]> =>
  (await log.read({ dealership })).map((kept) => kept.entry);
async function lines(log: Log): Promise<string[]> {
  const all: string[] = [];
  for await (const line of log.export()) all.push(line);
  return all;
}
async function until(what: () => boolean): Promise<void> {
  for (let waited = 0; !what() && waited < 10_000; waited += 10)
    await new Promise((go) => setTimeout(go, 10));
  expect(what()).toBe(true);
}

const keepers = [
  { name: 'embedded', open: async () => openKeeper({ folder: freshFolder() }) },
  {
    name: 'PostgreSQL',
    open: async () => openKeeper({ folder: freshFolder(), databaseUrl: await freshDatabase() }),
  },
];

describe.each(keepers)('a log kept $name', ({ open }) => {
  let keeper: Keeper;
  let log: Log;
  beforeAll(async () => {
    keeper = await open();
    log = keeper.log;
  });
  afterAll(() => keeper.close());

  test('keeps entries in order and answers with their positions', async () => {
    const first = madeEntries(0, 5);
    expect(await log.append(first)).toEqual(
      first.map(({ id }, at) => ({ is: 'kept', id, position: at + 1 })),
    );
    expect(await contents(log)).toEqual(first);
    const second = madeEntries(5, 4);
    expect((await log.append(second)).map((one) => one.is === 'kept' && one.position)).toEqual([6, 7, 8, 9]);
    expect(await contents(log)).toEqual([...first, ...second]);
  });

  test('reads one unit, after a position, up to a limit', async () => {
    const ofOne = (await log.read({ dealership, unit: unitId(1) })).map((kept) => kept.position);
    expect(ofOne).toEqual([2, 5, 8]);
    expect(
      (await log.read({ dealership, unit: unitId(1), after: 2, limit: 1 })).map((k) => k.position),
    ).toEqual([5]);
    expect((await log.read({ dealership, after: 7 })).map((k) => k.position)).toEqual([8, 9]);
    expect(await log.read({ dealership, after: 9 })).toEqual([]);
    expect(await log.read({ dealership: 'another-yard' })).toEqual([]);
  });

  test('the same entry sent again, with its keys in another order, was already kept', async () => {
    const again = Object.fromEntries(Object.entries(madeEntry(3)).reverse()) as ReturnType<typeof madeEntry>;
    const value = { plusOrMinus: 0.1, unit: 'V', value: 12.3, is: 'quantity' } as const;
    expect(await log.append([{ ...again, value }])).toEqual([
      { is: 'already kept', id: again.id, position: 4 },
    ]);
    expect(await log.read({ dealership })).toHaveLength(9);
  });

  test('the same id with other content is refused, and the rest of the call is kept', async () => {
    const other = madeEntry(3, { sure: 0.5 });
    const fresh = madeEntry(9);
    expect(await log.append([other, fresh, fresh, { ...fresh, by: 'Somebody Else' }])).toEqual([
      { is: 'refused', id: other.id, code: 'id-taken' },
      { is: 'kept', id: fresh.id, position: 10 },
      { is: 'already kept', id: fresh.id, position: 10 },
      { is: 'refused', id: fresh.id, code: 'id-taken' },
    ]);
    expect((await log.read({ dealership, after: 3, limit: 1 }))[0]?.entry).toEqual(madeEntry(3));
  });

  test("dealerships count for themselves and do not take each other's ids", async () => {
    const theirs = madeEntry(3, { dealership: 'another-yard', sure: 0.25 });
    expect(await log.append([theirs])).toEqual([{ is: 'kept', id: theirs.id, position: 1 }]);
    expect((await log.read({ dealership: 'another-yard' })).map((k) => k.entry)).toEqual([theirs]);
    expect(await log.read({ dealership })).toHaveLength(10);
  });

  test('lists the units of a yard', async () => {
    expect(await log.units(dealership)).toEqual([
      { unit: unitId(0), entries: 4, firstAt: '2026-01-05T14:00:00.000Z', last: 10 },
      { unit: unitId(1), entries: 3, firstAt: '2026-01-05T14:00:01.000Z', last: 8 },
      { unit: unitId(2), entries: 3, firstAt: '2026-01-05T14:00:02.000Z', last: 9 },
    ]);
    expect(await log.units('no-such-yard')).toEqual([]);
  });

  test('the first time of a unit counts offsets from UTC', async () => {
    const unit = unitId(50);
    const early = madeEntry(50, { unit, at: '2026-01-05T09:00:00+02:00' });
    const late = madeEntry(51, { unit, at: '2026-01-05T08:00:00Z' });
    await log.append([late, early].map((entry) => ({ ...entry, dealership: 'offsets' })));
    expect((await log.units('offsets'))[0]?.firstAt).toBe('2026-01-05T07:00:00.000Z');
  });

  test('tells listeners what was kept, once and in order, until they stop', async () => {
    const told: Kept[] = [];
    // Over PostgreSQL a listener may also be told of what was kept just before it began to listen.
    const isNew = ({ position, entry }: Kept): boolean => entry.dealership === dealership && position > 10;
    const stop = log.watch((kept) => told.push(...kept.filter(isNew)));
    const calls = Array.from({ length: 20 }, (_, at) => log.append(madeEntries(100 + at * 5, 5)));
    await Promise.all([...calls, log.append([madeEntry(3)])]);
    await until(() => told.length >= 100);
    expect(told.map((kept) => kept.position)).toEqual(Array.from({ length: 100 }, (_, at) => 11 + at));
    expect(told).toEqual(await log.read({ dealership, after: 10 }));
    stop();
    await log.append(madeEntries(200, 3));
    await log.read({ dealership, limit: 1 });
    expect(told).toHaveLength(100);
  });

  test('keeps a long transcript and a call of thousands', async () => {
    const cues = Array.from({ length: 5000 }, (_, at) => ({
      start: at,
      end: at + 1,
      text: `invented words ${at} \ud800`,
    }));
    const { v, id, unit, at, by, device } = madeEntry(300);
    const transcript = {
      v,
      id,
      dealership: 'long',
      unit,
      at,
      by,
      device,
      kind: 'transcript',
      walk: id,
      media: id,
      cues,
    } as const;
    await log.append([transcript, ...madeEntries(1000, 3000, { dealership: 'long' })]);
    const kept = await log.read({ dealership: 'long' });
    expect(kept).toHaveLength(3001);
    expect(kept[0]?.entry).toEqual(transcript);
  });

  test('exports what it reads back as already kept', async () => {
    const all = await lines(log);
    const imported = await log.import(all);
    expect(imported).toEqual({ kept: 0, already: all.length, refused: [], damaged: [] });
  });
});

describe.each(keepers)('a log kept $name, closed', ({ open }) => {
  test('takes nothing more, says so, and closes without a warning', async () => {
    const warnings: unknown[] = [];
    const hear = (warning: unknown): void => void warnings.push(warning);
    process.on('warning', hear);
    const keeper = await open();
    const last = keeper.log.append(madeEntries(0, 10));
    await last;
    await keeper.close();
    await expect(keeper.log.append([madeEntry(11)])).rejects.toMatchObject({ code: 'closed' });
    await new Promise((go) => setTimeout(go, 50));
    process.removeListener('warning', hear);
    expect(warnings).toEqual([]);
  });
});

describe('append-only, by the database itself', () => {
  const databases = [
    {
      name: 'embedded',
      open: async () => new Kysely<Tables>({ dialect: workerDialect(await startWorker(freshFolder())) }),
    },
    {
      name: 'PostgreSQL',
      open: async () =>
        new Kysely<Tables>({ dialect: new PostgresDialect({ pool: await openPool(await freshDatabase()) }) }),
    },
  ];
  test.each(databases)('$name refuses UPDATE, DELETE and TRUNCATE of entries', async ({ open }) => {
    const db = await open();
    await migrate(db);
    await migrate(db);
    const entry = madeEntry(1);
    await insertRows(db, [toRow(1, entry, JSON.stringify(entry))]);
    const refused = { code: '23001' };
    await expect(sql`update walkwright.entry set kind = 'x'`.execute(db)).rejects.toMatchObject(refused);
    await expect(sql`delete from walkwright.entry`.execute(db)).rejects.toMatchObject(refused);
    await expect(sql`truncate walkwright.entry`.execute(db)).rejects.toMatchObject(refused);
    await expect(
      sql`insert into walkwright.entry select * from walkwright.entry
        on conflict (dealership, id) do update set kind = 'x'`.execute(db),
    ).rejects.toMatchObject(refused);
    await sql`set session_replication_role = replica`.execute(db);
    await expect(sql`delete from walkwright.entry`.execute(db)).rejects.toMatchObject(refused);
    const rows = await db.selectFrom('walkwright.entry').select(['kind', 'entry']).execute();
    expect(rows).toEqual([{ kind: 'observation', entry: JSON.stringify(entry) }]);
    await db.destroy();
  });
});

test('embedded to PostgreSQL to embedded gives the same entries in the same order, and the same export', async () => {
  const first = await openKeeper({ folder: freshFolder() });
  for (let at = 0; at < 40; at++) await first.log.append(madeEntries(at * 7, 7));
  const exported = await lines(first.log);
  const databaseUrl = await freshDatabase();
  const second = await openKeeper({ folder: freshFolder(), databaseUrl });
  const counted: number[] = [];
  expect(await second.log.import(exported, (done) => counted.push(done))).toEqual({
    kept: 280,
    already: 0,
    refused: [],
    damaged: [],
  });
  expect(counted.at(-1)).toBe(280);
  const third = await openKeeper({ folder: freshFolder() });
  await third.log.import(second.log.export());
  expect(await contents(second.log)).toEqual(await contents(first.log));
  expect(await contents(third.log)).toEqual(await contents(first.log));
  expect(await lines(second.log)).toEqual(exported);
  expect(await lines(third.log)).toEqual(exported);
  await Promise.all([first.close(), second.close(), third.close()]);
});

test('import keeps what is sound and names what is not', async () => {
  const from = await openKeeper({ folder: freshFolder() });
  await from.log.append(madeEntries(0, 6));
  const good = await lines(from.log);
  const bad = [...good];
  bad[1] = bad[1]!.replace('invented reading 1', 'invented reading 7');
  bad[3] = bad[3]!.slice(0, 50);
  const to = await openKeeper({ folder: freshFolder() });
  await to.log.append([madeEntry(5, { sure: 0.5 })]);
  const imported = await to.log.import(bad);
  expect(imported.kept).toBe(3);
  expect(imported.refused).toEqual([madeEntry(5).id]);
  expect(imported.damaged.map(({ line, code }) => ({ line, code }))).toEqual([
    { line: 2, code: 'checksum' },
    { line: 4, code: 'not-json' },
  ]);
  expect(await to.log.import(good)).toMatchObject({ kept: 2, already: 3 });
  const swapped = [good[0]!, good[2]!, good[1]!];
  const third = await openKeeper({ folder: freshFolder() });
  expect((await third.log.import(swapped)).damaged.map((one) => one.code)).toEqual([
    'out-of-order',
    'out-of-order',
  ]);
  await Promise.all([from.close(), to.close(), third.close()]);
});

describe('several processes on one PostgreSQL', () => {
  test('what one keeps, the other is told; positions have no hole and are told in order', async () => {
    const databaseUrl = await freshDatabase();
    const folder = freshFolder();
    const [here, there] = await Promise.all([
      openKeeper({ folder, databaseUrl }),
      openKeeper({ folder, databaseUrl }),
    ]);
    const told: number[] = [];
    here.log.watch((kept) => told.push(...kept.map((one) => one.position)));
    const calls = Array.from({ length: 60 }, (_, at) =>
      (at % 2 ? here : there).log.append(madeEntries(at * 3, 3)),
    );
    await Promise.all(calls);
    await until(() => told.length >= 180);
    expect(told).toEqual(Array.from({ length: 180 }, (_, at) => at + 1));
    await Promise.all([here.close(), there.close()]);
  });

  test('a listener whose connection was cut is told afterwards what it missed', async () => {
    const databaseUrl = await freshDatabase();
    const keeper = await openKeeper({ folder: freshFolder(), databaseUrl });
    const told: number[] = [];
    keeper.log.watch((kept) => told.push(...kept.map((one) => one.position)));
    await keeper.log.append(madeEntries(0, 2));
    await until(() => told.length === 2);
    const admin = await openPool(postgres.url);
    await admin.query(
      `select pg_terminate_backend(pid) from pg_stat_activity
      where application_name = 'walkwright' and datname = $1 and query like 'listen%'`,
      [new URL(databaseUrl).pathname.slice(1)],
    );
    await admin.end();
    await keeper.log.append(madeEntries(2, 3));
    await until(() => told.length === 5);
    expect(told).toEqual([1, 2, 3, 4, 5]);
    await keeper.close();
  });

  test('a database that cannot be reached, forgets, or is newer is a coded problem', async () => {
    const folder = freshFolder();
    await expect(
      openKeeper({ folder, databaseUrl: 'postgresql://nobody@127.0.0.1:1/none' }),
    ).rejects.toMatchObject({
      code: 'database-unreachable',
    });
    const databaseUrl = await freshDatabase();
    const pool = await openPool(databaseUrl);
    await pool.query(`alter database ${new URL(databaseUrl).pathname.slice(1)} set synchronous_commit = off`);
    await pool.end();
    await expect(openKeeper({ folder, databaseUrl })).rejects.toMatchObject({
      code: 'database-not-durable',
      data: { setting: 'synchronous_commit' },
    });
    const newer = await freshDatabase();
    await (await openKeeper({ folder, databaseUrl: newer })).close();
    const other = await openPool(newer);
    await other.query(`insert into walkwright.migration (name) values ('9999-later')`);
    await other.end();
    await expect(openKeeper({ folder, databaseUrl: newer })).rejects.toMatchObject({
      code: 'database-newer',
    });
  });
});
