// Why: failures and denied failures in every build of sentence, by words that stand in no annotated walk.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { hear } from './hear.ts';
import { formsOf } from './inflect.ts';
import { suits } from './suits.ts';

const said = (text: string): string[] =>
  hear([{ start: 0, end: 20, text }]).observations.map((o) => `${o.sense} ${o.part}/${o.aspect}`);

describe('forms of a verb', () => {
  test.each([
    ['leak', 'leaks leaking leaked leaked'],
    ['drip', 'drips dripping dripped dripped'],
    ['seize up', 'seizes up seizing up seized up seized up'],
    ['break/broke/broken off', 'breaks off breaking off broke off broken off'],
    ['die', 'dies dying died died'],
    ['oxidize', 'oxidizes oxidizing oxidized oxidized'],
    ['vary', 'varies varying varied varied'],
    ['ooze', 'oozes oozing oozed oozed'],
  ])('%s', (verb, forms) => {
    const f = formsOf(verb);
    expect([f.s, f.ing, f.past, f.part].join(' ')).toBe(forms);
  });
});

describe('a failure goes to the part that can fail so', () => {
  test.each([
    ['The generator is loud and the coolant hose is oozing.', 'defect belts_hoses/leak'],
    ['The patio awning has a rip by the arm.', 'defect patio_awning/damage'],
    ['The furnace conked out after a minute.', 'defect furnace_run/operates'],
    ['The left front tire is wore slick.', 'defect tire/wear'],
    ['The house batteries have seen better days.', 'defect house_battery/condition'],
    ['The microwave is on its last legs.', 'defect microwave/operates'],
    ['The slide will not budge.', 'defect slide/operates'],
    ['The furnace took four tries to light.', 'defect furnace_run/operates'],
    ['The entry door, you have to slam it.', 'defect entry_door/operates'],
    ['The water pump runs and never quits.', 'defect water_pump/operates'],
    ['The ABS lamp stays on.', 'defect dash_gauges/lit'],
  ])('%s', (text, expected) => {
    expect(said(text)).toContain(expected);
  });
  test('what can never be is not', () => {
    expect(suits('tire', 'smell', 'smelling')).toBe(false);
    expect(suits('mirrors', 'smoke', 'smoking')).toBe(false);
    expect(suits('house_battery', 'swelling', 'swollen')).toBe(true);
  });
});

describe('no failure at all', () => {
  test.each([
    'The windshield. I cracked my knuckles.',
    'The entry door. My glove is wet.',
    'The ladder. I thumped on it.',
    'The awning. If it rips you call us.',
    'The roof, I stuck a probe in it.',
    'The tires are four hundred a pop.',
    'The awning is like a broken record, so we say.',
  ])('%s', (text) => {
    expect(said(text).filter((o) => o.startsWith('defect'))).toEqual([]);
  });
});

describe('denied failures', () => {
  test.each([
    ['The skylight, not a crack.', 'absent skylight/crack'],
    ['The toilet, I found no leak.', 'absent toilet/leak'],
    ['The frame is free of rust.', 'absent frame_rails/rust'],
    ['Neither slide drags.', 'absent slide/operates'],
    ['The roof. Soft spots, none.', 'absent roof_membrane/soft'],
    ["The frame. Rust I don't see.", 'absent frame_rails/rust'],
    ["The shower, I ain't seen no cracks.", 'absent shower_tub/crack'],
    ['The tires, without a crack.', 'absent tire/crack'],
    ['The refrigerator no longer leaks.', 'absent refrigerator/leak'],
    ['Check engine lamp is off.', 'absent dash_gauges/lit'],
    ['No warning lights on the dash.', 'absent dash_gauges/lit'],
    ['The water pump, it does not cycle.', 'absent water_pump/leak'],
  ])('%s', (text, expected) => {
    const heard = said(text);
    expect(heard).toContain(expected);
    expect(heard.filter((o) => o.startsWith('defect'))).toEqual([]);
  });

  test.each([
    ['No doubt the toilet leaks.', 'defect toilet/leak'],
    ['The skylight is not only cracked but loose.', 'defect skylight/crack'],
    ['They never fixed the leak at the water heater.', 'defect water_heater_out/leak'],
  ])('a denial that is none: %s', (text, expected) => {
    expect(said(text)).toContain(expected);
  });

  test('each thing of a denied list is denied', () => {
    const heard = said('The tires, no cracks, no dry rot or bulges.');
    expect(heard.filter((o) => o.startsWith('absent tire')).length).toBeGreaterThanOrEqual(2);
    expect(heard.filter((o) => o.startsWith('defect'))).toEqual([]);
  });

  test('a denied failure never comes out as one', () => {
    const things = [
      'skylight',
      'water heater',
      'left front tire',
      'driver side slide',
      'generator',
      'toilet',
      'shower',
    ];
    const nouns = [
      'leaks',
      'cracks',
      'rust',
      'drips',
      'stains',
      'rattles',
      'soft spots',
      'dents',
      'squeaks',
      'corrosion',
    ];
    const builds = [
      'The T has no N.',
      'The T, no N.',
      'No N on the T.',
      'There is no sign of N on the T.',
      "I don't see any N on the T.",
      "I didn't find N on the T.",
      'The T is free of N.',
      'The T, zero N.',
      'The T. N, none.',
      "The T ain't got no N.",
      'Nary a N on the T.',
      'Without any N, the T.',
      "We couldn't find N on the T.",
      'The T never had N.',
    ];
    fc.assert(
      fc.property(
        fc.constantFrom(...things),
        fc.constantFrom(...nouns),
        fc.constantFrom(...builds),
        (t, n, b) => {
          const text = b.replace('T', () => t).replace('N', () => n);
          expect(
            said(text.replace(/^./, (c) => c.toUpperCase())).filter((o) => o.startsWith('defect')),
          ).toEqual([]);
        },
      ),
      { seed: 77, numRuns: 300 },
    );
  });
});
