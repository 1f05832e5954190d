// Why: hours follow from the bank, its kind and the load.
import { describe, expect, test } from 'vitest';
import { answerByHand } from '../answer-by-hand.ts';

const bank = {
  count: 4,
  each: 100,
  chemistry: 'lithium iron phosphate',
  usable: 0.85,
  volts: 12.8,
  peukert: 1,
  load: 600,
  efficiency: 0.9,
  idle: 20,
};
describe('battery-hours', () => {
  test('4 x 100 Ah at 12.8 V, 0.85 usable, 600 W at 0.90 and 20 W idle: 6.34 h', () => {
    expect(answerByHand('battery-hours', bank).number).toBeCloseTo(6.34, 2);
  });
  test('220 Ah at 50 A with k 1.2: 3.25 h against 4.4 h', () => {
    const lead = {
      count: 1,
      each: 220,
      chemistry: 'flooded',
      usable: 1,
      volts: 12,
      load: 600,
      efficiency: 1,
      idle: 0,
      rated_over: 20,
    };
    expect(answerByHand('battery-hours', { ...lead, peukert: 1.2 }).number).toBeCloseTo(3.25, 2);
    expect(answerByHand('battery-hours', { ...lead, peukert: 1 }).number).toBeCloseTo(4.4, 6);
  });
  test('below the rated current a battery never gives more than its label', () => {
    const a = answerByHand('battery-hours', {
      count: 1,
      each: 100,
      chemistry: 'flooded',
      usable: 1,
      volts: 12,
      peukert: 1.25,
      load: 12,
      efficiency: 1,
      idle: 0,
    });
    expect(a.number).toBeCloseTo(100, 6);
  });
  test('without the kind of battery only that is asked for', () => {
    expect(answerByHand('battery-hours', { count: 4, each: 100 }).problems?.map((p) => p.name)).toEqual([
      'chemistry',
    ]);
  });
});
