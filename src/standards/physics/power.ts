// Why: how power follows from torque and speed in the units of the trade.
import type { Citation, Source } from '../standard.ts';

const source: Source = {
  id: 'mechanics',
  title: 'Definition of mechanical power and of the horsepower (550 foot-pounds a second)',
  publisher: 'physics',
  edition: '-',
  standing: 'standard',
  scope: 'Arithmetic from definitions; holds for any engine at the stated speed.',
};

export const powerFromTorque: Citation = {
  source,
  clause: 'definition',
  says: 'Power is torque times angular speed; in pound-feet, rpm and horsepower the divisor is 33,000 / (2 pi) = 5,252.113.',
  read: 'common practice',
};

/** Pound-feet times rpm for one horsepower. */
export const poundFeetRpmPerHorsepower = 33_000 / (2 * Math.PI);
