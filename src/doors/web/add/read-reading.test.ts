// Why: a reading read in the wrong unit is a wrong reading with a good conscience.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Unit, unitCodes, unitFact } from '../../../units/unit.ts';
import { conversionsOf, readReading } from './read-reading.ts';

const read = (typed: string, own: Unit, meant: Unit = own) => readReading(typed, own, meant, 'tread mid');
const reading = (typed: string, own: Unit, meant?: Unit) => {
  const r = read(typed, own, meant);
  return 'reading' in r ? r.reading : r.trouble;
};

describe('a reading as typed', () => {
  test.each<[string, Unit, object]>([
    ['9/32', '[in_i]/32', { value: 9, unit: '[in_i]/32' }],
    ['9', '[in_i]/32', { value: 9, unit: '[in_i]/32' }],
    ['9/32"', '[in_i]/32', { value: 9, unit: '[in_i]/32' }],
    ['9/32 in', '[in_i]', { value: 9, unit: '[in_i]/32' }],
    ['8 to 9/32', '[in_i]/32', { value: 8, upTo: 9, unit: '[in_i]/32' }],
    ['1/4', '[in_i]/32', { value: 0.25, unit: '[in_i]' }],
    ['7 mm', '[in_i]/32', { value: 7, unit: 'mm' }],
    ['1 1/2 in', '[in_i]', { value: 1.5, unit: '[in_i]' }],
    ['1-1/2', '[in_i]', { value: 1.5, unit: '[in_i]' }],
    [`7'2"`, '[ft_i]', { value: 7 + 2 / 12, unit: '[ft_i]' }],
    ['38 ft 2 in', '[ft_i]', { value: 38 + 2 / 12, unit: '[ft_i]' }],
    ['105 psi', '[psi]', { value: 105, unit: '[psi]' }],
    ['105 lbs', '[psi]', { value: 105, unit: '[psi]' }],
    ['105 lbs', '[lb_av]', { value: 105, unit: '[lb_av]' }],
    ['12.6 V', 'V', { value: 12.6, unit: 'V' }],
    ['12.6v', 'V', { value: 12.6, unit: 'V' }],
    ['.5 volts', 'V', { value: 0.5, unit: 'V' }],
    ['13.5k btu', '[Btu]/h', { value: 13500, unit: '[Btu]/h' }],
    ['13.5 K', '[Btu]/h', { value: 13500, unit: '[Btu]/h' }],
    ['5 to 6 gal', '[gal_us]', { value: 5, upTo: 6, unit: '[gal_us]' }],
    ['6-5 gallons', '[gal_us]', { value: 5, upTo: 6, unit: '[gal_us]' }],
    ['5 to 6k lb', '[lb_av]', { value: 5000, upTo: 6000, unit: '[lb_av]' }],
    ['61,480', '[mi_i]', { value: 61480, unit: '[mi_i]' }],
    ['12.6 ± 0.1 V', 'V', { value: 12.6, plusOrMinus: 0.1, unit: 'V' }],
    ['2/32 +/- 0.5/32', '[in_i]/32', { value: 2, plusOrMinus: 0.5, unit: '[in_i]/32' }],
    ['19 %', '%', { value: 19, unit: '%' }],
    ['38 F', '[degF]', { value: 38, unit: '[degF]' }],
    ['20 degrees', 'K{difference}', { value: 20, unit: '[degF]{difference}' }],
    ['-4 C', '[degF]', { value: -4, unit: 'Cel' }],
    ['11 in w.c.', '[psi]', { value: 11, unit: "[in_i'H2O]" }],
  ])('%s where %s is asked for', (typed, own, wanted) => {
    expect(reading(typed, own)).toEqual(wanted);
  });
  test('takes the unit that is chosen where none is written', () => {
    expect(reading('7', '[in_i]/32', 'mm')).toEqual({ value: 7, unit: 'mm' });
    expect(reading('9/32', '[in_i]/32', 'mm')).toEqual({ value: 9, unit: '[in_i]/32' });
  });
  test('of another dimension is refused with what it is and what is asked for', () => {
    expect(reading('105 psi', '[in_i]/32')).toMatch(/“105 psi” is a pressure\. Tread mid is a length.*mm/);
    expect(reading('12.6 V', '[psi]')).toMatch(/is a voltage\. .* is a pressure/);
  });
  test.each(['twelve', 'V', '', '1/0', '5 to', '3 furlongs', '4 ± -1', '1 ± 2 ± 3'])(
    '%s is refused',
    (typed) => {
      expect(reading(typed, '[in_i]')).toMatch(/[.]$/);
    },
  );
  test('reads back whatever is written with the symbol of a unit, in a unit of the same size', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...unitCodes.filter((u) => u !== '1')),
        fc.integer({ min: 1, max: 9999 }).map((n) => n / 10),
        (unit, n) => {
          const symbol = unitFact(unit).symbol;
          const got = reading(symbol.startsWith('/') ? `${n}${symbol}` : `${n} ${symbol}`, unit);
          expect(got).toMatchObject({ value: n });
          expect(unitFact((got as { unit: Unit }).unit).factor).toBe(unitFact(unit).factor);
        },
      ),
      { seed: 20261124, numRuns: 600 },
    );
  });
});

describe('the same reading in other units', () => {
  test('is shown where the number is handy', () => {
    expect(conversionsOf({ value: 9, unit: '[in_i]/32' })).toEqual(['0.281 in', '7.144 mm']);
    expect(conversionsOf({ value: 13500, unit: '[Btu]/h' })).toEqual(['3,956 W', '3.956 kW', '5 hp']);
    expect(conversionsOf({ value: 5, upTo: 6, unit: '[gal_us]' })).toEqual(['18.927 to 22.712 L']);
  });
});
