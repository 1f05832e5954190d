// Why: much of the trade is habit that nobody has published; a number of that kind says so in every citation.
import { day } from '../../units/day.ts';
import type { Unit } from '../../units/unit.ts';
import { limitOf } from '../limit-of.ts';
import type { Citation, Limit, Source } from '../standard.ts';

export const tradePractice: Source = {
  id: 'trade-practice',
  title: 'Trade practice, no source',
  publisher: 'nobody: habit of the used-coach trade',
  edition: '2026',
  standing: 'trade practice',
  scope:
    'Not published anywhere that we know of. A default to be changed by whoever knows better; binds nobody.',
};

/** A citation of trade practice. */
export const practice = (says: string): Citation => ({
  source: tradePractice,
  clause: 'no source',
  says,
  read: 'common practice',
});

/** A limit of trade practice. */
export const practiceLimit = (id: string, what: string, unit: Unit, value: number, says: string): Limit =>
  limitOf(id, what, unit, day('2026-11-24'), value, practice(says));
