// Why: from everything said of one thing to what is known of it: who counts, who agrees, who is best, what to doubt.

import { aspectOf } from '../catalogue/index.ts';
import type { Aspect } from '../catalogue/part.ts';
import type { Observation } from '../said/entry.ts';
import { agree } from './agree.ts';
import { doubtsOf } from './doubts-of.ts';
import { byTime, type FoldState, type Key, outBy, type Timed } from './fold-state.ts';
import type { Known, Side } from './record.ts';

const oneDay = 86_400_000;

/** What is known under a key now; undefined when nothing said of it stands. */
export function settle(key: Key, state: FoldState): Known | undefined {
  const standing = key.observed.filter((o) => outBy(state, o.entry.id) === undefined);
  if (standing.length === 0) return undefined;
  const isAccepted = (o: Observation): boolean => state.rulings.get(o.id)?.entry.ruling === 'accept';
  const aspect = aspectOf(key.part, key.aspect);
  const { now, earlier } = byWalk(standing, state);
  const evidence = now.sort((a, b) => compareWorth(a, b, isAccepted, aspect)).map((t) => t.entry);
  const told = evidence.filter((o) => o.value.is !== 'unknown');
  const sides = told.length > 0 ? sidesOf(told, aspect) : [{ value: evidence[0]!.value, evidence }];
  const first = sides[0]!;
  return {
    part: key.part,
    ...(key.place === undefined ? {} : { place: key.place }),
    aspect: key.aspect,
    standing: told.length === 0 ? 'unknown' : sides.length > 1 ? 'conflict' : 'known',
    value: first.value,
    sides,
    evidence,
    doubts: doubtsOf(first.evidence, isAccepted),
    earlier: earlier.sort((a, b) => byTime(b, a)).map((t) => t.entry),
  };
}

/**
 * The newest walk that speaks of it governs. What belongs to no walk (typed at the desk, read off a scanned label) stands
 * beside that walk unless it is more than a day older than the walk's beginning.
 */
function byWalk(
  standing: readonly Timed<Observation>[],
  state: FoldState,
): Record<'now' | 'earlier', Timed<Observation>[]> {
  let newest: { readonly walk: string; readonly began: number } | undefined;
  for (const walk of new Set(standing.map((o) => o.entry.walk))) {
    if (walk === undefined) continue;
    const began = beganOf(walk, state);
    if (newest === undefined || began > newest.began || (began === newest.began && walk > newest.walk))
      newest = { walk, began };
  }
  const now: Timed<Observation>[] = [];
  const earlier: Timed<Observation>[] = [];
  for (const o of standing) {
    const { walk } = o.entry;
    const counts =
      newest === undefined || (walk === undefined ? o.at >= newest.began - oneDay : walk === newest.walk);
    (counts ? now : earlier).push(o);
  }
  return { now, earlier };
}

/** When a walk began: as its entry says; without one, the instant inside its id (UUID version 7: the first 48 bits). */
function beganOf(walk: string, state: FoldState): number {
  const entry = state.walks.get(walk)?.entry;
  return entry ? Date.parse(entry.began) : Number.parseInt(walk.slice(0, 8) + walk.slice(9, 13), 16);
}

const sourceWorth = { instrument: 0, photo: 0, typed: 0, speech: 1, document: 2 } as const;

/** Best first: told before unknown, in the aspect's own kind, accepted, read or typed before spoken before paper, plain, first hand, later. */
function compareWorth(
  a: Timed<Observation>,
  b: Timed<Observation>,
  isAccepted: (o: Observation) => boolean,
  aspect: Aspect | undefined,
): number {
  const x = a.entry;
  const y = b.entry;
  const told = Number(x.value.is === 'unknown') - Number(y.value.is === 'unknown');
  const own = aspect?.kind === 'quantity' || aspect?.kind === 'count' ? aspect.kind : undefined;
  const fits = own === undefined ? 0 : Number(y.value.is === own) - Number(x.value.is === own);
  return (
    told ||
    fits ||
    Number(isAccepted(y)) - Number(isAccepted(x)) ||
    sourceWorth[x.source.from] - sourceWorth[y.source.from] ||
    Number(x.hedged) - Number(y.hedged) ||
    Number(x.saidBy !== undefined) - Number(y.saidBy !== undefined) ||
    byTime(b, a)
  );
}

/** Best first; each goes to the first side whose best value it agrees with. */
function sidesOf(told: readonly Observation[], aspect: Aspect | undefined): readonly Side[] {
  const sides: { value: Observation['value']; evidence: Observation[] }[] = [];
  for (const o of told) {
    const side = sides.find((s) => agree(s.value, o.value, aspect));
    if (side) side.evidence.push(o);
    else sides.push({ value: o.value, evidence: [o] });
  }
  return sides;
}
