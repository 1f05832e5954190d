// Why: a price that looks exact and is not does harm; the steps, the gaps and the cautions are held here.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { coach } from '../../test/sample-entries.ts';
import { factsOf } from '../known/facts-of.ts';
import { fold } from '../known/fold.ts';
import type { Job } from '../planned/job.ts';
import type { Comparable, Entry } from '../said/entry.ts';
import { addDays, day } from '../units/day.ts';
import { cents, dollars } from '../units/money.ts';
import { ratesFor } from './adjustment.ts';
import { dropRepeats } from './drop-repeats.ts';
import type { PriceView } from './price.ts';
import { price } from './price-unit.ts';
import { priceWords, sayPriceCode } from './price-words.ts';
import { weightedQuantile } from './weighted-quantile.ts';

const says = coach();
const on = day('2026-11-24');
const facts = (...log: Entry[]) => factsOf(fold(log), on);
const own = (fields: { year?: number } = { year: 2016 }) =>
  facts(
    says.unit(1, { vehicle: 'class-a-diesel', ...fields, equipment: { generator: false } }),
    says.reading(2, 'coach', 'length', 40, '[ft_i]'),
    says.reading(3, 'odometer', 'reading', 48_000, '[mi_i]'),
    says.typed(4, 'slide', 'count', { is: 'count', count: 4 }),
    says.reading(5, 'engine', 'power', 400, '[HP]'),
  );
const alike = { lengthFt: 40, miles: 48_000, slides: 4, powerHp: 400 };
const row = (ref: string, fields: Partial<Comparable>): Comparable => ({
  ref,
  on,
  vehicle: 'class-a-diesel',
  year: 2016,
  ...alike,
  ...fields,
});
const priced = (view: PriceView) => {
  if (view.is !== 'priced') throw new Error(`a gap: ${view.missing.join(', ')}`);
  return view;
};
const daysAgo = (n: number) => addDays(on, -n);

describe('our own worked example: an invented 2016 class A diesel and five comparables', () => {
  // The example gives weights but not the days they come from; these days give its weights to two places.
  const five = [
    row('A', { askCents: 12_490_000, year: 2017, miles: 39_000, on: daysAgo(34) }),
    row('B', { askCents: 11_850_000, miles: 61_000, lengthFt: 38, slides: 3, powerHp: 380, on: daysAgo(82) }),
    row('C', { soldCents: 11_200_000, year: 2015, miles: 44_000, on: daysAgo(132) }),
    row('D', {
      askCents: 13_190_000,
      year: 2017,
      miles: 28_000,
      lengthFt: 41,
      powerHp: 450,
      on: daysAgo(37),
    }),
    row('E', {
      askCents: 10_990_000,
      year: 2015,
      miles: 72_000,
      lengthFt: 39,
      slides: 3,
      powerHp: 380,
      on: daysAgo(52),
    }),
  ];
  const settings = {
    rates: {
      year: 0.065,
      mile: 0.15,
      foot: 2500,
      slide: 5000,
      horsepower: 80,
      askToSold: 0.95,
      groupCap: 0.06,
    },
    condition: { C: dollars(2500) },
  };
  const view = priced(price(five, own(), [], settings));
  const of = (ref: string) => view.used.find((u) => u.comparable.ref === ref)!;

  test.each([
    ['A', 118_655, 109_592, 8, 0.65],
    ['B', 112_575, 121_280, 8, 0.45],
    ['C', 112_000, 121_686, 10, 0.38],
    ['D', 125_305, 107_660, 14, 0.54],
    ['E', 104_405, 121_527, 16, 0.45],
  ])('%s: base %d, adjusted %d, gross %d %%, weight %d', (ref, base, adjusted, gross, weight) => {
    expect(of(ref).base).toBe(base * 100);
    // The example rounds every step to the dollar.
    expect(Math.abs(of(ref).adjusted / 100 - adjusted)).toBeLessThanOrEqual(1.5);
    expect(Math.round(of(ref).grossPercent)).toBe(gross);
    expect(of(ref).weight).toBeCloseTo(weight, 2);
  });
  test('its quartiles', () => {
    const weighted = view.used.map((u) => ({
      value: u.adjusted / 100,
      weight: Math.round(u.weight * 100) / 100,
    }));
    for (const [p, expected] of [
      [0.25, 108_788],
      [0.5, 117_455],
      [0.75, 121_520],
    ] as const)
      expect(Math.abs(weightedQuantile(weighted, p) - expected)).toBeLessThanOrEqual(3);
  });
  test('rounded to $500, outward', () => {
    expect([view.low, view.middle, view.high]).toEqual([10_850_000, 11_750_000, 12_200_000]);
  });
  test('and it says that the prices lean on the year, downward', () => {
    const lean = view.cautions.find((c) => c.startsWith('year-lean:'));
    expect(Number(lean?.split(':')[1])).toBeLessThan(-2);
    const flatter = priced(price(five, own(), [], { ...settings, rates: { ...settings.rates, year: 0.01 } }));
    expect(flatter.cautions.some((c) => c.startsWith('year-lean'))).toBe(false);
  });
});

describe('adjustments', () => {
  const one = (fields: Partial<Comparable>, unit = own()) =>
    priced(
      price(
        [row('X', { soldCents: 10_000_000, ...fields }), row('Y', { soldCents: 9_000_000, miles: 20_000 })],
        unit,
        [],
      ),
    ).used.find((u) => u.comparable.ref === 'X')!;
  test('a like unit is not adjusted; what sold is not discounted', () => {
    expect(one({})).toMatchObject({
      base: 10_000_000,
      adjusted: 10_000_000,
      adjustments: [],
      grossPercent: 0,
    });
    expect(one({ askCents: 12_000_000 }).base).toBe(10_000_000);
  });
  test('miles no further than 8 %, the group no further than 6 %', () => {
    expect(one({ miles: 300_000 }).adjustments).toEqual([{ what: 'miles', amount: 800_000 }]);
    expect(one({ lengthFt: 30, slides: 0 }).adjustments).toEqual([
      { what: 'length, slides, power', amount: 600_000 },
    ]);
  });
  test('a model year past twelve years of age counts half', () => {
    const old = one({ year: 2009 }, own({ year: 2010 }));
    const rate = ratesFor('class-a-diesel').year / 2;
    expect(old.adjusted).toBe(cents(10_000_000 / (1 - rate)));
  });
  test('what is not known of the unit adjusts nothing and is said', () => {
    const unit = facts(says.unit(1, { vehicle: 'class-a-diesel' }));
    const view = priced(
      price(
        [row('X', { soldCents: 10_000_000, year: 2001, miles: 1 }), row('Y', { soldCents: 9_000_000 })],
        unit,
        [],
      ),
    );
    expect(view.used.every((u) => u.adjustments.length === 0)).toBe(true);
    for (const name of ['year', 'lengthFt', 'miles', 'slides', 'powerHp', 'generatorHours'])
      expect(view.cautions).toContain(`unit-missing:${name}`);
  });
  test('what sources disagree about is not taken', () => {
    const unit = facts(
      says.unit(1, { vehicle: 'class-a-diesel', year: 2016 }),
      says.typed(2, 'coach', 'year', { is: 'text', text: '2015' }),
    );
    const view = priced(
      price([row('X', { soldCents: 10_000_000, year: 2012 }), row('Y', { soldCents: 9_000_000 })], unit, []),
    );
    expect(view.cautions).toContain('unit-unsettled:year');
    expect(view.used.flatMap((u) => u.adjustments)).toEqual([]);
  });
  test('a trailer has no miles or power to miss', () => {
    const unit = facts(says.unit(1, { vehicle: 'travel-trailer', year: 2016 }));
    const rows = ['X', 'Y'].map((ref, i) =>
      row(ref, { vehicle: 'travel-trailer', soldCents: 2_000_000 + i * 100_000 }),
    );
    const view = priced(
      price(
        rows.map(({ miles: _, powerHp: __, ...r }) => r),
        unit,
        [],
      ),
    );
    expect(view.cautions.filter((c) => c.startsWith('unit-missing'))).toEqual([
      'unit-missing:lengthFt',
      'unit-missing:slides',
    ]);
  });
});

describe('weight', () => {
  const weight = (fields: Partial<Comparable>) =>
    priced(
      price([row('X', { askCents: 10_000_000, ...fields }), row('Y', { soldCents: 5_000_000 })], own(), []),
    ).used.find((u) => u.comparable.ref === 'X')!.weight;
  test('halves in 90 days and in 1,000 miles; a sale counts 1.3; a missing column counts less', () => {
    expect(weight({})).toBeCloseTo(1, 12);
    expect(weight({ on: daysAgo(90) })).toBeCloseTo(0.5, 12);
    expect(weight({ milesAway: 1000 })).toBeCloseTo(0.5, 12);
    expect(weight({ soldCents: 9_500_000 })).toBeCloseTo(1.3, 12);
    const { miles: _, ...without } = row('X', { askCents: 10_000_000 });
    const view = priced(price([without, row('Y', { soldCents: 5_000_000 })], own(), []));
    expect(view.used.find((u) => u.comparable.ref === 'X')!.weight).toBeCloseTo(0.85, 12);
  });
});

describe('what is left out, and what is warned of', () => {
  const two = [row('X', { soldCents: 10_000_000 }), row('Y', { soldCents: 9_000_000, miles: 30_000 })];
  const reasons = (...rows: Comparable[]) =>
    Object.fromEntries(price([...two, ...rows], own(), []).leftOut.map((l) => [l.comparable.ref, l.leftOut]));
  test('each with its reason', () => {
    const { soldCents: _, ...unpriced } = row('N', { soldCents: 1, miles: 1000 });
    expect(
      reasons(
        row('C', { vehicle: 'class-c', soldCents: 8_000_000 }),
        unpriced,
        row('L', { on: addDays(on, 1), soldCents: 8_000_000, miles: 90_000 }),
        row('R', { askCents: 10_100_000, soldCents: 10_000_000, miles: 48_200, on: daysAgo(3) }),
        row('G', { year: 2003, soldCents: 4_000_000 }),
      ),
    ).toEqual({ C: 'other-kind', N: 'no-price', L: 'later-day', R: 'same-unit:X', G: 'gross-over-40' });
  });
  test('no kind, or fewer than two to go by, is a gap', () => {
    expect(price(two, facts(), [])).toMatchObject({ is: 'gap', missing: ['vehicle-kind'] });
    expect(price([two[0]!], own(), [])).toMatchObject({ is: 'gap', missing: ['comparables'] });
    expect(price([], own(), [])).toMatchObject({ is: 'gap', missing: ['comparables'] });
  });
  test('few, asks only, weak', () => {
    expect(priced(price(two, own(), [])).cautions).toEqual(['few']);
    const asks = [40, 41, 42, 43].map((ft, i) =>
      row(`K${i}`, { lengthFt: ft, askCents: 10_000_000 + i * 500_000, miles: 40_000 + i * 4000 }),
    );
    expect(priced(price(asks, own(), [])).cautions).toEqual(['asks-only']);
    expect(
      priced(price([...two, row('W', { year: 2020, soldCents: 14_000_000, miles: 5000 })], own(), []))
        .cautions,
    ).toContain('weak:W');
  });
  test('two groups of prices', () => {
    const rows = [80, 81, 110, 111].map((k, i) =>
      row(`K${i}`, { soldCents: k * 100_000, miles: 48_000 + i * 400 }),
    );
    expect(priced(price(rows, own(), [])).cautions).toContain('two-groups');
  });
  test('every code has its words', () => {
    expect(() => sayPriceCode('no-such-code')).toThrow(RangeError);
    for (const code of Object.keys(priceWords)) expect(sayPriceCode(`${code}:miles`)).not.toContain('{}');
    expect(sayPriceCode('unit-missing:lengthFt')).toContain('length.');
  });
  test('a unit counted twice stands once, whichever order they come in', () => {
    const rows = [
      row('a', { askCents: 10_000_000, on: daysAgo(40) }),
      row('b', { askCents: 9_900_000, on: daysAgo(10), miles: 48_100 }),
      row('c', { soldCents: 9_500_000, askCents: 9_900_000, on: daysAgo(60), miles: 47_900 }),
      row('d', { askCents: 9_900_000, miles: 70_000 }),
    ];
    fc.assert(
      fc.property(fc.shuffledSubarray(rows, { minLength: 4 }), (shuffled) => {
        expect(
          dropRepeats(shuffled)
            .kept.map((c) => c.ref)
            .sort(),
        ).toEqual(['c', 'd']);
      }),
      { seed: 20261130, numRuns: 24 },
    );
  });
});

describe('work beside the price', () => {
  test('is told apart and not taken off', () => {
    const job = (policy: Job['policy'], cost?: readonly [number, number]) =>
      ({
        policy,
        ...(cost ? { cost: [cents(cost[0]), cents(cost[1])] as const } : {}),
      }) as Job;
    const rows = [row('X', { soldCents: 10_000_000 }), row('Y', { soldCents: 9_000_000, miles: 30_000 })];
    const view = priced(
      price(rows, own(), [
        job('before sale', [100, 200]),
        job('optional', [10, 20]),
        job('disclose', [1, 2]),
        job('before sale'),
      ]),
    );
    expect(view.work).toEqual({ before: [100, 200], left: [11, 22], unpriced: 1 });
    expect(view.low).toBe(priced(price(rows, own(), [])).low);
  });
});

describe('laws', () => {
  const rows = fc
    .array(
      fc.record({
        year: fc.integer({ min: 2012, max: 2019 }),
        miles: fc.integer({ min: 10_000, max: 90_000 }),
        soldCents: fc.integer({ min: 6_000_000, max: 16_000_000 }),
        ago: fc.integer({ min: 0, max: 300 }),
      }),
      { minLength: 2, maxLength: 12 },
    )
    .map((all) => all.map(({ ago, ...r }, i) => row(`r${i}`, { ...r, on: daysAgo(ago) })));
  test('low, middle, high in that order, in steps of $500, within what was used; every comparable is somewhere once', () => {
    fc.assert(
      fc.property(rows, (all) => {
        const view = price(all, own(), []);
        const refs = [...(view.is === 'priced' ? view.used : []), ...view.leftOut].map(
          (u) => u.comparable.ref,
        );
        if (view.is === 'priced') {
          expect(refs.sort()).toEqual(all.map((c) => c.ref).sort());
          expect(view.low <= view.middle && view.middle <= view.high).toBe(true);
          for (const n of [view.low, view.middle, view.high]) expect(n % 50_000).toBe(0);
          const adjusted = view.used.map((u) => u.adjusted);
          expect(view.low).toBeGreaterThan(Math.min(...adjusted) - 50_000);
          expect(view.high).toBeLessThan(Math.max(...adjusted) + 50_000);
        }
      }),
      { seed: 20261201 },
    );
  });
  test('the order of the comparables makes no difference', () => {
    fc.assert(
      fc.property(
        rows.chain((all) => fc.tuple(fc.constant(all), fc.shuffledSubarray(all, { minLength: all.length }))),
        ([all, shuffled]) => {
          const [a, b] = [price(all, own(), []), price(shuffled, own(), [])];
          expect(b).toEqual(a);
        },
      ),
      { seed: 20261202 },
    );
  });
  test('a quantile never falls as the part rises, and lies between the least and the most', () => {
    const weighted = fc.array(
      fc.record({
        value: fc.integer({ min: 0, max: 1000 }),
        weight: fc.double({ min: 0.01, max: 2, noNaN: true }),
      }),
      { minLength: 1 },
    );
    fc.assert(
      fc.property(
        weighted,
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (w, p, q) => {
          const [low, high] = [weightedQuantile(w, Math.min(p, q)), weightedQuantile(w, Math.max(p, q))];
          expect(low).toBeLessThanOrEqual(high + 1e-9);
          const values = w.map((v) => v.value);
          expect(low).toBeGreaterThanOrEqual(Math.min(...values));
          expect(high).toBeLessThanOrEqual(Math.max(...values));
        },
      ),
      { seed: 20261203 },
    );
    expect(() => weightedQuantile([], 0.5)).toThrow(RangeError);
  });
});
