// Why: a pressure off the sidewall is the most a tire takes, not what this front axle needs.
import { axleTirePressure } from './axle-tire-pressure.ts';

export const frontTirePressure = axleTirePressure({
  id: 'front-tire-pressure',
  name: 'front',
  aspect: 'pressure_front',
  places: ['left-front', 'right-front'],
});
