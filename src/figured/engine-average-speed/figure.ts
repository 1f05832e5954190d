// Why: few miles for many engine hours means years of idling, which wears a diesel and shows nowhere else.
import { subtraction } from '../../standards/physics/plain.ts';
import { practice } from '../../standards/trade-practice/practice.ts';
import type { FigureCard, Have, Refused, Worked } from '../figure.ts';
import { numberOf } from '../number-of.ts';
import { roundNear } from '../round-carefully.ts';

function work(have: Have): Worked | Refused {
  const [miles, hours] = [numberOf(have, 'miles'), numberOf(have, 'hours')];
  if (!(hours > 0)) return { refused: 'no engine hours' };
  return {
    value: miles / hours,
    working: [`${miles.toFixed(0)} mi / ${hours.toFixed(0)} h = ${(miles / hours).toFixed(1)} mph`],
    note: 'Road use alone averages 30 mph and more; well below that the engine stood idling.',
  };
}

export const engineAverageSpeed: FigureCard = {
  id: 'engine-average-speed',
  asks: 'Did the engine idle a lot?',
  gives: { part: 'hour_meters', aspect: 'average_speed', unit: '[mi_i]/h' },
  needs: [
    { name: 'miles', what: 'odometer', part: 'odometer', aspect: 'reading', unit: '[mi_i]' },
    { name: 'hours', what: 'engine hours', part: 'hour_meters', aspect: 'engine_hours', unit: 'h' },
  ],
  formula: 'miles / engine hours',
  cites: [subtraction, practice('30 miles for each engine hour is ordinary road use.')],
  neglects:
    'A replaced meter on either side makes it worthless. Mountain roads and towns lower it without idling.',
  work,
  round: roundNear(0.1),
  checkedAgainst: 'nobody publishes it: it is a quotient; own cases beside the card',
};
