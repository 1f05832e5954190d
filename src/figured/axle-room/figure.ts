// Why: a coach within its total can be over on one axle, and tires and brakes are sized by axle.
import { isMotorized } from '../../catalogue/vehicle-kind.ts';
import { subtraction } from '../../standards/physics/plain.ts';
import type { FigureCard, Have, Worked } from '../figure.ts';
import { mayHaveNumber, numberOf } from '../number-of.ts';
import { roundDown } from '../round-carefully.ts';

function work(have: Have): Worked {
  const rooms: [string, number][] = [
    ['front axle', numberOf(have, 'gawr_front') - numberOf(have, 'front')],
    ['rear axle', numberOf(have, 'gawr_rear') - numberOf(have, 'rear')],
  ];
  const [ratedTag, tag] = [mayHaveNumber(have, 'gawr_tag'), mayHaveNumber(have, 'tag')];
  if (ratedTag !== undefined && tag !== undefined) rooms.push(['tag axle', ratedTag - tag]);
  const [binds, least] = rooms.reduce((a, b) => (b[1] < a[1] ? b : a));
  return {
    value: least,
    working: rooms.map(([axle, lb]) => `${axle}: ${lb.toFixed(0)} lb of room`),
    binds,
    ...(ratedTag !== undefined && tag === undefined ? { note: 'The tag axle was not weighed.' } : {}),
  };
}

export const axleRoom: FigureCard = {
  id: 'axle-room',
  asks: 'Is any axle near its limit?',
  gives: { part: 'coach', aspect: 'axle_room', unit: '[lb_av]' },
  needs: [
    {
      name: 'gawr_front',
      what: 'front axle rating',
      part: 'cert_label',
      aspect: 'gawr_front',
      unit: '[lb_av]',
    },
    {
      name: 'front',
      what: 'front axle on the scale',
      part: 'scale_weight',
      aspect: 'front',
      unit: '[lb_av]',
    },
    { name: 'gawr_rear', what: 'rear axle rating', part: 'cert_label', aspect: 'gawr_rear', unit: '[lb_av]' },
    { name: 'rear', what: 'rear axle on the scale', part: 'scale_weight', aspect: 'rear', unit: '[lb_av]' },
    {
      name: 'gawr_tag',
      what: 'tag axle rating',
      part: 'cert_label',
      aspect: 'gawr_tag',
      unit: '[lb_av]',
      optional: true,
    },
    {
      name: 'tag',
      what: 'tag axle on the scale',
      part: 'scale_weight',
      aspect: 'tag',
      unit: '[lb_av]',
      optional: true,
    },
  ],
  formula: 'the least over the axles of: axle rating - weighed load',
  cites: [subtraction],
  neglects:
    'Left against right: one wheel can carry 10 percent more than the other. What was not aboard when weighed.',
  appliesTo: (facts) => facts.kind === undefined || isMotorized(facts.kind),
  work,
  round: roundDown(10),
  checkedAgainst: 'nobody publishes it: it is a subtraction; own cases beside the card',
};
