// Why: a measured stop from 20 mph says what the brakes give; this says what that means on the highway.
import { kinematics, standardGravity } from '../../standards/physics/plain.ts';
import {
  brakingKept,
  highwaySpeed,
  levelRoad,
  reactionTime,
  testSpeed,
} from '../../standards/trade-practice/driving.ts';
import { convert } from '../../units/quantity.ts';
import type { FigureCard, Have, Refused, Worked } from '../figure.ts';
import { suppose } from '../look-up.ts';
import { mayHaveNumber, numberOf } from '../number-of.ts';
import { roundUp } from '../round-carefully.ts';

const feetASecond = (mph: number): number => convert(mph, '[mi_i]/h', 'm/s') / 0.3048;

/** Feet to a stop: reaction and braking. Speeds in ft/s, deceleration in ft/s2, grade as a fraction, down positive. */
export function stopIn(speed: number, seconds: number, deceleration: number, grade: number): number {
  const down = standardGravity * Math.sin(Math.atan(grade));
  return speed * seconds + speed ** 2 / (2 * (deceleration - down));
}

function work(have: Have): Worked | Refused {
  const measured = mayHaveNumber(have, 'stop');
  const test = feetASecond(numberOf(have, 'test_speed'));
  const deceleration =
    mayHaveNumber(have, 'deceleration') ??
    (measured !== undefined && measured > 0 ? test ** 2 / (2 * measured) : undefined);
  if (deceleration === undefined) return { refused: 'no measured stop', lacks: ['stop'] };
  const speed = feetASecond(numberOf(have, 'speed'));
  const kept = deceleration * numberOf(have, 'kept');
  const grade = numberOf(have, 'grade') / 100;
  const feet = stopIn(speed, numberOf(have, 'reaction'), kept, grade);
  if (!(feet > 0 && Number.isFinite(feet))) return { refused: 'would not stop on this grade' };
  return {
    value: feet,
    working: [
      `deceleration ${kept.toFixed(1)} ft/s2`,
      `${(speed * numberOf(have, 'reaction')).toFixed(0)} ft before the brakes bite, ${(feet - speed * numberOf(have, 'reaction')).toFixed(0)} ft of braking`,
    ],
    note: 'An estimate for one driver on a dry road, never a promise. Only a trained driver on a closed level road makes test stops.',
  };
}

export const stoppingDistance: FigureCard = {
  id: 'stopping-distance',
  asks: 'What does it take to stop from 60?',
  gives: { part: 'road_test_drive', aspect: 'stop_from_60', unit: '[ft_i]' },
  needs: [
    {
      name: 'stop',
      what: 'measured stop',
      part: 'road_test_drive',
      aspect: 'stop_ft',
      unit: '[ft_i]',
      optional: true,
    },
    {
      name: 'test_speed',
      what: 'speed of the measured stop',
      part: 'supposed',
      aspect: 'test_speed',
      unit: '[mi_i]/h',
      find: suppose(testSpeed),
    },
    {
      name: 'deceleration',
      what: 'deceleration, where it was measured',
      part: 'supposed',
      aspect: 'deceleration',
      unit: '[ft_i]/s2',
      optional: true,
      find: () => undefined,
    },
    {
      name: 'kept',
      what: 'share of it that is kept from highway speed',
      part: 'supposed',
      aspect: 'braking_kept',
      unit: '1',
      find: suppose(brakingKept),
    },
    {
      name: 'speed',
      what: 'speed',
      part: 'supposed',
      aspect: 'highway_speed',
      unit: '[mi_i]/h',
      find: suppose(highwaySpeed),
    },
    {
      name: 'reaction',
      what: 'reaction time',
      part: 'supposed',
      aspect: 'reaction_time',
      unit: 's',
      find: suppose(reactionTime),
    },
    {
      name: 'grade',
      what: 'grade, down is positive',
      part: 'supposed',
      aspect: 'grade',
      unit: '%',
      find: suppose(levelRoad),
    },
  ],
  formula: 'd = v t + v^2 / (2 (a - g sin)), with a = v^2 / (2 d) of the measured stop',
  cites: [kinematics, ...brakingKept.citations, ...reactionTime.citations],
  neglects:
    'Heat in the brakes and the lag of air: carried as 15 percent of the deceleration. Wet road doubles it. A towed vehicle without brakes adds its share of the mass.',
  work,
  round: roundUp(1),
  checkedAgainst:
    'published distance and deceleration pairs of 49 CFR 393.52 and 571.121 (test/published/us-code-of-federal-regulations/stopping.test.ts)',
};
