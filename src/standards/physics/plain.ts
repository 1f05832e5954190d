// Why: formulas that need no publisher are cited as what they are: kinematics, plane geometry, the inverse-square law.
import { day } from '../../units/day.ts';
import type { Citation, Source } from '../standard.ts';
import type { Supposed } from '../supposed.ts';

const source: Source = {
  id: 'plain-physics',
  title: 'Mechanics, geometry and arithmetic from definitions',
  publisher: 'physics',
  edition: '-',
  standing: 'standard',
  scope: 'Holds as far as its assumptions do; those are named beside each figure.',
};
const cite = (clause: string, says: string): Citation => ({ source, clause, says, read: 'common practice' });

export const kinematics = cite(
  'uniform deceleration',
  'Distance is speed times reaction time, plus speed squared over twice the deceleration.',
);
export const planeGeometry = cite(
  'plane geometry',
  'In a steady turn without slip every axle line passes through one center, so radii follow from right triangles.',
);
export const inverseSquare = cite(
  'inverse square',
  'In the open, sound from a small source falls by 20 log10 of the ratio of distances.',
);
export const subtraction = cite('arithmetic', 'A difference, a least or a quotient of readings.');

/** Feet a second squared. Standard gravity, 9.80665 m/s2. */
export const standardGravity = 9.80665 / 0.3048;

/** Water of 1,000 kg a cubic meter, in pounds a US gallon. */
export const waterWeight: Supposed = {
  id: 'water-weight',
  what: 'weight of water',
  value: 8.345,
  unit: '[lb_av]/[gal_us]',
  plusOrMinus: 0.03,
  citations: [
    {
      source,
      clause: 'definitions',
      says: '1,000 kg/m3 at 4 C is 8.345 lb a gallon; warm water is up to 0.4 percent lighter.',
      read: day('2026-11-24'),
    },
  ],
};
