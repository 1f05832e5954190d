// Why: a job is what a finding asks of the shop, in hours, parts and skill.
import type { Cents } from '../units/money.ts';

/** Somebody said on the walk that this is to be done. */
export interface Asked {
  readonly by: string;
  readonly words: string;
  /** Id of the observation. */
  readonly observation: string;
}

/** A repair that a finding asks for. Ranges are [low, high]. */
export interface Job {
  readonly id: string;
  readonly findings: readonly string[];
  readonly part: string;
  readonly places: readonly string[];
  readonly what: string;
  readonly skill: string;
  /** Absent where no published or usual hours are known: the job is to look and quote, and nothing is made up. */
  readonly hours?: readonly [low: number, high: number];
  /** Absent where `hours` is. */
  readonly parts?: readonly [low: Cents, high: Cents];
  /** Labor at the shop's own rate, parts and supplies; absent when the shop's rates are not known. */
  readonly cost?: readonly [low: Cents, high: Cents];
  /** Absent where `hours` is. */
  readonly leadDays?: readonly [low: number, high: number];
  readonly policy: 'before sale' | 'optional' | 'disclose';
  /** Ids of jobs that must be done before this one. */
  readonly after: readonly string[];
  readonly why: string;
  /** What the job is about when it is a look-up row: id of the defect in planned/table. */
  readonly defect?: string;
  /** What to bear in mind: "never mix ages". */
  readonly note?: string;
  /** Who asked for it on the walk, in whose words. Absent where nobody did. */
  readonly asked?: readonly Asked[];
  /** Where the hours and prices come from. */
  readonly basis: string;
}
