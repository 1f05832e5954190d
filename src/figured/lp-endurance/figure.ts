// Why: how many cold nights a tank of propane lasts.
import { furnaceDuty, furnaceInput, propaneFill, propaneHeat } from '../../standards/references/propane.ts';
import type { FigureCard, Have, Refused, Worked } from '../figure.ts';
import { suppose } from '../look-up.ts';
import { numberOf } from '../number-of.ts';
import { roundDown } from '../round-carefully.ts';

function work(have: Have): Worked | Refused {
  const gallons = numberOf(have, 'capacity') * numberOf(have, 'fill');
  const heat = gallons * numberOf(have, 'heat');
  const hours = heat / numberOf(have, 'burner');
  const duty = numberOf(have, 'duty');
  if (!(duty > 0 && Number.isFinite(hours))) return { refused: 'nothing to work with' };
  const days = hours / duty / 24;
  return {
    value: days,
    working: [
      `${gallons.toFixed(1)} gal of gas, ${(heat / 1e6).toFixed(2)} million Btu`,
      `${hours.toFixed(1)} h of burning at ${numberOf(have, 'burner').toFixed(0)} Btu/h`,
      `running ${(duty * 100).toFixed(0)} percent of the time: ${days.toFixed(1)} days`,
    ],
    note: 'From a full tank, for the furnace alone. A cold, low tank may not give gas fast enough, and tank gauges are 10 percent out either way.',
  };
}

export const lpEndurance: FigureCard = {
  id: 'lp-endurance',
  asks: 'How many days of heat are in a full gas tank?',
  gives: { part: 'lp_tank', aspect: 'endurance', unit: 'd' },
  needs: [
    {
      name: 'capacity',
      what: 'water capacity of the tank',
      part: 'lp_tank',
      aspect: 'capacity',
      unit: '[gal_us]',
    },
    {
      name: 'fill',
      what: 'share that is filled',
      part: 'supposed',
      aspect: 'lp_fill',
      unit: '1',
      find: suppose(propaneFill),
    },
    {
      name: 'heat',
      what: 'heat of a gallon',
      part: 'supposed',
      aspect: 'lp_heat',
      unit: '[Btu]/[gal_us]',
      find: suppose(propaneHeat),
    },
    {
      name: 'burner',
      what: 'what the furnace burns',
      part: 'supposed',
      aspect: 'furnace_input',
      unit: '[Btu]/h',
      find: suppose(furnaceInput),
    },
    {
      name: 'duty',
      what: 'share of the time it runs',
      part: 'supposed',
      aspect: 'furnace_duty',
      unit: '1',
      find: suppose(furnaceDuty),
    },
  ],
  formula: 'days = capacity x fill x heat of a gallon / (burner x duty x 24 h)',
  cites: [
    ...propaneHeat.citations,
    ...propaneFill.citations,
    ...furnaceInput.citations,
    ...furnaceDuty.citations,
  ],
  neglects:
    'Refrigerator (1,200 to 2,200 Btu/h), water heater and stove, which take 10 to 30 percent more. A capacity quoted as gas, not as water, is already 80 percent.',
  work,
  round: roundDown(0.1),
  checkedAgainst:
    'worked gas sums from published propane properties (test/published/gas-trade/propane.test.ts)',
};
