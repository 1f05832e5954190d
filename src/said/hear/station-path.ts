// Why: where the walk is, as the likeliest path over the stations, so that a recording has chapters with names.
import { partOf, stations } from '../../catalogue/index.ts';
import type { Clause, Draft } from './clause.ts';
import { stationPhrases } from './lexicon.ts';
import type { Marks } from './marks.ts';

/** What it costs to change stations between two clauses; going on to the next one in travel order costs a little less. */
const change = 2.4;
const onward = 1.9;

/** The station of each clause: a Viterbi decode over what is named in it, with staying as the prior; what was made of the talk counts too, once there is something. */
export function stationPath(
  marks: Marks,
  clauses: readonly Clause[],
  drafts: readonly Draft[] = [],
): string[] {
  const ids = stations.map((s) => s.id);
  const count = ids.length;
  const indexOf = new Map(clauses.map((c) => [c.id, c.index]));
  const evidence = clauses.map((c) => {
    const e = new Float64Array(count);
    for (const m of c.mentions) {
      const station = partOf(m.parts[0] ?? '')?.station;
      const k = station === undefined ? -1 : ids.indexOf(station);
      if (k >= 0) e[k] = (e[k] ?? 0) + (m.weak || m.aside ? 0.3 : 1);
    }
    for (let i = c.from; i < c.to; i++) {
      const hit = stationPhrases.at(marks.words, i);
      for (const s of hit?.values ?? [])
        e[ids.indexOf(s)] = (e[ids.indexOf(s)] ?? 0) + (i - c.from <= 4 ? 1.4 : 0.7);
    }
    return e;
  });
  for (const d of drafts) {
    const k = ids.indexOf(partOf(d.part)?.station ?? '');
    const e = evidence[indexOf.get(marks.clauseOf[d.at] ?? 0) ?? -1];
    if (e && k >= 0) e[k] = (e[k] ?? 0) + 0.5;
  }
  let score = new Float64Array(count);
  const from: Int8Array[] = [];
  for (const e of evidence) {
    const next = new Float64Array(count);
    const came = new Int8Array(count);
    let best = 0;
    for (let k = 1; k < count; k++) if ((score[k] ?? 0) > (score[best] ?? 0)) best = k;
    for (let k = 0; k < count; k++) {
      const stay = score[k] ?? 0;
      const moved = (score[best] ?? 0) - change;
      const step = k > 0 ? (score[k - 1] ?? 0) - onward : Number.NEGATIVE_INFINITY;
      const top = Math.max(stay, moved, step);
      came[k] = top === stay ? k : top === step ? k - 1 : best;
      next[k] = top + (e[k] ?? 0);
    }
    from.push(came);
    score = next;
  }
  let at = 0;
  for (let k = 1; k < count; k++) if ((score[k] ?? 0) > (score[at] ?? 0)) at = k;
  const path: string[] = new Array(clauses.length);
  for (let c = clauses.length - 1; c >= 0; c--) {
    path[c] = ids[at] ?? '';
    at = from[c]?.[at] ?? at;
  }
  return path;
}
