// Why: the main job from the terminal, and everything that may be wrong with what is handed to it.
import { cp, mkdir, mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { begin, ended, inside, tinyWalk, walkwright } from './terminal.ts';

let box: string;
beforeAll(async () => {
  box = await mkdtemp(join(tmpdir(), 'walkwright-cli-'));
});
afterAll(() => rm(box, { recursive: true, force: true }));

describe('packet', () => {
  test('makes the whole packet and one screen that says what matters', async () => {
    const out = join(box, 'packet');
    const ran = await walkwright(['packet', tinyWalk, '--out', out, '--on', '2026-11-24']);
    expect(ran.code).toBe(0);
    expect((await readdir(out)).sort()).toEqual([
      'README.txt',
      'chapters.vtt',
      'claims.json',
      'listing.html',
      'listing.txt',
      'packet.json',
      'photos',
      'report.html',
      'report.pdf',
    ]);
    expect(ran.err).toContain('Reading walk.vtt');
    expect(ran.out).toMatch(
      /^2018 Tiny Example 24 \(class C, stock T-1\)\nInvented: this unit does not exist\./,
    );
    expect(ran.out).toMatch(/Findings +2 stop/);
    expect(ran.out.indexOf('STOP')).toBeLessThan(ran.out.indexOf('REPAIR'));
    expect(ran.out).toMatch(/left front: 8\.5 years/);
    expect(ran.out).toMatch(/Coverage +\d+ of \d+ parts looked at/);
    expect(ran.out).toContain('not there, so unknown: recording');
    expect(ran.out.split('\n').length).toBeLessThan(40);
    expect(ran.out).not.toContain('\u001b');
  });

  test('the same folder and day give the same files to the byte', async () => {
    const again = join(box, 'again');
    expect((await walkwright(['packet', tinyWalk, '--out', again, '--on', '2026-11-24'])).code).toBe(0);
    for (const name of ['report.pdf', 'report.html', 'listing.html', 'packet.json', 'chapters.vtt']) {
      expect(await readFile(join(again, name)), name).toEqual(await readFile(join(box, 'packet', name)));
    }
  });

  test('a folder with bad rows is told with file, line and remedy, and still makes a packet', async () => {
    const walk = join(box, 'bad-rows');
    await cp(tinyWalk, walk, { recursive: true });
    await writeFile(
      join(walk, 'readings.csv'),
      'part,aspect,value,unit\nwindshield,crack,yes,\ntyre,tread_mid,9,[in_i]/32\n',
    );
    await writeFile(join(walk, 'comps.csv'), 'nonsense');
    await writeFile(join(walk, 'drive.gpx'), '<!DOCTYPE x [<!ENTITY a "b">]><gpx/>');
    const ran = await inside(['packet', walk, '--out', join(box, 'bad-out')]);
    expect(ran.code).toBe(0);
    expect(ran.err).toContain('readings.csv:3: There is no part "tyre". Perhaps tire is meant.');
    expect(ran.err).toContain('comps.csv:1: The first row lacks the columns: ref, on, kind, year.');
    expect(ran.err).toContain('drive.gpx: The drive log carries a document type or entities');
    expect(ran.out).toContain('3 places were not understood');
  });

  test('a folder with nothing but a transcript names all the rest as unknown', async () => {
    const walk = join(box, 'only-words');
    await mkdir(walk);
    await cp(join(tinyWalk, 'walk.vtt'), join(walk, 'walk.vtt'));
    const ran = await inside(['packet', walk, '--out', join(box, 'only-words-out')]);
    expect(ran.code).toBe(0);
    expect(ran.out).toContain('unit.json');
    expect(ran.out).toMatch(
      /not there, so unknown: .*readings\.csv, photos\/, drive\.gpx, motion\.csv, comps\.csv, shop\.json/,
    );
    expect(ran.out).toContain('No price');
  });

  test('a unit whose name would steer the terminal or a page is only words', async () => {
    const walk = join(box, 'evil');
    await mkdir(walk);
    await writeFile(
      join(walk, 'unit.json'),
      JSON.stringify({ kind: 'class-c', name: '\u001b[31m<script>alert(1)</script>\u202e' }),
    );
    const ran = await inside(['packet', walk, '--out', join(box, 'evil-out')]);
    expect(ran.code).toBe(0);
    expect(ran.out).toContain('?[31m<script>alert(1)</script>?');
    for (const page of ['report.html', 'listing.html'])
      expect(await readFile(join(box, 'evil-out', page), 'utf8')).not.toContain('<script>alert');
  });

  test.each([
    [
      'a folder that is not there',
      ['packet', '/nowhere/at/all', '--out', 'x'],
      1,
      'There is no such folder.',
    ],
    ['a file for a folder', ['packet', 'package.json', '--out', 'x'], 1, 'This is a file, not a folder.'],
    ['no --out', ['packet', tinyWalk], 2, '--out is missing'],
    ['no folder', ['packet', '--out', 'x'], 2, 'WALK-FOLDER is missing'],
    ['two folders', ['packet', 'a', 'b', '--out', 'x'], 2, 'one argument too many'],
    [
      'a day that is none',
      ['packet', tinyWalk, '--out', 'x', '--on', '2026-02-30'],
      2,
      '"2026-02-30" is none',
    ],
    ['an unknown option', ['packet', tinyWalk, '--fast'], 2, "Unknown option '--fast'"],
    ['an --out that cannot be made', ['packet', tinyWalk, '--out', '/dev/null/x'], 1, 'cannot be made'],
  ])('%s', async (_, args, code, says) => {
    const ran = await inside(args);
    expect([ran.code, ran.out]).toEqual([code, '']);
    expect(ran.err).toContain(says);
  });

  test('an empty folder is no walk', async () => {
    await mkdir(join(box, 'empty'), { recursive: true });
    const ran = await inside(['judge', join(box, 'empty')]);
    expect([ran.code, ran.out]).toEqual([1, '']);
    expect(ran.err).toContain('holds no file of a walk');
  });

  test('a reader that has had enough is no error', async () => {
    const child = begin(['record', tinyWalk, '--json']);
    const done = ended(child);
    child.stdout?.once('data', () => child.stdout?.destroy());
    const ran = await done;
    expect(ran.code).toBe(0);
    expect(ran.err).not.toContain('EPIPE');
  });
});
