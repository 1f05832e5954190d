// Why: how bad a verdict is, and which verdict a weight gives, said in one place.
import type { Verdict, Weight } from './rule.ts';

/** Worst first. What nobody looked at is worse than what was found sound, better than what was found wanting. */
export const verdictsWorstFirst: readonly Verdict[] = ['stop', 'repair', 'watch', 'not seen', 'sound'];

/** 0 for sound, up to 4 for stop. */
export const badness = (verdict: Verdict): number =>
  verdictsWorstFirst.length - 1 - verdictsWorstFirst.indexOf(verdict);

/** The worse of two verdicts. */
export const worse = (a: Verdict, b: Verdict): Verdict => (badness(a) >= badness(b) ? a : b);

/** What a step of this weight says when it surely fails. */
export function verdictOf(weight: Weight): Verdict {
  if (weight === 'danger') return 'stop';
  return weight === 'wear' ? 'watch' : 'repair';
}

/** What it says when it may fail: the benefit of the doubt goes to the person, not to the coach. */
export const doubtfulVerdictOf = (weight: Weight): Verdict =>
  weight === 'danger' || weight === 'unlawful' ? verdictOf(weight) : 'watch';
