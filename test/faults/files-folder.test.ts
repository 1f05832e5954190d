// Why: a folder may hold links, huge files and strange names; nothing outside it is opened and nothing large is held in memory.
import { link, mkdir, mkdtemp, open, rm, symlink, truncate, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { openWalk } from '../../src/doors/files/open-walk.ts';
import { readFolder, readText } from '../../src/doors/files/read-folder.ts';
import { FileRefusal } from '../../src/doors/files/walk-file.ts';

let box: string;
let folder: string;
beforeEach(async () => {
  box = await mkdtemp(join(tmpdir(), 'walkwright-folder-'));
  folder = join(box, 'walk');
  await mkdir(join(folder, 'photos'), { recursive: true });
  await writeFile(join(box, 'secret.csv'), 'part,aspect,value\nwindshield,crack,yes\n');
});
afterEach(() => rm(box, { recursive: true, force: true }));
const opts = { at: '2026-11-20T10:00:00Z', seed: 's' };
const sparse = async (path: string, bytes: number): Promise<void> => {
  await (await open(path, 'w')).close();
  await truncate(path, bytes);
};

describe('a path that leaves the folder', () => {
  test('a link to a file outside is refused and not read', async () => {
    await symlink(join(box, 'secret.csv'), join(folder, 'readings.csv'));
    const { entries, account } = await openWalk(folder, { dealership: 'test-lot' });
    expect(entries.some((e) => e.kind === 'observation')).toBe(false);
    expect(account.find((a) => a.file === 'readings.csv' && a.did === 'refused')?.says).toContain(
      'leads out of the walk folder',
    );
  });
  test('so is a link to a folder, and one up', async () => {
    await symlink(box, join(folder, 'photos', 'up'));
    await symlink('..', join(folder, 'back'));
    const { files, refused } = await readFolder(folder, opts);
    expect(files).toEqual([]);
    expect(refused.map((r) => [r.file, r.code])).toEqual([
      ['back', 'outside-folder'],
      ['photos/up', 'outside-folder'],
    ]);
  });
  test('hidden files and folders too deep are not read', async () => {
    await mkdir(join(folder, 'a/b/c/d/e'), { recursive: true });
    await writeFile(join(folder, '.env'), 'x');
    await writeFile(join(folder, 'a/b/c/d/e/deep.txt'), 'x');
    const { files } = await readFolder(folder, opts);
    expect(files).toEqual([]);
  });
});

describe('large files', () => {
  test('a recording of 200 MB is hashed as a stream and kept out of memory', async () => {
    await sparse(join(folder, 'recording.mp4'), 200 * 1024 * 1024);
    const before = process.memoryUsage().rss;
    const { entries, account } = await openWalk(folder, { dealership: 'test-lot' });
    expect(process.memoryUsage().rss - before).toBeLessThan(120 * 1024 * 1024);
    expect(entries.find((e) => e.kind === 'media')).toMatchObject({
      role: 'recording',
      bytes: 200 * 1024 * 1024,
    });
    expect(account.find((a) => a.file === 'recording.mp4')?.did).toBe('kept');
  }, 30_000);
  test('a transcript of 200 MB is refused before it is read, and everything else goes on', async () => {
    await sparse(join(folder, 'walk.vtt'), 200 * 1024 * 1024);
    await writeFile(join(folder, 'readings.csv'), 'part,aspect,value\nwindshield,crack,yes\n');
    const { entries, account } = await openWalk(folder, { dealership: 'test-lot' });
    expect(account.find((a) => a.file === 'walk.vtt')).toMatchObject({ did: 'refused' });
    expect(account.find((a) => a.file === 'walk.vtt')?.says).toContain('209.7 MB');
    expect(entries.filter((e) => e.kind === 'observation')).toHaveLength(1);
  }, 30_000);
});

describe('the folder itself', () => {
  test.each([
    ['is not there', 'nowhere', 'no-folder'],
    ['is a file', 'secret.csv', 'not-a-folder'],
  ])('%s', async (_, name, code) => {
    const refused = await readFolder(join(box, name), opts).catch((e: unknown) => e);
    expect(refused).toBeInstanceOf(FileRefusal);
    expect((refused as FileRefusal).fault.code).toBe(code);
  });
  test('the same bytes under two names are two files', async () => {
    await writeFile(join(folder, 'a.jpg'), 'x');
    await link(join(folder, 'a.jpg'), join(folder, 'b.jpg'));
    const { files } = await readFolder(folder, opts);
    expect(new Set(files.map((f) => f.media.id)).size).toBe(2);
    expect(new Set(files.map((f) => f.media.sha256)).size).toBe(1);
  });
  test("without a start written down, the files' own time is used and said", async () => {
    await writeFile(join(folder, 'readings.csv'), 'part,aspect,value\n');
    const { account } = await openWalk(folder, { dealership: 'test-lot' });
    expect(account[0]?.says).toContain('When the walk began is not written down');
  });
  test('a file in UTF-16 is text', async () => {
    await writeFile(
      join(folder, 'x.csv'),
      Buffer.concat([Buffer.from([0xff, 0xfe]), Buffer.from('part,ä', 'utf16le')]),
    );
    expect(await readText(join(folder, 'x.csv'), 'x.csv')).toBe('part,ä');
  });
});
