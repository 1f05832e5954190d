import { describe, expect, test } from 'vitest';
import { numbersIn } from './number-span.ts';
import { wordsOf } from './word.ts';

const read = (text: string) => numbersIn(wordsOf([{ start: 0, end: 5, text }]).words);
const first = (text: string) => read(text)[0]?.readings[0]?.value;

const small =
  'zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen'.split(
    ' ',
  );
const tens = '0 1 twenty thirty forty fifty sixty seventy eighty ninety'.split(' ');
/** A speller of our own, for the way there and back. */
function spell(n: number, and: boolean): string {
  if (n < 20) return small[n] ?? '';
  if (n < 100) return `${tens[Math.floor(n / 10)]}${n % 10 === 0 ? '' : `-${small[n % 10]}`}`;
  const scale = n < 1000 ? 100 : 1000;
  const rest = n % scale;
  return `${spell(Math.floor(n / scale), and)} ${scale === 100 ? 'hundred' : 'thousand'}${rest === 0 ? '' : `${and && rest < 100 ? ' and' : ''} ${spell(rest, and)}`}`;
}

describe('numbers as spoken', () => {
  test('every whole number to 9,999, and steps to 999,999, there and back', () => {
    for (let n = 0; n <= 999_999; n += n < 10_000 ? 1 : 997) {
      for (const and of [true, false]) expect(first(spell(n, and)), spell(n, and)).toBe(n);
    }
  });
  test.each([
    ['fifty-five hundred watts', 5500, 'W'],
    ['nineteen and a half', 19.5, undefined],
    ['nine thirty-seconds', 9, '[in_i]/32'],
    ['13 30 seconds', 13, '[in_i]/32'],
    ['three oh six', 306, undefined],
    ['a hundred and five psi', 105, '[psi]'],
    ['point eight', 0.8, undefined],
    ['half inch', 0.5, '[in_i]'],
    ['an inch and a half', 1.5, '[in_i]'],
    ['an eighth of an inch', undefined, undefined],
    ['three eighths of an inch', 0.375, '[in_i]'],
    ['41,212 miles', 41212, '[mi_i]'],
    ['forty foot two', 40 + 2 / 12, '[ft_i]'],
    ['39\'4"', 39 + 4 / 12, '[ft_i]'],
    ['two oh seven point four', 207.4, undefined],
    ['fifty-eight point five hertz', 58.5, 'Hz'],
    ['minus thirty-four', -34, undefined],
    ['12.7v', 12.7, 'V'],
    ['two hundred fifty thousand', 250000, undefined],
  ])('%s', (text, value, unit) => {
    const span = read(text)[0];
    if (value === undefined) expect(span).toBeUndefined();
    else expect(span?.readings[0]?.value).toBeCloseTo(value, 9);
    expect(span?.unit?.units[0]).toBe(unit);
  });
  test('readings that only the context can choose between are all kept', () => {
    const values = (text: string) => read(text)[0]?.readings.map((r) => r.value);
    expect(values('twelve six')).toEqual([12.6, 12600]);
    expect(values('twelve six one')).toEqual([12.61]);
    expect(values('eleven eighty')).toEqual([1180, 11.8]);
    expect(values('twenty-eight six fifty-one')).toContain(28651);
  });
  test('ranges, shares and sizes', () => {
    expect(read('five to six gallons')[0]).toMatchObject({ upTo: [{ value: 6 }] });
    expect(read('one of four')[0]).toMatchObject({ of: 4 });
    expect(read('twenty-two inches by three')[0]).toMatchObject({ by: [{ value: 3 }] });
    expect(read('about half')[0]?.approx).toBe(true);
  });
  test('"this one" and "the other one" are no numbers; a comma ends a number', () => {
    expect(read('this one and the other one')).toEqual([]);
    expect(read('eleven thirty-seconds, eighty-two')).toHaveLength(2);
  });
});
