// Why: the engine of the figures: what goes through the door, how doubt travels, and that no card breaks the house's rules.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { aspectOf, partOf } from '../catalogue/index.ts';
import type { Fact, Facts } from '../known/facts.ts';
import type { Doubt } from '../known/record.ts';
import type { Observation, Value } from '../said/entry.ts';
import { day } from '../units/day.ts';
import { convert } from '../units/quantity.ts';
import type { Unit } from '../units/unit.ts';
import { unitFact } from '../units/unit.ts';
import type { Figure } from './figure.ts';
import { figureAll } from './figure-all.ts';
import { figureByHand } from './figure-by-hand.ts';
import { inOrder } from './in-order.ts';
import { figureCardOf, figureCards } from './index.ts';
import { layFigures } from './lay-figures.ts';
import { listedFacts } from './listed-facts.ts';

const on = day('2026-11-24');
const around = {
  on,
  unit: { id: 'u', equipment: {}, invented: true, putAway: false },
  kind: 'class-a-diesel',
  mayHave: () => true,
} as const;
const seenBy = (id: string): Observation => ({ id, source: { from: 'typed' } }) as unknown as Observation;

interface Said {
  readonly place?: string;
  readonly standing?: Fact['standing'];
  readonly doubts?: readonly Doubt[];
  readonly evidence?: readonly Observation[];
}
function fact(part: string, aspect: string, value: Value, said: Said = {}): Fact {
  const evidence = said.evidence ?? [seenBy(`${part}.${aspect}.${said.place ?? ''}`)];
  return {
    part,
    aspect,
    value,
    evidence,
    standing: said.standing ?? 'known',
    doubts: said.doubts ?? [],
    sides: [{ value, evidence }],
    ...(said.place === undefined ? {} : { place: said.place }),
  };
}
const q = (value: number, unit: Unit, plusOrMinus?: number): Value => ({
  is: 'quantity',
  value,
  unit,
  ...(plusOrMinus === undefined ? {} : { plusOrMinus }),
});
const text = (words: string): Value => ({ is: 'text', text: words });
const facts = (...list: Fact[]): Facts => listedFacts(list, around);
const the = (figures: readonly Figure[], id: string, place?: string): Figure => {
  const found = figures.find((f) => f.id === id && f.place === place);
  if (!found) throw new Error(`no figure ${id}`);
  return found;
};
const engine = (torque: Value, speed: Value, said: Said = {}) =>
  facts(fact('engine', 'torque', torque, said), fact('engine', 'governed_speed', speed));

describe('the door', () => {
  test('a number is converted to the unit of the need', () => {
    const lb = the(figureAll(engine(q(860, '[lbf_av].[ft_i]'), q(1800, '{rev}/min'))), 'engine-power');
    const nm = the(
      figureAll(engine(q(convert(860, '[lbf_av].[ft_i]', 'N.m'), 'N.m'), q(1800, '{rev}/min'))),
      'engine-power',
    );
    expect(lb.result).toMatchObject({ is: 'worked', value: { unit: '[HP]' } });
    expect((nm.result as { value: { value: number } }).value.value).toBeCloseTo(
      (lb.result as { value: { value: number } }).value.value,
      9,
    );
  });

  test.each([
    ['wrong unit', q(860, 'kg'), {}],
    ['conflict', q(860, '[lbf_av].[ft_i]'), { standing: 'conflict' }],
    ['unknown', { is: 'unknown', why: 'plate gone' } as Value, { standing: 'unknown' }],
    ['hearsay', q(860, '[lbf_av].[ft_i]'), { doubts: ['hearsay'] }],
    ['not a number', text('lots'), {}],
  ] as const)('%s is turned away with its reason', (why, torque, said) => {
    const f = the(figureAll(engine(torque, q(1800, '{rev}/min'), said as Said)), 'engine-power');
    expect(f.result).toMatchObject({ is: 'gap', why: { torque: why } });
    expect(f.result.is === 'gap' && f.result.missing.map((n) => n.name)).toEqual(['torque']);
  });

  test('said at two places, it is of neither in particular', () => {
    const at = (place: string) => fact('house_battery', 'rest_voltage', q(12.4, 'V'), { place });
    const list = [at('bay'), at('entry'), fact('house_battery', 'chemistry', text('flooded'))];
    const card = figureCardOf('battery-charge');
    if (card)
      expect(the(figureAll(facts(...list)), 'battery-charge').result).toMatchObject({
        is: 'gap',
        why: { volts: 'several places' },
      });
  });
});

describe('doubt', () => {
  const half = (f: Figure): number =>
    f.result.is === 'worked' && f.result.value.is === 'quantity'
      ? (f.result.value.plusOrMinus ?? 0)
      : Number.NaN;
  test('a stated plus-or-minus travels; hedged words get five percent, spoken ones half of their last digit', () => {
    const speed = q(1800, '{rev}/min', 0);
    const spoken = {
      evidence: [
        {
          ...seenBy('s'),
          source: { from: 'speech', media: 'm', start: 0, end: 1, words: '' },
        } as Observation,
      ],
    };
    expect(half(the(figureAll(engine(q(860, '[lbf_av].[ft_i]', 8.6), speed)), 'engine-power'))).toBeCloseTo(
      2.947,
      2,
    );
    expect(
      half(the(figureAll(engine(q(860, '[lbf_av].[ft_i]'), speed, { doubts: ['hedged'] })), 'engine-power')),
    ).toBeCloseTo(14.737, 2);
    expect(
      half(the(figureAll(engine(q(860, '[lbf_av].[ft_i]'), speed, spoken)), 'engine-power')),
    ).toBeCloseTo(1.714, 2);
    expect(half(the(figureAll(engine(q(860, '[lbf_av].[ft_i]'), speed)), 'engine-power'))).toBe(0);
  });

  test('shares add up to one, largest first', () => {
    const f = the(figureAll(engine(q(860, '[lbf_av].[ft_i]', 20), q(1800, '{rev}/min', 20))), 'engine-power');
    expect(f.drivenBy.map((d) => d.name)).toEqual(['torque', 'speed']);
    expect(f.drivenBy.reduce((a, d) => a + d.share, 0)).toBeCloseTo(1, 12);
  });

  test('property: a wider plus-or-minus never makes an answer surer', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 50, noNaN: true }),
        fc.double({ min: 0, max: 50, noNaN: true }),
        (a, b) => {
          const at = (w: number) =>
            half(
              the(figureAll(engine(q(860, '[lbf_av].[ft_i]', w), q(1800, '{rev}/min', 10))), 'engine-power'),
            );
          expect(at(Math.max(a, b))).toBeGreaterThanOrEqual(at(Math.min(a, b)) - 1e-9);
        },
      ),
      { seed: 20261124, numRuns: 60 },
    );
  });
});

describe('laying', () => {
  const tires = facts(
    fact('tire', 'tin', text('2319'), { place: 'left-front' }),
    fact('tire', 'tin', text('0117'), { place: 'right-front' }),
    fact('tire', 'tread_mid', q(9, '[in_i]/32'), { place: 'left-rear-outer' }),
  );
  test('an answer stands among the facts with the evidence of its inputs', () => {
    const laid = layFigures(tires, figureAll(tires));
    const age = laid.get('tire', 'age', 'left-front');
    expect(age).toMatchObject({ figure: 'tire-age', standing: 'known' });
    expect(age?.evidence.map((o) => o.id)).toEqual(['tire.tin.left-front']);
    expect(laid.every().slice(0, 3)).toEqual(tires.every());
    expect(laid.of('tire').length).toBe(laid.every().filter((f) => f.part === 'tire').length);
  });
  test('a figure feeds a figure, and what nobody read is counted', () => {
    const oldest = the(figureAll(tires), 'oldest-tire');
    expect(oldest.result).toMatchObject({ is: 'worked', binds: 'right front' });
    expect(oldest.result.is === 'worked' && oldest.result.note).toContain('1 more');
    expect(oldest.inputs[0]?.given.from).toBe('figured');
    expect(the(figureAll(tires), 'tire-age', 'left-rear-outer').result).toMatchObject({
      is: 'gap',
      why: { code: 'not said' },
    });
  });
  test('what was seen keeps standing, also a conflict; what is unknown is filled', () => {
    const seen = (said: Said) =>
      facts(
        ...engine(q(860, '[lbf_av].[ft_i]'), q(1800, '{rev}/min')).every(),
        fact('engine', 'power', q(300, '[HP]'), said),
      );
    for (const standing of ['known', 'conflict'] as const) {
      const base = seen({ standing });
      expect(layFigures(base, figureAll(base)).get('engine', 'power')?.figure).toBeUndefined();
    }
    const open = seen({ standing: 'unknown' });
    expect(layFigures(open, figureAll(open)).get('engine', 'power')?.figure).toBe('engine-power');
  });
  test('a unit that has no engine gets no figure of it, not even a gap', () => {
    const none = listedFacts([], { ...around, mayHave: (p) => p !== 'engine' });
    expect(figureAll(none).some((f) => f.id === 'engine-power')).toBe(false);
    expect(figureAll(listedFacts([], around)).some((f) => f.id === 'engine-power')).toBe(true);
  });
});

describe('by hand', () => {
  const card = figureCardOf('engine-power')!;
  test('works from named inputs, in any unit of the dimension', () => {
    const f = figureByHand(card, { torque: { value: 860, unit: '[lbf_av].[ft_i]' }, speed: 1800 }, on);
    expect('problems' in f ? f.problems : f.result).toMatchObject({ is: 'worked', value: { unit: '[HP]' } });
  });
  test('every misfit is named', () => {
    const f = figureByHand(card, { torque: { value: 1, unit: 'kg' }, spin: 3 }, on);
    expect(f).toEqual({
      problems: [
        { code: 'wrong-dimension', name: 'torque', expects: '[lbf_av].[ft_i]' },
        { code: 'unknown-input', name: 'spin', expects: 'torque, speed' },
        { code: 'missing-input', name: 'speed', expects: '{rev}/min' },
      ],
    });
    expect(figureByHand(card, { torque: 'much', speed: { value: 1, unit: 'furlong' } }, on)).toMatchObject({
      problems: [
        { code: 'not-a-number', name: 'torque' },
        { code: 'unknown-unit', name: 'speed' },
      ],
    });
  });
  test('a supposed value that hangs on a given one finds it', () => {
    const hours = figureByHand(
      figureCardOf('battery-hours')!,
      { count: 4, each: 100, chemistry: 'lithium' },
      on,
    );
    expect('problems' in hours ? hours.problems : hours.result.is).toBe('worked');
  });
});

describe('every card', () => {
  test("is listed once, cited, honest about what it leaves out, and its ids are the catalogue's", () => {
    expect(new Set(figureCards.map((c) => c.id)).size).toBe(figureCards.length);
    const gives = figureCards.map((c) => `${c.gives.part}/${c.gives.aspect}`);
    expect(new Set(gives).size).toBe(gives.length);
    for (const card of figureCards) {
      expect(card.cites.length, card.id).toBeGreaterThan(0);
      expect(card.neglects.length, card.id).toBeGreaterThan(20);
      expect(card.asks, card.id).toMatch(/\?$/);
      const given = aspectOf(card.gives.part, card.gives.aspect);
      expect(
        partOf(card.gives.part) && given,
        `${card.id} gives ${card.gives.part}/${card.gives.aspect}`,
      ).toBeDefined();
      if (card.gives.unit)
        expect(unitFact(given!.unit!).dimension, card.id).toBe(unitFact(card.gives.unit).dimension);
      for (const need of card.needs.filter((n) => n.part !== 'supposed'))
        expect(
          partOf(need.part) && aspectOf(need.part, need.aspect),
          `${card.id} needs ${need.part}/${need.aspect}`,
        ).toBeDefined();
      expect(new Set(card.needs.map((n) => n.name)).size, card.id).toBe(card.needs.length);
    }
  });
  test('comes after the cards it needs, and a circle is refused', () => {
    const order = inOrder(figureCards).map((c) => c.id);
    expect(order.indexOf('tire-age')).toBeLessThan(order.indexOf('oldest-tire'));
    const [a] = figureCards;
    const round = {
      ...a!,
      id: 'a',
      gives: { part: 'tire', aspect: 'age' },
      needs: [{ name: 'x', what: 'x', part: 'tire', aspect: 'tin' }] as const,
    };
    const back = {
      ...a!,
      id: 'b',
      gives: { part: 'tire', aspect: 'tin' },
      needs: [{ name: 'x', what: 'x', part: 'tire', aspect: 'age' }] as const,
    };
    expect(() => inOrder([round, back])).toThrow(/needs its own answer/);
  });
  test('nothing known: gaps only, each naming what is missing', () => {
    for (const f of figureAll(facts())) {
      if (f.result.is === 'gap') expect(f.result.missing.length, f.id).toBeGreaterThan(0);
      else
        expect(
          f.inputs.every((i) => i.given.from === 'default' || i.given.from === 'given'),
          f.id,
        ).toBe(true);
    }
  });
});
