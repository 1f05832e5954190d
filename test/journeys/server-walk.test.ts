// Why: one person's day at the server: makes a unit, hands a walk in, rules on an observation, adds a reading, publishes.
import { readdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { unzipSync } from 'fflate';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type {
  AccountLine,
  EntriesReply,
  JobReply,
  PublishReply,
  PutFileReply,
  YardRow,
} from '../../src/doors/wire/api.ts';
import type { EntryOf } from '../../src/said/entry.ts';
import { envelope, finished, nextId, openHouse, post, type ServerHouse } from './server-house.ts';

const walk = join(import.meta.dirname, '../data/tiny-walk');
const unit = nextId();
const batch = nextId();
let house: ServerHouse;
beforeAll(async () => {
  house = await openHouse();
});
afterAll(async () => {
  await house.close();
});

const row = async (): Promise<YardRow> =>
  (await house.json<YardRow[]>('/api/units')).find((r) => r.unit === unit)!;
const observations = async () =>
  (await house.json<EntriesReply>(`/api/units/${unit}/entries?after=0`)).entries
    .map((k) => k.entry)
    .filter((e): e is EntryOf<'observation'> => e.kind === 'observation');
async function handIn(id: string): Promise<JobReply> {
  const names = (await readdir(walk, { recursive: true, withFileTypes: true }))
    .filter((f) => f.isFile())
    .map((f) => join(f.parentPath, f.name).slice(walk.length + 1));
  for (const name of names) {
    const bytes = await readFile(join(walk, name));
    const put = await house.json<PutFileReply>(
      `/api/units/${unit}/batches/${id}/files/${encodeURIComponent(name)}`,
      { method: 'PUT', body: bytes },
    );
    expect(put).toMatchObject({ name, bytes: bytes.length });
  }
  const job = await house.json<JobReply>(
    `/api/units/${unit}/batches/${id}/understand`,
    post({ by: 'R. Example', device: 'web' }),
  );
  return finished(house, job.job);
}

describe('a walk through the server', () => {
  test('an empty yard is an empty list', async () => {
    expect(await house.json('/api/units')).toEqual([]);
    expect(await house.json('/api/about')).toEqual({
      dealership: 'test-lot',
      version: '0.0.0',
      today: '2026-11-24',
    });
  });

  test('a unit with HTML in its name is words in every document', async () => {
    const name = '<img src=x onerror=alert(1)> "Coach" & Co';
    const reply = await house.json(
      '/api/entries',
      post({ entries: [{ ...envelope(unit), kind: 'unit', name, vehicle: 'class-c', invented: true }] }),
    );
    expect(reply).toMatchObject({ appended: [{ is: 'kept' }] });
    expect((await row()).name).toBe(name);
    expect((await row()).stage).toBe('nothing yet');
    for (const document of ['report.html', 'listing.html']) {
      const page = await house.ask(`/api/units/${unit}/documents/${document}`);
      expect(page.status).toBe(200);
      expect(page.headers.get('content-security-policy')).toMatch(/^sandbox; default-src 'none'/);
      expect(await page.text()).not.toContain('<img src=x');
    }
  });

  let account: readonly AccountLine[] = [];
  test('the files of a walk are handed in and understood, with a plain account', async () => {
    const job = await handIn(batch);
    expect(job).toMatchObject({ state: 'done', progress: 1 });
    account = job.account;
    expect(account.find((a) => a.file === 'readings.csv')).toMatchObject({ did: 'understood' });
    expect(account.find((a) => a.file === 'recording')).toMatchObject({ did: 'missing' });
    const now = await row();
    expect(now).toMatchObject({
      stock: 'T-1',
      stage: 'walked',
      arrived: '2026-11-02',
      daysHere: 22,
      invented: true,
    });
    expect(now.seen).toBeGreaterThan(0);
  });

  test('handing the same batch in again changes nothing', async () => {
    const before = (await row()).last;
    expect((await handIn(batch)).state).toBe('done');
    expect((await row()).last).toBe(before);
  });

  test('a ruling takes an observation out, and the findings follow', async () => {
    const cracked = (await observations()).filter((o) => o.part === 'lp_alarm');
    expect(cracked.length).toBeGreaterThan(0);
    const before = (await row()).seen;
    await house.ask(
      '/api/entries',
      post({
        entries: cracked.map((o) => ({
          ...envelope(unit),
          kind: 'ruling',
          on: o.id,
          ruling: 'reject',
          why: 'looked again',
        })),
      }),
    );
    expect((await row()).seen).toBe(before - 1);
  });

  test('a reading added by hand is in the report', async () => {
    const reading = {
      ...envelope(unit),
      kind: 'observation',
      part: 'tire',
      place: 'left-front',
      aspect: 'tread_mid',
      value: { is: 'quantity', value: 1, unit: '[in_i]/32', plusOrMinus: 0.1 },
      sense: 'quantity',
      polarity: 'neutral',
      hedged: false,
      sure: 1,
      source: { from: 'typed' },
      replaces: (await observations())
        .filter((o) => o.aspect === 'tread_mid' && o.place === 'left-front')
        .map((o) => o.id),
    };
    const before = (await row()).tally;
    expect(await house.json('/api/entries', post({ entries: [reading] }))).toMatchObject({
      appended: [{ is: 'kept' }],
    });
    const after = (await row()).tally;
    expect(after.stop + after.repair).toBeGreaterThan(before.stop + before.repair);
  });

  test('the packet is one file, made new from the log', async () => {
    const reply = await house.ask(`/api/units/${unit}/packet.zip`);
    expect(reply.headers.get('content-disposition')).toBe('attachment; filename="T-1-2026-11-24.zip"');
    const files = unzipSync(new Uint8Array(await reply.arrayBuffer()));
    expect(Object.keys(files)).toEqual(
      expect.arrayContaining(['report.pdf', 'report.html', 'listing.html', 'chapters.vtt', 'claims.json']),
    );
    expect(new TextDecoder().decode(files['report.pdf']!.slice(0, 5))).toBe('%PDF-');
  });

  test('publishing writes what went out into the log', async () => {
    const reply = await house.json<PublishReply>(`/api/units/${unit}/publish`, post({ by: 'R. Example' }));
    const last = (await house.json<EntriesReply>(`/api/units/${unit}/entries?after=0`)).entries.at(-1)!.entry;
    expect(last).toMatchObject({
      kind: 'publication',
      id: reply.publication,
      by: 'R. Example',
      documents: reply.documents,
    });
    expect((await row()).stage).toBe('published');
  });

  test('a picture comes back, whole and in stretches', async () => {
    const photo = (await house.json<EntriesReply>(`/api/units/${unit}/entries?after=0`)).entries
      .map((k) => k.entry)
      .find((e) => e.kind === 'media' && e.role === 'photo');
    expect(photo).toMatchObject({ part: 'windshield', caption: 'the crack' });
    const path = `/api/units/${unit}/media/${(photo as EntryOf<'media'>).media}`;
    const whole = await house.ask(path);
    expect(whole.headers.get('content-type')).toBe('image/png');
    const bytes = new Uint8Array(await whole.arrayBuffer());
    expect(bytes).toEqual(new Uint8Array(await readFile(join(walk, 'photos/front.png'))));
    const part = await house.ask(path, { headers: { range: 'bytes=1-3' } });
    expect(part.status).toBe(206);
    expect(part.headers.get('content-range')).toBe(`bytes 1-3/${bytes.length}`);
    expect(await part.text()).toBe('PNG');
    expect((await house.ask(path, { headers: { range: 'bytes=-4' } })).headers.get('content-range')).toBe(
      `bytes ${bytes.length - 4}-${bytes.length - 1}/${bytes.length}`,
    );
    expect((await house.ask(path, { headers: { range: `bytes=${bytes.length}-` } })).status).toBe(416);
  });

  test('nothing happened that nobody foresaw', () => {
    expect(house.unexpected).toEqual([]);
  });
});
