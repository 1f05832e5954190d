// Why: torque times speed, in any units.
import { describe, expect, test } from 'vitest';
import { answerByHand } from '../answer-by-hand.ts';

describe('engine-power', () => {
  test('100 lb.ft at 5,252.113 rpm is 100 hp', () => {
    expect(answerByHand('engine-power', { torque: 100, speed: 5252.113 }).number).toBeCloseTo(100, 5);
  });
  test('the same in newton-meters and hertz is refused or agrees, never silently wrong', () => {
    const metric = answerByHand('engine-power', { torque: { value: 1166.005, unit: 'N.m' }, speed: 1800 });
    expect(metric.number).toBeCloseTo(294.74, 1);
    expect(
      answerByHand('engine-power', { torque: 860, speed: { value: 30, unit: 'Hz' } }).problems?.[0]?.code,
    ).toBe('wrong-dimension');
  });
});
