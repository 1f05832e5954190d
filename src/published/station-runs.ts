// Why: one remark about the roof made under the coach is not a change of station; this finds the likeliest walk.

/** A remark: the station of its part, when it was made, and how much it says of where the walker stood. */
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

/** House default, no source: moving to another station is believed when it explains more than two remarks. */
const costOfMoving = 2.5;

/**
 * The least costly path of stations through remarks sorted by time (Viterbi's algorithm): each remark that does not fit the station costs its
 * weight, each move costs `costOfMoving`. Ties go to staying.
 */
export function stationRuns(heard: readonly Heard[]): readonly Run[] {
  const stations = [...new Set(heard.map((h) => h.station))].sort();
  let costs = stations.map(() => 0);
  const from: number[][] = [];
  for (const h of heard) {
    const cheapest = costs.reduce((best, c, i) => (c < (costs[best] ?? Infinity) ? i : best), 0);
    const moved = (costs[cheapest] ?? 0) + costOfMoving;
    from.push(costs.map((c, i) => (c <= moved ? i : cheapest)));
    costs = costs.map((c, i) => Math.min(c, moved) + (stations[i] === h.station ? 0 : h.weight));
  }
  let at = costs.reduce((best, c, i) => (c < (costs[best] ?? Infinity) ? i : best), 0);
  const path: number[] = [];
  for (let k = heard.length - 1; k >= 0; k -= 1) {
    path.unshift(at);
    at = from[k]?.[at] ?? at;
  }
  const runs: { station: string; first: number; last: number }[] = [];
  heard.forEach((h, k) => {
    const station = stations[path[k] ?? 0] ?? h.station;
    const open = runs.at(-1);
    if (open?.station === station) open.last = h.at;
    else runs.push({ station, first: h.at, last: h.at });
  });
  return runs;
}
