// Why: the log is the truth; this is the one way from the log to what is known, whole or one entry at a time.
import type { Entry, EntryOf, Observation } from '../said/entry.ts';
import { coverageOf } from './coverage-of.ts';
import {
  byTime,
  emptyState,
  type FoldState,
  type Key,
  list,
  listed,
  outBy,
  type Timed,
} from './fold-state.ts';
import type { Known, UnitRecord } from './record.ts';
import { settle } from './settle.ts';
import { unitFactsOf } from './unit-facts-of.ts';

/**
 * What is known of a unit, from its log. The order of the entries and entries handed in twice make no difference.
 * Throws RangeError when the log speaks of more than one unit: that is the caller's mistake.
 */
export function fold(log: Iterable<Entry>): UnitRecord {
  const state = beginFold();
  for (const entry of log) take(state, entry);
  return recordOf(state);
}

/** Begins a fold that takes entries as they come. */
export const beginFold = (): FoldState => emptyState();

/** Takes one entry into the state (which it changes). An id taken before is passed over. */
export function take(state: FoldState, entry: Entry): void {
  if (state.ids.has(entry.id)) return;
  if (state.unit !== undefined && state.unit !== entry.unit)
    throw new RangeError(`fold: entry ${entry.id} is of another unit`);
  state.unit = entry.unit;
  state.ids.add(entry.id);
  state.changed.add(entry.kind);
  const at = Date.parse(entry.at);
  if (entry.kind === 'ruling') {
    const before = state.rulings.get(entry.on);
    const now = { at, entry };
    if (before === undefined || byTime(before, now) < 0) state.rulings.set(entry.on, now);
    const on = state.observed.get(entry.on);
    if (on) touch(state, on.entry);
    return;
  }
  list(state, entry.kind, { at, entry } as Timed<never>);
  if (entry.kind === 'observation') observe(state, { at, entry });
  if (entry.kind === 'walk') begin(state, { at, entry });
}

function observe(state: FoldState, seen: Timed<Observation>): void {
  const o = seen.entry;
  state.observed.set(o.id, seen);
  for (const id of o.replaces ?? []) {
    if (id === o.id) continue;
    const others = state.replacers.get(id);
    if (others) others.push(seen);
    else state.replacers.set(id, [seen]);
  }
  if (o.sense !== 'claim') {
    const key = keyOf(state, o);
    key.observed.push(seen);
    if (o.walk !== undefined) {
      const keys = state.keysOfWalk.get(o.walk);
      if (keys) keys.add(key);
      else state.keysOfWalk.set(o.walk, new Set([key]));
    }
  }
  touch(state, o);
}

const nameOf = (o: Observation): string => `${o.part}\u0000${o.aspect}\u0000${o.place ?? ''}`;

function keyOf(state: FoldState, o: Observation): Key {
  const name = nameOf(o);
  const found = state.keys.get(name);
  if (found) return found;
  const key: Key = { name, part: o.part, place: o.place, aspect: o.aspect, observed: [], known: undefined };
  state.keys.set(name, key);
  state.order = undefined;
  return key;
}

/** An observation, or a ruling on it, may change its own key and the keys of what it replaces. */
function touch(state: FoldState, o: Observation): void {
  const own = state.keys.get(nameOf(o));
  if (own) state.dirty.add(own);
  for (const id of o.replaces ?? []) {
    const target = state.observed.get(id);
    const key = target && state.keys.get(nameOf(target.entry));
    if (key) state.dirty.add(key);
  }
}

function begin(state: FoldState, walk: Timed<EntryOf<'walk'>>): void {
  const before = state.walks.get(walk.entry.walk);
  if (before !== undefined && byTime(before, walk) > 0) return;
  state.walks.set(walk.entry.walk, walk);
  for (const key of state.keysOfWalk.get(walk.entry.walk) ?? []) state.dirty.add(key);
}

/** The record of what the state has taken. Works out again only what entries since the last record have touched. */
export function recordOf(state: FoldState): UnitRecord {
  if (state.last !== undefined && state.changed.size === 0) return state.last;
  const last = state.last;
  const has = (kind: Entry['kind']): boolean => last === undefined || state.changed.has(kind);
  const resettled = state.dirty.size > 0;
  for (const key of state.dirty) key.known = settle(key, state);
  state.dirty.clear();
  state.order ??= [...state.keys.values()].sort((a, b) => (a.name < b.name ? -1 : 1));
  const known =
    last !== undefined && !resettled
      ? last.known
      : state.order.map((k) => k.known).filter((k): k is Known => k !== undefined);
  const observations = has('observation') || has('ruling') ? standingOf(state) : last!;
  const unit =
    has('unit') || last?.unit.id !== state.unit
      ? unitFactsOf(state.unit ?? '', entries(state, 'unit'))
      : last!.unit;
  const shop = entries(state, 'shop').at(-1);
  state.changed.clear();
  state.last = {
    unit,
    known,
    claims: observations.claims,
    standing: observations.standing,
    out: observations.out,
    coverage:
      last !== undefined && last.known === known && last.unit === unit
        ? last.coverage
        : coverageOf(unit, known),
    walks: entries(state, 'walk'),
    media: entries(state, 'media'),
    transcripts: entries(state, 'transcript'),
    puzzles: entries(state, 'puzzle'),
    comparables: entries(state, 'comparables').flatMap((e) => e.rows),
    ...(shop === undefined ? {} : { shop }),
    publications: entries(state, 'publication'),
  };
  return state.last;
}

const entries = <K extends Exclude<Entry['kind'], 'ruling'>>(
  state: FoldState,
  kind: K,
): readonly EntryOf<K>[] => listed(state, kind).map((t) => t.entry);

function standingOf(state: FoldState): Pick<UnitRecord, 'standing' | 'out' | 'claims'> {
  const standing = new Map<string, Observation>();
  const out = new Map<string, string>();
  const claims: Observation[] = [];
  for (const { entry } of listed(state, 'observation')) {
    const by = outBy(state, entry.id);
    if (by !== undefined) out.set(entry.id, by);
    else {
      standing.set(entry.id, entry);
      if (entry.sense === 'claim') claims.push(entry);
    }
  }
  return { standing, out, claims };
}
