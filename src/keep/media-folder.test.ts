// Why: bytes come back as they went in, under the hash they have, and a name never leads outside.
import { createHash } from 'node:crypto';
import { mkdir, mkdtemp, readdir, rm, symlink, utimes, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import type { MediaStore } from './log.ts';
import { openMediaFolder } from './media-folder.ts';

let scratch: string;
let folder: string;
let media: MediaStore;
beforeAll(async () => {
  scratch = await mkdtemp(join(tmpdir(), 'walkwright-media-'));
  folder = join(scratch, 'media');
  media = await openMediaFolder(folder);
});
afterAll(() => rm(scratch, { recursive: true, force: true }));

const bytes = (length: number): Uint8Array =>
  Uint8Array.from({ length }, (_, at) => (at * 7 + (at >> 8)) % 256);
const hashOf = (of: Uint8Array): string => createHash('sha256').update(of).digest('hex');
function* inPieces(of: Uint8Array, size: number): Generator<Uint8Array> {
  for (let at = 0; at < of.length; at += size) yield of.subarray(at, at + size);
}
async function readAll(from: AsyncIterable<Uint8Array> | undefined): Promise<Uint8Array | undefined> {
  if (!from) return undefined;
  const chunks: Uint8Array[] = [];
  for await (const chunk of from) chunks.push(chunk);
  return Uint8Array.from(Buffer.concat(chunks));
}

test('streamed in pieces, kept under its hash, read back whole and in part', async () => {
  const all = bytes(300_000);
  const sha256 = hashOf(all);
  expect(await media.has(sha256)).toBe(false);
  expect(await media.put(inPieces(all, 4096))).toEqual({ sha256, bytes: 300_000 });
  expect(await media.has(sha256)).toBe(true);
  expect(await media.size(sha256)).toBe(300_000);
  expect(await readAll(await media.open(sha256))).toEqual(all);
  expect(await readAll(await media.open(sha256, { start: 10, end: 10 }))).toEqual(all.subarray(10, 11));
  expect(await readAll(await media.open(sha256, { start: 70_000, end: 199_999 }))).toEqual(
    all.subarray(70_000, 200_000),
  );
  expect(await readAll(await media.open(sha256, { start: 299_990, end: 999_999 }))).toEqual(
    all.subarray(299_990),
  );
  expect(await readAll(await media.open(sha256, { start: 300_000, end: 300_010 }))).toEqual(new Uint8Array());
});

test('the same bytes twice, at once, are one file; nothing stays behind', async () => {
  const all = bytes(5000);
  const put = await Promise.all([media.put([all]), media.put(inPieces(all, 10)), media.put([all])]);
  expect(new Set(put.map((one) => one.sha256))).toEqual(new Set([hashOf(all)]));
  expect(await readdir(join(folder, hashOf(all).slice(0, 2)))).toEqual([hashOf(all)]);
  expect(await readdir(join(folder, 'incoming'))).toEqual([]);
});

test('nothing at all can be kept too', async () => {
  const { sha256 } = await media.put([]);
  expect(sha256).toBe(hashOf(new Uint8Array()));
  expect(await readAll(await media.open(sha256))).toEqual(new Uint8Array());
});

test('exactly the limit is taken; one byte more is refused and leaves nothing behind', async () => {
  const all = bytes(9001);
  await media.put(inPieces(all.subarray(0, 9000), 100), 9000);
  await expect(media.put(inPieces(all, 100), 9000)).rejects.toMatchObject({
    code: 'too-large',
    data: { limit: 9000 },
  });
  expect(await media.has(hashOf(all))).toBe(false);
  expect(await readdir(join(folder, 'incoming'))).toEqual([]);
});

test('a sender that breaks off leaves nothing behind', async () => {
  const broken = async function* (): AsyncGenerator<Uint8Array> {
    yield bytes(100);
    throw new Error('the line went dead');
  };
  await expect(media.put(broken())).rejects.toThrow('the line went dead');
  expect(await readdir(join(folder, 'incoming'))).toEqual([]);
});

test('what is not a hash is not there; a link is not followed', async () => {
  await writeFile(join(scratch, 'secret'), 'secret');
  for (const name of [
    '../secret',
    '..',
    '',
    'incoming',
    'A'.repeat(64),
    `${'a'.repeat(63)}/`,
    'a'.repeat(64),
  ]) {
    expect(await media.has(name)).toBe(false);
    expect(await media.size(name)).toBe(undefined);
    expect(await media.open(name)).toBe(undefined);
  }
  const linked = 'b'.repeat(64);
  await mkdir(join(folder, 'bb'), { recursive: true });
  await symlink(join(scratch, 'secret'), join(folder, 'bb', linked));
  expect(await media.has(linked)).toBe(false);
  expect(await media.open(linked)).toBe(undefined);
});

test('what a killed process left half is swept away after a day', async () => {
  const left = join(folder, 'incoming', 'left');
  await writeFile(left, 'half');
  await openMediaFolder(folder);
  expect(await readdir(join(folder, 'incoming'))).toEqual(['left']);
  const dayBefore = new Date(Date.now() - 25 * 3600 * 1000);
  await utimes(left, dayBefore, dayBefore);
  await openMediaFolder(folder);
  expect(await readdir(join(folder, 'incoming'))).toEqual([]);
});
