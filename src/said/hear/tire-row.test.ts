// Why: tires are read out in any order and shorthand; what each number is must come out the same.
import { describe, expect, test } from 'vitest';
import { hear } from './hear.ts';

const read = (text: string): string[] =>
  hear([{ start: 0, end: 20, text }])
    .observations.filter((o) => (o.part === 'tire' || o.part === 'spare_tire') && !o.retracted)
    .map((o) => {
      const v = o.value;
      const said =
        v.is === 'quantity'
          ? String(v.value)
          : v.is === 'text'
            ? v.text
            : v.is === 'count'
              ? `${v.count}x`
              : '';
      return `${o.place ?? '-'} ${o.aspect} ${said}`;
    });

describe('a row of tires', () => {
  test('code, tread and pressure in one breath', () => {
    expect(read('Tires. Right front thirty-one twenty, eight thirty-seconds, 95 pounds.')).toEqual([
      'right-front tin 3120',
      'right-front tread_mid 8',
      'right-front pressure_cold 95',
    ]);
    expect(read('Tires. Left front thirty-one nineteen eight ninety-five.')).toEqual([
      'left-front tin 3119',
      'left-front tread_mid 8',
      'left-front pressure_cold 95',
    ]);
  });
  test('tread and pressure are told apart by size', () => {
    expect(read('Tires. Left rear outer eleven, eighty-two. Left rear inner twelve one oh five.')).toEqual([
      'left-rear-outer tread_mid 11',
      'left-rear-outer pressure_cold 82',
      'left-rear-inner tread_mid 12',
      'left-rear-inner pressure_cold 105',
    ]);
  });
  test('the same week is the code before, at the new corner', () => {
    expect(read('Tires. Left front is week twelve of nineteen. Right front, same week, six.')).toEqual([
      'left-front tin 1219',
      'right-front tin 1219',
      'right-front tread_mid 6',
    ]);
    expect(read('Tires. Left front 1219. Right front is the same week, twelve nineteen.')).toHaveLength(2);
  });
  test('a list of one kind goes on in that kind', () => {
    expect(
      read('Tires. Air is fifty pounds left front, forty-eight right front, twenty-one left rear.'),
    ).toEqual(['left-front pressure_cold 50', 'right-front pressure_cold 48', 'left-rear pressure_cold 21']);
  });
  test('sizes as people say them', () => {
    const size = (text: string): string => read(text)[0] ?? '';
    expect(size('The tires are two seventy-five seventy R twenty-two five.')).toBe('- size 275/70R22.5');
    expect(size('Tires are two-oh-five seventy-five fifteens.')).toBe('- size 205/75R15');
    expect(size('Tires are LT 245/75R17.')).toBe('- size 245/75R17');
    expect(size('Tires are eleven R 22.5.')).toBe('- size 11R22.5');
  });
  test('prices are no readings', () => {
    expect(read('Tires. Left front six. The shop wants three-ten apiece.')).toEqual([
      'left-front tread_mid 6',
    ]);
  });
  test('weeks by their ordinal, and of a year', () => {
    expect(read('The tires are dated the fourteenth week of twenty-two.')).toEqual(['- tin 1422']);
    expect(read('Tires. Left front, 3 of 21.')).toEqual(['left-front tin 0321']);
  });
});
