// Why: the codes of a price's cautions and of what was left out, each with its own words, kept in one place.

/** Code -> what it means. `{}` stands for the detail after the colon. */
export const priceWords = {
  few: 'Fewer than four comparables: take the range as a hint.',
  'asks-only':
    'None of them is known to have sold: asking prices were brought down by the usual part, not by what buyers paid.',
  'year-lean':
    'After adjustment the prices still move by {} % for each later model year: the year is priced too steeply or too flatly for this set.',
  'two-groups':
    'The adjusted prices fall into two groups with a gap between them: look whether they are the same sort of unit.',
  'new-among-used': 'Some are of this model year or later: unused stock is priced otherwise than used.',
  weak: 'Comparable {} needed adjusting by more than a quarter of its price and says little.',
  'unit-missing': 'Not known of this unit, so not adjusted for: {}.',
  'unit-unsettled': 'Sources disagree about this unit, so not adjusted for: {}.',
  'miles-not-actual': 'The odometer is said not to show the actual miles.',
  'other-kind': 'Another kind of vehicle.',
  'no-price': 'No price, asked or paid.',
  'later-day': 'Seen after the day this is worked out for.',
  'same-unit': 'The same unit as {}, counted once.',
  'gross-over-40': 'Would need adjusting by more than 40 % of its price.',
  'vehicle-kind': 'What kind of vehicle this is.',
  comparables: 'At least two units of the same kind with a price.',
} as const satisfies Record<string, string>;

export type PriceCode = keyof typeof priceWords;

const ownWords: Readonly<Record<string, string>> = {
  year: 'model year',
  lengthFt: 'length',
  miles: 'miles',
  slides: 'number of slide-outs',
  powerHp: 'engine power',
  generatorHours: 'generator hours',
};

/** A code with its detail, "code:detail", as a sentence. Throws RangeError on a code that is not in the list. */
export function sayPriceCode(code: string): string {
  const colon = code.indexOf(':');
  const name = colon < 0 ? code : code.slice(0, colon);
  const detail = colon < 0 ? '' : code.slice(colon + 1);
  if (!Object.hasOwn(priceWords, name)) throw new RangeError(`sayPriceCode: "${name}" is not a code`);
  return priceWords[name as PriceCode].replace('{}', ownWords[detail] ?? detail);
}
