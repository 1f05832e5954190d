// Why: the fold's laws: order and repetition make no difference, nothing is lost, and a contradiction is never smoothed over.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { coach, idOf } from '../../test/sample-entries.ts';
import type { Entry, Observation, Value } from '../said/entry.ts';
import { beginFold, fold, recordOf, take } from './fold.ts';

const says = coach();

describe('laws', () => {
  test('taking entries one at a time gives at every step what folding from scratch gives', () => {
    fc.assert(
      fc.property(logs, (log) => {
        const state = beginFold();
        log.forEach((entry, i) => {
          take(state, entry);
          expect(printed(recordOf(state))).toBe(printed(fold(log.slice(0, i + 1))));
        });
      }),
      { seed: 20261124, numRuns: 300 },
    );
  });

  test('the order of the log makes no difference, to the order of maps and lists too', () => {
    fc.assert(
      fc.property(
        logs.chain((log) => fc.tuple(fc.constant(log), fc.shuffledSubarray(log, { minLength: log.length }))),
        ([log, shuffled]) => {
          expect(printed(fold(shuffled))).toBe(printed(fold(log)));
        },
      ),
      { seed: 20261125, numRuns: 200 },
    );
  });

  test('an entry handed in again changes nothing', () => {
    fc.assert(
      fc.property(logs, fc.nat(), (log, n) => {
        const again = log[n % log.length]!;
        expect(printed(fold([...log, again]))).toBe(printed(fold(log)));
        expect(printed(fold([again, ...log]))).toBe(printed(fold(log)));
      }),
      { seed: 20261126, numRuns: 100 },
    );
  });

  test('every observation is in exactly one of standing and out, and every standing one that is no claim is evidence once', () => {
    fc.assert(
      fc.property(logs, (log) => {
        const record = fold(log);
        const observed = log.filter((e): e is Observation => e.kind === 'observation');
        const evidence = record.known.flatMap((k) => [...k.evidence, ...k.earlier]);
        for (const o of observed) {
          expect(Number(record.standing.has(o.id)) + Number(record.out.has(o.id))).toBe(1);
          const times =
            evidence.filter((e) => e.id === o.id).length + record.claims.filter((e) => e.id === o.id).length;
          expect(times).toBe(record.standing.has(o.id) ? 1 : 0);
        }
        for (const k of record.known) {
          const onSides = k.sides.flatMap((s) => s.evidence).map((o) => o.id);
          const told =
            k.standing === 'unknown' ? k.evidence : k.evidence.filter((o) => o.value.is !== 'unknown');
          expect([...onSides].sort()).toEqual(told.map((o) => o.id).sort());
        }
      }),
      { seed: 20261127, numRuns: 100 },
    );
  });

  test('a record given out is not changed by what comes later', () => {
    const state = beginFold();
    take(state, says.reading(1, 'tire', 'pressure_cold', 95, '[psi]'));
    const before = recordOf(state);
    const text = printed(before);
    take(state, says.ruling(2, 1, 'reject'));
    take(state, says.reading(3, 'tire', 'pressure_cold', 60, '[psi]'));
    recordOf(state);
    expect(printed(before)).toBe(text);
  });

  test('a log of two units is refused', () => {
    const other: Entry = { ...says.reading(2, 'tire', 'age', 5, 'a'), unit: idOf(999_999) };
    expect(() => fold([says.reading(1, 'tire', 'age', 5, 'a'), other])).toThrow(RangeError);
  });

  test('an empty log gives an empty record', () => {
    const record = fold([]);
    expect(record.known).toEqual([]);
    expect(record.coverage.every((c) => c.seen.length === 0 && c.notSeen.length === c.expected.length)).toBe(
      true,
    );
  });
});

describe('what is out', () => {
  const first = says.reading(1, 'odometer', 'reading', 48_000, '[mi_i]');
  const second = { ...says.reading(2, 'odometer', 'reading', 84_000, '[mi_i]'), replaces: [first.id] };
  const value = (log: readonly Entry[]) =>
    fold(log).known.map((k) => (k.value.is === 'quantity' ? k.value.value : k.value));

  test('a replaced observation is out, by the one that replaces it', () => {
    const record = fold([first, second]);
    expect(value([first, second])).toEqual([84_000]);
    expect(record.out.get(first.id)).toBe(second.id);
  });
  test('rejecting the replacing one brings the replaced one back; accepting it later puts it out again', () => {
    expect(value([first, second, says.ruling(3, 2, 'reject')])).toEqual([48_000]);
    expect(value([first, second, says.ruling(3, 2, 'reject'), says.ruling(4, 2, 'accept')])).toEqual([
      84_000,
    ]);
  });
  test('what replaced something stays counted when it is itself replaced', () => {
    const third = { ...says.reading(3, 'odometer', 'reading', 84_200, '[mi_i]'), replaces: [second.id] };
    expect(value([first, second, third])).toEqual([84_200]);
  });
  test('a rejected observation leaves nothing known', () => {
    expect(fold([first, says.ruling(2, 1, 'reject')]).known).toEqual([]);
  });
});

describe('who governs', () => {
  const january = says.walk(50, 10);
  const march = says.walk(60, 90 * 24 * 3600);
  const old = { ...says.reading(1, 'tire', 'pressure_cold', 95, '[psi]', 20), walk: january.walk };
  const now = {
    ...says.reading(2, 'tire', 'pressure_cold', 60, '[psi]', 90 * 24 * 3600 + 5),
    walk: march.walk,
  };

  test('the newest walk that speaks of it governs; the earlier one is kept aside', () => {
    const [k] = fold([now, old, march, january]).known;
    expect(k).toMatchObject({ standing: 'known', value: { value: 60 } });
    expect(k!.earlier.map((o) => o.id)).toEqual([old.id]);
  });
  test('a walk that says nothing of it takes nothing away', () => {
    expect(fold([old, january, march]).known[0]).toMatchObject({
      standing: 'known',
      value: { value: 95 },
      earlier: [],
    });
  });
  test('what belongs to no walk stands beside the walk from a day before it on', () => {
    const desk = says.reading(3, 'tire', 'pressure_cold', 80, '[psi]', 90 * 24 * 3600 - 600);
    expect(fold([old, now, january, march, desk]).known[0]!.standing).toBe('conflict');
    const longAgo = says.reading(4, 'tire', 'pressure_cold', 80, '[psi]', 30 * 24 * 3600);
    expect(fold([old, now, january, march, longAgo]).known[0]).toMatchObject({
      standing: 'known',
      value: { value: 60 },
    });
  });
});

describe('conflict, unknown, best', () => {
  test('readings farther apart than their plus-or-minus are a conflict, accepted or not', () => {
    const log = [
      { ...says.reading(1, 'house_battery', 'volts', 12.6, 'V'), sure: 1 },
      { ...says.reading(2, 'house_battery', 'volts', 12.1, 'V') },
      says.ruling(3, 1, 'accept'),
    ];
    const [k] = fold(log).known;
    expect(k!.standing).toBe('conflict');
    expect(k!.sides.map((s) => (s.value.is === 'quantity' ? s.value.value : 0))).toEqual([12.6, 12.1]);
  });
  test('a hedged word and a reading that agree are one side, and the reading is the value', () => {
    const about: Observation = {
      ...says.spoken(1, 'odometer', 'reading', { is: 'quantity', value: 48_000, unit: '[mi_i]' }),
      hedged: true,
    };
    const read = says.reading(2, 'odometer', 'reading', 48_212, '[mi_i]');
    const [k] = fold([about, read]).known;
    expect(k).toMatchObject({ standing: 'known', value: { value: 48_212 }, doubts: [] });
    expect(k!.sides).toHaveLength(1);
    expect(fold([about]).known[0]!.doubts).toEqual(['hedged', 'not reviewed']);
  });
  test('a known value wins over an unknown, which stays in the evidence; unknown alone is unknown', () => {
    const cannot = says.spoken(1, 'tire', 'tin', { is: 'unknown', why: 'turned inward' });
    expect(fold([cannot]).known[0]).toMatchObject({ standing: 'unknown' });
    const read = says.spoken(2, 'tire', 'tin', { is: 'text', text: '2319' });
    const [k] = fold([read, cannot]).known;
    expect(k).toMatchObject({ standing: 'known', value: { text: '2319' } });
    expect(k!.evidence.map((o) => o.id)).toEqual([read.id, cannot.id]);
  });
  test('praise is a claim and never a condition', () => {
    const praise: Observation = {
      ...says.spoken(1, 'engine', 'claim', { is: 'text', text: 'runs like a top' }),
      sense: 'claim',
    };
    const record = fold([praise]);
    expect(record.known).toEqual([]);
    expect(record.claims).toEqual([praise]);
    expect(record.coverage.some((c) => c.seen.includes('engine'))).toBe(false);
  });
  test('doubts: hearsay, paper, a shaky proposal; an acceptance lifts review and shakiness, not the hedge', () => {
    const told: Observation = {
      ...says.spoken(1, 'house_battery', 'age', { is: 'quantity', value: 1, unit: 'a' }),
      hedged: true,
      saidBy: 'the seller',
      sure: 0.4,
    };
    expect(fold([told]).known[0]!.doubts).toEqual(['hedged', 'hearsay', 'not reviewed', 'unsure']);
    expect(fold([told, says.ruling(2, 1, 'accept')]).known[0]!.doubts).toEqual(['hedged', 'hearsay']);
    const paper: Observation = {
      ...says.reading(3, 'coach', 'length', 40, '[ft_i]'),
      source: { from: 'document', title: 'brochure' },
    };
    expect(fold([paper]).known[0]!.doubts).toEqual(['on paper only']);
  });
});

describe('the unit and its coverage', () => {
  test('the latest word on each field stands, equipment part by part', () => {
    const record = fold([
      says.unit(2, { year: 2017, equipment: { slide: false } }, 200),
      says.unit(1, { year: 2016, maker: 'Invented', equipment: { generator: true, slide: true } }, 100),
    ]);
    expect(record.unit).toMatchObject({
      year: 2017,
      maker: 'Invented',
      equipment: { generator: true, slide: false },
    });
  });
  test('seen, unknown and not seen add up to what is expected, everywhere', () => {
    fc.assert(
      fc.property(logs, (log) => {
        for (const c of fold(log).coverage)
          expect([...c.seen, ...c.unknown, ...c.notSeen].sort()).toEqual([...c.expected].sort());
      }),
      { seed: 20261128, numRuns: 50 },
    );
  });
  test('what the unit does not have is not expected: not of its kind, switched off, said to be absent, gone with its part', () => {
    const expected = (log: readonly Entry[]) => new Set(fold(log).coverage.flatMap((c) => c.expected));
    const pusher = says.unit(1, { vehicle: 'class-a-diesel' });
    expect(expected([pusher]).has('pin_box')).toBe(false);
    expect(expected([pusher]).has('slide_seals')).toBe(true);
    expect(expected([pusher, says.unit(2, { equipment: { slide: false } }, 5)]).has('slide_seals')).toBe(
      false,
    );
    const none = says.spoken(3, 'slide', 'count', { is: 'count', count: 0 });
    expect(expected([pusher, none]).has('slide')).toBe(false);
    const gone = says.spoken(4, 'washer_dryer', 'present', { is: 'state', state: 'absent' });
    expect(expected([pusher, gone]).has('washer_dryer')).toBe(false);
    expect(expected([pusher, gone, says.ruling(5, 4, 'reject')]).has('washer_dryer')).toBe(true);
  });
  test('an unknown is not seen: it is counted by itself', () => {
    const record = fold([
      says.unit(1, { vehicle: 'class-c' }),
      says.spoken(2, 'recall_status', 'condition', { is: 'unknown', why: 'not looked up' }),
    ]);
    const papers = record.coverage.find((c) => c.station === 'papers')!;
    expect(papers.unknown).toEqual(['recall_status']);
    expect(papers.seen).toEqual([]);
  });
});

/** Everything, maps and their order included. */
const printed = (record: unknown): string =>
  JSON.stringify(record, (_, v: unknown) => (v instanceof Map ? { map: [...v] } : v));

const values: fc.Arbitrary<Value> = fc.oneof(
  fc.constantFrom(7, 7.4, 9, 12).map((value): Value => ({ is: 'quantity', value, unit: '[in_i]/32' })),
  fc.constantFrom('works', 'fails', 'yes', 'no').map((state): Value => ({ is: 'state', state })),
  fc.constantFrom('2319', '23 19', '0822').map((text): Value => ({ is: 'text', text })),
  fc.constant<Value>({ is: 'unknown', why: 'too dark' }),
);

/** Logs dense in repeats: few parts, few instants, rulings and replacements that point at one another. */
const logs: fc.Arbitrary<Entry[]> = fc
  .array(
    fc.record({
      kind: fc.constantFrom('observation', 'observation', 'observation', 'ruling', 'unit', 'walk', 'shop'),
      part: fc.constantFrom('tire', 'slide', 'coach'),
      aspect: fc.constantFrom('operates', 'tread_mid', 'present'),
      place: fc.constantFrom(undefined, 'left-front'),
      at: fc.integer({ min: 0, max: 4 }),
      target: fc.nat({ max: 11 }),
      walk: fc.constantFrom(undefined, 100, 101),
      flag: fc.boolean(),
      claim: fc.integer({ min: 0, max: 9 }),
      value: values,
      from: fc.constantFrom('speech', 'typed'),
    }),
    { minLength: 1, maxLength: 12 },
  )
  .map((rows) =>
    rows.map((r, i): Entry => {
      const at = r.at * 40_000;
      if (r.kind === 'ruling') return says.ruling(i, r.target, r.flag ? 'accept' : 'reject', at);
      if (r.kind === 'unit')
        return says.unit(
          i,
          r.flag ? { year: 2000 + r.target, equipment: { slide: r.flag } } : { name: `n${r.target}` },
          at,
        );
      if (r.kind === 'walk') return { ...says.walk(i, at), walk: idOf(r.walk ?? 100) };
      if (r.kind === 'shop') return says.shop(i, at);
      const base =
        r.from === 'speech'
          ? says.spoken(i, r.part, r.aspect, r.value, at)
          : says.typed(i, r.part, r.aspect, r.value, at);
      return {
        ...base,
        hedged: r.flag,
        sense: r.claim === 0 ? 'claim' : base.sense,
        ...(r.place === undefined ? {} : { place: r.place }),
        ...(r.walk === undefined ? {} : { walk: idOf(r.walk) }),
        ...(r.target % 3 === 0 ? { replaces: [idOf(r.target)] } : {}),
      };
    }),
  );
