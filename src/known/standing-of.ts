// Why: what still counts of all that was ever observed; worked out again only for what was touched, as logs grow long.
import type { Observation } from '../said/entry.ts';
import { byTime, type FoldState, listed, outBy } from './fold-state.ts';
import type { UnitRecord } from './record.ts';

type Standing = Pick<UnitRecord, 'standing' | 'out' | 'claims'>;

/** What stands, what is out and by which entry, and the claims that stand; all in order of time. Clears what was touched. */
export function standingOf(state: FoldState): Standing {
  const { last } = state;
  if (last !== undefined && state.touched.size === 0)
    return { standing: last.standing, out: last.out, claims: last.claims };
  let isAppended = last !== undefined && !state.unsorted.has('observation');
  let isOutChanged = last === undefined;
  const added: Observation[] = [];
  const removed: string[] = [];
  const suspects = last === undefined ? [...state.rulings.keys(), ...state.replacers.keys()] : state.touched;
  for (const id of suspects) {
    const seen = state.observed.get(id);
    if (seen === undefined) continue;
    const by = outBy(state, id);
    const before = state.out.get(id);
    if (by !== before) isOutChanged = true;
    if (by !== undefined) {
      state.out.set(id, by);
      removed.push(id);
    } else {
      if (before !== undefined) isAppended = false;
      state.out.delete(id);
      if (last?.standing.has(id) !== true) added.push(seen.entry);
    }
  }
  state.touched.clear();
  const observed = listed(state, 'observation');
  const standing = isAppended && last !== undefined ? new Map(last.standing) : new Map<string, Observation>();
  if (isAppended) {
    for (const id of removed) standing.delete(id);
    for (const o of added.toSorted((a, b) => byTime(state.observed.get(a.id)!, state.observed.get(b.id)!)))
      standing.set(o.id, o);
  } else for (const { entry } of observed) if (!state.out.has(entry.id)) standing.set(entry.id, entry);
  return {
    standing,
    out: isOutChanged || last === undefined ? inOrder(state) : last.out,
    claims: observed.flatMap(({ entry }) =>
      entry.sense === 'claim' && standing.has(entry.id) ? [entry] : [],
    ),
  };
}

const inOrder = (state: FoldState): ReadonlyMap<string, string> =>
  new Map([...state.out].sort(([a], [b]) => byTime(state.observed.get(a)!, state.observed.get(b)!)));
