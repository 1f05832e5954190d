// Why: a dealership may move from a folder to PostgreSQL and back: the log is the truth, so the packet must be the same to the byte.
import { mkdtemp, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { makeApp } from '../../src/doors/server/app.ts';
import type { EntriesReply, JobReply, PublishReply, YardRow } from '../../src/doors/wire/api.ts';
import { type Keeper, openKeeper } from '../../src/keep/open-keeper.ts';
import { day } from '../../src/units/day.ts';
import { type Postgres, startPostgres } from '../postgres.ts';
import { envelope, nextId, post } from './server-house.ts';
import { inside, tinyWalk } from './terminal.ts';

let postgres: Postgres;
let folder = '';
beforeAll(async () => {
  [postgres, folder] = await Promise.all([startPostgres(), mkdtemp(join(tmpdir(), 'walkwright-two-'))]);
}, 40_000);
afterAll(async () => {
  await postgres.stop();
  await rm(folder, { recursive: true, force: true });
});

/** A server over a keeper, for as long as `work` takes. */
async function withServer<T>(
  options: Parameters<typeof openKeeper>[0],
  work: (ask: (path: string, init?: RequestInit) => Promise<Response>, keeper: Keeper) => Promise<T>,
): Promise<T> {
  const keeper = await openKeeper(options);
  const app = makeApp({
    keeper,
    clock: () => new Date('2026-11-24T18:00:00Z'),
    today: () => day('2026-11-24'),
    dealership: 'test-lot',
    version: '0.0.0',
    complain: (error) => expect.fail(String(error)),
  });
  try {
    return await work(async (path, init) => app.fetch(new Request(`http://localhost${path}`, init)), keeper);
  } finally {
    await app.close();
    await keeper.close();
  }
}

const files = ['unit.json', 'walk.vtt', 'readings.csv', 'comps.csv', 'shop.json'];
const documents = ['packet.json', 'claims.json', 'listing.txt', 'report.html'];

test('from PostgreSQL to a folder and back, the documents stay the same to the byte', async () => {
  const unit = nextId();
  const batch = `/api/units/${unit}/batches/${nextId()}`;
  const inPostgres = { folder: join(folder, 'a'), databaseUrl: postgres.url };
  const read = async (ask: (path: string) => Promise<Response>): Promise<readonly string[]> =>
    Promise.all(documents.map(async (d) => (await ask(`/api/units/${unit}/documents/${d}`)).text()));

  const first = await withServer(inPostgres, async (ask) => {
    for (const name of files) {
      const body = await readFile(join(tinyWalk, name));
      expect((await ask(`${batch}/files/${name}`, { method: 'PUT', body })).status).toBe(200);
    }
    let job = (await (await ask(`${batch}/understand`, { method: 'POST' })).json()) as JobReply;
    while (job.state === 'running') {
      await new Promise((resolve) => setTimeout(resolve, 20));
      job = (await (await ask(`/api/jobs/${job.job}`)).json()) as JobReply;
    }
    expect(job.state).toBe('done');
    const { entries } = (await (await ask(`/api/units/${unit}/entries`)).json()) as EntriesReply;
    const spoken = entries.flatMap(({ entry }) =>
      entry.kind === 'observation' && entry.source.from === 'speech' ? [entry.id] : [],
    );
    expect(spoken.length).toBeGreaterThan(3);
    const rulings = spoken.map((on, i) => ({
      ...envelope(unit),
      kind: 'ruling',
      on,
      ruling: i === 0 ? 'reject' : 'accept',
      // What a database is most likely to choke on or to change.
      why: 'lone \ud800, nul \u0000, wide \u{1f69a}, \u2028 and "quotes" \\',
    }));
    expect((await ask('/api/entries', post({ entries: rulings }))).status).toBe(200);
    const published = (await (
      await ask(`/api/units/${unit}/publish`, post({ by: 'R. Example' }))
    ).json()) as PublishReply;
    expect(published.documents.length).toBeGreaterThan(5);
    const [row] = (await (await ask('/api/units')).json()) as YardRow[];
    expect(row?.stage).toBe('published');
    return read(ask);
  });
  expect(first[0]?.length).toBeGreaterThan(1000);

  const exported = join(folder, 'log.jsonl');
  const out = await inside(['export', '--out', exported, '--data', join(folder, 'a')], {
    DATABASE_URL: postgres.url,
  });
  expect(out).toMatchObject({ code: 0, err: '' });
  const brought = await inside(['import', exported, '--data', join(folder, 'b')]);
  expect(brought.code, brought.err).toBe(0);
  expect(await withServer({ folder: join(folder, 'b') }, (ask) => read(ask))).toEqual(first);

  // And back, into a database of its own.
  const again = join(folder, 'again.jsonl');
  expect((await inside(['export', '--out', again, '--data', join(folder, 'b')])).code).toBe(0);
  expect(await readFile(again, 'utf8')).toBe(await readFile(exported, 'utf8'));
  const databaseUrl = await freshDatabase();
  const back = await inside(['import', again, '--data', join(folder, 'c')], { DATABASE_URL: databaseUrl });
  expect(back.code, back.err).toBe(0);
  expect(await withServer({ folder: join(folder, 'c'), databaseUrl }, (ask) => read(ask))).toEqual(first);
}, 40_000);

async function freshDatabase(): Promise<string> {
  const { default: pg } = await import('pg');
  const client = new pg.Client({ connectionString: postgres.url });
  await client.connect();
  await client.query('create database way_back');
  await client.end();
  return postgres.url.replace(/\/postgres$/, '/way_back');
}
