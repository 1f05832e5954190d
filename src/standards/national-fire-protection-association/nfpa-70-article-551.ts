// Why: what a shore cord may carry, and for how long.
import { day } from '../../units/day.ts';
import type { Source } from '../standard.ts';
import type { Supposed } from '../supposed.ts';
import { practice } from '../trade-practice/practice.ts';

const source: Source = {
  id: 'nfpa-70-551',
  title: 'NFPA 70 (National Electrical Code) Article 551, recreational vehicles and parks',
  publisher: 'National Fire Protection Association',
  edition: '2008 and 2017 texts as quoted',
  standing: 'standard',
  address: 'https://thenecwiki.com/2021/02/article-551',
  scope:
    'Read in secondary pages. Adopted by law in most places, with changes; the local code has the last word.',
};
export const siteVolts: Supposed = {
  id: 'site-volts',
  what: 'voltage of one leg',
  value: 120,
  unit: 'V',
  plusOrMinus: 0,
  citations: [
    {
      source,
      clause: '551.71',
      says: 'Sites give 120 V at 20 or 30 A, or 120/240 V at 50 A, which is two legs.',
      read: day('2026-11-24'),
    },
  ],
};
export const continuousShare: Supposed = {
  id: 'continuous-share',
  what: 'share of a breaker for loads of three hours or more',
  value: 0.8,
  unit: '1',
  plusOrMinus: 0,
  citations: [
    {
      source,
      clause: 'branch circuits',
      says: 'A load that runs three hours or more takes at most 80 percent of the breaker.',
      read: 'from memory',
    },
    practice('80 percent.'),
  ],
};
/** Receptacles of a site: rating in amperes, and how many legs of 120 V it has. */
export const siteRatings: readonly { readonly amperes: number; readonly legs: number }[] = [
  { amperes: 20, legs: 1 },
  { amperes: 30, legs: 1 },
  { amperes: 50, legs: 2 },
];
