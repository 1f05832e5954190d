// Why: a strip drawn the wrong way round tells the opposite of the truth.

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { factOf, findingOf, quantityOf, spokenAt, treadLimit } from '../../test/invented-unit.ts';
import { limitStrip } from './limit-strip.ts';

const strip = (value: number, pm: number | undefined, must: 'at least' | 'at most', limit = 2) =>
  limitStrip(
    findingOf({
      fact: factOf(spokenAt(1, 'tire', 'tread_mid', quantityOf(value, '[in_i]/32', pm), '')),
      limit: { ...treadLimit, must, value: limit },
    }),
  );

describe('limit strip', () => {
  test('the bad side lies below an "at least" and above an "at most"', () => {
    expect(strip(6, undefined, 'at least')?.bad[0]).toBe(0);
    expect(strip(6, undefined, 'at most')?.bad[1]).toBe(1);
  });
  test('labels', () =>
    expect(strip(2, 0.5, 'at least')).toMatchObject({
      limitLabel: 'law 2',
      readingLabel: '2/32 ± 0.5/32 in',
    }));
  test('no number, no strip', () => expect(limitStrip(findingOf())).toBeUndefined());
  test('order on the strip is the order of the numbers, and everything is on it', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -50, max: 500, noNaN: true }),
        fc.double({ min: 0, max: 20, noNaN: true }),
        fc.double({ min: 0, max: 200, noNaN: true }),
        (value, pm, limit) => {
          const s = strip(value, pm, 'at least', limit)!;
          for (const n of [s.limit, s.reading, ...s.doubt]) expect(n >= 0 && n <= 1).toBe(true);
          expect(s.doubt[0] <= s.reading && s.reading <= s.doubt[1]).toBe(true);
          if (value > limit) expect(s.reading).toBeGreaterThanOrEqual(s.limit);
          if (value < limit) expect(s.reading).toBeLessThanOrEqual(s.limit);
        },
      ),
      { seed: 11, numRuns: 300 },
    );
  });
});
