// Why: a wrong factor makes every number wrong; each one is compared with what a UCUM library says of the same code.
// @ts-expect-error the package comes without types
import ucum from '@lhncbc/ucum-lhc';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { convert, inUnit, isSameDimension, quantity, rangeOf } from './quantity.ts';
import { type Dimension, isUnit, type Unit, unitCodes, unitFact } from './unit.ts';

interface Library {
  convertUnitTo(
    from: string,
    value: number,
    to: string,
  ): { status: string; toVal: number | null; msg?: string[] };
}
const library = ucum.UcumLhcUtils.getInstance() as Library;

/** The unit in which a factor of ours is 1, as UCUM writes it. */
const base: Record<Dimension, string> = {
  length: 'm',
  area: 'm2',
  volume: 'm3',
  mass: 'kg',
  force: 'N',
  pressure: 'Pa',
  temperature: 'K',
  'temperature-difference': 'K',
  time: 's',
  speed: 'm/s',
  acceleration: 'm/s2',
  power: 'W',
  'apparent-power': 'W',
  energy: 'J',
  torque: 'N.m',
  rotation: '/s',
  voltage: 'V',
  current: 'A',
  charge: 'C',
  frequency: 'Hz',
  resistance: 'Ohm',
  ratio: '1',
  flow: 'm3/s',
  economy: 'm/m3',
  sound: 'dB{A}',
  angle: 'rad',
  density: 'kg/m3',
  'pressure-rate': 'Pa/s',
  'energy-density': 'J/m3',
};

/** Codes that the library reads otherwise than we mean them: what to ask it for instead, and why. */
const askedAs: Partial<Record<Unit, { readonly code: string; readonly why: string }>> = {
  '[Btu]': {
    code: '[Btu_IT]',
    why: 'ours is the international table Btu (1055.056 J); UCUM’s [Btu] is the thermochemical one (1054.35 J)',
  },
  '[Btu]/h': { code: '[Btu_IT]/h', why: 'as [Btu]' },
  '[Btu]/[gal_us]': { code: '[Btu_IT]/[gal_us]', why: 'as [Btu]' },
};

/** Codes with which the library cannot be asked at all. */
const notAsked: Partial<Record<Unit, string>> = {
  '[degF]{difference}':
    'UCUM has no difference of temperatures: it drops the annotation and shifts by 459.67; checked below by subtraction',
};

const said = (from: string, value: number, to: string): number => {
  const { status, toVal, msg } = library.convertUnitTo(from, value, to);
  if (status !== 'succeeded' || toVal === null) throw new Error(`${from} to ${to}: ${msg?.join(' ')}`);
  return toVal;
};

// The library carries inches of water and psi to twelve figures or so.
const near = (a: number, b: number): boolean =>
  Math.abs(a - b) <= 1e-10 * Math.max(1e-30, Math.abs(a), Math.abs(b));

describe('every factor against a UCUM library', () => {
  test.each(unitCodes.filter((c) => notAsked[c] === undefined))('%s', (code) => {
    const {
      dimension,
      factor,
      offset = 0,
    } = unitFact(code as Unit) as { dimension: Dimension; factor: number; offset?: number };
    const asked = askedAs[code]?.code ?? code;
    for (const value of [1, 0, 37.5, 1e4]) {
      const theirs = said(asked, value, base[dimension]);
      expect(
        near(value * factor + offset, theirs),
        `${value} ${code}: ours ${value * factor + offset}, theirs ${theirs}`,
      ).toBe(true);
    }
  });
  test('a difference of Fahrenheit degrees is the difference of two Fahrenheit temperatures', () => {
    expect(unitFact('[degF]{difference}').factor).toBeCloseTo(
      (said('[degF]', 1070, 'K') - said('[degF]', 70, 'K')) / 1000,
      12,
    );
  });
  test('the differences listed above are really there, so that none is listed for nothing', () => {
    for (const code of Object.keys(askedAs) as Unit[]) {
      const { dimension, factor } = unitFact(code);
      expect(near(factor, said(code, 1, base[dimension])), code).toBe(false);
    }
    expect(said('[degF]{difference}', 1, 'K')).toBeGreaterThan(200);
  });
});

describe('converting', () => {
  const pair = fc
    .tuple(fc.constantFrom(...unitCodes), fc.constantFrom(...unitCodes))
    .filter(([a, b]) => isSameDimension(a, b));
  const number = fc.double({ min: -1e6, max: 1e6, noNaN: true });

  test('there and back is where it was', () => {
    fc.assert(
      fc.property(pair, number, ([a, b], n) => {
        const back = convert(convert(n, a, b), b, a);
        // A temperature loses digits under the offset, so the error is measured against that too.
        const size = Math.max(Math.abs(n), 1000);
        expect(Math.abs(back - n)).toBeLessThanOrEqual(1e-11 * size);
      }),
      { seed: 20261204, numRuns: 1000 },
    );
  });
  test('by way of a third unit is the same as straight', () => {
    const three = fc
      .tuple(fc.constantFrom(...unitCodes), fc.constantFrom(...unitCodes), fc.constantFrom(...unitCodes))
      .filter(([a, b, c]) => isSameDimension(a, b) && isSameDimension(b, c));
    fc.assert(
      fc.property(three, fc.double({ min: 1, max: 1e5, noNaN: true }), ([a, b, c], n) => {
        const straight = convert(n, a, c);
        expect(Math.abs(convert(convert(n, a, b), b, c) - straight)).toBeLessThanOrEqual(
          1e-10 * Math.max(1000, Math.abs(straight)),
        );
      }),
      { seed: 20261205, numRuns: 300 },
    );
  });
  test('a plus-or-minus is scaled and never shifted: the range keeps its ends', () => {
    fc.assert(
      fc.property(
        pair,
        fc.double({ min: -100, max: 100, noNaN: true }),
        fc.double({ min: 0, max: 50, noNaN: true }),
        ([a, b], n, half) => {
          const [low, high] = rangeOf(inUnit(quantity(n, a, half), b));
          const [x, y] = rangeOf(quantity(n, a, half)).map((end) => convert(end, a, b));
          const size = 1e-9 * Math.max(1000, Math.abs(low), Math.abs(high));
          expect(Math.abs(low - x!)).toBeLessThanOrEqual(size);
          expect(Math.abs(high - y!)).toBeLessThanOrEqual(size);
        },
      ),
      { seed: 20261206 },
    );
  });
  test('across dimensions it is refused, a temperature and a difference of temperatures too', () => {
    expect(() => convert(1, '[ft_i]', '[lb_av]')).toThrow(TypeError);
    expect(() => convert(1, 'K', 'K{difference}')).toThrow(TypeError);
    expect(() => convert(1, 'W', 'V.A')).toThrow(TypeError);
  });
  test.each([
    [32, '[degF]', 'Cel', 0],
    [212, '[degF]', 'Cel', 100],
    [-40, 'Cel', '[degF]', -40],
    [9, '[degF]{difference}', 'K{difference}', 5],
    [1, '[ft_i]', '[in_i]', 12],
    [8, '[in_i]/32', '[in_i]', 0.25],
  ] as const)('%d %s is so many %s: %d', (n, from, to, expected) => {
    expect(convert(n, from, to)).toBeCloseTo(expected, 10);
  });
  test('a quantity that is not a number is refused', () => {
    expect(() => quantity(Number.NaN, 'V')).toThrow(RangeError);
    expect(() => quantity(Number.POSITIVE_INFINITY, 'V')).toThrow(RangeError);
  });
  test('only codes of the list are units', () => {
    expect(isUnit('[psi]')).toBe(true);
    expect(isUnit('psi')).toBe(false);
    expect(isUnit('toString')).toBe(false);
  });
});
