// Why: the shape of one part of a coach: what it is called, where it may be, and what can be said of it.
import type { Unit } from '../units/unit.ts';
import type { VehicleKind } from './vehicle-kind.ts';

/** What kind of answer an aspect takes. */
export type AspectKind =
  | 'quantity'
  | 'count'
  | 'yes-no'
  | 'condition'
  | 'words'
  | 'choice'
  | 'date'
  | 'date-code'
  | 'year'
  | 'vin'
  | 'money';

/** One thing that can be said of a part. */
export interface Aspect {
  readonly id: string;
  /** What a person calls it. */
  readonly name: string;
  readonly kind: AspectKind;
  /** UCUM; always there for a quantity. */
  readonly unit?: Unit;
  /** The words of a choice. */
  readonly of?: readonly string[];
  /** Words that name this aspect in speech, beside its name. */
  readonly say?: readonly string[];
  /** The range in which a spoken value of this aspect is believable, in `unit`. */
  readonly within?: readonly [low: number, high: number];
  /** For yes-no: which answer is good news; without it neither is. */
  readonly good?: 'yes' | 'no';
}

/** A component of the unit. Places are plain kebab words of catalogue/place.ts. */
export interface Part {
  readonly id: string;
  readonly name: string;
  readonly station: string;
  /** Words people say, lower case, without the name itself. */
  readonly say: readonly string[];
  /** What a speech recogniser makes of them. */
  readonly heardAs: readonly string[];
  readonly aspects: readonly Aspect[];
  readonly kinds: readonly VehicleKind[];
  readonly places: readonly string[];
  /** Pictures that a buyer expects. */
  readonly photos: readonly string[];
}

/** A place where the walk stops. */
export interface Station {
  readonly id: string;
  readonly name: string;
  readonly where: string;
  readonly minutes: number;
  readonly photos: readonly string[];
  /** Words that say the walk has come here. */
  readonly say: readonly string[];
}
