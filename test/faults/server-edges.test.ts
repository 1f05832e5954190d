// Why: the server's edges: nothing is left open by who asks and leaves, no long transcript shuts the door, no work is done twice.
import { readdirSync } from 'node:fs';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import type { JobReply, PutFileReply } from '../../src/doors/wire/api.ts';
import { envelope, finished, nextId, openHouse, post, type ServerHouse } from '../journeys/server-house.ts';

let house: ServerHouse;
beforeEach(async () => {
  house = await openHouse();
});
afterEach(() => house.close());

async function keepMedia(unit: string, body: string): Promise<string> {
  const path = `/api/units/${unit}/batches/${nextId()}/files/a.txt`;
  const { sha256, bytes } = await house.json<PutFileReply>(path, { method: 'PUT', body });
  const media = nextId();
  const entry = { ...envelope(unit), kind: 'media', media, role: 'other', name: 'a.txt', type: 'text/plain' };
  expect((await house.ask('/api/entries', post({ entries: [{ ...entry, sha256, bytes }] }))).status).toBe(
    200,
  );
  return `/api/units/${unit}/media/${media}`;
}

/** Files that this process has open once the index has opened its own. */
async function openFiles(path: string): Promise<number> {
  await (await house.ask(path)).arrayBuffer();
  return readdirSync('/proc/self/fd').length;
}

/** A transcript that says the same thing over and over, for so many hours. */
function longTalk(hours: number): string {
  const two = (n: number): string => String(Math.floor(n)).padStart(2, '0');
  const cues = Array.from({ length: hours * 720 }, (_, i) => {
    const at = `${two(i / 720)}:${two((i / 12) % 60)}:${two((i * 5) % 60)}`;
    return `\n${at}.000 --> ${at}.900\nThe furnace works, and the roof leaks at the left front corner by the vent.\n`;
  });
  return `WEBVTT\n${cues.join('')}`;
}

describe('asking and leaving', () => {
  test.skipIf(process.platform !== 'linux')('HEAD leaves no file open', async () => {
    const path = await keepMedia(nextId(), 'x'.repeat(300_000));
    const before = await openFiles(path);
    for (let i = 0; i < 40; i++) {
      const reply = await house.ask(path, { method: 'HEAD' });
      expect(reply.status).toBe(200);
      expect(reply.headers.get('content-length')).toBe('300000');
    }
    expect(readdirSync('/proc/self/fd').length).toBeLessThan(before + 10);
  });

  test.skipIf(process.platform !== 'linux')(
    'players that leave in the middle leave no file open',
    async () => {
      const path = await keepMedia(nextId(), 'x'.repeat(2_000_000));
      const before = await openFiles(path);
      for (let i = 0; i < 40; i++)
        await (await house.ask(path, { headers: { range: 'bytes=5-' } })).body?.cancel();
      await new Promise((resolve) => setTimeout(resolve, 100));
      expect(readdirSync('/proc/self/fd').length).toBeLessThan(before + 10);
    },
  );

  test('HEAD of the live line does not listen', async () => {
    let listening = 0;
    const { log } = house.keeper;
    const watched = await openHouse({
      keeper: {
        ...house.keeper,
        log: new Proxy(log, {
          get: (of, key) => {
            const found = Reflect.get(of, key) as unknown;
            if (key === 'watch') listening++;
            return typeof found === 'function' ? found.bind(of) : found;
          },
        }),
      },
    });
    const before = listening;
    expect((await watched.ask('/api/live', { method: 'HEAD' })).status).toBe(200);
    expect(listening).toBe(before);
    await watched.close();
  });

  test('a stretch outside the file is told the size', async () => {
    const reply = await house.ask(await keepMedia(nextId(), '0123456789'), {
      headers: { range: 'bytes=10-' },
    });
    expect(reply.status).toBe(416);
    expect(reply.headers.get('content-range')).toBe('bytes */10');
  });
});

describe('a transcript of a dozen hours', () => {
  test('can be stopped soon, says how far it is, and keeps nothing when stopped', async () => {
    const unit = nextId();
    const batch = `/api/units/${unit}/batches/${nextId()}`;
    await house.ask(`${batch}/files/walk.vtt`, { method: 'PUT', body: longTalk(24) });
    const { job } = await house.json<JobReply>(`${batch}/understand`, { method: 'POST' });
    const shares = new Set<number>();
    while (shares.size < 4) {
      const { progress, state } = await house.json<JobReply>(`/api/jobs/${job}`);
      expect(state).toBe('running');
      shares.add(progress);
      await new Promise((resolve) => setTimeout(resolve, 5));
    }
    await house.ask(`/api/jobs/${job}`, { method: 'DELETE' });
    expect((await finished(house, job)).state).toBe('stopped');
    expect(await house.keeper.log.read({ dealership: 'test-lot', unit })).toEqual([]);
  }, 30_000);
});

test('windows that open the yard together have its rows worked out once', async () => {
  const unit = nextId();
  await house.ask('/api/entries', post({ entries: [{ ...envelope(unit), kind: 'unit', stock: 'A-1' }] }));
  const { log } = house.keeper;
  let reads = 0;
  const counted = new Proxy(log, {
    get: (of, key) => {
      const found = Reflect.get(of, key) as unknown;
      if (key === 'read') reads++;
      return typeof found === 'function' ? found.bind(of) : found;
    },
  });
  const other = await openHouse({ keeper: { ...house.keeper, log: counted } });
  const rows = await Promise.all(Array.from({ length: 8 }, () => other.json<unknown[]>('/api/units')));
  expect(rows.every((r) => r.length === 1)).toBe(true);
  expect(reads).toBe(1);
  await other.close();
});
