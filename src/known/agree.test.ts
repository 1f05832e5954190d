// Why: where agreement ends and contradiction begins, each boundary once.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { aspectOf } from '../catalogue/index.ts';
import type { State } from '../catalogue/state.ts';
import type { Value } from '../said/entry.ts';
import { type Unit, unitCodes } from '../units/unit.ts';
import { agree } from './agree.ts';
import { digitDoubt } from './digit-doubt.ts';
import { yesOrNo } from './yes-or-no.ts';

const q = (value: number, unit: Unit, plusOrMinus?: number): Value => ({
  is: 'quantity',
  value,
  unit,
  ...(plusOrMinus === undefined ? {} : { plusOrMinus }),
});
const s = (state: State): Value => ({ is: 'state', state });
const t = (text: string): Value => ({ is: 'text', text });

describe('quantities', () => {
  test('agree up to the sum of their plus-or-minus, and not beyond', () => {
    expect(agree(q(10, 'V', 1), q(12, 'V', 1), undefined)).toBe(true);
    expect(agree(q(10, 'V', 1), q(12.01, 'V', 1), undefined)).toBe(false);
  });
  test('in other units of the same dimension, offsets included', () => {
    expect(agree(q(32, '[degF]', 0), q(0, 'Cel', 0), undefined)).toBe(true);
    expect(agree(q(40, '[ft_i]', 0), q(481, '[in_i]', 0.5), undefined)).toBe(false);
    expect(agree(q(40, '[ft_i]', 0), q(480, '[in_i]', 0), undefined)).toBe(true);
  });
  test('of different dimensions never', () => {
    expect(agree(q(50, '%'), q(50, '[gal_us]'), undefined)).toBe(false);
  });
  test('a said range counts as all of it', () => {
    const fiveToSix: Value = { is: 'quantity', value: 5, upTo: 6, unit: '[gal_us]', plusOrMinus: 0 };
    expect(agree(fiveToSix, q(5.7, '[gal_us]', 0), undefined)).toBe(true);
    expect(agree(fiveToSix, q(6.1, '[gal_us]', 0), undefined)).toBe(false);
  });
  test('agreement does not depend on who is asked first, and everything agrees with itself', () => {
    const any = fc.record({
      value: fc.double({ min: -1e5, max: 1e5, noNaN: true }),
      unit: fc.constantFrom(...unitCodes),
    });
    fc.assert(
      fc.property(any, any, (a, b) => {
        expect(agree(q(a.value, a.unit), q(b.value, b.unit), undefined)).toBe(
          agree(q(b.value, b.unit), q(a.value, a.unit), undefined),
        );
        expect(agree(q(a.value, a.unit), q(a.value, a.unit), undefined)).toBe(true);
      }),
      { seed: 20261124 },
    );
  });
  test.each([
    [12.6, 0.05],
    [7, 0.5],
    [48_212, 0.5],
    [48_000, 500],
    [100, 2.5],
    [30, 0.75],
    [10, 0.5],
    [0, 0.5],
    [0.25, 0.005],
  ])('%d without a plus-or-minus is known to %d', (value, doubt) => {
    expect(digitDoubt(value)).toBeCloseTo(doubt, 12);
  });
});

describe('words', () => {
  const operates = aspectOf('slide', 'operates');
  const leak = aspectOf('plumbing', 'leak');
  const year = aspectOf('coach', 'year');
  const maker = aspectOf('coach', 'maker');
  test('yes, works; no, fails', () => {
    expect(agree(s('works'), s('yes'), operates)).toBe(true);
    expect(agree(s('fails'), s('no'), operates)).toBe(true);
    expect(agree(s('works'), s('no'), operates)).toBe(false);
  });
  test('a good state says no where no is the good news', () => {
    expect(yesOrNo(s('dry'), leak)).toBe('no');
    expect(yesOrNo(s('dripping'), leak)).toBe('yes');
    expect(yesOrNo({ is: 'count', count: 0 }, leak)).toBe('no');
    expect(yesOrNo(s('repaired'), leak)).toBeUndefined();
  });
  test('two bad states are not a contradiction, a good and a bad one are, and so are opposites', () => {
    const condition = aspectOf('roof_membrane', 'condition');
    expect(agree(s('cracked'), s('faded'), condition)).toBe(true);
    expect(agree(s('good'), s('cracked'), condition)).toBe(false);
    expect(agree(s('full'), s('empty'), condition)).toBe(false);
  });
  test('texts: case and spaces make no difference; another word does, except in descriptions', () => {
    expect(agree(t('North  Fork'), t('north fork'), maker)).toBe(true);
    expect(agree(t('North Fork'), t('South Fork'), maker)).toBe(false);
    expect(agree(t('scuffed left'), t('scuffed right'), aspectOf('front_cap', 'condition'))).toBe(true);
  });
  test('a date code is its digits', () => {
    expect(agree(t('23 19'), t('2319'), aspectOf('tire', 'tin'))).toBe(true);
    expect(agree(t('2319'), t('2318'), aspectOf('tire', 'tin'))).toBe(false);
  });
  test('a year is a year however it is written, and the next year is another', () => {
    expect(agree(t('2016'), q(2016, 'a'), year)).toBe(true);
    expect(agree(q(2016, 'a'), q(2017, 'a'), year)).toBe(false);
  });
  test('what cannot be compared is no contradiction', () => {
    expect(agree(s('low'), q(95, '[psi]'), aspectOf('tire', 'pressure_cold'))).toBe(true);
  });
});
