// Why: the laws of judging: doubt never passes, better is never worse, nothing is lost, nothing is said twice.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { factFrom, factsFromList, type PlainFact } from '../../test/facts-from-list.ts';
import { parts } from '../catalogue/index.ts';
import { stateWords } from '../catalogue/state.ts';
import { vehicleKinds } from '../catalogue/vehicle-kind.ts';
import type { Observation, Value } from '../said/entry.ts';
import { type Limit, limitOn } from '../standards/standard.ts';
import { judge, judgeRule } from './judge.ts';
import { judgeOne } from './judge-one.ts';
import type { NumberStep, Rule } from './rule.ts';
import { rules } from './rules/index.ts';
import { badness } from './verdict.ts';

const seed = 20261124;
const ruleOf = (id: string): Rule => rules.find((r) => r.id === id)!;
const q = (
  value: number,
  unit: '[in_i]/32' | 'V' | '%' | '[in_i]' | 'mm' | 'a',
  plusOrMinus?: number,
): Value =>
  plusOrMinus === undefined ? { is: 'quantity', value, unit } : { is: 'quantity', value, unit, plusOrMinus };
const one = (id: string, plain: Omit<PlainFact, 'part' | 'aspect'>) => {
  const rule = ruleOf(id);
  const fact = { part: rule.part, aspect: rule.aspect, ...plain };
  return judgeOne(rule, factFrom(fact), factsFromList([fact], 'class-a-diesel'));
};

describe('one fact', () => {
  test('an answer in another unit of the same dimension is the same answer', () => {
    expect(one('tire-tread-steer-mid', { place: 'left-front', value: q(0.125, '[in_i]') }).verdict).toBe(
      'repair',
    );
    expect(one('tire-tread-steer-mid', { place: 'left-front', value: q(3.175, 'mm') })).toMatchObject({
      verdict: 'repair',
      margin: -1,
    });
  });

  test('hearsay never passes, and bad hearsay of something dangerous stops', () => {
    expect(
      one('co-alarm-works', { value: { is: 'state', state: 'works' }, doubts: ['hearsay'] }),
    ).toMatchObject({ outcome: 'cannot tell', verdict: 'not seen' });
    expect(
      one('co-alarm-works', { value: { is: 'state', state: 'fails' }, doubts: ['hearsay'] }),
    ).toMatchObject({ outcome: 'cannot tell', verdict: 'stop' });
    expect(one('slide-works', { value: { is: 'state', state: 'fails' }, doubts: ['hearsay'] })).toMatchObject(
      { outcome: 'cannot tell', verdict: 'watch' },
    );
  });

  test('a guess at a word never passes; a number said with "about" gets five percent', () => {
    expect(one('slide-works', { value: { is: 'state', state: 'works' }, doubts: ['hedged'] })).toMatchObject({
      outcome: 'cannot tell',
      verdict: 'not seen',
    });
    expect(one('floor-moisture', { value: q(15.5, '%'), doubts: ['hedged'] })).toMatchObject({
      outcome: 'cannot tell',
      verdict: 'watch',
    });
    expect(one('floor-moisture', { value: q(15.5, '%') })).toMatchObject({
      outcome: 'meets',
      verdict: 'sound',
    });
    expect(one('floor-moisture', { value: q(10, '%'), doubts: ['hedged'] })).toMatchObject({
      outcome: 'meets',
      verdict: 'sound',
    });
  });

  test('a conflict takes the worse side, is never sound, and is never told as sure', () => {
    expect(
      one('tire-tread-steer-mid', {
        place: 'left-front',
        value: q(9, '[in_i]/32'),
        against: q(3, '[in_i]/32'),
      }),
    ).toMatchObject({ outcome: 'cannot tell', verdict: 'stop' });
    expect(one('floor-moisture', { value: q(8, '%'), against: q(12, '%') })).toMatchObject({
      outcome: 'cannot tell',
      verdict: 'watch',
    });
  });

  test('the limit that decided is named with its source and the distance to it', () => {
    const f = one('tire-tread-steer-mid', { place: 'left-front', value: q(3, '[in_i]/32') });
    expect(f.limit).toMatchObject({
      value: 4,
      unit: '[in_i]/32',
      must: 'at least',
      standing: 'law',
      clause: '393.75(b)',
    });
    expect(f.margin).toBe(-1);
    expect(f.limits.map((l) => l.value)).toEqual([4, 5, 7]);
    expect(f.caution).toContain('Stand to the side');
  });

  test('a limit on the plate carries the doubt of the plate', () => {
    const rule = ruleOf('tire-pressure-label');
    const label = (plusOrMinus: number): PlainFact => ({
      part: 'cert_label',
      aspect: 'cold_pressure',
      value: { is: 'quantity', value: 100, unit: '[psi]', plusOrMinus },
    });
    const tire: PlainFact = {
      part: 'tire',
      aspect: 'pressure_cold',
      value: { is: 'quantity', value: 102, unit: '[psi]' },
    };
    expect(judgeOne(rule, factFrom(tire), factsFromList([label(1), tire])).outcome).toBe('meets');
    expect(judgeOne(rule, factFrom(tire), factsFromList([label(5), tire])).outcome).toBe('cannot tell');
    expect(judgeOne(rule, factFrom(tire), factsFromList([tire])).outcome).toBe('cannot tell');
  });
});

describe('a whole unit', () => {
  test('nobody looked: every rule that applies says so, and nothing is sound', () => {
    const findings = judge(factsFromList([], 'class-c'));
    expect(findings.every((f) => f.verdict === 'not seen')).toBe(true);
    expect(findings.some((f) => f.rule === 'cab-over-moisture')).toBe(true);
    expect(findings.some((f) => f.part === 'air_gauges')).toBe(false);
  });

  test('what a unit has not got is not asked for', () => {
    expect(
      judge(factsFromList([], 'class-a-gas', { generator: false, generator_load_run: false })).some((f) =>
        f.part.startsWith('generator'),
      ),
    ).toBe(false);
    expect(
      judge(factsFromList([], 'travel-trailer')).some((f) => f.rule.startsWith('tire-tread-steer')),
    ).toBe(false);
  });

  test('each front tire that nobody read is asked for by name', () => {
    const findings = judge(
      factsFromList(
        [{ part: 'tire', place: 'left-front', aspect: 'tread_mid', value: q(10, '[in_i]/32') }],
        'class-a-diesel',
      ),
    );
    expect(
      findings.filter((f) => f.rule === 'tire-tread-steer-mid').map((f) => [f.place, f.verdict]),
    ).toEqual([
      ['right-front', 'not seen'],
      ['left-front', 'sound'],
    ]);
  });

  test('lead and lithium are judged by their own volts, and neither when the kind is not known', () => {
    const volts: PlainFact = { part: 'house_battery', aspect: 'rest_voltage', value: q(12.7, 'V') };
    const kind = (text: string): PlainFact => ({
      part: 'house_battery',
      aspect: 'chemistry',
      value: { is: 'text', text },
    });
    const verdicts = (list: PlainFact[]) =>
      judge(factsFromList(list, 'class-c'))
        .filter((f) => f.aspect === 'rest_voltage')
        .map((f) => f.verdict);
    expect(verdicts([volts, kind('AGM')])).toEqual(['sound']);
    expect(verdicts([volts, kind('lithium iron phosphate')])).toEqual(['repair']);
    expect(verdicts([volts])).toEqual([]);
  });

  test('the limits of a 12 V bank are not put to a bank of 24 V', () => {
    const bank = (volts: number) =>
      judge(
        factsFromList(
          [
            { part: 'house_battery', aspect: 'rest_voltage', value: q(volts, 'V') },
            { part: 'house_battery', aspect: 'chemistry', value: { is: 'text', text: 'flooded' } },
          ],
          'class-c',
        ),
      ).filter((f) => f.rule === 'house-battery-rest-lead');
    expect(bank(24.1)).toEqual([]);
    expect(bank(12.1)).toMatchObject([{ verdict: 'repair' }]);
  });

  test("an answer given under another name of the same question is taken, and the rule's own goes first", () => {
    const frame = (list: PlainFact[]) =>
      judge(factsFromList(list, 'class-c')).filter((f) => f.part === 'frame_rails' && f.place === 'rear');
    const crack = (aspect: string, state: 'yes' | 'no'): PlainFact => ({
      part: 'frame_rails',
      place: 'rear',
      aspect,
      value: { is: 'state', state },
    });
    expect(frame([crack('crack', 'yes')])).toMatchObject([
      { rule: 'frame-cracks', verdict: 'stop', aspect: 'cracks' },
    ]);
    expect(frame([crack('crack', 'no')])).toMatchObject([{ rule: 'frame-cracks', verdict: 'sound' }]);
    expect(frame([crack('crack', 'yes'), crack('cracks', 'no')]).map((f) => [f.rule, f.verdict])).toEqual([
      ['seen-crack-yes', 'stop'],
      ['frame-cracks', 'sound'],
    ]);
  });

  test('said of all tires at once, none is asked for; said once without a place among others, the rest are', () => {
    const missing = (list: PlainFact[]) =>
      judge(factsFromList(list, 'class-a-gas')).filter(
        (f) => f.rule === 'tire-tread-other-mid' && f.verdict === 'not seen',
      ).length;
    const tread = (place?: string): PlainFact => ({
      part: 'tire',
      aspect: 'tread_mid',
      value: q(9, '[in_i]/32'),
      ...(place === undefined ? {} : { place }),
    });
    expect(missing([tread()])).toBe(0);
    expect(missing([tread(), tread('left-rear-outer')])).toBe(3);
  });

  test('worst comes first', () => {
    const findings = judge(
      factsFromList(
        [
          { part: 'floor_main', aspect: 'moisture', value: q(18, '%') },
          { part: 'lp_system', aspect: 'leak', value: { is: 'state', state: 'yes' } },
          { part: 'slide', aspect: 'operates', value: { is: 'state', state: 'fails' } },
        ],
        'class-c',
      ),
    );
    const order = findings.map((f) => badness(f.verdict));
    expect(order).toEqual([...order].sort((a, b) => b - a));
    expect(findings[0]).toMatchObject({ rule: 'lp-leak', verdict: 'stop' });
    expect(findings[0]?.caution).toContain('close the tank valve');
  });
});

describe('laws', () => {
  const arbitraryFact = fc.constantFrom(...parts).chain((part) =>
    fc.record({
      part: fc.constant(part.id),
      aspect: fc.constantFrom('condition', 'operates', 'leak', 'crack', ...part.aspects.map((a) => a.id)),
      place: fc.constantFrom(undefined, ...part.places),
      value: fc.oneof<fc.Arbitrary<Value>[]>(
        fc.record({ is: fc.constant('state' as const), state: fc.constantFrom(...stateWords) }),
        fc.record({
          is: fc.constant('quantity' as const),
          value: fc.double({ min: 0, max: 300, noNaN: true }),
          unit: fc.constantFrom(
            'V' as const,
            '%' as const,
            '[degF]' as const,
            '[in_i]' as const,
            '[in_i]/32' as const,
          ),
        }),
        fc.record({ is: fc.constant('count' as const), count: fc.nat(9) }),
        fc.constant<Value>({ is: 'unknown', why: 'could not see' }),
      ),
      doubts: fc.subarray(['hedged', 'hearsay', 'unsure'] as const),
    }),
  );
  const plain = (f: { place: string | undefined } & Omit<PlainFact, 'place'>): PlainFact => {
    const { place, ...rest } = f;
    return place === undefined ? rest : { ...rest, place };
  };

  test('every rule that applies gives a finding, every id is there once, and an unknown is never sound', () => {
    fc.assert(
      fc.property(
        fc.uniqueArray(arbitraryFact, { maxLength: 30, selector: (f) => `${f.part}/${f.aspect}/${f.place}` }),
        fc.constantFrom(...vehicleKinds),
        (raw, kind) => {
          const facts = factsFromList(raw.map(plain), kind);
          const findings = judge(facts);
          const ids = findings.map((f) => f.id);
          expect(new Set(ids).size).toBe(ids.length);
          for (const f of findings) {
            if (f.fact?.standing !== 'known' || f.fact.doubts.includes('hearsay'))
              expect(f.outcome).toBe('cannot tell');
            if (f.outcome === 'cannot tell') expect(f.verdict).not.toBe('sound');
            if (f.verdict === 'sound') expect(f.outcome).toBe('meets');
          }
          for (const rule of rules) {
            if (!facts.mayHave(rule.part) || rule.expectedAt || !(rule.appliesTo?.(facts, undefined) ?? true))
              continue;
            const said = facts
              .all(rule.part, rule.aspect)
              .some((f) => rule.appliesTo?.(facts, f.place) ?? true);
            if (said || facts.all(rule.part, rule.aspect).length === 0)
              expect(judgeRule(rule, facts).length).toBeGreaterThan(0);
          }
        },
      ),
      { seed, numRuns: 60 },
    );
  });

  test('the order of what was said makes no difference', () => {
    fc.assert(
      fc.property(
        fc.uniqueArray(arbitraryFact, { maxLength: 12, selector: (f) => `${f.part}/${f.aspect}/${f.place}` }),
        (raw) => {
          const list = raw.map(plain);
          const verdicts = (l: PlainFact[]) =>
            new Map(judge(factsFromList(l, 'class-c')).map((f) => [f.id, f.verdict]));
          expect(verdicts([...list].reverse())).toEqual(verdicts(list));
        },
      ),
      { seed, numRuns: 30 },
    );
  });

  const oneWay = rules.filter((r) => {
    const numbers = r.steps.filter((s): s is NumberStep => 'must' in s);
    const isFloor = numbers.map((s) => s.must === 'at least' || s.must === 'more than');
    return (
      numbers.length === r.steps.length &&
      numbers.every((s) => typeof s.limit !== 'function') &&
      new Set(isFloor).size === 1
    );
  });
  const numberCase = fc.constantFrom(...oneWay).chain((rule) => {
    const limit = (rule.steps[0] as NumberStep).limit as Limit;
    const near = Math.max(Math.abs(limitOn(limit, '2026-11-24' as never).value), 1);
    return fc.record({
      rule: fc.constant(rule),
      unit: fc.constant(limit.unit),
      a: fc.double({ min: -near, max: near * 4, noNaN: true }),
      b: fc.double({ min: -near, max: near * 4, noNaN: true }),
      doubt: fc.double({ min: 0, max: near, noNaN: true }),
      more: fc.double({ min: 0, max: near, noNaN: true }),
      hedged: fc.boolean(),
    });
  });
  const verdictAt = (rule: Rule, value: Value, hedged: boolean) =>
    judgeOne(
      rule,
      factFrom({ part: rule.part, aspect: rule.aspect, value, doubts: hedged ? ['hedged'] : [] }),
      factsFromList([]),
    );

  test('a better reading is never judged worse', () => {
    expect(oneWay.length).toBeGreaterThan(40);
    fc.assert(
      fc.property(numberCase, ({ rule, unit, a, b, doubt, hedged }) => {
        const isFloor =
          (rule.steps[0] as NumberStep).must === 'at least' ||
          (rule.steps[0] as NumberStep).must === 'more than';
        const [poor, good] = isFloor ? [Math.min(a, b), Math.max(a, b)] : [Math.max(a, b), Math.min(a, b)];
        const value = (n: number): Value =>
          hedged
            ? { is: 'quantity', value: n, unit }
            : { is: 'quantity', value: n, unit, plusOrMinus: doubt };
        expect(badness(verdictAt(rule, value(good), hedged).verdict)).toBeLessThanOrEqual(
          badness(verdictAt(rule, value(poor), hedged).verdict),
        );
      }),
      { seed, numRuns: 600 },
    );
  });

  test('a wider plus-or-minus never makes a verdict out of "cannot tell", nor a pass out of a failure', () => {
    fc.assert(
      fc.property(numberCase, ({ rule, unit, a, doubt, more }) => {
        const at = (plusOrMinus: number) =>
          verdictAt(rule, { is: 'quantity', value: a, unit, plusOrMinus }, false);
        const narrow = at(doubt);
        const wide = at(doubt + more);
        if (narrow.outcome !== 'meets') expect(wide.outcome).not.toBe('meets');
        if (wide.outcome === 'meets') expect(narrow.outcome).toBe('meets');
      }),
      { seed, numRuns: 600 },
    );
  });
});

describe('what was seen and has no number', () => {
  const seen = (plainFact: PlainFact) =>
    judge(factsFromList([plainFact], 'class-c')).filter((f) => f.rule.startsWith('seen-'));
  const state = (s: 'torn'): Value => ({ is: 'state', state: s });

  test('a fault is a repair, wear is watched, and what can hurt someone stops', () => {
    expect(seen({ part: 'patio_awning', aspect: 'fabric', value: state('torn') })).toMatchObject([
      { rule: 'seen-fabric-torn', verdict: 'repair', outcome: 'fails' },
    ]);
    expect(
      seen({ part: 'dinette_sofa', aspect: 'condition', value: { is: 'state', state: 'worn' } }),
    ).toMatchObject([{ rule: 'seen-worn', verdict: 'watch' }]);
    expect(
      seen({
        part: 'steering_gear',
        place: 'front',
        aspect: 'condition',
        value: { is: 'state', state: 'loose' },
      }),
    ).toMatchObject([{ id: 'seen-loose/steering_gear/front', verdict: 'stop' }]);
    expect(
      seen({ part: 'lp_tank', aspect: 'leak', value: { is: 'state', state: 'yes' } })[0]?.caution,
    ).toContain('close the tank valve');
  });

  test('good news, "no cracks", and an unknown make no finding', () => {
    expect(
      seen({ part: 'dinette_sofa', aspect: 'condition', value: { is: 'state', state: 'good' } }),
    ).toEqual([]);
    expect(seen({ part: 'countertops', aspect: 'cracks', value: { is: 'state', state: 'no' } })).toEqual([]);
    expect(
      seen({ part: 'countertops', aspect: 'cracks', value: { is: 'unknown', why: 'not looked at' } }),
    ).toEqual([]);
  });

  test('what a rule has already found wanting is not said twice', () => {
    expect(seen({ part: 'slide', aspect: 'operates', value: { is: 'state', state: 'fails' } })).toEqual([]);
  });

  test('a crack that a rule has measured is not told again as a crack', () => {
    const findings = judge(
      factsFromList(
        [
          { part: 'windshield', place: 'left', aspect: 'longest_crack', value: q(14, '[in_i]') },
          { part: 'windshield', place: 'left', aspect: 'crack', value: { is: 'state', state: 'yes' } },
        ],
        'class-c',
      ),
    ).filter((f) => f.part === 'windshield');
    expect(findings.map((f) => f.rule)).toEqual(['windshield-crack']);
  });

  test('hearsay of a fault is watched and said to be unsure', () => {
    expect(
      seen({
        part: 'microwave',
        aspect: 'operates',
        value: { is: 'state', state: 'fails' },
        doubts: ['hearsay'],
      }),
    ).toMatchObject([{ verdict: 'watch', outcome: 'cannot tell' }]);
  });

  test('a phrase is a fault only where it was said as one', () => {
    const said = (polarity: 'good' | 'bad'): Observation => ({
      v: 1,
      id: '01920000-0000-7000-8000-000000000000',
      dealership: 'invented',
      unit: '01920000-0000-7000-8000-000000000001',
      at: '2026-11-24T10:00:00Z',
      by: 'a tester',
      device: 'test',
      kind: 'observation',
      part: 'engine_mounts',
      aspect: 'blowby',
      value: { is: 'text', text: 'heavy' },
      sense: 'defect',
      polarity,
      hedged: false,
      sure: 1,
      source: { from: 'typed' },
    });
    const facts = (polarity: 'good' | 'bad') => {
      const base = factFrom({
        part: 'engine_mounts',
        aspect: 'blowby',
        value: { is: 'text', text: 'heavy' },
      });
      const evidence = [said(polarity)];
      const fact = { ...base, evidence, sides: [{ value: base.value, evidence }] };
      const empty = factsFromList([], 'class-a-diesel');
      return { ...empty, every: () => [fact] };
    };
    expect(judge(facts('bad')).filter((f) => f.rule.startsWith('seen-'))).toMatchObject([
      { rule: 'seen-blowby-said', verdict: 'repair' },
    ]);
    expect(judge(facts('good')).filter((f) => f.rule.startsWith('seen-'))).toEqual([]);
  });
});
