// Why: how sure an observation is, and what calls for a second look, in words.
import type { Observation } from '../../../said/entry.ts';

/** A probability as a person would say it. */
export function howSure(sure: number): string {
  if (sure >= 0.9) return 'sure';
  if (sure >= 0.75) return 'fairly sure';
  if (sure >= 0.6) return 'not very sure';
  return 'a guess';
}

/** What should make a reader stop at an observation, most serious first. Empty when nothing does. */
export function callsOn(o: Observation, inConflict: boolean): readonly string[] {
  return [
    inConflict && 'contradicted',
    o.sense === 'claim' && 'praise without a reading',
    o.sure < 0.6 && 'a guess',
    o.hedged && 'said with a doubt',
    o.saidBy && `hearsay: ${o.saidBy}`,
    o.value.is === 'unknown' && 'not seen',
  ].filter((w): w is string => typeof w === 'string');
}
