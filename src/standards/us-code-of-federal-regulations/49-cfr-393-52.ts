// Why: the distance in which the service brakes stop a vehicle from 20 mph.
import { limitOf } from '../limit-of.ts';
import { asOf2015, read, section393p52 } from './title-49.ts';

export const stopHeavy = limitOf(
  'stop-from-20-mph-heavy',
  'stopping distance from 20 mph, single vehicle over 10,000 lb',
  '[ft_i]',
  asOf2015,
  35,
  read(
    section393p52,
    '393.52(d), class B2',
    'a single vehicle over 10,000 lb stops from 20 mph in 35 feet, on a level, dry road in a 12-foot lane',
  ),
);

export const stopLight = limitOf(
  'stop-from-20-mph-light',
  'stopping distance from 20 mph, single vehicle up to 10,000 lb',
  '[ft_i]',
  asOf2015,
  25,
  read(
    section393p52,
    '393.52(d), class B1',
    'a single vehicle of up to 10,000 lb stops from 20 mph in 25 feet',
  ),
);
