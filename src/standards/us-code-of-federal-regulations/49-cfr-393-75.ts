// Why: the least tread a tire may have.
import { limitOf } from '../limit-of.ts';
import { asOf2015, read, section393p75 } from './title-49.ts';

export const treadSteer = limitOf(
  'tread-steer',
  'tread depth, steer axle',
  '[in_i]/32',
  asOf2015,
  4,
  read(
    section393p75,
    '393.75(b)',
    'a tire on the front wheels of a bus, truck or truck tractor has at least 4/32 inch of tread',
  ),
);

export const treadOther = limitOf(
  'tread-other',
  'tread depth, any other axle',
  '[in_i]/32',
  asOf2015,
  2,
  read(section393p75, '393.75(c)', 'any other tire has at least 2/32 inch of tread'),
);

export const tireBodyCitation = read(
  section393p75,
  '393.75(a)',
  'no exposed ply or belt, no separation of tread or sidewall, not flat, no audible leak, no cut that shows ply or belt',
);
