// Why: people say the kind of a battery in several ways; figures need one of four.
import type { Chemistry } from '../../standards/trade-practice/house-power.ts';

/** The kind of battery in a word or phrase; undefined when it does not say. */
export function chemistryOf(words: string): Chemistry | undefined {
  const said = words.toLowerCase();
  if (/lithium|lifepo|\blfp\b/.test(said)) return 'lithium iron phosphate';
  if (/\bagm\b|absorbed|glass mat/.test(said)) return 'AGM';
  if (/\bgel\b/.test(said)) return 'gel';
  if (/flooded|wet cell|lead[ -]acid/.test(said)) return 'flooded';
  return undefined;
}
