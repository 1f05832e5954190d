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
  type Seen,
  type Timed,
} from './fold-state.ts';
import { withKindSaid } from './kind-said.ts';
import type { Known, UnitRecord } from './record.ts';
import { settle } from './settle.ts';
import { standingOf } from './standing-of.ts';
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
    if (before === undefined || byTime(before, { at, entry }) < 0) state.rulings.set(entry.on, { at, entry });
    touch(state, entry.on);
    return;
  }
  const timed = { at, entry };
  list(state, entry.kind, timed as Timed<never>);
  if (entry.kind === 'observation') observe(state, at, entry);
  if (entry.kind === 'walk') begin(state, timed as Timed<EntryOf<'walk'>>);
}

function observe(state: FoldState, at: number, o: Observation): void {
  const key = o.sense === 'claim' ? undefined : keyOf(state, o);
  const seen: Seen = { at, entry: o, key };
  state.observed.set(o.id, seen);
  for (const id of o.replaces ?? []) {
    if (id === o.id) continue;
    const others = state.replacers.get(id);
    if (others) others.push(seen);
    else state.replacers.set(id, [seen]);
  }
  if (key !== undefined) {
    key.observed.push(seen);
    if (o.walk !== undefined) {
      const keys = state.keysOfWalk.get(o.walk);
      if (keys) keys.add(key);
      else state.keysOfWalk.set(o.walk, new Set([key]));
    }
  }
  touch(state, o.id);
}

function keyOf(state: FoldState, o: Observation): Key {
  const name = `${o.part}\u0000${o.aspect}\u0000${o.place ?? ''}`;
  const found = state.keys.get(name);
  if (found) return found;
  const key: Key = { name, part: o.part, place: o.place, aspect: o.aspect, observed: [], known: undefined };
  state.keys.set(name, key);
  state.order = undefined;
  return key;
}

/** A new observation, or a ruling on one, may change it, what it replaces, and the keys of both. */
function touch(state: FoldState, id: string): void {
  const own = state.observed.get(id);
  if (own === undefined) return;
  for (const each of [id, ...(own.entry.replaces ?? [])]) {
    if (state.last !== undefined) state.touched.add(each);
    const key = state.observed.get(each)?.key;
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
  const standing = standingOf(state);
  const resettled = state.dirty.size > 0;
  for (const key of state.dirty) key.known = settle(key, state);
  state.dirty.clear();
  state.order ??= [...state.keys.values()].sort((a, b) => (a.name < b.name ? -1 : 1));
  const known =
    last !== undefined && !resettled
      ? last.known
      : state.order.map((k) => k.known).filter((k): k is Known => k !== undefined);
  const before = state.paper;
  if (before === undefined || has('unit') || before.id !== state.unit)
    state.paper = unitFactsOf(state.unit ?? '', entries(state, 'unit'));
  const paper = state.paper!;
  const unit =
    last !== undefined && paper === before && last.known === known ? last.unit : withKindSaid(paper, known);
  const shop = entries(state, 'shop').at(-1);
  state.changed.clear();
  state.last = {
    unit,
    known,
    ...standing,
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
