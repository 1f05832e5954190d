// Why: an entry is acknowledged only after a sync that began after it was written; what the disk refuses is not acknowledged.
import { copyFile, type FileHandle, mkdir, mkdtemp, open, rm, stat, truncate } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, afterEach, beforeAll, expect, test, vi } from 'vitest';
import { Journal } from '../../src/keep/journal/journal.ts';
import { idOf, madeEntries, madeEntry, seeded } from './keep-entries.ts';

const seed = 20_260_107;
let scratch: string;
let made = 0;
/** What every file handle of this process inherits from: the calls are watched, the files are real. */
let handles: FileHandle;

beforeAll(async () => {
  scratch = await mkdtemp(join(tmpdir(), 'walkwright-sync-'));
  const one = await open(scratch, 'r');
  handles = Object.getPrototypeOf(one) as FileHandle;
  await one.close();
});
afterAll(() => rm(scratch, { recursive: true, force: true }));
afterEach(() => {
  vi.restoreAllMocks();
});

const freshFolder = (): string => join(scratch, `journal-${++made}`);
const later = (): Promise<void> => new Promise((go) => setTimeout(go, 30));
async function ids(folder: string): Promise<string[]> {
  const journal = await Journal.open(folder);
  const all: string[] = [];
  for await (const line of journal.lines()) all.push(line.entry.id);
  await journal.close();
  return all;
}
const failing = (code: string): Promise<never> => Promise.reject(Object.assign(new Error(code), { code }));

test('an append is written, then synced, and only then acknowledged; those that wait meanwhile share one sync', async () => {
  const folder = freshFolder();
  const journal = await Journal.open(folder);
  await journal.append([madeEntry(0)]);
  const size = (await stat(join(folder, '000001.jsonl'))).size;
  const sync = handles.sync;
  const open: (() => void)[] = [];
  const watched = vi.spyOn(handles, 'sync').mockImplementation(async function (this: FileHandle) {
    await new Promise<void>((go) => open.push(go));
    return sync.call(this);
  });
  const done: string[] = [];
  const first = journal.append([madeEntry(1)]).then(() => done.push('first'));
  await later();
  expect(watched).toHaveBeenCalledTimes(1);
  expect((await stat(join(folder, '000001.jsonl'))).size).toBeGreaterThan(size);
  const others = [2, 3, 4, 5].map((number) =>
    journal.append([madeEntry(number)]).then(() => done.push('other')),
  );
  await later();
  expect(done).toEqual([]);
  expect(watched).toHaveBeenCalledTimes(1);
  open.shift()?.();
  await first;
  await later();
  expect(done).toEqual(['first']);
  expect(watched).toHaveBeenCalledTimes(2);
  open.shift()?.();
  await Promise.all(others);
  expect(watched).toHaveBeenCalledTimes(2);
  watched.mockRestore();
  await journal.close();
  expect(await ids(folder)).toEqual([0, 1, 2, 3, 4, 5].map(idOf));
});

test('a new segment: file synced for its content, and the folder for its name', async () => {
  const folder = freshFolder();
  const journal = await Journal.open(folder, { segmentBytes: 1000 });
  await journal.append([madeEntry(0)]);
  const synced: string[] = [];
  const sync = handles.sync;
  vi.spyOn(handles, 'sync').mockImplementation(async function (this: FileHandle) {
    synced.push((await this.stat()).isDirectory() ? 'folder' : 'file');
    return sync.call(this);
  });
  await journal.append(madeEntries(1, 3));
  expect(synced).toEqual(['folder', 'file']);
  await journal.append([]);
  await journal.append([madeEntry(1)]);
  expect(synced, 'what was already kept needs no sync').toEqual(['folder', 'file']);
  vi.restoreAllMocks();
  await journal.close();
});

test('power cut in a model: whatever is acknowledged stands in what had been synced by then', async () => {
  const folder = freshFolder();
  const journal = await Journal.open(folder);
  const file = join(folder, '000001.jsonl');
  let durable = 0;
  const sync = handles.sync;
  vi.spyOn(handles, 'sync').mockImplementation(async function (this: FileHandle) {
    const found = await this.stat();
    await sync.call(this);
    if (found.isFile()) durable = found.size;
  });
  const dice = seeded(seed);
  const moments: { durable: number; acknowledged: string[] }[] = [];
  const acknowledged: string[] = [];
  let next = 0;
  const appendOn = async (): Promise<void> => {
    while (next < 2000) {
      const entries = madeEntries(next, 1 + Math.floor(dice() * 20));
      next += entries.length;
      await journal.append(entries);
      acknowledged.push(...entries.map((entry) => entry.id));
      moments.push({ durable, acknowledged: [...acknowledged] });
    }
  };
  await Promise.all([appendOn(), appendOn(), appendOn()]);
  vi.restoreAllMocks();
  await journal.close();
  expect(moments.length).toBeGreaterThan(100);
  for (let picked = 0; picked < 40; picked++) {
    const moment = moments[Math.floor(dice() * moments.length)]!;
    const cut = freshFolder();
    await mkdir(cut);
    await copyFile(file, join(cut, '000001.jsonl'));
    await truncate(join(cut, '000001.jsonl'), moment.durable);
    const there = new Set(await ids(cut));
    expect(moment.acknowledged.filter((id) => !there.has(id))).toEqual([]);
  }
});

test('a full disk: the call is refused with a code, nothing half stays, and the next call is kept', async () => {
  const folder = freshFolder();
  const journal = await Journal.open(folder);
  await journal.append(madeEntries(0, 3));
  const write = handles.write;
  let calls = 0;
  vi.spyOn(handles, 'write').mockImplementation(function (
    this: FileHandle,
    bytes: unknown,
    offset: unknown,
    length: unknown,
    at: unknown,
  ) {
    calls++;
    if (calls === 2) return failing('ENOSPC');
    return (write as (...args: unknown[]) => Promise<never>).call(
      this,
      bytes,
      offset,
      Math.min(Number(length), 100),
      at,
    );
  } as unknown as typeof handles.write);
  await expect(journal.append(madeEntries(3, 2))).rejects.toMatchObject({
    code: 'disk-full',
    data: { errno: 'ENOSPC' },
  });
  vi.restoreAllMocks();
  expect(await journal.append(madeEntries(3, 2))).toMatchObject([
    { is: 'kept', position: 4 },
    { is: 'kept', position: 5 },
  ]);
  await journal.close();
  const again = await Journal.open(folder);
  expect(again.damage).toEqual([]);
  await again.close();
  expect(await ids(folder)).toEqual([0, 1, 2, 3, 4].map(idOf));
});

test('a sync that fails: nothing is acknowledged any more until the journal is opened again', async () => {
  const folder = freshFolder();
  const journal = await Journal.open(folder);
  await journal.append(madeEntries(0, 3));
  vi.spyOn(handles, 'sync').mockImplementation(() => failing('EIO'));
  const failed = { code: 'journal-failed', data: { errno: 'EIO' } };
  await expect(journal.append([madeEntry(3)])).rejects.toMatchObject(failed);
  vi.restoreAllMocks();
  await expect(journal.append([madeEntry(4)])).rejects.toMatchObject(failed);
  await journal.close();
  const again = await Journal.open(folder);
  expect((await again.append([madeEntry(3), madeEntry(4)])).every((one) => one.is !== 'refused')).toBe(true);
  await again.close();
  expect(await ids(folder)).toEqual([0, 1, 2, 3, 4].map(idOf));
});
