// Why: whatever is wrong with a file: it is told with line and remedy, what is sound in it is kept, and nothing throws.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { understand } from '../../src/doors/files/understand.ts';
import type { Entry, EntryOf } from '../../src/said/entry.ts';
import { readEntry } from '../../src/said/entry.ts';
import { about, memoryFile } from './memory-file.ts';

const of = <K extends Entry['kind']>(entries: readonly Entry[], kind: K): EntryOf<K>[] =>
  entries.filter((e): e is EntryOf<K> => e.kind === kind);
const read = (name: string, content: string | Uint8Array) => understand([memoryFile(name, content)], about);

describe('WebVTT', () => {
  test('a broken cue costs itself only, and its words are kept', async () => {
    const { entries, account } = await read(
      'walk.vtt',
      'WEBVTT\n\n00:00:01.000 --> 00:00:03.000\nThe left front tire has nine thirty-seconds of tread.\n\nnonsense --> more\nThese words matter too.\n\n00:00:05.000 --> 00:00:08.000\nThe windshield has a crack.\n',
    );
    expect(of(entries, 'transcript')[0]?.cues.map((c) => c.start)).toEqual([1, 5]);
    expect(of(entries, 'puzzle').some((p) => p.raw.includes('These words matter too.') && p.line === 6)).toBe(
      true,
    );
    expect(account.some((a) => a.file === 'walk.vtt' && a.line === 6)).toBe(true);
  });
  test.each([
    ['empty', ''],
    ['a header only', 'WEBVTT\n'],
    ['truncated in a time', 'WEBVTT\n\n00:00:01.000 --> 00:0'],
    ['bytes that are no text', new Uint8Array([0, 1, 2, 3, 0, 255])],
  ])('%s: refused, kept, nothing guessed', async (_, content) => {
    const { entries, account } = await read('walk.vtt', content);
    expect(account.find((a) => a.file === 'walk.vtt')?.did).toBe('refused');
    expect(of(entries, 'observation')).toEqual([]);
    expect(of(entries, 'media').map((m) => m.name)).toEqual(['walk.vtt']);
    expect(of(entries, 'puzzle')).toHaveLength(1);
  });
  test('markup and scripts in a cue are words, not markup', async () => {
    const { entries } = await read(
      'walk.vtt',
      'WEBVTT\n\n00:01.000 --> 00:02.000\n<script>alert(1)</script> the roof is good\n',
    );
    expect(of(entries, 'transcript')[0]?.cues[0]?.text).not.toContain('<script');
  });
  test('a cue of a hundred thousand letters is kept whole', async () => {
    const { entries } = await read(
      'walk.vtt',
      `WEBVTT\n\n00:01.000 --> 00:02.000\n${'word '.repeat(20_000)}end\n`,
    );
    const text = of(entries, 'transcript')
      .flatMap((t) => t.cues.map((c) => c.text))
      .join('');
    expect(text).toHaveLength(20_000 * 5 + 3);
  });
});

describe('JSON', () => {
  test('unit.json that breaks off names the line', async () => {
    const { entries, account } = await read(
      'unit.json',
      '{\n  "kind": "class-c",\n  "stock": "T-1"\n  "name": "x"\n}\n',
    );
    expect(account.find((a) => a.file === 'unit.json')).toMatchObject({ did: 'refused', line: 4 });
    expect(of(entries, 'unit')).toEqual([]);
  });
  test('a wrong field costs no other field', async () => {
    const { entries, account } = await read(
      'unit.json',
      '{\n"kind": "spaceship",\n"stock": "T-1",\n"year": "2018",\n"colour": "red",\n"on_paper": {"coach.length": {"value": 38, "unit": "feet"}, "coach.width": {"value": 96, "unit": "[in_i]"}, "__proto__.x": 1}\n}',
    );
    expect(of(entries, 'unit')[0]).toMatchObject({ stock: 'T-1' });
    expect(of(entries, 'unit')[0]?.vehicle).toBeUndefined();
    expect(of(entries, 'observation').map((o) => o.aspect)).toEqual(['width']);
    expect(of(entries, 'puzzle').map((p) => [p.code, p.line])).toEqual([
      ['unit-field', 2],
      ['unit-field', 4],
      ['unit-key', 5],
      ['unit-unknown', 6],
      ['part-unknown', 6],
    ]);
    expect(account.filter((a) => a.did === 'partly').length).toBeGreaterThan(4);
  });
  test.each(['[]', '"text"', 'null', '1e999', '{"a":'.repeat(5000)])('%.20s is no unit', async (text) => {
    expect((await read('unit.json', text)).account.find((a) => a.file === 'unit.json')?.did).toBe('refused');
  });
  test('a shop without rates is refused with what to write', async () => {
    const { entries, account } = await read(
      'shop.json',
      '{"labor": {"default": "a lot"}, "hours_per_day": 30}',
    );
    expect(of(entries, 'shop')).toEqual([]);
    expect(account.find((a) => a.file === 'shop.json')?.says).toContain('skill in lower case');
  });
});

describe('CSV', () => {
  test('every bad row is told with its line and kept; the good ones stand', async () => {
    const { entries, account } = await read(
      'readings.csv',
      [
        'at,part,place,aspect,value,unit,plus_or_minus,by,note',
        ',tire,left-front,tread_mid,9,[in_i]/32,1,,',
        'noon,tire,left-front,tread_mid,9,[in_i]/32,1,,',
        ',tyre,left-front,tread_mid,9,[in_i]/32,1,,',
        ',tire,left-front,tread_mid,9,psi,1,,',
        ',tire,left-front,tread_mid,,,,,',
        ',tire,right-front,tread_mid,8,[in_i]/32,1,,',
      ].join('\n'),
    );
    expect(of(entries, 'observation').map((o) => o.place)).toEqual(['left-front', 'right-front']);
    expect(of(entries, 'puzzle').map((p) => [p.line, p.code])).toEqual([
      [3, 'at-unreadable'],
      [4, 'part-unknown'],
      [5, 'unit-unknown'],
      [6, 'value-missing'],
    ]);
    expect(of(entries, 'puzzle')[1]?.raw).toBe(',tyre,left-front,tread_mid,9,[in_i]/32,1,,');
    expect(account.find((a) => a.line === 4)?.says).toContain('Perhaps tire is meant');
  });
  test('without its columns the whole file is refused', async () => {
    expect(
      (await read('readings.csv', 'part;wert\ntire;9\n')).account.find((a) => a.line === 1),
    ).toMatchObject({ did: 'refused' });
  });
  test('a list of comparables with an impossible day and a price in words', async () => {
    const { entries } = await read(
      'comps.csv',
      'ref,on,kind,year,ask\na,2026-02-30,class-c,2018,1\nb,2026-02-03,class-c,2018,call\nc,2026-02-03,class-c,2018,59900\n',
    );
    expect(of(entries, 'comparables')[0]?.rows).toEqual([
      { ref: 'c', on: '2026-02-03', vehicle: 'class-c', year: 2018, askCents: 5_990_000 },
    ]);
    expect(of(entries, 'puzzle').map((p) => p.line)).toEqual([2, 3]);
  });
});

describe('GPX', () => {
  const point = (i: number): string =>
    `<trkpt lat="${31 + i / 10_000}" lon="-97"><time>2026-11-20T17:00:${String(i).padStart(2, '0')}Z</time></trkpt>`;
  const points = Array.from({ length: 30 }, (_, i) => point(i)).join('\n');
  test('entities that multiply are refused before anything is read', async () => {
    const bomb = `<?xml version="1.0"?>\n<!DOCTYPE gpx [<!ENTITY a "aaaaaaaaaa">${Array.from({ length: 20 }, (_, i) => `<!ENTITY a${i} "&a;&a;&a;&a;&a;&a;&a;&a;&a;&a;">`).join('')}]>\n<gpx><trk><trkseg>${points}</trkseg></trk></gpx>`;
    const { entries, account } = await read('drive.gpx', bomb);
    expect(account.find((a) => a.file === 'drive.gpx')?.did).toBe('refused');
    expect(of(entries, 'observation')).toEqual([]);
  });
  test('a file of this machine is not read through an entity', async () => {
    const { entries } = await read(
      'drive.gpx',
      '<!DOCTYPE g [<!ENTITY x SYSTEM "file:///etc/passwd">]><gpx><trk><name>&x;</name></trk></gpx>',
    );
    expect(JSON.stringify(entries)).not.toContain('root:');
  });
  test('a track that breaks off is read up to there, and said to be broken', async () => {
    const { entries, account } = await read('drive.gpx', `<gpx><trk><trkseg>\n${points}\n<trkpt lat="31.9"`);
    expect(of(entries, 'observation').map((o) => o.aspect)).toContain('miles');
    expect(
      account.some((a) => a.file === 'drive.gpx' && a.line !== undefined && a.says.includes('not sound XML')),
    ).toBe(true);
  });
  test('points without times or places are counted, not guessed', async () => {
    const { entries, account } = await read(
      'drive.gpx',
      `<gpx><trk><trkseg>${points}<trkpt lat="31"/><trkpt lat="999" lon="1"><time>2026-11-20T17:01:00Z</time></trkpt></trkseg></trk></gpx>`,
    );
    expect(of(entries, 'observation').length).toBeGreaterThan(0);
    expect(account.some((a) => a.says.startsWith('2 track points'))).toBe(true);
  });
  test.each(['', '<gpx/>', 'not xml', '<gpx><trk>'.repeat(2000)])(
    '%.20s tells nothing of a drive',
    async (text) => {
      const { entries } = await read('drive.gpx', text);
      expect(of(entries, 'observation')).toEqual([]);
    },
  );
});

describe('the walk as a whole', () => {
  test('without a transcript everything else is read, and the silence is named', async () => {
    const { entries, account } = await understand(
      [
        memoryFile('readings.csv', 'part,aspect,value\nwindshield,crack,yes\n'),
        memoryFile('recording.mp4', 'x'),
      ],
      about,
    );
    expect(of(entries, 'observation')).toHaveLength(1);
    expect(account.find((a) => a.file === 'walk.vtt')).toMatchObject({ did: 'missing' });
    expect(account.filter((a) => a.did === 'missing').map((a) => a.file)).toEqual([
      'unit.json',
      'walk.vtt',
      'photos/',
      'drive.gpx',
      'motion.csv',
      'comps.csv',
      'shop.json',
    ]);
  });
  test('a unit with HTML in its name keeps it as the words they are', async () => {
    const name = '<img src=x onerror=alert(1)> & "Co"';
    const { entries } = await read('unit.json', JSON.stringify({ name, kind: 'class-c' }));
    expect(of(entries, 'unit')[0]?.name).toBe(name);
  });
  test('the same files give the same entries, ids and all; another row leaves the other ids as they were', async () => {
    const rows =
      'part,aspect,value\nwindshield,crack,yes\nlp_alarm,condition,cracked\nlp_alarm,condition,cracked\n';
    const first = await read('readings.csv', rows);
    expect((await read('readings.csv', rows)).entries).toEqual(first.entries);
    const ids = new Set(first.entries.map((e) => e.id));
    expect(ids.size).toBe(first.entries.length);
    const more = await read('readings.csv', rows.replace('lp_alarm', 'horn,operates,works\nlp_alarm'));
    expect(of(more.entries, 'observation').filter((o) => ids.has(o.id))).toHaveLength(3);
  });
  test('it can be stopped', async () => {
    const stop = new AbortController();
    const work = understand(
      [memoryFile('readings.csv', 'part,aspect,value\n')],
      about,
      () => stop.abort(),
      stop.signal,
    );
    await expect(work).rejects.toThrow('abort');
  });
  test('any rubbish in any file: every entry is an entry, nothing throws (property)', async () => {
    const names = [
      'unit.json',
      'walk.vtt',
      'walk.srt',
      'walk.json',
      'walk.txt',
      'readings.csv',
      'photos.csv',
      'drive.gpx',
      'motion.csv',
      'comps.csv',
      'shop.json',
      'photos/a.jpg',
      'x',
    ];
    const seedText = fc.oneof(
      fc.string({ unit: 'binary', maxLength: 300 }),
      fc.json({ maxDepth: 4 }),
      fc
        .array(
          fc.constantFrom(
            'WEBVTT',
            '00:01.000 --> 00:02.000',
            '[1:05]',
            'tire',
            ',',
            ';',
            '"',
            '\n',
            'part,aspect,value',
            'tread_mid',
            '9',
            '[in_i]/32',
            '1e999',
            '<gpx><trk><trkseg>',
            '<trkpt lat="1" lon="1">',
            '</gpx>',
            't,ax,ay,az',
            'ref,on,kind,year',
            '{',
            '}',
            '"labor":',
            '\0',
            '\ud800',
          ),
          { maxLength: 40 },
        )
        .map((a) => a.join('')),
    );
    await fc.assert(
      fc.asyncProperty(fc.constantFrom(...names), seedText, async (name, text) => {
        const { entries, account } = await read(name, text);
        for (const e of entries) expect(readEntry(JSON.parse(JSON.stringify(e)))).toHaveProperty('entry');
        expect(account.length).toBeGreaterThan(0);
      }),
      { seed: 20261124, numRuns: 400 },
    );
  }, 60_000);
});
