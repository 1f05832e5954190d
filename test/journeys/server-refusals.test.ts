// Why: whatever is wrong with a request: a code, a sentence, a remedy; nothing is kept by halves, nothing handed in ever runs.
import { mkdir, mkdtemp, rm, symlink, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { readRange } from '../../src/doors/server/media-route.ts';
import type { EntriesReply, JobReply, Problem } from '../../src/doors/wire/api.ts';
import { envelope, finished, nextId, openHouse, post, type ServerHouse } from './server-house.ts';

const unit = nextId();
let house: ServerHouse;
let web: string;
beforeAll(async () => {
  web = await mkdtemp(join(tmpdir(), 'walkwright-web-'));
  await mkdir(join(web, 'dist/assets'), { recursive: true });
  await writeFile(join(web, 'dist/index.html'), '<!doctype html><title>yard</title>');
  await writeFile(join(web, 'dist/assets/a.js'), 'export {};');
  await writeFile(join(web, 'secret.txt'), 'not to be served');
  await symlink(join(web, 'secret.txt'), join(web, 'dist/link.txt'));
  house = await openHouse({
    mostFileBytes: 100_000,
    mostJsonBytes: 200_000,
    staticFolder: join(web, 'dist'),
  });
});
afterAll(async () => {
  expect(house.unexpected).toEqual([]);
  await house.close();
  await rm(web, { recursive: true, force: true });
});

const horn = () => ({
  ...envelope(unit),
  kind: 'observation',
  part: 'horn',
  aspect: 'operates',
  value: { is: 'state', state: 'works' },
  sense: 'operates',
  polarity: 'good',
  hedged: false,
  sure: 1,
  source: { from: 'typed' },
});
async function refused(path: string, status: number, code: string, init?: RequestInit): Promise<Problem> {
  const reply = await house.ask(path, init);
  expect([reply.status, reply.headers.get('content-type')]).toEqual([status, 'application/problem+json']);
  const problem = (await reply.json()) as Problem;
  expect(problem).toMatchObject({ code });
  expect(problem.says.length).toBeGreaterThan(10);
  expect(problem.remedy.length).toBeGreaterThan(10);
  return problem;
}
const kept = async (): Promise<number> =>
  (await house.json<EntriesReply>(`/api/units/${unit}/entries?after=0`)).entries.length;

describe('entries', () => {
  test('one bad entry among good ones: every fault by its path, nothing kept', async () => {
    const problem = await refused(
      '/api/entries',
      400,
      'bad-entry',
      post({
        entries: [
          horn(),
          { ...horn(), v: 2 },
          { ...horn(), value: { is: 'quantity', value: 3, unit: 'furlong' } },
          { ...horn(), kind: 'wish' },
          7,
        ],
      }),
    );
    expect(problem.faults?.map((f) => f.path)).toEqual(
      expect.arrayContaining(['entries.1.v', 'entries.2.value.unit', 'entries.3.kind', 'entries.4']),
    );
    expect(problem.where).toBe('entries.1.v');
    expect(await kept()).toBe(0);
  });
  test('an entry of another dealership keeps the good ones out too', async () => {
    await refused(
      '/api/entries',
      403,
      'other-dealership',
      post({ entries: [horn(), { ...horn(), dealership: 'next-door' }] }),
    );
    expect(await kept()).toBe(0);
  });
  test('sent again it is harmless; with other content its id is taken', async () => {
    const entry = horn();
    expect(await house.json('/api/entries', post({ entries: [entry] }))).toMatchObject({
      appended: [{ is: 'kept' }],
    });
    expect(await house.json('/api/entries', post({ entries: [entry] }))).toMatchObject({
      appended: [{ is: 'already kept' }],
    });
    expect(
      await house.json('/api/entries', post({ entries: [{ ...entry, by: 'Somebody else' }] })),
    ).toMatchObject({ appended: [{ is: 'refused', code: 'id-taken' }] });
    expect(await kept()).toBe(1);
  });
  test.each([
    [
      'no JSON',
      400,
      'bad-request',
      { method: 'POST', headers: { 'content-type': 'application/json' }, body: '{"entries": [' },
    ],
    [
      'a form',
      415,
      'bad-content-type',
      { method: 'POST', headers: { 'content-type': 'text/plain' }, body: '{"entries": []}' },
    ],
    ['no list', 400, 'bad-entry', post({ entries: 'all' })],
    ['nothing', 415, 'bad-content-type', { method: 'POST' }],
    ['too much', 413, 'too-big', post({ entries: ['x'.repeat(300_000)] })],
  ])('%s is refused', async (_, status, code, init) => {
    await refused('/api/entries', status, code, init);
  });
  test('a body longer than it says is cut off at the limit', async () => {
    async function* endless() {
      for (;;) yield new TextEncoder().encode('x'.repeat(65_536));
    }
    await refused('/api/entries', 413, 'too-big', {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: ReadableStream.from(endless()),
      duplex: 'half',
    } as RequestInit);
  });
});

describe('files', () => {
  const put = (name: string, body: string | Uint8Array<ArrayBuffer>): [string, RequestInit] => [
    `/api/units/${unit}/batches/b1/files/${name}`,
    { method: 'PUT', body },
  ];
  test.each([
    '..%2F..%2Fetc%2Fpasswd',
    'photos%2F..%2F..%2Fx',
    '%2Fetc%2Fpasswd',
    'C%3A%5Cx',
    '..%5Cx',
    'a%00b',
    '%2E%2E%2Fx',
    'a%2F%2Fb',
    '%E0%A4%A',
  ])('%s leads out of the folder', async (name) => {
    const [path, init] = put(name, 'x');
    await refused(path, 400, 'outside-folder', init);
  });
  test('a file larger than the limit is refused, however it is sent', async () => {
    const [path, init] = put('recording.mp4', new Uint8Array(100_001));
    await refused(path, 413, 'too-big', init);
    const stream = ReadableStream.from(
      (async function* () {
        for (let i = 0; i < 4; i++) yield new Uint8Array(50_000);
      })(),
    );
    await refused(path, 413, 'too-big', { method: 'PUT', body: stream, duplex: 'half' } as RequestInit);
  });
  test('an upload that breaks off leaves nothing behind', async () => {
    const stream = ReadableStream.from(
      (async function* () {
        yield new Uint8Array(1000);
        throw new Error('cable');
      })(),
    );
    const [path] = put('half.mp4', '');
    await refused(path, 400, 'upload-broken', { method: 'PUT', body: stream, duplex: 'half' } as RequestInit);
    await refused(`/api/units/${unit}/batches/b1/understand`, 404, 'no-batch', post({}));
  });
  test('an uploaded page or drawing comes back as a download that cannot run', async () => {
    const attack = '<svg xmlns="http://www.w3.org/2000/svg"><script>alert(1)</script></svg>';
    for (const name of ['photo.svg', 'page.html', 'x.xhtml', 'app.js', 'plate.jpg.html'])
      await house.ask(`/api/units/${unit}/batches/evil/files/${name}`, { method: 'PUT', body: attack });
    const job = await house.json<JobReply>(`/api/units/${unit}/batches/evil/understand`, post({}));
    expect((await finished(house, job.job)).state).toBe('done');
    const media = (await house.json<EntriesReply>(`/api/units/${unit}/entries?after=0`)).entries
      .map((k) => k.entry)
      .filter((e) => e.kind === 'media');
    expect(media).toHaveLength(5);
    for (const m of media) {
      const reply = await house.ask(`/api/units/${unit}/media/${m.media}`);
      expect(reply.headers.get('content-type')).toBe('application/octet-stream');
      expect(reply.headers.get('content-disposition')).toMatch(/^attachment; filename\*=UTF-8''/);
      expect(reply.headers.get('x-content-type-options')).toBe('nosniff');
      expect(reply.headers.get('content-security-policy')).toMatch(/^sandbox; default-src 'none'/);
    }
  });
  test('a media entry that calls a page a picture still does not run', async () => {
    const mine = (await house.json<EntriesReply>(`/api/units/${unit}/entries?after=0`)).entries
      .map((k) => k.entry)
      .find((e) => e.kind === 'media')!;
    const media = nextId();
    await house.ask(
      '/api/entries',
      post({
        entries: [
          { ...mine, ...envelope(unit), media, type: 'text/html', name: 'x.html"\r\nset-cookie: a=b' },
        ],
      }),
    );
    const reply = await house.ask(`/api/units/${unit}/media/${media}`);
    expect(reply.headers.get('content-type')).toBe('application/octet-stream');
    expect(reply.headers.get('set-cookie')).toBeNull();
  });
  test('a job can be stopped, and one that is not there is said so', async () => {
    await house.ask(`/api/units/${unit}/batches/slow/files/readings.csv`, {
      method: 'PUT',
      body: `part,aspect,value\n${'horn,operates,works\n'.repeat(2000)}`,
    });
    const job = await house.json<JobReply>(`/api/units/${unit}/batches/slow/understand`, post({}));
    await house.ask(`/api/jobs/${job.job}`, { method: 'DELETE' });
    expect((await finished(house, job.job)).state).toBe('stopped');
    expect(
      await house.keeper.log
        .read({ dealership: 'test-lot', unit })
        .then((all) => all.filter((k) => k.entry.kind === 'walk')),
    ).toHaveLength(1);
    await refused('/api/jobs/none', 404, 'not-found');
  });
});

describe('who may ask', () => {
  test("another site's page may not write", async () => {
    const entry = post({ entries: [horn()] });
    const before = await kept();
    for (const headers of [
      { origin: 'https://elsewhere.example' },
      { 'sec-fetch-site': 'cross-site' },
      { origin: 'null' },
    ]) {
      await refused('/api/entries', 403, 'other-origin', {
        ...entry,
        headers: { ...entry.headers, ...headers } as Record<string, string>,
      });
    }
    expect(await kept()).toBe(before);
    expect(
      (
        await house.ask('/api/entries', {
          ...entry,
          headers: { ...entry.headers, origin: 'http://localhost' } as Record<string, string>,
        })
      ).status,
    ).toBe(200);
  });
  test('a name pointed at this machine is not its own', async () => {
    const reply = await house.app.fetch(new Request('http://rebound.example/api/units'));
    expect(reply.status).toBe(421);
  });
  test('no other site may read', async () => {
    const reply = await house.ask('/api/units', { headers: { origin: 'https://elsewhere.example' } });
    expect(reply.headers.get('access-control-allow-origin')).toBeNull();
    expect(reply.headers.get('cross-origin-resource-policy')).toBe('same-origin');
  });
});

describe("the app's own files", () => {
  test('pages carry a policy under which only its own scripts run', async () => {
    for (const path of ['/', '/unit/x/review', '/index.html']) {
      const reply = await house.ask(path);
      expect(await reply.text()).toContain('<title>yard');
      expect(reply.headers.get('content-security-policy')).toContain("script-src 'self';");
      expect(reply.headers.get('content-security-policy')).not.toContain('unsafe');
    }
    expect((await house.ask('/assets/a.js')).headers.get('content-type')).toContain('text/javascript');
  });
  test.each([
    '/..%2Fsecret.txt',
    '/assets/..%2F..%2Fsecret.txt',
    '/link.txt',
    '/%00',
    '/nothing.js',
    '/.env.txt',
  ])('%s is not served', async (path) => {
    const reply = await house.ask(path);
    expect(await reply.text()).not.toContain('not to be served');
    expect(reply.status).toBe(404);
  });
  test("what does not exist under /api is a problem, never the app's page", async () => {
    await refused('/api/nothing', 404, 'not-found');
    await refused(`/api/units/${nextId()}/documents/report.html`, 404, 'not-found');
    await refused(`/api/units/${unit}/documents/passwd`, 400, 'bad-request');
    await refused(`/api/units/not-a-unit/entries`, 400, 'bad-request');
    await refused(`/api/units/${unit}/entries?after=minus`, 400, 'bad-request');
    await refused(`/api/units/${unit}/media/none`, 404, 'not-found');
  });
  test('the API describes itself', async () => {
    const description = await house.json<{ paths: Record<string, unknown> }>('/api/openapi.json');
    expect(Object.keys(description.paths)).toEqual(
      expect.arrayContaining([
        '/api/about',
        '/api/units',
        '/api/units/{unit}/entries',
        '/api/entries',
        '/api/live',
        '/api/units/{unit}/batches/{batch}/files/{name}',
        '/api/units/{unit}/batches/{batch}/understand',
        '/api/jobs/{job}',
        '/api/units/{unit}/packet.zip',
        '/api/units/{unit}/documents/{name}',
        '/api/units/{unit}/publish',
        '/api/units/{unit}/media/{media}',
      ]),
    );
    expect(JSON.stringify(description)).toContain('observation');
  });
});

describe('a stretch of a file', () => {
  test.each([
    [undefined, undefined],
    ['bytes=0-0', { start: 0, end: 0 }],
    ['bytes=5-', { start: 5, end: 9 }],
    ['bytes=-3', { start: 7, end: 9 }],
    ['bytes=-99', { start: 0, end: 9 }],
    ['bytes=2-99', { start: 2, end: 9 }],
    ['bytes=10-', 'outside'],
    ['bytes=-0', 'outside'],
    ['bytes=5-2', undefined],
    ['bytes=0-1,3-4', undefined],
    ['items=0-1', undefined],
    ['bytes=-', undefined],
  ])('%s of ten bytes', (header, range) => {
    expect(readRange(header, 10)).toEqual(range);
  });
});

describe('live', () => {
  test('two listeners hear what was kept in which unit; one that has gone is forgotten', async () => {
    const listen = async () => {
      const stop = new AbortController();
      const reply = await house.app.fetch(new Request('http://localhost/api/live', { signal: stop.signal }));
      return { stop, reader: reply.body!.getReader() };
    };
    const [a, b] = [await listen(), await listen()];
    await a.reader.read();
    await b.reader.read();
    b.stop.abort();
    await house.ask('/api/entries', post({ entries: [horn(), horn()] }));
    const { value } = await a.reader.read();
    const text = new TextDecoder().decode(value);
    expect(text).toMatch(/^event: kept\ndata: /);
    expect(JSON.parse(text.slice(text.indexOf('{')))).toMatchObject({ unit });
    expect((await b.reader.read()).done).toBe(true);
    await a.reader.cancel();
  });
});
