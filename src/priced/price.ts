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
  /** Why it was left out, when it was. */
  readonly leftOut?: string;
}

/** What the comparables say. */
export type PriceView =
  | { readonly is: 'priced'; readonly low: Cents; readonly middle: Cents; readonly high: Cents; readonly used: readonly AdjustedComparable[]; readonly leftOut: readonly AdjustedComparable[]; readonly cautions: readonly string[] }
  | { readonly is: 'gap'; readonly missing: readonly string[]; readonly leftOut: readonly AdjustedComparable[] };
