// Why: the published make-up of a VIN: values of the letters, weights of the positions, codes of the model years.
import { day } from '../../units/day.ts';
import type { Citation, Limit, Source, Table } from '../standard.ts';

const source: Source = {
  id: '49-cfr-565-15',
  title: '49 CFR 565.15 Content requirements (vehicle identification number)',
  publisher: 'US Code of Federal Regulations',
  edition: '2015 annual edition',
  standing: 'law',
  address: 'https://github.com/18F/allregs html/sections/49CFR565.15.html',
  scope:
    'Binds the makers of vehicles. On a vehicle built in stages the VIN is that of the chassis. Later amendments were not checked.',
};

const cite = (clause: string, says: string): Citation => ({ source, clause, says, read: day('2026-11-24') });

export const vinCharacters = cite('565.15', '17 characters, digits and capital letters without I, O and Q.');
export const vinCheckDigit = cite(
  '565.15(c)',
  'The sum of the value of each character times the weight of its position, divided by 11, leaves the check digit in position 9; a remainder of 10 is written X.',
);
export const vinModelYear = cite(
  '565.15(d)(1), Table VII',
  'Position 10 is a code for the model year; the codes come round again after 30 years.',
);
export const vinPositionSeven = cite(
  '565.15(d)(1), note to Table VII',
  'Position 7 tells the two rounds apart only for cars and for multipurpose vehicles and trucks up to 10,000 lb GVWR: a digit is 1980 to 2009, a letter 2010 to 2039.',
);

/** Characters of a VIN. */
export const vinLength = 17;

/** Table III: character -> value. */
export const vinValues: Table<readonly [character: string, value: number]> = {
  id: 'vin-values',
  what: 'value of each character of a VIN',
  citation: cite('565.15(c)(1), Table III', 'Letters count as digits; digits count as themselves.'),
  rows: [
    ['A', 1],
    ['B', 2],
    ['C', 3],
    ['D', 4],
    ['E', 5],
    ['F', 6],
    ['G', 7],
    ['H', 8],
    ['J', 1],
    ['K', 2],
    ['L', 3],
    ['M', 4],
    ['N', 5],
    ['P', 7],
    ['R', 9],
    ['S', 2],
    ['T', 3],
    ['U', 4],
    ['V', 5],
    ['W', 6],
    ['X', 7],
    ['Y', 8],
    ['Z', 9],
    ['0', 0],
    ['1', 1],
    ['2', 2],
    ['3', 3],
    ['4', 4],
    ['5', 5],
    ['6', 6],
    ['7', 7],
    ['8', 8],
    ['9', 9],
  ],
};

/** Table IV: weights of positions 1 to 17. */
export const vinWeights: Table<number> = {
  id: 'vin-weights',
  what: 'weight of each position of a VIN, first to last',
  citation: cite('565.15(c)(2), Table IV', 'Each position has a weight; position 9 has none.'),
  rows: [8, 7, 6, 5, 4, 3, 2, 10, 0, 9, 8, 7, 6, 5, 4, 3, 2],
};

/** Table VII and its note: codes in order from the first year of a round. */
export const vinYearCodes: Table<string> = {
  id: 'vin-year-codes',
  what: 'model year codes in order, the first standing for 1980 and again for 2010',
  citation: vinModelYear,
  rows: [...'ABCDEFGHJKLMNPRSTVWXY123456789'],
};

/** The first year of each round of codes. */
export const vinRounds: readonly [earlier: number, later: number] = [1980, 2010];

/** Up to this GVWR position 7 tells the rounds apart. */
export const vinPositionSevenUpTo: Limit = {
  id: 'vin-position-seven-up-to',
  what: 'gross vehicle weight rating up to which position 7 of the VIN settles the model year',
  unit: '[lb_av]',
  values: [{ from: day('2015-10-01'), value: 10_000, citations: [vinPositionSeven] }],
};
