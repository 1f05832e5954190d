// Why: files as clumsy or hostile hands make them must end in a sentence with a remedy, never in a stack trace, a hang or a leak.
import { execFileSync } from 'node:child_process';
import { mkdir, mkdtemp, readdir, rm, symlink, utimes, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { openWalk } from '../../src/doors/files/open-walk.ts';
import type { EntryKind, EntryOf } from '../../src/said/entry.ts';
import { inside } from '../journeys/terminal.ts';

const vtt =
  'WEBVTT\n\n00:00:01.000 --> 00:00:06.000\nThe left front tire tread is 9 thirty-seconds.\n\n00:19:55.000 --> 00:20:00.000\nThe furnace works.\n';
let folder = '';
beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'walkwright-clumsy-'));
});
afterEach(() => rm(folder, { recursive: true, force: true }));

async function put(name: string, bytes: string | Uint8Array): Promise<void> {
  await mkdir(dirname(join(folder, name)), { recursive: true });
  await writeFile(join(folder, name), bytes);
}
const open = () => openWalk(folder, { dealership: 'test-lot' });
const entries = async <K extends EntryKind>(kind: K): Promise<readonly EntryOf<K>[]> =>
  (await open()).entries.filter((e): e is EntryOf<K> => e.kind === kind);
const record = (env: Record<string, string> = {}) => inside(['record', folder], env);

describe('times', () => {
  test('a time without seconds is a time', async () => {
    await put('unit.json', '{"walked": "2026-05-04T10:00Z"}');
    await put('readings.csv', 'at,part,aspect,value\n2026-05-04T10:15Z,tire,present,yes\n');
    const [one] = await entries('observation');
    expect(one?.at).toBe('2026-05-04T10:15:00Z');
    expect((await entries('walk'))[0]?.began).toBe('2026-05-04T10:00:00Z');
  });

  test.each(['9999-12-31T23:59:59Z', '0001-01-01T00:00:00Z', 'yesterday'])(
    'a start of %s is named, and all else is read',
    async (walked) => {
      await put('unit.json', JSON.stringify({ walked }));
      await put('walk.vtt', vtt);
      const ran = await record();
      expect(ran.code).toBe(0);
      expect(ran.err).toContain('unit.json:1: The field "walked" cannot be read.');
      expect(ran.out).toContain('9');
    },
  );

  test('without a start, the words end when their file was written: nothing is seen later than that', async () => {
    await put('walk.vtt', vtt);
    const written = new Date('2026-05-04T00:05:00Z');
    await utimes(join(folder, 'walk.vtt'), written, written);
    expect((await entries('walk'))[0]?.began).toBe('2026-05-03T23:45:00.000Z');
    for (const o of await entries('observation'))
      expect(Date.parse(o.at)).toBeLessThanOrEqual(written.getTime());
  });
});

describe('what is in the folder', () => {
  test.skipIf(process.platform === 'win32')('a pipe named unit.json is refused, not waited for', async () => {
    execFileSync('mkfifo', [join(folder, 'unit.json')]);
    await put('walk.vtt', vtt);
    const ran = await record();
    expect(ran.code).toBe(0);
    expect(ran.err).toContain('unit.json: This is not a plain file.');
  });

  test.skipIf(process.platform === 'win32')(
    'a link named unit.json tells nothing of what it points at',
    async () => {
      const elsewhere = await mkdtemp(join(tmpdir(), 'walkwright-elsewhere-'));
      await writeFile(join(elsewhere, 'unit.json'), '{"by": "SECRET", "stock": "SECRET"}');
      await symlink(join(elsewhere, 'unit.json'), join(folder, 'unit.json'));
      await put('walk.vtt', vtt);
      expect(JSON.stringify(await open())).not.toContain('SECRET');
      await rm(elsewhere, { recursive: true });
    },
  );

  test.skipIf(process.platform !== 'linux')('a name that is not UTF-8 costs no other file', async () => {
    await put('walk.vtt', vtt);
    execFileSync('sh', ['-c', `printf x > "$1/$(printf 'bad\\377.bin')"`, 'sh', folder]);
    const ran = await record();
    expect(ran.code).toBe(0);
    expect(ran.err).toContain('could not be opened (ENOENT)');
  });

  test('a folder of nothing but refused things names them', async () => {
    await symlink('/etc/hostname', join(folder, 'walk.vtt'));
    const ran = await record();
    expect(ran.code).toBe(1);
    expect(ran.err).toContain('walk.vtt: The path leads out of the walk folder.');
    expect(ran.err).toContain('The folder holds no file of a walk.');
  });

  test('hear is not led to read a folder or a device for ever', async () => {
    for (const path of [folder, '/dev/zero']) {
      const ran = await inside(['hear', path]);
      expect(ran.code).toBe(1);
      expect(ran.err).toContain('This is a folder or a device, not a file.');
    }
  });
});

describe('what is in the files', () => {
  test('a table saved by an old spreadsheet keeps its letters', async () => {
    await put(
      'readings.csv',
      Buffer.from('part,aspect,value,note\ntire,present,yes,caf\xe9 side 22\xbd\n', 'latin1'),
    );
    expect((await entries('observation'))[0]?.note).toBe('café side 22½');
  });

  test('bytes that are no text are refused, with or without a zero among them', async () => {
    await put(
      'readings.csv',
      Uint8Array.from({ length: 255 }, (_, i) => 255 - i),
    );
    expect((await record()).err).toContain('readings.csv: The file is not text.');
  });

  test('a track point with an empty or odd place is not at zero degrees, and is told', async () => {
    const point = (lat: string, lon: string, s: number): string =>
      `<trkpt lat="${lat}" lon="${lon}"><time>2026-05-04T10:00:0${s}Z</time></trkpt>`;
    const points = [
      point('', '', 0),
      point('0x10', '1', 1),
      point('NaN', '1', 2),
      point('40', '-90', 3),
      point('40.0001', '-90', 4),
    ];
    await put('drive.gpx', `<gpx><trk><trkseg>${points.join('')}</trkseg></trk></gpx>`);
    const miles = (await entries('observation')).find((o) => o.aspect === 'miles')?.value;
    expect(miles).toMatchObject({ value: 0.01 });
    expect((await record()).err).toContain('drive.gpx: 3 track points lack a place or a time');
  });

  test('the complaint about a deep track is short', async () => {
    await put('drive.gpx', `<gpx>${'<a>'.repeat(20_000)}`);
    const ran = await record();
    expect(ran.code).toBe(0);
    expect(Math.max(...ran.err.split('\n').map((l) => l.length))).toBeLessThan(500);
  });

  test('a misspelt field of shop.json is named', async () => {
    await put('shop.json', '{"labor": {"default": 165},\n"hours_per_day": 6,\n"hold_perday": 40}');
    expect((await record()).err).toContain('shop.json:3: The field "hold_perday" cannot be read.');
  });

  test('a range written backwards is the same range', async () => {
    await put('readings.csv', 'part,aspect,value,unit\ntire,tread_mid,9..5,[in_i]/32\n');
    expect((await entries('observation'))[0]?.value).toMatchObject({ value: 5, upTo: 9 });
  });

  test('a table of something else altogether is told in seconds', async () => {
    const rows = Array.from({ length: 20_000 }, (_, i) => `nonsense${i},x,1`);
    await put('readings.csv', `part,aspect,value\n${rows.join('\n')}\n`);
    const began = performance.now();
    expect((await entries('puzzle')).length).toBe(20_000);
    expect(performance.now() - began).toBeLessThan(5000);
  });
});

describe('what is around the command', () => {
  test('a bad environment is bad usage', async () => {
    await put('walk.vtt', vtt);
    const lot = await record({ WALKWRIGHT_DEALERSHIP: 'Bad Lot!' });
    expect(lot.code).toBe(2);
    expect(lot.err).toContain('WALKWRIGHT_DEALERSHIP must be a plain lower-case id');
  });

  test('export refuses a folder and a missing --out before anything is opened', async () => {
    expect((await inside(['export'])).code).toBe(2);
    const ran = await inside(['export', '--out', folder, '--data', join(folder, 'data')]);
    expect(ran.code).toBe(1);
    expect(ran.err).toContain('This is not a file that can be written.');
  });

  test('import says once that a file is no log', async () => {
    await put('junk.txt', 'x\n'.repeat(5000));
    const ran = await inside(['import', join(folder, 'junk.txt'), '--data', join(folder, 'data')]);
    expect(ran.code).toBe(1);
    expect(ran.err.split('\n').length).toBeLessThan(6);
    expect(ran.err).toContain('No line of this file is a line of a log');
  });

  test('a data folder that is a file is told as such', async () => {
    await put('data', 'x');
    const ran = await inside(['export', '--out', join(folder, 'x.jsonl'), '--data', join(folder, 'data')]);
    expect(ran.code).toBe(1);
    expect(ran.err).toContain('A file stands where a folder should be.');
  });
});

test.skipIf(process.platform === 'win32')('a name of a file does not steer the terminal', async () => {
  await put('readings.csv', 'part,aspect,value\ntire,present,yes\n');
  await symlink('/etc/hostname', join(folder, 'two\nlines \u001b[31mred \u202etxt'));
  const ran = await record();
  expect(ran.code).toBe(0);
  expect(ran.err).toContain('two lines ?[31mred ?txt: The path leads out of the walk folder.');
  for (const sign of ['\u001b', '\u202e']) expect(ran.err).not.toContain(sign);
});

test.skipIf(process.platform !== 'linux')(
  'a full disk is told as such, and leaves no half document',
  async () => {
    await put('walk/readings.csv', 'part,aspect,value\ntire,present,yes\n');
    await mkdir(join(folder, 'out'));
    // Whatever is written to this device meets a full disk.
    await symlink('/dev/full', join(folder, 'out', 'report.pdf.part'));
    const ran = await inside(['packet', join(folder, 'walk'), '--out', join(folder, 'out')]);
    expect(ran.code).toBe(1);
    expect(ran.err).toContain('The disk is full.');
    expect(await readdir(join(folder, 'out'))).toEqual([]);
  },
);
