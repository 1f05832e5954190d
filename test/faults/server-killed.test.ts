// Why: a server that is killed while files come in and are understood has lost nothing it acknowledged; the same files again double nothing.
import type { ChildProcess } from 'node:child_process';
import { mkdtemp, readdir, rm, stat, truncate } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import type { EntriesReply, JobReply } from '../../src/doors/wire/api.ts';
import { envelope, nextId, post } from '../journeys/server-house.ts';
import { begin } from '../journeys/terminal.ts';

let folder = '';
const running: ChildProcess[] = [];
beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'walkwright killed '));
});
afterEach(async () => {
  for (const child of running.splice(0)) child.kill('SIGKILL');
  await rm(folder, { recursive: true, force: true, maxRetries: 5 });
});

interface Served {
  readonly url: string;
  readonly err: () => string;
  kill(): Promise<void>;
}
async function serve(): Promise<Served> {
  const env = {
    WALKWRIGHT_DATA: folder,
    WALKWRIGHT_DEMO: 'none',
    WALKWRIGHT_DEALERSHIP: 'test-lot',
    PORT: '0',
  };
  const child = begin(['serve'], { env });
  running.push(child);
  let err = '';
  child.stderr?.on('data', (d) => {
    err += d;
  });
  const url = await new Promise<string>((resolve, reject) => {
    let out = '';
    child.stdout?.on('data', (d) => {
      out += d;
      const found = /(http:\/\/localhost:\d+)\//.exec(out)?.[1];
      if (found) resolve(found);
    });
    child.on('exit', (code) => reject(new Error(`ended with ${code}: ${err}`)));
  });
  return {
    url,
    err: () => err,
    kill: () =>
      new Promise((done) => {
        child.on('exit', () => done());
        child.kill('SIGKILL');
      }),
  };
}

const talk = (lines: number): string =>
  `WEBVTT\n${Array.from({ length: lines }, (_, i) => {
    const at = `00:${String(Math.floor(i / 60)).padStart(2, '0')}:${String(i % 60).padStart(2, '0')}`;
    return `\n${at}.000 --> ${at}.900\nThe furnace works and the roof leaks.\n`;
  }).join('')}`;

test('killed in the middle of an upload and of the understanding, then begun again', async () => {
  const unit = nextId();
  const batch = `/api/units/${unit}/batches/${nextId()}`;
  const typed = { ...envelope(unit), kind: 'unit', stock: 'KILL-1' };
  const body = talk(500);
  const entriesOf = async (s: Served): Promise<EntriesReply> =>
    (await (await fetch(`${s.url}/api/units/${unit}/entries`)).json()) as EntriesReply;

  const first = await serve();
  expect((await fetch(`${first.url}/api/entries`, post({ entries: [typed] }))).status).toBe(200);
  expect((await fetch(`${first.url}${batch}/files/walk.vtt`, { method: 'PUT', body })).status).toBe(200);
  await fetch(`${first.url}${batch}/understand`, { method: 'POST' });
  // A recording that never ends is on its way meanwhile.
  const endless = new ReadableStream<Uint8Array>({
    async pull(c) {
      c.enqueue(new Uint8Array(65_536));
      await new Promise((resolve) => setTimeout(resolve, 5));
    },
  });
  const upload = fetch(`${first.url}${batch}/files/walk.mp4`, {
    method: 'PUT',
    body: endless,
    duplex: 'half',
  } as RequestInit).catch(() => 'broken');
  await new Promise((resolve) => setTimeout(resolve, 60));
  await first.kill();
  expect(await upload).toBe('broken');

  const whole = async (s: Served): Promise<readonly string[]> => {
    expect((await fetch(`${s.url}${batch}/files/walk.vtt`, { method: 'PUT', body })).status).toBe(200);
    let job = (await (await fetch(`${s.url}${batch}/understand`, { method: 'POST' })).json()) as JobReply;
    while (job.state === 'running') {
      await new Promise((resolve) => setTimeout(resolve, 30));
      job = (await (await fetch(`${s.url}/api/jobs/${job.job}`)).json()) as JobReply;
    }
    expect(job.state).toBe('done');
    return (await entriesOf(s)).entries.map((k) => k.entry.id).sort();
  };
  const second = await serve();
  expect((await entriesOf(second)).entries.map((k) => k.entry.id)).toContain(typed.id);
  const once = await whole(second);
  expect(once.length).toBeGreaterThan(500);
  expect(await whole(second)).toEqual(once);
  await second.kill();

  // The index gone, the end of the journal cut, and the files handed in once more.
  await rm(join(folder, 'index'), { recursive: true });
  const last = (await readdir(join(folder, 'journal')))
    .filter((n) => n.endsWith('.jsonl'))
    .sort()
    .at(-1)!;
  const path = join(folder, 'journal', last);
  await truncate(path, (await stat(path)).size - 20);
  const third = await serve();
  expect(third.err()).toContain(`${last}:`);
  expect((await entriesOf(third)).entries.map((k) => k.entry.id)).toHaveLength(once.length - 1);
  expect(await whole(third)).toEqual(once);
}, 60_000);
