// Why: wheelbase and wheel cut make the circle.

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { answerByHand } from '../answer-by-hand.ts';
import { insideRadius, outerRadius, rearRadius } from './geometry.ts';

describe('turning-circle', () => {
  test('22 ft, 50 degrees, king pins 7 ft apart: 31.1 ft', () =>
    expect(answerByHand('turning-circle', { wheelbase: 22, cut: 50, king_pins: 7 }).number).toBeCloseTo(
      31.1,
      1,
    ));
  test('in inches the same', () => {
    const feet = answerByHand('turning-circle', { wheelbase: 22, cut: 50 });
    expect(
      answerByHand('turning-circle', { wheelbase: { value: 264, unit: '[in_i]' }, cut: 50 }).number,
    ).toBeCloseTo(feet.number!, 9);
  });
  test('90 degrees is no wheel cut', () =>
    expect(answerByHand('turning-circle', { wheelbase: 22, cut: 90 })).toEqual({
      refused: 'no such wheel cut',
    }));
  test('property: inside < rear axle < outer wheel, whatever the coach', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 10, max: 28, noNaN: true }),
        fc.double({ min: 1, max: 30, noNaN: true }),
        fc.double({ min: 6, max: 9, noNaN: true }),
        (wheelbase, more, width) => {
          const rear = rearRadius(wheelbase + more, wheelbase);
          expect(insideRadius(wheelbase + more, wheelbase, width)).toBeLessThan(rear);
          expect(outerRadius(rear, wheelbase, width)).toBeGreaterThan(rear);
        },
      ),
      { seed: 20261124 },
    );
  });
});
