// Why: numbers as words are read back from another speller's words over the whole range, and units as said against another table of units.
// @ts-expect-error the package comes without types
import ucum from '@lhncbc/ucum-lhc';
// @ts-expect-error the package comes without types
import numberSpeller from 'number-to-words';
import { describe, expect, test } from 'vitest';
import { numbersIn } from './number-span.ts';
import { saidUnits } from './unit-words.ts';
import { wordsOf } from './word.ts';

const speller = numberSpeller as { toWords: (n: number) => string };
const first = (text: string) => numbersIn(wordsOf([{ start: 0, end: 5, text }]).words)[0]?.readings[0]?.value;
/** As people say it: without the commas that the speller puts between groups. */
const spoken = (n: number): string => speller.toWords(n).replaceAll(',', '');

describe('against a general speller of numbers (number-to-words)', () => {
  test('every whole number to 20,000, then steps to 2,000,000', () => {
    for (let n = 0; n <= 2_000_000; n += n < 20_000 ? 1 : 1_009) expect(first(spoken(n)), spoken(n)).toBe(n);
  });
  test('the same with hyphens spoken as blanks, and with a unit behind', () => {
    for (let n = 2; n <= 99_999; n += n < 1_000 ? 1 : 313) {
      expect(first(`${spoken(n).replaceAll('-', ' ')} miles`), `${n} miles`).toBe(n);
    }
  });
});

interface Library {
  validateUnitString(code: string): { status: string };
  convertUnitTo(from: string, value: number, to: string): { status: string; toVal: number | null };
}
const library = ucum.UcumLhcUtils.getInstance() as Library;

describe('units as said, against the UCUM library', () => {
  test('every unit that words may mean is a unit there', () => {
    const own = saidUnits.filter((u) => u !== '{rev}/min' && u !== 'dB{A}');
    expect(own.length).toBeGreaterThan(40);
    for (const unit of own) {
      // 32nds of an inch are written here as a code over 32, which UCUM allows only as a number
      if (unit === '[in_i]/32') continue;
      expect(library.validateUnitString(unit).status, unit).toBe('valid');
    }
  });
  test('weeks are seven days and a kilo is a kilogram', () => {
    expect(library.convertUnitTo('wk', 1, 'd').toVal).toBeCloseTo(7, 9);
    const span = numbersIn(wordsOf([{ start: 0, end: 5, text: 'three weeks' }]).words)[0];
    expect(span?.unit?.times).toBe(7);
    const kilo =
      numbersIn(wordsOf([{ start: 0, end: 5, text: 'three kilos' }]).words)[0]?.unit?.units[0] ?? '';
    expect(library.convertUnitTo(kilo, 1, 'g').toVal).toBeCloseTo(1000, 9);
  });
});
