// Why: how much a number is doubted that was said with "about" and no plus-or-minus of its own.

import { day } from '../../units/day.ts';
import { limitOf } from '../limit-of.ts';
import type { Source } from '../standard.ts';

export const houseDefaults: Source = {
  id: 'house-defaults',
  title: 'Defaults of this software',
  publisher: 'this software',
  edition: '2026',
  standing: 'house default',
  scope: 'Chosen by us where nobody has published anything. Change it where you know better.',
};

/** Percent of the reading. */
export const hedgedDoubt = limitOf(
  'hedged-doubt',
  'plus-or-minus of a number said with "about"',
  '%',
  day('2026-11-24'),
  5,
  {
    source: houseDefaults,
    clause: 'no source',
    says: 'five percent of what was said',
    read: 'common practice',
  },
);
