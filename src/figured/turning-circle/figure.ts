// Why: whether it gets round the corner of the street it will live in.
import { isMotorized } from '../../catalogue/vehicle-kind.ts';
import { planeGeometry } from '../../standards/physics/plain.ts';
import { bodyWidth, kingPinTrack, turningSlip } from '../../standards/trade-practice/turning.ts';
import type { FigureCard, Have, Refused, Worked } from '../figure.ts';
import { firstOf, orSuppose, suppose } from '../look-up.ts';
import { mayHaveNumber, numberOf } from '../number-of.ts';
import { roundUp } from '../round-carefully.ts';
import { frontRadiusFromCut, insideRadius, outerRadius, rearRadius } from './geometry.ts';

function work(have: Have): Worked | Refused {
  const [wheelbase, cut, width] = [
    numberOf(have, 'wheelbase'),
    numberOf(have, 'cut'),
    numberOf(have, 'width'),
  ];
  if (!(cut > 5 && cut < 85)) return { refused: 'no such wheel cut', detail: cut.toFixed(0) };
  const radius = frontRadiusFromCut(wheelbase, cut, numberOf(have, 'king_pins'));
  const rear = rearRadius(radius, wheelbase);
  const overhang = mayHaveNumber(have, 'front_overhang');
  return {
    value: radius,
    ownDoubt: radius * turningSlip.plusOrMinus,
    working: [
      `middle of the rear axle ${rear.toFixed(1)} ft, of the front axle ${radius.toFixed(1)} ft`,
      `inside of the body ${insideRadius(radius, wheelbase, width).toFixed(1)} ft, outer front wheel ${outerRadius(rear, wheelbase, width).toFixed(1)} ft`,
      ...(overhang === undefined
        ? []
        : [`wall to wall: radius ${outerRadius(rear, wheelbase, width, overhang).toFixed(1)} ft`]),
    ],
    note: 'Radius, not diameter, in a slow steady turn at full cut. A tag axle counts as a longer wheelbase; a towed car runs further inside.',
  };
}

export const turningCircle: FigureCard = {
  id: 'turning-circle',
  asks: 'How tight does it turn?',
  gives: { part: 'coach', aspect: 'turning_radius', unit: '[ft_i]' },
  needs: [
    {
      name: 'wheelbase',
      what: 'wheelbase',
      part: 'coach',
      aspect: 'wheelbase',
      unit: '[ft_i]',
      find: firstOf(['chassis_label', 'wheelbase'], ['coach', 'wheelbase']),
    },
    { name: 'cut', what: 'wheel cut (inner wheel)', part: 'coach', aspect: 'wheel_cut', unit: 'deg' },
    {
      name: 'width',
      what: 'body width',
      part: 'coach',
      aspect: 'width',
      unit: '[ft_i]',
      find: orSuppose(bodyWidth, ['coach', 'width']),
    },
    {
      name: 'king_pins',
      what: 'distance between the king pins',
      part: 'supposed',
      aspect: 'king_pins',
      unit: '[ft_i]',
      find: suppose(kingPinTrack),
    },
    {
      name: 'front_overhang',
      what: 'front overhang',
      part: 'coach',
      aspect: 'front_overhang',
      unit: '[ft_i]',
      optional: true,
    },
  ],
  formula: 'rear radius = L / tan(cut) + k / 2; front radius = sqrt(rear^2 + L^2)',
  cites: [planeGeometry, ...kingPinTrack.citations, ...bodyWidth.citations, ...turningSlip.citations],
  neglects:
    'Slip of the tires: up to 2 percent, carried as plus-or-minus. The start and end of a turn, where a coach needs more room than in the steady turn.',
  appliesTo: (facts) => facts.kind === undefined || isMotorized(facts.kind),
  work,
  round: roundUp(0.1),
  checkedAgainst:
    'the design vehicles of the state roadway manual (test/published/roadway-design-manual/turning.test.ts)',
};
