// Why: from everything said of one thing to what is known of it: who counts, who agrees, who is best, what to doubt.

import { aspectOf } from '../catalogue/index.ts';
import type { Aspect } from '../catalogue/part.ts';
import type { Observation } from '../said/entry.ts';
import { agree } from './agree.ts';
import { digitDoubt } from './digit-doubt.ts';
import { doubtsOf } from './doubts-of.ts';
import { byTime, type FoldState, type Key, type Seen } from './fold-state.ts';
import type { Known, Side } from './record.ts';

const oneDay = 86_400_000;

/** What is known under a key now; undefined when nothing said of it stands. */
export function settle(key: Key, state: FoldState): Known | undefined {
  const standing = key.observed.filter((o) => !state.out.has(o.entry.id));
  if (standing.length === 0) return undefined;
  const isAccepted = (o: Observation): boolean => state.rulings.get(o.id)?.entry.ruling === 'accept';
  const aspect = aspectOf(key.part, key.aspect);
  const { now, earlier } = byWalk(standing, state);
  const ranked = now.map((seen) => ({ seen, rank: rankOf(seen.entry, isAccepted(seen.entry), aspect) }));
  const evidence = ranked
    .sort((a, b) => a.rank - b.rank || vaguer(a.seen.entry, b.seen.entry) || byTime(b.seen, a.seen))
    .map((r) => r.seen.entry);
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
function byWalk(standing: readonly Seen[], state: FoldState): Record<'now' | 'earlier', Seen[]> {
  let newest: { readonly walk: string; readonly began: number } | undefined;
  for (const walk of new Set(standing.map((o) => o.entry.walk))) {
    if (walk === undefined) continue;
    const began = beganOf(walk, state);
    if (newest === undefined || began > newest.began || (began === newest.began && walk > newest.walk))
      newest = { walk, began };
  }
  const now: Seen[] = [];
  const earlier: Seen[] = [];
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

/** Less is better: told before unknown, in the aspect's own kind, accepted, read or typed before spoken before paper, plain, first hand. */
function rankOf(o: Observation, isAccepted: boolean, aspect: Aspect | undefined): number {
  const own = aspect?.kind === 'quantity' || aspect?.kind === 'count' ? aspect.kind : undefined;
  const worse = [
    o.value.is === 'unknown',
    own !== undefined && o.value.is !== own,
    !isAccepted,
    o.source.from === 'document',
    o.source.from === 'speech',
    o.hedged,
    o.saidBy !== undefined,
  ];
  return worse.reduce((rank, is) => rank * 2 + Number(is), 0);
}

/** Of two numbers that agree the one said more exactly is better: 41,212 before 41,200, whichever was said last. */
function vaguer(a: Observation, b: Observation): number {
  if (a.value.is !== 'quantity' || b.value.is !== 'quantity' || a.value.unit !== b.value.unit) return 0;
  if (a.value.plusOrMinus !== undefined || b.value.plusOrMinus !== undefined) return 0;
  const [va, vb] = [a.value.value, b.value.value];
  const [da, db] = [digitDoubt(va), digitDoubt(vb)];
  return Math.abs(va - vb) <= da + db ? da - db : 0;
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
