// Why: the least brake lining.
import { limitOf } from '../limit-of.ts';
import { asOf2015, read, section393p47 } from './title-49.ts';

export const liningAirDrum = limitOf(
  'lining-air-drum',
  'brake lining, air drum brake',
  '[in_i]',
  asOf2015,
  0.25,
  read(
    section393p47,
    '393.47(d)',
    'air drum brakes away from the steer axle have at least 1/4 inch of lining',
  ),
);

export const liningHydraulic = limitOf(
  'lining-hydraulic',
  'brake lining, hydraulic or electric brake',
  '[in_i]',
  asOf2015,
  0.0625,
  read(section393p47, '393.47(d)', 'hydraulic and electric brakes have at least 1/16 inch of lining'),
);
