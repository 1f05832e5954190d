// Why: a figure that cannot be worked out says what is missing, so that somebody can go and get it.

import { placeName } from '../../catalogue/place.ts';
import type { Figure } from '../../figured/figure.ts';
import { unitFact } from '../../units/unit.ts';

const list = (words: readonly string[]): string =>
  words.length < 2 ? (words[0] ?? '') : `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`;

/** "Missing: wheelbase (in) and front axle weight (lb)." Empty for a figure that was worked out. */
export function sayGap(figure: Pick<Figure, 'result' | 'place'>): string {
  if (figure.result.is !== 'gap') return '';
  const { missing, refused } = figure.result;
  const needs = missing.map((n) => {
    const symbol = n.unit === undefined ? '' : unitFact(n.unit).symbol;
    return symbol === '' ? n.what : `${n.what} (${symbol})`;
  });
  const where = figure.place === undefined ? '' : ` at the ${placeName(figure.place)}`;
  const want = needs.length === 0 ? '' : `Missing${where}: ${list(needs)}.`;
  const why =
    refused === undefined
      ? ''
      : `Cannot be worked out${want === '' ? where : ''}: ${sayRefused(refused.refused, refused.detail)}.`;
  return [want, why].filter((s) => s !== '').join(' ') || 'Cannot be worked out from what is on record.';
}

/** Codes of refusals that calculators give; the others are shown as words, so that none is hidden. */
const refusals: Readonly<Record<string, string>> = {
  'not-in-table': 'the published table has no row for it',
  'out-of-range': 'a reading lies outside what the formula holds for',
  'bad-date-code': 'the date code cannot be read',
  'before-2000': 'the code is of the kind used before 2000, which does not name its decade',
  'not-positive': 'a reading that must be above nought is not',
};
export function sayRefused(code: string, detail?: string): string {
  const words = refusals[code] ?? code.replaceAll(/[-_]/g, ' ');
  return detail === undefined || detail === '' ? words : `${words} (${detail.replace(/\.$/, '')})`;
}
