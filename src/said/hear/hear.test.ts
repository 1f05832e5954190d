import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { aspectOf, partOf } from '../../catalogue/index.ts';
import { isPlace } from '../../catalogue/place.ts';
import { isState } from '../../catalogue/state.ts';
import { hear } from './hear.ts';
import { hearJson } from './hear-json.ts';

const said = (...texts: string[]) =>
  hearJson(hear(texts.map((text, i) => ({ start: i * 5, end: i * 5 + 5, text }))));
const row = (text: string, part: string, kind?: string) =>
  said(text).find((r) => r.part === part && (kind === undefined || r.kind === kind));

describe('readings', () => {
  test('a tire called as a row, without a unit', () => {
    const rows = said(
      'Tires. Left rear outer twenty-three nineteen, eleven thirty-seconds, ninety-five. Inner twenty-four eighteen ten, eighty-eight.',
    );
    expect(rows.filter((r) => r.part === 'tire').map((r) => [r.place, r.value])).toEqual([
      ['left rear outer', '2319'],
      ['left rear outer', 11],
      ['left rear outer', 95],
      ['left rear inner', '2418'],
      ['left rear inner', 10],
      ['left rear inner', 88],
    ]);
  });
  test('a sentence split over cues is one sentence', () => {
    const rows = said('The house batteries are resting at twelve', 'point six volts');
    expect(rows[0]).toMatchObject({ part: 'house_battery', aspect: 'rest voltage', value: 12.6, unit: 'V' });
  });
  test('the part decides the unit and the reading', () => {
    expect(row('Fresh water is a hundred, gray is sixty-five', 'gray_tank')).toMatchObject({
      value: 65,
      unit: '[gal_us]',
    });
    expect(row('Air conditioner front, thirteen five', 'ac_roof')).toMatchObject({
      value: 13500,
      unit: '[Btu]/h',
    });
  });
  test('counts before and after their part', () => {
    expect(row('It has three slides', 'slide')).toMatchObject({ value: 3 });
    expect(row('Slides two. All okay', 'slide')).toMatchObject({ value: 2 });
  });
});

describe('what a clause is worth', () => {
  test('a denied failure is an absence, good news', () => {
    expect(row('No cracks in the windshield', 'windshield')).toMatchObject({
      kind: 'absent',
      polarity: 'good',
    });
    expect(row("I don't see any leaks at the water pump", 'water_pump')?.kind).not.toBe('defect');
  });
  test('a denial ends at "but"', () => {
    const rows = said('The skylight has no cracks but it leaks');
    expect(rows.map((r) => r.kind)).toEqual(['absent', 'defect']);
  });
  test('"will not" makes a working verb a failure', () => {
    expect(row('The entry step will not retract', 'entry_step')).toMatchObject({
      kind: 'defect',
      polarity: 'bad',
    });
    expect(row('The horn works', 'horn')).toMatchObject({ kind: 'operates', polarity: 'good' });
  });
  test('hearsay is kept with who said it', () => {
    const found = hear([{ start: 0, end: 5, text: 'He said the furnace works' }]).observations[0];
    expect(found).toMatchObject({ part: 'furnace_run', hedged: true, saidBy: 'the seller' });
  });
  test('stories about other coaches and things that could be are no facts', () => {
    expect(said('My buddy had a generator with nine hundred hours on it')).toEqual([]);
    expect(
      said('If you had a cracked windshield you would be out two thousand dollars').filter(
        (r) => r.kind !== 'claim',
      ),
    ).toEqual([]);
  });
  test('not tried is unknown, praise is a claim', () => {
    expect(row('I have not run the furnace', 'furnace_run')?.kind).toBe('unknown');
    expect(row('This is a gorgeous coach', 'coach')?.kind).toBe('claim');
  });
});

describe('corrections', () => {
  test('the later value replaces the earlier, and both are kept', () => {
    const { observations } = hear([
      { start: 0, end: 8, text: 'The water heater is sixteen gallons, no wait, ten gallons' },
    ]);
    expect(observations).toHaveLength(2);
    expect(observations[1]).toMatchObject({ value: { value: 10 }, corrects: [0] });
    expect(hearJson({ observations, chapters: [], used: [], unused: [] })[0]).toMatchObject({
      value: 16,
      retracted: true,
    });
  });
});

describe('laws', () => {
  const phrases = [
    'left front tire',
    'nine thirty-seconds',
    'no',
    'cracks',
    'in the windshield',
    'scratch that',
    'the roof',
    'is soft',
    '12.6',
    'volts',
    'he said',
    'Generator.',
    'and',
    'but',
    'if you',
    'works,',
    'twenty-three nineteen',
    'hundred',
    'oh',
    'and a half',
    'point',
    "won't",
    'lock',
    'A',
    'C',
    '$',
    '...',
    "'s",
    '—',
    'Zorvane',
    'of',
    'by',
    'to',
    '3/0',
    'minus',
    'one',
    'a',
  ];
  const texts = fc.array(
    fc.oneof(
      fc.array(fc.constantFrom(...phrases), { maxLength: 12 }).map((p) => p.join(' ')),
      fc.string({ maxLength: 40 }),
    ),
    { maxLength: 12 },
  );
  test('any words: no throw, every cue used or unused once, words exact, ids known', () => {
    fc.assert(
      fc.property(texts, (list) => {
        const cues = list.map((text, i) => ({ start: i * 3, end: i * 3 + 3, text }));
        const heard = hear(cues);
        expect([...heard.used, ...heard.unused].sort((a, b) => a - b)).toEqual(cues.map((_, i) => i));
        const all = list
          .join(' ')
          .split(/\s+/)
          .filter((t) => t !== '')
          .join(' ');
        for (const o of heard.observations) {
          expect(partOf(o.part), o.part).toBeDefined();
          expect(aspectOf(o.part, o.aspect) ?? o.aspect.length > 0).toBeTruthy();
          expect(all).toContain(o.words);
          expect(o.end).toBeGreaterThanOrEqual(o.start);
          expect(o.sure).toBeGreaterThan(0);
          expect(o.sure).toBeLessThan(1);
          if (o.value.is === 'state') expect(isState(o.value.state)).toBe(true);
          if (o.value.is === 'quantity') expect(Number.isFinite(o.value.value)).toBe(true);
          for (const k of o.corrects ?? []) expect(heard.observations[k]).toBeDefined();
        }
      }),
      { seed: 11, numRuns: 500 },
    );
  });
  test.each(['constructor', 'valueOf', 'toString', '__proto__', 'hasOwnProperty'])(
    'a spoken "%s" is a word like any other',
    (word) => {
      const cues = [
        { start: 0, end: 4, text: `The left ${word} tire has nine thirty-seconds.` },
        { start: 4, end: 8, text: `${word} ${word} front ${word} leaks, ${word} volts twelve point six.` },
      ];
      for (const o of hear(cues).observations) {
        expect(partOf(o.part)).toBeDefined();
        if (o.place !== undefined) expect(isPlace(o.place)).toBe(true);
      }
    },
  );
  test('volts at no load are not the volts under load', () => {
    const { observations } = hear([
      { start: 0, end: 5, text: 'The generator starts. No load one twenty-four volts, sixty-two hertz.' },
      { start: 5, end: 10, text: 'Both airs on, one sixteen volts, fifty-eight point five hertz.' },
    ]);
    const volts = observations.filter((o) => /^(volts|hertz)_/.test(o.aspect)).map((o) => o.aspect);
    expect(volts.slice(0, 2)).toEqual(['volts_unloaded', 'hertz_unloaded']);
    expect(volts.slice(2).some((a) => a.endsWith('unloaded'))).toBe(false);
  });
  test('the same words give the same observations', () => {
    const cues = [
      {
        start: 0,
        end: 9,
        text: 'Roof is fiberglass, no soft spots, and the lap sealant is cracked at the front',
      },
    ];
    expect(hear(cues)).toEqual(hear(cues));
  });
});
