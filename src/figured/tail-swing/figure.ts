// Why: the tail goes out as the nose goes in, into the pump or the next lane.
import { isMotorized } from '../../catalogue/vehicle-kind.ts';
import { planeGeometry } from '../../standards/physics/plain.ts';
import { bodyWidth } from '../../standards/trade-practice/turning.ts';
import type { FigureCard, Have, Refused, Worked } from '../figure.ts';
import { firstOf, orSuppose } from '../look-up.ts';
import { numberOf } from '../number-of.ts';
import { roundUp } from '../round-carefully.ts';
import { rearRadius, swing } from '../turning-circle/geometry.ts';

function work(have: Have): Worked | Refused {
  const rear = rearRadius(numberOf(have, 'radius'), numberOf(have, 'wheelbase'));
  if (!(rear > 0)) return { refused: 'wheelbase longer than the turn' };
  const out = swing(rear, numberOf(have, 'width'), numberOf(have, 'overhang'));
  return {
    value: out,
    working: [
      `rear axle runs at ${rear.toFixed(1)} ft; the corner behind it swings out ${out.toFixed(2)} ft`,
    ],
  };
}

export const tailSwing: FigureCard = {
  id: 'tail-swing',
  asks: 'How far does the tail swing out?',
  gives: { part: 'coach', aspect: 'tail_swing', unit: '[ft_i]' },
  needs: [
    {
      name: 'radius',
      what: 'turning radius at the middle of the front axle',
      part: 'coach',
      aspect: 'turning_radius',
      unit: '[ft_i]',
    },
    {
      name: 'wheelbase',
      what: 'wheelbase',
      part: 'coach',
      aspect: 'wheelbase',
      unit: '[ft_i]',
      find: firstOf(['chassis_label', 'wheelbase'], ['coach', 'wheelbase']),
    },
    {
      name: 'width',
      what: 'body width',
      part: 'coach',
      aspect: 'width',
      unit: '[ft_i]',
      find: orSuppose(bodyWidth, ['coach', 'width']),
    },
    { name: 'overhang', what: 'rear overhang', part: 'coach', aspect: 'rear_overhang', unit: '[ft_i]' },
  ],
  formula: 'swing = sqrt((r + w/2)^2 + overhang^2) - (r + w/2), r at the rear axle',
  cites: [planeGeometry, ...bodyWidth.citations],
  neglects:
    'At the very start of a turn from standstill the swing is a little larger. Hitch, ladder and what stands out behind.',
  appliesTo: (facts) => facts.kind === undefined || isMotorized(facts.kind),
  work,
  round: roundUp(0.1),
  checkedAgainst: 'worked turning sums (test/published/roadway-design-manual/turning.test.ts)',
};
