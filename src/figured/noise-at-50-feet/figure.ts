// Why: parks set their limit at 50 feet; nobody measures there.
import { inverseSquare } from '../../standards/physics/plain.ts';
import { noiseSurroundings } from '../../standards/trade-practice/noise.ts';
import {
  parkNoise,
  parkNoiseDistance,
} from '../../standards/us-code-of-federal-regulations/36-cfr-2-12-noise.ts';
import type { FigureCard, Have, Refused, Worked } from '../figure.ts';
import { numberOf } from '../number-of.ts';
import { roundUp } from '../round-carefully.ts';

function work(have: Have): Worked | Refused {
  const [level, distance] = [numberOf(have, 'level'), numberOf(have, 'distance')];
  if (!(distance > 0)) return { refused: 'no distance' };
  const less = 20 * Math.log10(parkNoiseDistance / distance);
  return {
    value: level - less,
    ownDoubt: noiseSurroundings.value,
    working: [
      `${level.toFixed(1)} dB(A) at ${distance.toFixed(0)} ft - 20 log10(${parkNoiseDistance} / ${distance.toFixed(0)}) = ${(level - less).toFixed(1)} dB(A)`,
    ],
    note: 'A phone that was never calibrated is 3 to 5 dB out.',
  };
}

export const noiseAt50Feet: FigureCard = {
  id: 'noise-at-50-feet',
  asks: 'How loud is the generator for the neighbors?',
  gives: { part: 'generator_load_run', aspect: 'noise_at_50_ft', unit: 'dB{A}' },
  needs: [
    { name: 'level', what: 'noise measured', part: 'generator_load_run', aspect: 'noise_dBA', unit: 'dB{A}' },
    {
      name: 'distance',
      what: 'distance it was measured at',
      part: 'generator_load_run',
      aspect: 'noise_distance',
      unit: '[ft_i]',
    },
  ],
  formula: 'level at 50 ft = level - 20 log10(50 / distance)',
  cites: [inverseSquare, parkNoise, ...noiseSurroundings.citations],
  neglects:
    'Walls, ground and wind: 3 dB, carried as plus-or-minus. Within a few feet of the set the law does not hold yet.',
  work,
  round: roundUp(1),
  checkedAgainst: 'nobody publishes it for a generator; own case beside the card',
};
