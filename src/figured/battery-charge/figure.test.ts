// Why: volts are looked up, and where a table says nothing the figure says nothing.
import { describe, expect, test } from 'vitest';
import { answerByHand } from '../answer-by-hand.ts';

describe('battery-charge', () => {
  test.each([
    [12.65, 100],
    [12.24, 50],
    [11.89, 0],
    [11.2, 0],
    [12.8, 100],
  ])('flooded at %f V: %f percent', (volts, charge) => {
    expect(answerByHand('battery-charge', { volts, chemistry: 'flooded' }).number).toBeCloseTo(charge, 6);
  });
  test('lithium is too flat, six volts is no 12 V battery, 13.4 V has not rested', () => {
    expect(answerByHand('battery-charge', { volts: 13.2, chemistry: 'lithium' })).toEqual({
      refused: 'voltage too flat',
    });
    expect(answerByHand('battery-charge', { volts: 6.3, chemistry: 'flooded' })).toEqual({
      refused: 'not a 12 V battery',
    });
    expect(answerByHand('battery-charge', { volts: 13.4, chemistry: 'AGM' })).toEqual({
      refused: 'not rested',
    });
    expect(answerByHand('battery-charge', { volts: 12.5, chemistry: 'mystery' })).toEqual({
      refused: 'kind of battery not known',
    });
  });
  test('AGM carries the disagreement of its tables', () => {
    const [agm, flooded] = ['AGM', 'flooded'].map((chemistry) =>
      answerByHand('battery-charge', { volts: 12.4, chemistry }),
    );
    expect(agm?.half).toBeGreaterThan(flooded!.half!);
    expect(agm?.half).toBeGreaterThan(8);
  });
  test('colder by 20 F costs about six percent of certainty', () => {
    expect(answerByHand('battery-charge', { volts: 12.4, chemistry: 'flooded' }).half).toBeCloseTo(6.3, 1);
  });
});
