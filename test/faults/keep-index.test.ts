// Why: the index is never the only copy: deleted, late, ahead or broken, the answers come back from the journal.
import { cp, mkdtemp, readdir, rm, stat, truncate, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { Journal } from '../../src/keep/journal/journal.ts';
import { type Keeper, openKeeper } from '../../src/keep/open-keeper.ts';
import { madeEntries } from './keep-entries.ts';

const dealership = 'invented-yard';
let scratch: string;
let folder: string;

async function answers(keeper: Keeper): Promise<unknown> {
  return { units: await keeper.log.units(dealership), entries: await keeper.log.read({ dealership }) };
}
interface Opened {
  readonly answers: unknown;
  readonly progress: readonly { readonly done: number; readonly of: number }[];
}
async function openAndAsk(): Promise<Opened> {
  const progress: { done: number; of: number }[] = [];
  const keeper = await openKeeper({ folder, progress: ({ done, of }) => progress.push({ done, of }) });
  const opened = { answers: await answers(keeper), progress };
  await keeper.close();
  return opened;
}
const setAside = async (): Promise<string[]> =>
  (await readdir(folder)).filter((name) => name.includes('set-aside'));

let first: unknown;
beforeAll(async () => {
  scratch = await mkdtemp(join(tmpdir(), 'walkwright-index-'));
  folder = join(scratch, 'keeper');
  const keeper = await openKeeper({ folder });
  for (let at = 0; at < 1200; at += 300) await keeper.log.append(madeEntries(at, 300));
  first = await answers(keeper);
  await keeper.close();
});
afterAll(() => rm(scratch, { recursive: true, force: true }));

test('opened again, nothing is built again', async () => {
  expect(await openAndAsk()).toEqual({ answers: first, progress: [] });
});

test('deleted: it is built again, tells how far it is, and answers the same', async () => {
  await rm(join(folder, 'index'), { recursive: true });
  const opened = await openAndAsk();
  expect(opened.answers).toEqual(first);
  expect(opened.progress).toEqual([500, 1000, 1200].map((done) => ({ done, of: 1200 })));
  expect(await setAside()).toEqual([]);
});

test('behind the journal: only what is missing is taken in', async () => {
  const journal = await Journal.open(join(folder, 'journal'));
  await journal.append(madeEntries(1200, 100));
  await journal.close();
  const opened = await openAndAsk();
  expect(opened.progress).toEqual([{ done: 1300, of: 1300 }]);
  expect((opened.answers as { entries: unknown[] }).entries).toHaveLength(1300);
  expect(await setAside()).toEqual([]);
});

test('ahead of the journal: it is set aside, not deleted, and built from the journal', async () => {
  const file = join(folder, 'journal', '000001.jsonl');
  await truncate(file, (await stat(file)).size - 10);
  const opened = await openAndAsk();
  expect((opened.answers as { entries: unknown[] }).entries).toHaveLength(1299);
  expect(opened.progress.at(-1)).toEqual({ done: 1299, of: 1299 });
  expect(await setAside()).toEqual(['index.set-aside']);
});

test('of another journal: it is set aside and built from this one', async () => {
  await rm(join(folder, 'index.set-aside'), { recursive: true });
  const other = join(scratch, 'other');
  const journal = await Journal.open(join(other, 'journal'));
  await journal.append(madeEntries(0, 1299, { by: 'Somebody Else' }));
  await journal.close();
  await rm(join(folder, 'journal'), { recursive: true });
  await cp(join(other, 'journal'), join(folder, 'journal'), { recursive: true });
  const { entries } = (await openAndAsk()).answers as { entries: { entry: { by: string } }[] };
  expect(entries).toHaveLength(1299);
  expect(entries.every(({ entry }) => entry.by === 'Somebody Else')).toBe(true);
  expect(await setAside()).toEqual(['index.set-aside']);
});

test('broken files: it is set aside and built again', async () => {
  await writeFile(join(folder, 'index', 'pglite', 'global', 'pg_control'), Buffer.alloc(8192));
  expect(((await openAndAsk()).answers as { entries: unknown[] }).entries).toHaveLength(1299);
  expect(await readdir(folder)).toContain('index.broken');
});

test('a worker that is not there is a coded problem for whoever reads; what is appended is kept all the same', async () => {
  const bare = join(scratch, 'no-worker');
  const keeper = await openKeeper({ folder: bare, workerUrl: new URL('file:///nowhere/keep-worker.mjs') });
  expect(await keeper.log.append(madeEntries(0, 2))).toMatchObject([{ is: 'kept' }, { is: 'kept' }]);
  await expect(keeper.log.read({ dealership })).rejects.toMatchObject({ code: 'index-failed' });
  await keeper.close();
});
