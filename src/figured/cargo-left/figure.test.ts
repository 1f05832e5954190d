// Why: a margin is never rounded up, never mixed from two methods, and tanks nobody described are doubt.
import { describe, expect, test } from 'vitest';
import { answerByHand } from '../answer-by-hand.ts';
import { figureCardOf } from '../index.ts';

const ticket = {
  gvwr: 36_400,
  scale: 33_180,
  people: 2,
  people_weighed: 2,
  water_to_add: 50,
  fuel_to_add: 40,
  water_weight: 8.34,
  fuel_weight: 7.1,
};
describe('cargo-left', () => {
  test('36,400 - 33,180 - 50 gal of water - 40 gal of diesel: 2,519 lb, shown as 2,510', () => {
    const a = answerByHand('cargo-left', ticket);
    expect(a.number).toBeCloseTo(2519, 0);
    expect(a.binds).toBe('scale');
    expect(figureCardOf('cargo-left')!.round!({ value: a.number!, unit: '[lb_av]' }).value).toBe(2510);
  });
  test('exactly on ten pounds stays there, and less than nothing goes down', () => {
    const { round } = figureCardOf('cargo-left')!;
    expect(round!({ value: 2520, unit: '[lb_av]' }).value).toBe(2520);
    expect(round!({ value: -1, unit: '[lb_av]' }).value).toBe(-10);
  });
  test('the label serves where nobody weighed, and says so', () => {
    const a = answerByHand('cargo-left', { occc: 4_899, people: 4, fresh: 100, tongue: 500 });
    expect(a).toMatchObject({ number: 2_969, binds: 'label', note: expect.stringContaining('Weigh it') });
  });
  test('a label from before June 2008 counted otherwise and is refused', () => {
    expect(
      answerByHand('cargo-left', { occc: 3_145, people: 4, made: '10/2003' }).problems?.map((p) => p.name),
    ).toEqual(['scale']);
    expect(answerByHand('cargo-left', { occc: 3_145, people: 4, made: '10/2013' }).binds).toBe('label');
  });
  test('in kilograms the same coach has the same room', () => {
    const kg = answerByHand('cargo-left', {
      ...ticket,
      gvwr: { value: 36_400 * 0.45359237, unit: 'kg' },
      scale: { value: 33_180 * 0.45359237, unit: 'kg' },
    });
    expect(kg.number).toBeCloseTo(answerByHand('cargo-left', ticket).number!, 6);
  });
  test('nobody aboard when weighed: people are taken off', () => {
    const { people_weighed: _, ...unsaid } = ticket;
    expect(
      answerByHand('cargo-left', ticket).number! - answerByHand('cargo-left', unsaid).number!,
    ).toBeCloseTo(300, 6);
  });
  test('what is missing is named', () => {
    expect(answerByHand('cargo-left', {}).problems?.map((p) => p.name)).toEqual(['gvwr', 'scale', 'occc']);
  });
});
