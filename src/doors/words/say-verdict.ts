// Why: a verdict is a word with a meaning that a buyer can be held to; here is that meaning, once.
import type { Verdict, Weight } from '../../judged/rule.ts';

/** The word that stands beside the glyph, and what it means. None of them says that anything is safe. */
export const verdictMeanings: Readonly<Record<Verdict, string>> = {
  stop: 'Somebody could be hurt. Not to be driven or used until it has been repaired.',
  repair: 'Does not meet a limit or does not work. To be repaired, or sold with this told.',
  watch: 'Worn or ageing, still within what was asked. Plan for it.',
  sound: 'Was looked at and met what was asked, on that day.',
  'not seen': 'Nobody looked, or what was seen settles nothing.',
};

/** "1 stop, 6 repair, 9 watch, 88 sound, 23 not seen": worst first, nought left out. */
export function sayTally(tally: Readonly<Record<Verdict, number>>): string {
  const order: readonly Verdict[] = ['stop', 'repair', 'watch', 'sound', 'not seen'];
  const words = order.filter((v) => tally[v] > 0).map((v) => `${tally[v]} ${v}`);
  return words.length === 0 ? 'nothing judged yet' : words.join(', ');
}

const weights: Readonly<Record<Weight, string>> = {
  danger: 'a person could be hurt',
  unlawful: 'a law is not met',
  defect: 'something does not work as it should',
  wear: 'something is wearing out',
};
export const sayWeight = (weight: Weight): string => weights[weight];
