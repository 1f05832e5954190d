// Why: what is known of a unit now, each value with its evidence. Derived from the log, never stored.
import type { VehicleKind } from '../catalogue/vehicle-kind.ts';
import type { Comparable, EntryOf, Observation, Value } from '../said/entry.ts';
import type { Cents } from '../units/money.ts';

/** Why a value should not be taken plainly. */
export type Doubt =
  /** Said with "about", "maybe", "I think". */
  | 'hedged'
  /** Somebody else is said to have said so. */
  | 'hearsay'
  /** Proposed from speech; nobody has accepted it yet. */
  | 'not reviewed'
  /** Only a paper or a brochure says so. */
  | 'on paper only'
  /** The observation itself is not very sure (below 0.5). */
  | 'unsure';

/** Observations that agree with one another on one value. */
export interface Side {
  readonly value: Value;
  readonly evidence: readonly Observation[];
}

/** One aspect of one part at one place, as the log has it now. */
export interface Known {
  readonly part: string;
  readonly place?: string;
  readonly aspect: string;
  /** `conflict`: two sources disagree beyond their plus-or-minus; both are in `sides`. `unknown`: asked for and not to be had. */
  readonly standing: 'known' | 'conflict' | 'unknown';
  /** The best supported value; in a conflict that of the first side, never to be taken as the answer. */
  readonly value: Value;
  /** One side when all agree; best supported first. */
  readonly sides: readonly Side[];
  /** Everything that speaks of it in the newest walk that does, best first. */
  readonly evidence: readonly Observation[];
  readonly doubts: readonly Doubt[];
  /** The same aspect in earlier walks, newest first. */
  readonly earlier: readonly Observation[];
}

/** What stands on paper of the unit, after all corrections. Absent fields are not known. */
export interface UnitFacts {
  readonly id: string;
  readonly vehicle?: VehicleKind;
  /** `said`: no paper gives the kind; it was said on the walk. */
  readonly kindFrom?: 'said';
  readonly stock?: string;
  readonly name?: string;
  readonly maker?: string;
  readonly model?: string;
  readonly year?: number;
  readonly arrived?: string;
  readonly consigned?: boolean;
  readonly asking?: Cents;
  readonly equipment: Readonly<Record<string, boolean>>;
  readonly invented: boolean;
  readonly putAway: boolean;
}

/** How much of a station has been looked at. `seen` counts parts with at least one value that is known or in conflict. */
export interface StationCoverage {
  readonly station: string;
  readonly expected: readonly string[];
  readonly seen: readonly string[];
  readonly unknown: readonly string[];
  readonly notSeen: readonly string[];
}

/** All that is known of a unit. */
export interface UnitRecord {
  readonly unit: UnitFacts;
  /** By part, then aspect, then place; sorted, so that the same log gives the same record. */
  readonly known: readonly Known[];
  /** Spoken praise and other claims: for the listing's wording only, never a condition. */
  readonly claims: readonly Observation[];
  /** Everything observed and not rejected or replaced, by id. */
  readonly standing: ReadonlyMap<string, Observation>;
  /** Ids that were rejected or replaced, with the entry that did it. */
  readonly out: ReadonlyMap<string, string>;
  readonly coverage: readonly StationCoverage[];
  readonly walks: readonly EntryOf<'walk'>[];
  readonly media: readonly EntryOf<'media'>[];
  readonly transcripts: readonly EntryOf<'transcript'>[];
  readonly puzzles: readonly EntryOf<'puzzle'>[];
  readonly comparables: readonly Comparable[];
  readonly shop?: EntryOf<'shop'>;
  readonly publications: readonly EntryOf<'publication'>[];
}
