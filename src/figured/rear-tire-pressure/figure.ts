// Why: duals carry less each than their single rating, and an unweighed pair hides it.
import { axleTirePressure } from '../front-tire-pressure/axle-tire-pressure.ts';

export const rearTirePressure = axleTirePressure({
  id: 'rear-tire-pressure',
  name: 'rear',
  aspect: 'pressure_rear',
  places: ['left-rear-outer', 'left-rear-inner', 'right-rear-inner', 'right-rear-outer'],
});
