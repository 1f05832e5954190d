// Why: a spoken number without a plus-or-minus gets one, the same everywhere, and it is stated here once.
import { day } from '../../units/day.ts';
import { limitOf } from '../limit-of.ts';
import type { Citation } from '../standard.ts';
import { houseDefaults } from './reading-doubt.ts';

const says = (text: string): Citation => ({
  source: houseDefaults,
  clause: 'no source',
  says: text,
  read: 'common practice',
});
const since = day('2026-11-24');

/** Percent of a number whose observation is itself doubtful. */
export const unsureDoubt = limitOf(
  'unsure-doubt',
  'plus-or-minus of a number that may have been misheard',
  '%',
  since,
  10,
  says('ten percent of what was heard'),
);
/** A count said with "about". */
export const hedgedCount = limitOf(
  'hedged-count',
  'plus-or-minus of a count said with "about"',
  '1',
  since,
  1,
  says('one more or one less'),
);
/** A percentage of a temperature means nothing, so temperatures have a width of their own. */
export const spokenTemperature = limitOf(
  'spoken-temperature',
  'plus-or-minus of a temperature spoken without one',
  'K{difference}',
  since,
  1,
  says('about two degrees Fahrenheit'),
);
