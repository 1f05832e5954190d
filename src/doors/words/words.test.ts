// Why: sentences are what people act on; each is checked word for word where it matters.
import { describe, expect, test } from 'vitest';
import { factOf, findingOf, onDay, quantityOf, spokenAt, treadLimit } from '../../../test/invented-unit.ts';
import { cents } from '../../units/money.ts';
import { minutes } from './minutes.ts';
import { sayEvidence } from './say-evidence.ts';
import { sayGap } from './say-gap.ts';
import { sayCitation, sayLimit } from './say-limit.ts';
import { sayMoneyRange } from './say-money-range.ts';
import { sayNear } from './say-near.ts';
import { problems, sayProblem } from './say-problem.ts';
import { sayField, saySides } from './say-value.ts';
import { sayTally, verdictMeanings } from './say-verdict.ts';

test.each([
  [741.2, '12:21'],
  [0, '0:00'],
  [59.999, '0:59'],
  [3723, '1:02:03'],
  [-1, '0:00'],
  [119.9999999999, '2:00'],
])('%d s is %s', (s, text) => expect(minutes(s)).toBe(text));

describe('evidence', () => {
  const o = spokenAt(761, 'tire', 'tread_mid', quantityOf(2, '[in_i]/32'), 'two');
  test('each source', () => {
    expect(sayEvidence(o)).toBe('said at 12:41');
    expect(sayEvidence({ ...o, saidBy: 'the seller' })).toBe('said at 12:41, as told by the seller');
    expect(sayEvidence({ ...o, source: { from: 'typed' } })).toBe('typed by R. Ames on 24 Nov 2026');
    expect(sayEvidence({ ...o, source: { from: 'document', title: 'scale ticket' } })).toBe(
      'paper: scale ticket',
    );
  });
});

describe('limits', () => {
  test('who says so and how binding', () =>
    expect(sayLimit(treadLimit)).toBe(
      'at least 2/32 in (law, used here as a benchmark: 49 CFR Part 393, 393.75(c))',
    ));
  test('a practice has no publication', () =>
    expect(sayLimit({ ...treadLimit, standing: 'trade practice', clause: 'no source' })).toBe(
      'at least 2/32 in (trade practice, no publication)',
    ));
  test('a citation with its day', () =>
    expect(sayCitation(treadLimit.cites[0]!)).toBe(
      '49 CFR Part 393, 393.75(c): Tires other than front: at least 2/32 in of tread (read 24 Nov 2026)',
    ));
  const near = (value: number, pm?: number, must: 'at least' | 'at most' = 'at least') => {
    const fact = factOf(spokenAt(1, 'tire', 'tread_mid', quantityOf(value, '[in_i]/32', pm), ''));
    return sayNear(findingOf({ fact, limit: { ...treadLimit, must } }));
  };
  test('how near', () => {
    expect(near(2, 0.5)).toBe('at its limit');
    expect(near(2.3, 0.5)).toBe("nearer its limit than the reading's own doubt");
    expect(near(1)).toBe('1/32 in below its limit');
    expect(near(6)).toBe('4/32 in to spare');
    expect(near(6, 0, 'at most')).toBe('4/32 in above its limit');
    expect(sayNear(findingOf())).toBe('');
  });
  test('a reading in another unit is brought to that of the limit', () => {
    const fact = factOf(spokenAt(1, 'tire', 'tread_mid', quantityOf(0.125, '[in_i]'), ''));
    expect(sayNear(findingOf({ fact, limit: treadLimit }))).toBe('2/32 in to spare');
  });
});

test('a conflict shows its sides', () => {
  const a = spokenAt(1, 'coach', 'length', quantityOf(38.2, '[ft_i]'), '');
  const fact = factOf(a, [], {
    standing: 'conflict',
    sides: [
      { value: a.value, evidence: [a] },
      { value: quantityOf(39, '[ft_i]'), evidence: [] },
    ],
  });
  expect(saySides(fact)).toBe('38.2 ft against 39 ft');
});
test('a gap names what is missing', () => {
  const need = {
    name: 'wheelbase',
    what: 'wheelbase',
    part: 'coach',
    aspect: 'wheelbase',
    unit: '[in_i]',
  } as const;
  const cut = {
    name: 'cut',
    what: 'steering cut',
    part: 'coach',
    aspect: 'steering_cut',
    unit: 'deg',
  } as const;
  expect(sayGap({ result: { is: 'gap', missing: [need, cut] } })).toBe(
    'Missing: wheelbase (in) and steering cut (°).',
  );
  expect(
    sayGap({
      result: { is: 'gap', missing: [], refused: { refused: 'voltage too flat', detail: '12.9 V' } },
    }),
  ).toBe('Cannot be worked out: at that voltage this kind of battery does not show how full it is (12.9 V).');
});
test('a gap says why something that was spoken of could not be used', () => {
  const need = {
    name: 'wheelbase',
    what: 'wheelbase',
    part: 'coach',
    aspect: 'wheelbase',
    unit: '[in_i]',
  } as const;
  expect(sayGap({ result: { is: 'gap', missing: [need], why: { wheelbase: 'conflict' } } })).toBe(
    'Missing: wheelbase (in; sources disagree).',
  );
  expect(sayGap({ result: { is: 'gap', missing: [], refused: { refused: 'some-new-code' } } })).toBe(
    'Cannot be worked out: some new code.',
  );
});
test('money ranges', () =>
  expect([
    sayMoneyRange([cents(40_000), cents(70_000)]),
    sayMoneyRange([cents(40_000), cents(40_000)]),
  ]).toEqual(['$400 to $700', '$400']));
test('a field says its unit', () => expect(sayField('tire', 'pressure_cold')).toBe('pressure cold (psi)'));
test('a tally, worst first', () =>
  expect(sayTally({ stop: 1, repair: 0, watch: 9, sound: 88, 'not seen': 23 })).toBe(
    '1 stop, 9 watch, 88 sound, 23 not seen',
  ));

describe('problems', () => {
  const known = [
    'locked',
    'id-taken',
    'cut-short',
    'checksum',
    'not-json',
    'not-an-entry',
    'out-of-order',
    'too-big',
    'outside-folder',
    'not-a-transcript',
    'bad-cue',
    'bad-time',
    'bad-csv-row',
    'unknown-part',
    'unknown-aspect',
    'unknown-unit',
    'wrong-unit',
    'bad-number',
    'bad-json',
    'bad-gpx',
    'no-transcript',
    'port-taken',
    'not-found',
    'bad-entry',
  ];
  test.each(known)('%s has a sentence and a remedy', (code) => {
    expect(sayProblem(code).says).toMatch(/^[A-Z].*\.$/);
    expect(sayProblem(code).remedy).toMatch(/^[A-Z].*\.$/);
    expect(sayProblem(code).says).not.toContain(`(${code})`);
  });
  test('a code nobody knows is still shown, also one that objects have by nature', () => {
    expect(sayProblem('left-handed').says).toBe('Something went wrong (left-handed).');
    expect(sayProblem('constructor').says).toBe('Something went wrong (constructor).');
  });
});

test('no word of this room calls anything safe', () => {
  const all = JSON.stringify([problems, verdictMeanings, sayLimit(treadLimit), onDay]);
  expect(all).not.toMatch(/\bsafe\b|\bDOT\b/i);
});
