// Why: a second process must never write the same folder, and a dead one must never keep it shut.
import { mkdtemp, readdir, readFile, rm, utimes, writeFile } from 'node:fs/promises';
import { hostname, tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { takeLock } from '../../src/keep/lock.ts';
import { openKeeper } from '../../src/keep/open-keeper.ts';
import { bundleChild, startChild } from './keep-child.ts';

let scratch: string;
let child: ReturnType<typeof bundleChild>;
beforeAll(async () => {
  scratch = await mkdtemp(join(tmpdir(), 'walkwright-lock-'));
  child = bundleChild();
});
afterAll(async () => {
  child.remove();
  await rm(scratch, { recursive: true, force: true });
});
const freshFolder = (): Promise<string> => mkdtemp(join(scratch, 'folder-'));

test('a folder that another live process has is refused with its number; once that one is killed, it is taken over', async () => {
  const folder = await freshFolder();
  let ready = (): void => undefined;
  const heard = new Promise<void>((resolve) => {
    ready = resolve;
  });
  const running = startChild(
    child.file,
    ['keeper', folder, '0', '10', '1'],
    (line) => line === 'all' && ready(),
  );
  await heard;
  const pid = running.process.pid;
  await expect(openKeeper({ folder })).rejects.toMatchObject({
    code: 'locked',
    data: { pid, host: hostname() },
  });
  running.process.kill('SIGKILL');
  await running.ended;
  const keeper = await openKeeper({ folder });
  expect(await keeper.log.read({ dealership: 'invented-yard' })).toHaveLength(10);
  await keeper.close();
  expect(await readdir(folder)).not.toContain('lock');
});

test('the same process cannot take it twice, and can again after giving it back', async () => {
  const folder = await freshFolder();
  const lock = await takeLock(folder);
  await expect(takeLock(folder)).rejects.toMatchObject({ code: 'locked', data: { pid: process.pid } });
  await lock.release();
  await (await takeLock(folder)).release();
});

test('a lock whose process number now belongs to somebody else is dead', async () => {
  const folder = await freshFolder();
  await (await takeLock(folder)).release();
  const holder = {
    pid: process.pid,
    started: 'at another time',
    host: hostname(),
    since: '2026-01-01T00:00:00Z',
  };
  await writeFile(join(folder, 'lock'), JSON.stringify(holder));
  await (await takeLock(folder)).release();
});

test('a holder on another host is believed while it touches the lock, and no longer', async () => {
  const folder = await freshFolder();
  const file = join(folder, 'lock');
  await writeFile(
    file,
    JSON.stringify({ pid: 1, started: 'x', host: 'another-host', since: '2026-01-01T00:00:00Z' }),
  );
  await expect(takeLock(folder)).rejects.toMatchObject({ code: 'locked', data: { host: 'another-host' } });
  const longAgo = new Date(Date.now() - 120_000);
  await utimes(file, longAgo, longAgo);
  await (await takeLock(folder)).release();
});

test('of twenty that find a dead lock at once, exactly one takes it', async () => {
  const folder = await freshFolder();
  await writeFile(
    join(folder, 'lock'),
    JSON.stringify({ pid: 2 ** 22 + 1, started: 'x', host: hostname(), since: '' }),
  );
  const results = await Promise.allSettled(Array.from({ length: 20 }, () => takeLock(folder)));
  const taken = results.flatMap((result) => (result.status === 'fulfilled' ? [result.value] : []));
  expect(taken).toHaveLength(1);
  expect(JSON.parse(await readFile(join(folder, 'lock'), 'utf8'))).toMatchObject({ pid: process.pid });
  await taken[0]?.release();
  expect(await readdir(folder)).toEqual([]);
});
