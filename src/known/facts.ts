// Why: one door through which rules, figures and documents ask what is known; they cannot tell whether it was seen or figured.
import type { VehicleKind } from '../catalogue/vehicle-kind.ts';
import type { Observation, Value } from '../said/entry.ts';
import type { Day } from '../units/day.ts';
import type { Doubt, Side, UnitFacts } from './record.ts';

/** One answer. */
export interface Fact {
  readonly part: string;
  readonly place?: string;
  readonly aspect: string;
  readonly standing: 'known' | 'conflict' | 'unknown';
  readonly value: Value;
  readonly sides: readonly Side[];
  readonly doubts: readonly Doubt[];
  /** Observations behind it; of a figure, those behind all its inputs. */
  readonly evidence: readonly Observation[];
  /** The figure it came out of; absent for what was seen or said. */
  readonly figure?: string;
}

/** What may be asked. All answers are for the day `on`. */
export interface Facts {
  readonly on: Day;
  readonly unit: UnitFacts;
  readonly kind: VehicleKind | undefined;
  /** The answer for a part's aspect at a place; without a place, the one said of no particular place. */
  get(part: string, aspect: string, place?: string): Fact | undefined;
  /** Every answer for a part's aspect, whatever the place. */
  all(part: string, aspect: string): readonly Fact[];
  /** Everything known of a part. */
  of(part: string): readonly Fact[];
  /** Every fact there is, in the record's order. */
  every(): readonly Fact[];
  /** `false` when the unit is known to have none of it: option off, "no slide-outs", or not a part of this kind of vehicle. */
  mayHave(part: string): boolean;
}
