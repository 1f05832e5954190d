// Why: one remark about the roof made under the coach is not a change of station; this finds the likeliest walk.
import { stations } from '../catalogue/index.ts';

/** A remark: the station of its part or of the words that announce one, when it was made, and how much it says of where the walker stood. */
export interface Heard {
  readonly station: string;
  readonly at: number;
  readonly weight: number;
}

/** A stay at a station: the first and last remark of it, in seconds. */
export interface Run {
  readonly station: string;
  readonly first: number;
  readonly last: number;
}

/** House defaults, no source: moving is believed when it explains so much; going on to the next station of the usual round a little sooner. */
const costOfMoving = 4;
const costOfGoingOn = 3;

/**
 * The least costly path of stations through remarks sorted by time (Viterbi's algorithm): each remark that does not fit the station costs its
 * weight, each move its cost. Ties go to staying.
 */
export function stationRuns(heard: readonly Heard[]): readonly Run[] {
  const inOrder = stations.map((s) => s.id);
  const others = [...new Set(heard.map((h) => h.station))].filter((id) => !inOrder.includes(id)).sort();
  const ids = [...inOrder, ...others];
  let costs = ids.map(() => 0);
  const from: number[][] = [];
  const cheapestOf = (all: readonly number[]): number =>
    all.reduce((best, c, i) => (c < (all[best] ?? Number.POSITIVE_INFINITY) ? i : best), 0);
  for (const h of heard) {
    const cheapest = cheapestOf(costs);
    const before = costs.map((stay, i): readonly [cost: number, from: number] => {
      const moved = (costs[cheapest] ?? 0) + costOfMoving;
      const onward =
        i > 0 && i < inOrder.length ? (costs[i - 1] ?? 0) + costOfGoingOn : Number.POSITIVE_INFINITY;
      const least = Math.min(stay, moved, onward);
      return [least, least === stay ? i : least === onward ? i - 1 : cheapest];
    });
    from.push(before.map(([, i]) => i));
    costs = before.map(([cost], i) => cost + (ids[i] === h.station ? 0 : h.weight));
  }
  let at = cheapestOf(costs);
  const path: number[] = [];
  for (let k = heard.length - 1; k >= 0; k -= 1) {
    path.unshift(at);
    at = from[k]?.[at] ?? at;
  }
  const runs: { station: string; first: number; last: number }[] = [];
  heard.forEach((h, k) => {
    const station = ids[path[k] ?? 0] ?? h.station;
    const open = runs.at(-1);
    if (open?.station === station) open.last = h.at;
    else runs.push({ station, first: h.at, last: h.at });
  });
  return runs;
}
