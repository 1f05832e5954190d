// Why: a finding is a rule's answer on a unit: verdict, reason, limit, how near, evidence, what to do.
import type { Fact } from '../known/facts.ts';
import type { Citation, Standing } from '../standards/standard.ts';
import type { Unit } from '../units/unit.ts';
import type { Must, Outcome, Verdict, Weight } from './rule.ts';

/** The limit that decided, as it stood on the day. */
export interface AppliedLimit {
  readonly must: Must;
  readonly value: number;
  readonly unit: Unit;
  readonly plusOrMinus?: number;
  readonly standing: Standing;
  /** Title of the source, or "this unit's own plate". */
  readonly source: string;
  readonly clause: string;
  readonly cites: readonly Citation[];
}

/** One thing judged. */
export interface Finding {
  /** Stable within a unit: rule, part and place. */
  readonly id: string;
  readonly rule: string;
  readonly part: string;
  readonly place?: string;
  readonly aspect: string;
  readonly verdict: Verdict;
  readonly outcome: Outcome;
  readonly weight: Weight;
  readonly asks: string;
  /** The rule's own words for this outcome. */
  readonly reason: string;
  /** The number limits considered, worst first; the one that decided is `limit`. */
  readonly limits: readonly AppliedLimit[];
  readonly limit?: AppliedLimit;
  /** For word rules: what was acceptable and who says so. */
  readonly cites: readonly Citation[];
  readonly fact?: Fact;
  /** Distance to the deciding limit in its unit, positive on the good side. */
  readonly margin?: number;
  readonly next: string;
  readonly who: string;
  readonly caution?: string;
  readonly look: string;
  readonly minutes: number;
}
