// Why: a number worded wrongly is a wrong number.
import { expect, test } from 'vitest';
import { feetAndInches, plainNumber, plainQuantity, plainValue } from './plain-value.ts';
import { plainWeek } from './plain-week.ts';

test.each([
  [52_300, '52,300'],
  [999.94, '999.9'],
  [12.4, '12.4'],
  [0.0554, '0.055'],
  [-0.0001, '0'],
  [1_234_567.8, '1,234,568'],
  [-1500, '-1,500'],
])('%d is written %s', (n, text) => expect(plainNumber(n)).toBe(text));
test.each([
  [plainQuantity(2, '[in_i]/32'), '2/32 in'],
  [plainQuantity(2, '[in_i]/32', 0.5), '2/32 ± 0.5/32 in'],
  [plainQuantity(19, '[degF]{difference}', 2.4999), '19 ± 2.5 °F'],
  [plainQuantity(7.52, 'a', undefined, 7.61), '7.5 to 7.6 years'],
  [plainQuantity(2, '[in_i]/32', undefined, 3), '2/32 to 3/32 in'],
  [plainQuantity(12.4, 'V', 0.05), '12.4 ± 0.05 V'],
  [plainQuantity(2519.37, '[lb_av]', 212.8), '2,519 ± 210 lb'],
  [plainQuantity(5, '[gal_us]', undefined, 6), '5 to 6 gal'],
  [plainQuantity(6, '1'), '6'],
  [plainQuantity(19, '%'), '19 %'],
])('%s', (said, text) => expect(said).toBe(text));
test('a length as feet and inches', () =>
  expect([feetAndInches(12.42), feetAndInches(38)]).toEqual(['12 ft 5 in', '38 ft']));
test('a date code as week and year', () =>
  expect([plainWeek('1113'), plainWeek('B3TT 1113'), plainWeek('119'), plainWeek('6013')]).toEqual([
    'week 11 of 2013',
    'week 11 of 2013',
    undefined,
    undefined,
  ]));
test('values by kind of answer', () => {
  expect(plainValue({ is: 'state', state: 'no' }, { id: 'operates', kind: 'yes-no' })).toBe('does not work');
  expect(plainValue({ is: 'count', count: 3, of: 4 })).toBe('3 of 4');
  expect(plainValue({ is: 'quantity', value: 2006, unit: '1' }, { id: 'year', kind: 'year' })).toBe('2006');
  expect(plainValue({ is: 'unknown', why: 'door stuck' })).toBe('unknown: door stuck');
});
