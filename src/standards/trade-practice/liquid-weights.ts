// Why: what a gallon of fuel weighs, with the spread that fuels have.
import type { Supposed } from '../supposed.ts';
import { practice } from './practice.ts';

export const dieselWeight: Supposed = {
  id: 'diesel-weight',
  what: 'weight of diesel',
  value: 7.1,
  unit: '[lb_av]/[gal_us]',
  plusOrMinus: 0.15,
  citations: [
    practice('6.8 to 7.2 lb a gallon by grade and temperature; the heavier end is the careful one.'),
  ],
};
export const gasolineWeight: Supposed = {
  id: 'gasoline-weight',
  what: 'weight of gasoline',
  value: 6.1,
  unit: '[lb_av]/[gal_us]',
  plusOrMinus: 0.15,
  citations: [practice('6.0 to 6.3 lb a gallon by grade and temperature.')],
};
/** People who ride along. */
export const peopleAboard: Supposed = {
  id: 'people-aboard',
  what: 'people who ride along',
  value: 2,
  unit: '1',
  plusOrMinus: 0,
  citations: [practice('Two people. Put in your own number.')],
};
