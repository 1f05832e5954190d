// Why: a range finer than its own doubt would promise what nobody measured.
import { expect, test } from 'vitest';
import { sayRange } from './say-range.ts';

test.each([
  [2942, 76, 'Between 2,870 and 3,020 mi'],
  [59.3, 1.5, 'Between 58 and 61 mi'],
  [13.69, 0.019, 'Between 13.67 and 13.71 mi'],
  [1, 3, 'Between 0 and 4 mi'],
])('%d ± %d', (value, plusOrMinus, says) => {
  expect(sayRange({ is: 'quantity', value, unit: '[mi_i]', plusOrMinus })).toBe(says);
});
test('no doubt, no range', () => {
  expect(sayRange({ is: 'quantity', value: 3, unit: '[mi_i]' })).toBeUndefined();
  expect(sayRange({ is: 'text', text: 'three' })).toBeUndefined();
});
