// Why: a chapter that jumps at every stray remark is worse than none.
import { expect, test } from 'vitest';
import { stationRuns } from './station-runs.ts';

const at = (text: string) => text.split(' ').map((station, i) => ({ station, at: i * 10, weight: 1 }));

test('a stray remark does not move the walk', () => {
  expect(
    stationRuns(at('wheels wheels wheels wheels wheels roof wheels wheels roof roof roof roof roof roof')),
  ).toEqual([
    { station: 'wheels', first: 0, last: 70 },
    { station: 'roof', first: 80, last: 130 },
  ]);
});
test('a return to a station is a stay of its own', () => {
  expect(stationRuns(at('a a a a a b b b b b b b b b a a a a a')).map((r) => r.station)).toEqual([
    'a',
    'b',
    'a',
  ]);
});
test('going on to the next station of the round is believed sooner than a jump', () => {
  const moves = (to: string) =>
    stationRuns(at(`roof roof roof roof roof ${to} ${to} ${to} ${to}`.trim())).length;
  expect([moves('cab'), moves('living')]).toEqual([2, 1]);
});
test('nothing heard, no chapters', () => expect(stationRuns([])).toEqual([]));
