// Why: the plus-or-minus that is printed must be the one that a thousand dice would give, and units must not matter.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { day } from '../units/day.ts';
import { convert } from '../units/quantity.ts';
import type { Unit } from '../units/unit.ts';
import { unitCodes, unitFact } from '../units/unit.ts';
import { answerByHand } from './answer-by-hand.ts';
import type { ByHand } from './figure-by-hand.ts';
import { figureByHand } from './figure-by-hand.ts';
import { figureCardOf } from './index.ts';

/** A case: inputs with their half widths. What a card supposes keeps its own spread. */
type Inputs = Readonly<Record<string, readonly [value: number, half: number] | string>>;
const cases: readonly (readonly [id: string, inputs: Inputs])[] = [
  ['engine-power', { torque: [860, 20], speed: [1800, 25] }],
  [
    'cargo-left',
    {
      gvwr: [36_400, 0],
      scale: [33_180, 200],
      people: [4, 0],
      person: [150, 20],
      people_weighed: [1, 0],
      water_to_add: [50, 8],
      fuel_to_add: [40, 10],
    },
  ],
  ['tow-limit', { gcwr: [46_000, 300], weight: [39_900, 400], receiver: [10_000, 0] }],
  [
    'axle-room',
    { gawr_front: [14_600, 0], front: [13_000, 150], gawr_rear: [23_000, 0], rear: [19_000, 200] },
  ],
  ['battery-hours', { count: [4, 0], each: [100, 5], chemistry: 'lithium', load: [600, 60] }],
  ['battery-charge', { volts: [12.33, 0.05], chemistry: 'flooded' }],
  ['generator-altitude', { rated: [8, 0.2], altitude: [6000, 300], temperature: [105, 5] }],
  ['lp-endurance', { capacity: [24.6, 1], duty: [0.3, 0.05] }],
  ['water-days', { fresh: [90, 4], gray: [60, 4], black: [60, 4], people: [2, 0], gray_use: [7, 1] }],
  ['shore-load', { amps: [50, 1], volts: [118, 4] }],
  ['ac-split', { return: [78, 1], supply: [58, 1.5] }],
  ['stopping-distance', { stop: [30, 2], reaction: [1.5, 0.3], kept: [1, 0.05] }],
  ['turning-circle', { wheelbase: [22, 0.2], cut: [50, 2] }],
  ['tail-swing', { radius: [35, 1], wheelbase: [22.5, 0.2], width: [8.5, 0.1], overhang: [11.5, 0.3] }],
  ['front-tire-pressure', { axle: [10_800, 200], rated_load: [6_610, 0], rated_pressure: [120, 0] }],
  ['noise-at-50-feet', { level: [68, 2], distance: [23, 2] }],
  ['miles-a-year', { total: [54_000, 2_000], year: [2016, 0] }],
  ['engine-average-speed', { miles: [45_000, 500], hours: [1_500, 60] }],
  ['solar-day', { watts: [400, 0], sun: [4, 0.5], share: [0.675, 0.05] }],
  ['fuel-range', { tank: [100, 3], economy: [8, 0.8] }],
];

/** mulberry32 (public-domain generator, from memory), and normal numbers of it by Box and Muller. */
function dice(seed: number): () => number {
  let a = seed;
  const next = (): number => {
    a = (a + 0x6d2b79f5) | 0;
    let t = Math.imul(a ^ (a >>> 15), 1 | a);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4_294_967_296;
  };
  return () => Math.sqrt(-2 * Math.log(1 - next())) * Math.cos(2 * Math.PI * next());
}

const unitOf = (id: string, name: string): Unit =>
  figureCardOf(id)!.needs.find((n) => n.name === name)!.unit!;
const asGiven = (id: string, inputs: Inputs): Record<string, ByHand> =>
  Object.fromEntries(
    Object.entries(inputs).map(([name, v]) => [
      name,
      typeof v === 'string' ? v : { value: v[0], unit: unitOf(id, name), plus_or_minus: v[1] },
    ]),
  );

describe('the printed plus-or-minus agrees with ten thousand throws within 10 percent', () => {
  test.each(cases)('%s', (id, inputs) => {
    const card = figureCardOf(id)!;
    const figure = figureByHand(card, asGiven(id, inputs), day('2026-11-24'));
    if ('problems' in figure || figure.result.is !== 'worked' || figure.result.value.is !== 'quantity')
      throw new Error(`${id} was not worked`);
    const printed = figure.result.value.plusOrMinus ?? 0;
    const own = (figure.drivenBy.find((d) => d.name === 'method')?.share ?? 0) * printed ** 2;

    const centers = figure.inputs.map(({ need, given }) => ({ need, value: given.value }));
    const throwOne = dice(20261124);
    const answers: number[] = [];
    for (let i = 0; i < 10_000; i++) {
      const have: Record<string, number | string> = { on: '2026-11-24' };
      for (const { need, value } of centers) {
        if (value.is === 'text') have[need.name] = value.text;
        else if (value.is === 'count') have[need.name] = value.count;
        else if (value.is === 'quantity')
          have[need.name] = value.value + (throwOne() * (value.plusOrMinus ?? 0)) / 1.96;
      }
      const worked = card.work(have);
      if ('value' in worked && typeof worked.value === 'number') answers.push(worked.value);
    }
    expect(answers.length).toBeGreaterThan(9_900);
    const mean = answers.reduce((a, b) => a + b, 0) / answers.length;
    const half = 1.96 * Math.sqrt(answers.reduce((a, b) => a + (b - mean) ** 2, 0) / (answers.length - 1));
    expect(Math.abs(half / Math.sqrt(printed ** 2 - own) - 1)).toBeLessThan(0.1);
  });
});

/** A value in another unit of its dimension. */
function inOtherUnit(value: number, half: number, unit: Unit, pick: number): ByHand {
  const others = unitCodes.filter((u) => unitFact(u).dimension === unitFact(unit).dimension);
  const other = others[pick % others.length]!;
  return {
    value: convert(value, unit, other),
    unit: other,
    plus_or_minus: (half * unitFact(unit).factor) / unitFact(other).factor,
  };
}

describe('the door', () => {
  test.each(cases)('property: %s gives the same answer whatever units the inputs come in', (id, inputs) => {
    const plain = answerByHand(id, asGiven(id, inputs));
    fc.assert(
      fc.property(fc.nat(50), (pick) => {
        const other = Object.fromEntries(
          Object.entries(inputs).map(([name, v], i) => [
            name,
            typeof v === 'string' ? v : inOtherUnit(v[0], v[1], unitOf(id, name), pick + i),
          ]),
        );
        const answer = answerByHand(id, other);
        expect(Math.abs(answer.number! / plain.number! - 1)).toBeLessThan(1e-9);
        expect(answer.unit).toBe(plain.unit);
        expect(answer.half!).toBeCloseTo(plain.half!, 6);
      }),
      { seed: 20261124, numRuns: 20 },
    );
  });

  test.each(cases)('every answer of %s carries its unit', (id, inputs) => {
    expect(answerByHand(id, asGiven(id, inputs)).unit).toBe(figureCardOf(id)!.gives.unit);
  });
});
