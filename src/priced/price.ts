// Why: a price is shown with the units it was drawn from and how far apart they lie, or not at all.
import type { Comparable } from '../said/entry.ts';
import type { Cents } from '../units/money.ts';

/** One comparable brought to this unit. */
export interface AdjustedComparable {
  readonly comparable: Comparable;
  readonly base: Cents;
  readonly adjustments: readonly { readonly what: string; readonly amount: Cents }[];
  readonly adjusted: Cents;
  readonly grossPercent: number;
  readonly weight: number;
  /** Why it was left out, when it was: a code of price-words.ts, with its detail after a colon. */
  readonly leftOut?: string;
}

/**
 * The unit's own work, which the range does not take off: it is for the unit with the work before sale done. Totals of the jobs
 * that have a cost; `unpriced` counts those that have none.
 */
export interface WorkBeside {
  readonly before: readonly [low: Cents, high: Cents];
  readonly left: readonly [low: Cents, high: Cents];
  readonly unpriced: number;
}

/** What the comparables say. Cautions are codes of price-words.ts, with their detail after a colon. */
export type PriceView =
  | {
      readonly is: 'priced';
      readonly low: Cents;
      readonly middle: Cents;
      readonly high: Cents;
      readonly used: readonly AdjustedComparable[];
      readonly leftOut: readonly AdjustedComparable[];
      readonly cautions: readonly string[];
      readonly work?: WorkBeside;
    }
  | {
      readonly is: 'gap';
      readonly missing: readonly string[];
      readonly leftOut: readonly AdjustedComparable[];
    };
