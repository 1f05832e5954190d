// Why: a chapter that jumps at every stray remark is worse than none.
import { expect, test } from 'vitest';
import { stationRuns } from './station-runs.ts';

const at = (...stations: readonly string[]) =>
  stations.map((station, i) => ({ station, at: i * 10, weight: 1 }));

test('a stray remark does not move the walk', () => {
  expect(
    stationRuns(at('wheels', 'wheels', 'roof', 'wheels', 'wheels', 'roof', 'roof', 'roof', 'roof')),
  ).toEqual([
    { station: 'wheels', first: 0, last: 40 },
    { station: 'roof', first: 50, last: 80 },
  ]);
});
test('a return to a station is a stay of its own', () => {
  expect(
    stationRuns(at('a', 'a', 'a', 'a', 'b', 'b', 'b', 'b', 'b', 'b', 'a', 'a', 'a', 'a')).map(
      (r) => r.station,
    ),
  ).toEqual(['a', 'b', 'a']);
});
test('nothing heard, no chapters', () => expect(stationRuns([])).toEqual([]));
