// Why: every statement shows where it comes from: the second it was said, who typed it, which picture or instrument.
import type { Doubt } from '../../known/record.ts';
import type { Claim } from '../../published/document.ts';
import { plainDay } from '../../published/plain-day.ts';
import type { Observation } from '../../said/entry.ts';
import { dayOf } from '../../units/day.ts';
import { minutes } from './minutes.ts';

/** "said at 12:41", "typed by R. Ames on 24 Nov 2026", "photo taken 24 Nov 2026", "instrument, 24 Nov 2026", "paper: scale ticket". */
export function sayEvidence(o: Observation): string {
  const on = plainDay(dayOf(o.at));
  const teller = o.saidBy === undefined ? '' : `, as told by ${o.saidBy}`;
  switch (o.source.from) {
    case 'speech':
      return `said at ${minutes(o.source.start)}${teller}`;
    case 'typed':
      return `typed by ${o.by} on ${on}${teller}`;
    case 'photo':
      return `photo of ${on}${teller}`;
    case 'instrument':
      return `instrument, ${on}${teller}`;
    case 'document':
      return `paper: ${o.source.title}${teller}`;
  }
}

/** The words that were said, where words were said. */
export const quoted = (o: Observation): string | undefined =>
  o.source.from === 'speech' && o.source.words !== '' ? o.source.words : undefined;

const doubts: Readonly<Record<Doubt, string>> = {
  hedged: 'said with a maybe',
  hearsay: 'somebody else is said to have said so',
  'not reviewed': 'not confirmed yet',
  'on paper only': 'only a paper says so',
  unsure: 'not heard or read surely',
};
export const sayDoubt = (doubt: Doubt): string => doubts[doubt];

const bases: Readonly<Record<Claim['basis'], string>> = {
  measured: 'measured',
  seen: 'seen',
  label: 'label or paper',
  figured: 'worked out',
  told: 'told',
  guessed: 'a guess',
  none: 'not known',
};
export const sayBasis = (basis: Claim['basis']): string => bases[basis];
