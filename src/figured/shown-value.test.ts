// Why: what is shown may be vaguer than what was worked out, never surer.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Value } from '../said/entry.ts';
import type { Figure } from './figure.ts';
import { figureCardOf } from './index.ts';
import { shownValue } from './shown-value.ts';

const figure = (value: Value): Figure => ({
  id: 'ac-split',
  card: { ...figureCardOf('ac-split')!, round: (q) => q },
  result: { is: 'worked', value, working: [] },
  inputs: [],
  drivenBy: [],
});
const shown = (plusOrMinus: number): number | undefined => {
  const value = shownValue(figure({ is: 'quantity', value: 8000, unit: '[lb_av]', plusOrMinus }));
  return value?.is === 'quantity' ? value.plusOrMinus : undefined;
};

test.each([
  [1679, 1700],
  [0.0231, 0.024],
  [20, 20],
  [0, 0],
])('a doubt of %d is shown as %d', (doubt, as) => {
  expect(shown(doubt)).toBe(as);
});

test('a doubt is never shown smaller, nor a tenth larger (seed 7)', () => {
  fc.assert(
    fc.property(fc.double({ min: 1e-4, max: 1e6, noNaN: true }), (doubt) => {
      const as = shown(doubt)!;
      expect(as).toBeGreaterThanOrEqual(doubt * (1 - 1e-9));
      expect(as).toBeLessThanOrEqual(doubt * 1.11);
    }),
    { seed: 7 },
  );
});

test('a gap shows nothing', () => {
  expect(
    shownValue({ ...figure({ is: 'text', text: 'x' }), result: { is: 'gap', missing: [] } }),
  ).toBeUndefined();
});
