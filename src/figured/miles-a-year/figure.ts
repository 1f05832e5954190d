// Why: low miles on an old coach is a question, not only a selling point.
import { subtraction } from '../../standards/physics/plain.ts';
import type { FigureCard } from '../figure.ts';
import { aYear } from '../generator-hours-a-year/over-years.ts';
import { roundNear } from '../round-carefully.ts';

export const milesAYear: FigureCard = {
  id: 'miles-a-year',
  asks: 'How much was it driven?',
  gives: { part: 'odometer', aspect: 'miles_in_a_year', unit: '[mi_i]' },
  needs: [
    { name: 'total', what: 'odometer', part: 'odometer', aspect: 'reading', unit: '[mi_i]' },
    { name: 'year', what: 'model year', part: 'coach', aspect: 'year', unit: '1' },
  ],
  formula: 'miles / (years since 1 January of the model year)',
  cites: [subtraction],
  neglects:
    'When the coach was first used: up to half a year either way, carried as plus-or-minus. A replaced odometer.',
  work: aYear('miles'),
  round: roundNear(100),
  checkedAgainst: 'nobody publishes it: it is a quotient; own cases beside the card',
};
