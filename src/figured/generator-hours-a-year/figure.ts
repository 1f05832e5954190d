// Why: a generator dies of standing as much as of running; hours mean something only over years.
import { subtraction } from '../../standards/physics/plain.ts';
import { practice } from '../../standards/trade-practice/practice.ts';
import type { FigureCard } from '../figure.ts';
import { firstOf } from '../look-up.ts';
import { roundNear } from '../round-carefully.ts';
import { aYear } from './over-years.ts';

export const generatorHoursAYear: FigureCard = {
  id: 'generator-hours-a-year',
  asks: 'How much was the generator used?',
  gives: { part: 'hour_meters', aspect: 'generator_hours_in_a_year', unit: 'h' },
  needs: [
    {
      name: 'total',
      what: 'generator hours',
      part: 'generator',
      aspect: 'hours',
      unit: 'h',
      find: firstOf(['generator', 'hours'], ['hour_meters', 'generator_hours']),
    },
    { name: 'year', what: 'model year', part: 'coach', aspect: 'year', unit: '1' },
  ],
  formula: 'hours / (years since 1 January of the model year)',
  cites: [
    subtraction,
    practice('Makers want a generator run under load every month, some 20 hours a year or more.'),
  ],
  neglects:
    'When the coach was first used: up to half a year either way, carried as plus-or-minus. Replaced meters.',
  work: aYear('hours'),
  round: roundNear(1),
  checkedAgainst: 'nobody publishes it: it is a quotient; own cases beside the card',
};
