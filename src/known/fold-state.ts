// Why: what an incremental fold carries from entry to entry, so that one more entry costs one key and not the whole log.
import type { Entry, EntryKind, EntryOf, Observation, Ruling } from '../said/entry.ts';
import type { Known, UnitFacts, UnitRecord } from './record.ts';

/** An entry with its instant, in milliseconds since 1970. */
export interface Timed<E extends Entry = Entry> {
  readonly at: number;
  readonly entry: E;
}

/** Where order has a meaning it is this: by instant, then by id, whatever order the log came in. */
export const byTime = (a: Timed, b: Timed): number =>
  a.at - b.at || (a.entry.id < b.entry.id ? -1 : a.entry.id > b.entry.id ? 1 : 0);

/** An observation with the key it speaks of; a claim speaks of none. */
export interface Seen extends Timed<Observation> {
  readonly key: Key | undefined;
}

/** Everything said of one aspect of one part at one place, standing or not. */
export interface Key {
  readonly name: string;
  readonly part: string;
  readonly place: string | undefined;
  readonly aspect: string;
  readonly observed: Seen[];
  known: Known | undefined;
}

/** Kept as they are, in order of time. */
type Listed = Exclude<EntryKind, 'ruling'>;
export type Lists = { readonly [K in Listed]: Timed<EntryOf<K>>[] };

/** The fold so far. Its own; never handed out. */
export interface FoldState {
  unit: string | undefined;
  readonly ids: Set<string>;
  readonly lists: Lists;
  /** Lists that have taken an entry out of order since they were last sorted. */
  readonly unsorted: Set<Listed>;
  readonly observed: Map<string, Seen>;
  readonly keys: Map<string, Key>;
  /** Ids whose being in or out may have changed since the last record; not kept before the first. */
  readonly touched: Set<string>;
  /** What is out, and the entry by which it is. As of the last record. */
  readonly out: Map<string, string>;
  /** Observation -> those that say they replace it. */
  readonly replacers: Map<string, Timed<Observation>[]>;
  /** The last ruling on an id. */
  readonly rulings: Map<string, Timed<Ruling>>;
  readonly walks: Map<string, Timed<EntryOf<'walk'>>>;
  readonly keysOfWalk: Map<string, Set<Key>>;
  readonly dirty: Set<Key>;
  /** Keys in the record's order; undefined when a key was added. */
  order: readonly Key[] | undefined;
  /** What has changed since `last` was made. */
  readonly changed: Set<EntryKind>;
  /** What stands on paper, before anything said is laid beside it. */
  paper: UnitFacts | undefined;
  last: UnitRecord | undefined;
}

/** A fold of nothing. */
export function emptyState(): FoldState {
  return {
    unit: undefined,
    ids: new Set(),
    lists: {
      observation: [],
      unit: [],
      walk: [],
      media: [],
      transcript: [],
      puzzle: [],
      comparables: [],
      shop: [],
      publication: [],
    },
    unsorted: new Set(),
    observed: new Map(),
    touched: new Set(),
    out: new Map(),
    keys: new Map(),
    replacers: new Map(),
    rulings: new Map(),
    walks: new Map(),
    keysOfWalk: new Map(),
    dirty: new Set(),
    order: undefined,
    changed: new Set(),
    paper: undefined,
    last: undefined,
  };
}

/** Adds to a list, remembering when that broke its order. */
export function list<K extends Listed>(state: FoldState, kind: K, timed: Timed<EntryOf<K>>): void {
  const to = state.lists[kind];
  const before = to[to.length - 1];
  if (before !== undefined && byTime(before, timed) > 0) state.unsorted.add(kind);
  to.push(timed);
}

/** A list in order of time. */
export function listed<K extends Listed>(state: FoldState, kind: K): readonly Timed<EntryOf<K>>[] {
  const of = state.lists[kind];
  if (state.unsorted.delete(kind)) of.sort(byTime);
  return of;
}

/** The entry by which an observation is out: its rejection, or the latest replacement that is not itself rejected. */
export function outBy(state: FoldState, id: string): string | undefined {
  const ruling = state.rulings.get(id)?.entry;
  if (ruling?.ruling === 'reject') return ruling.id;
  let by: Timed<Observation> | undefined;
  for (const r of state.replacers.get(id) ?? []) {
    if (state.rulings.get(r.entry.id)?.entry.ruling === 'reject') continue;
    if (by === undefined || byTime(by, r) < 0) by = r;
  }
  return by?.entry.id;
}
