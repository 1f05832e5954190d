// Why: how far between fuel stops, from the tank that is there and the economy that such coaches have.
import { isMotorized } from '../../catalogue/vehicle-kind.ts';
import { subtraction } from '../../standards/physics/plain.ts';
import { fuelEconomy, fuelReserve } from '../../standards/trade-practice/driving.ts';
import type { FigureCard, Have, Worked } from '../figure.ts';
import { suppose, supposing } from '../look-up.ts';
import { numberOf } from '../number-of.ts';
import { roundDown } from '../round-carefully.ts';

function work(have: Have): Worked {
  const usable = numberOf(have, 'tank') * (1 - numberOf(have, 'reserve'));
  const economy = numberOf(have, 'economy');
  return {
    value: usable * economy,
    working: [`${usable.toFixed(0)} gal x ${economy.toFixed(1)} mpg = ${(usable * economy).toFixed(0)} mi`],
    note: "Economy is that of its class unless you put in your own. It is not this coach's.",
  };
}

export const fuelRange: FigureCard = {
  id: 'fuel-range',
  asks: 'How far on a tank?',
  gives: { part: 'coach', aspect: 'range', unit: '[mi_i]' },
  needs: [
    { name: 'tank', what: 'fuel tank', part: 'fuel_tank', aspect: 'capacity', unit: '[gal_us]' },
    {
      name: 'economy',
      what: 'fuel economy',
      part: 'supposed',
      aspect: 'fuel_economy',
      unit: '[mi_i]/[gal_us]',
      find: (facts) => {
        const s = facts.kind && fuelEconomy[facts.kind];
        return s ? supposing(s) : undefined;
      },
    },
    {
      name: 'reserve',
      what: 'share kept in the tank',
      part: 'supposed',
      aspect: 'fuel_reserve',
      unit: '1',
      find: suppose(fuelReserve),
    },
  ],
  formula: 'tank x (1 - reserve) x miles a gallon',
  cites: [subtraction, ...fuelReserve.citations],
  neglects: 'Wind, grades, a towed car (5 to 10 percent) and the generator, which drinks from the same tank.',
  appliesTo: (facts) => facts.kind === undefined || isMotorized(facts.kind),
  work,
  round: roundDown(10),
  checkedAgainst: 'nobody publishes it for a coach at hand; own case beside the card',
};
