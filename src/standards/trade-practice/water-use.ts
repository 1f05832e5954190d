// Why: what people use in a day, for how long tanks last.
import type { Supposed } from '../supposed.ts';
import { practice } from './practice.ts';

const perPerson = (id: string, what: string, value: number, plusOrMinus: number, says: string): Supposed => ({
  id,
  what,
  value,
  unit: '[gal_us]',
  plusOrMinus,
  citations: [practice(says)],
});
export const freshUse = perPerson(
  'fresh-use',
  'fresh water a person a day',
  8,
  2,
  'Short showers and dishes: about 8 gallons.',
);
export const grayUse = perPerson(
  'gray-use',
  'gray water a person a day',
  7,
  2,
  'What went into the sinks and the shower: about 7 gallons.',
);
export const blackUse = perPerson('black-use', 'black water a person a day', 2.2, 0.5, '2 to 3 gallons.');
