// Why: low or uneven volts burn motors; the second leg, where a coach has one.
import { sameSaidOf } from '../making/same-said-of.ts';
import { shoreVoltsLeg1 } from './shore-volts-leg-1.ts';

export const shoreVoltsLeg2 = sameSaidOf(shoreVoltsLeg1, {
  id: 'shore-volts-leg-2',
  part: 'electric_panel',
  aspect: 'volts_leg2',
});
