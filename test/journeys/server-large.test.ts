// Why: a recording of a whole walk must go through the server without ever being in its memory.
import { afterAll, beforeAll, expect, test } from 'vitest';
import type { EntriesReply, JobReply, PutFileReply } from '../../src/doors/wire/api.ts';
import { finished, nextId, openHouse, post, type ServerHouse } from './server-house.ts';

const megabytes = 200;
let house: ServerHouse;
beforeAll(async () => {
  house = await openHouse();
});
afterAll(async () => {
  expect(house.unexpected).toEqual([]);
  await house.close();
});

async function* film(): AsyncGenerator<Uint8Array> {
  const piece = new Uint8Array(1024 * 1024);
  for (let i = 0; i < megabytes; i++) {
    piece.fill(i % 251);
    yield piece.slice();
  }
}

test('200 MB in as a stream, out in stretches, while others are answered', async () => {
  const unit = nextId();
  const batch = nextId();
  await house.ask('/api/units');
  const before = process.memoryUsage().rss;
  const put = house.json<PutFileReply>(`/api/units/${unit}/batches/${batch}/files/recording.mp4`, {
    method: 'PUT',
    body: ReadableStream.from(film()),
    duplex: 'half',
  } as RequestInit);
  expect((await house.ask('/api/about')).status).toBe(200);
  expect((await put).bytes).toBe(megabytes * 1024 * 1024);
  expect(process.memoryUsage().rss - before).toBeLessThan(150 * 1024 * 1024);
  const job = await house.json<JobReply>(`/api/units/${unit}/batches/${batch}/understand`, post({}));
  expect((await finished(house, job.job)).state).toBe('done');
  const entries = (await house.json<EntriesReply>(`/api/units/${unit}/entries`)).entries.map((k) => k.entry);
  const media = entries.find((e) => e.kind === 'media');
  expect(media).toMatchObject({ role: 'recording', type: 'video/mp4', bytes: megabytes * 1024 * 1024 });
  const at = 150 * 1024 * 1024;
  const stretch = await house.ask(`/api/units/${unit}/media/${media?.kind === 'media' ? media.media : ''}`, {
    headers: { range: `bytes=${at - 1}-${at}` },
  });
  expect([...new Uint8Array(await stretch.arrayBuffer())]).toEqual([149, 150]);
});

test('a large file that is named as text is kept and refused to be read', async () => {
  const unit = nextId();
  await house.ask(`/api/units/${unit}/batches/b/files/walk.vtt`, {
    method: 'PUT',
    body: new Uint8Array(33 * 1024 * 1024),
  });
  const job = await house.json<JobReply>(`/api/units/${unit}/batches/b/understand`, post({}));
  const { state, account } = await finished(house, job.job);
  expect(state).toBe('done');
  expect(account.find((a) => a.file === 'walk.vtt')).toMatchObject({ did: 'refused' });
});
