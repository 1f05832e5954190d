// Why: a figure that cannot be worked out says what is missing, so that somebody can go and get it.

import { placeName } from '../../catalogue/place.ts';
import type { Figure, Lack } from '../../figured/figure.ts';
import { unitFact } from '../../units/unit.ts';

const list = (words: readonly string[]): string =>
  words.length < 2 ? (words[0] ?? '') : `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`;

/** "Missing: wheelbase (in) and front axle weight (lb)." Empty for a figure that was worked out. */
export function sayGap(figure: Pick<Figure, 'result' | 'place'>): string {
  if (figure.result.is !== 'gap') return '';
  const { missing, refused } = figure.result;
  const needs = missing.map((n) => {
    const symbol = n.unit === undefined ? '' : unitFact(n.unit).symbol;
    const lack = lacks[figure.result.is === 'gap' ? (figure.result.why?.[n.name] ?? 'not said') : 'not said'];
    const notes = [symbol, lack].filter((w) => w !== '');
    return notes.length === 0 ? n.what : `${n.what} (${notes.join('; ')})`;
  });
  const where = figure.place === undefined ? '' : ` at the ${placeName(figure.place)}`;
  const want = needs.length === 0 ? '' : `Missing${where}: ${list(needs)}.`;
  const why =
    refused === undefined
      ? ''
      : `Cannot be worked out${want === '' ? where : ''}: ${sayRefused(refused.refused, refused.detail)}.`;
  return [want, why].filter((s) => s !== '').join(' ') || 'Cannot be worked out from what is on record.';
}

/** Why an input that was spoken of could not be used. */
const lacks: Readonly<Record<Lack, string>> = {
  'not said': '',
  unknown: 'asked for and not known',
  conflict: 'sources disagree',
  hearsay: 'only told, not measured',
  'wrong unit': 'given in a unit of another kind',
  'not a number': 'given as words, not as a number',
  'several places': 'given for several places, none of them all',
};

/** Refusals of calculators that need more than their own words; the others are plain words already and are shown as they are. */
const refusals: Readonly<Record<string, string>> = {
  'no day': 'the day is not known',
  'nothing to work with': 'none of the readings it could start from is on record',
  'too close to call': 'the doubt of the readings is wider than the answer',
  'voltage too flat': 'at that voltage this kind of battery does not show how full it is',
  'not rested': 'the battery had not rested',
  'no such week': 'the week in the code does not exist',
  'made in the future': 'the code says that it was made after today',
  'vin length': 'the number does not have 17 characters',
  'old cargo label': 'the cargo label is of the older kind',
  'not weighed': 'it has not been weighed',
  'neither ticket nor label': 'neither a scale ticket nor a cargo label is on record',
};

/** A refusal in words. A code that is not in the list is shown with its hyphens taken out, so that none is hidden. */
export function sayRefused(code: string, detail?: string): string {
  const words = refusals[code] ?? code.replaceAll(/[-_]/g, ' ');
  return detail === undefined || detail === '' ? words : `${words} (${detail.replace(/\.$/, '')})`;
}
