// Why: three tanks, and the one that ends the stay is seldom the one that is advertised.
import { subtraction } from '../../standards/physics/plain.ts';
import { peopleAboard } from '../../standards/trade-practice/liquid-weights.ts';
import { blackUse, freshUse, grayUse } from '../../standards/trade-practice/water-use.ts';
import type { FigureCard, Have, Refused, Worked } from '../figure.ts';
import { firstOf, suppose } from '../look-up.ts';
import { numberOf } from '../number-of.ts';
import { roundDown } from '../round-carefully.ts';

function work(have: Have): Worked | Refused {
  const people = numberOf(have, 'people');
  const tanks = (['fresh', 'gray', 'black'] as const).map(
    (tank) => [tank, numberOf(have, tank) / (people * numberOf(have, `${tank}_use`))] as const,
  );
  if (!tanks.every(([, days]) => Number.isFinite(days))) return { refused: 'nothing to work with' };
  const [binds, least] = tanks.reduce((a, b) => (b[1] < a[1] ? b : a));
  return {
    value: least,
    working: tanks.map(([tank, days]) => `${tank}: ${days.toFixed(1)} days`),
    binds,
    note: "By the tanks' labelled sizes; gauges mislead.",
  };
}

export const waterDays: FigureCard = {
  id: 'water-days',
  asks: 'How many days without a hookup?',
  gives: { part: 'coach', aspect: 'water_days', unit: 'd' },
  needs: [
    { name: 'fresh', what: 'fresh tank', part: 'fresh_tank', aspect: 'capacity', unit: '[gal_us]' },
    {
      name: 'gray',
      what: 'gray tank',
      part: 'gray_tank',
      aspect: 'capacity',
      unit: '[gal_us]',
      find: firstOf(['gray_tank', 'capacity'], ['waste_tanks_under', 'capacity_gray']),
    },
    {
      name: 'black',
      what: 'black tank',
      part: 'black_tank',
      aspect: 'capacity',
      unit: '[gal_us]',
      find: firstOf(['black_tank', 'capacity'], ['waste_tanks_under', 'capacity_black']),
    },
    {
      name: 'people',
      what: 'people',
      part: 'supposed',
      aspect: 'people',
      unit: '1',
      find: suppose(peopleAboard),
    },
    {
      name: 'fresh_use',
      what: 'fresh water a person a day',
      part: 'supposed',
      aspect: 'fresh_use',
      unit: '[gal_us]',
      find: suppose(freshUse),
    },
    {
      name: 'gray_use',
      what: 'gray water a person a day',
      part: 'supposed',
      aspect: 'gray_use',
      unit: '[gal_us]',
      find: suppose(grayUse),
    },
    {
      name: 'black_use',
      what: 'black water a person a day',
      part: 'supposed',
      aspect: 'black_use',
      unit: '[gal_us]',
      find: suppose(blackUse),
    },
  ],
  formula: 'the least over fresh, gray and black of: tank / (people x gallons a day)',
  cites: [...freshUse.citations, ...grayUse.citations, ...blackUse.citations, subtraction],
  neglects: 'Laundry, outside showers and guests; what is left at the bottom of a tank (5 to 10 percent).',
  work,
  round: roundDown(0.1),
  checkedAgainst: 'nobody publishes it: use differs by household; own worked case beside the card',
};
