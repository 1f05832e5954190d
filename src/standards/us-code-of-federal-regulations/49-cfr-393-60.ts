// Why: how much damage a windshield may have where the driver looks through it.
import { limitOf } from '../limit-of.ts';
import { asOf2015, read, section393p60 } from './title-49.ts';

export const windshieldSpot = limitOf(
  'windshield-spot',
  'damage that is still allowed in the judged zone, as the disc that covers it',
  '[in_i]',
  asOf2015,
  0.75,
  read(
    section393p60,
    '393.60',
    'damage that a 3/4-inch disc covers is allowed if no other such spot is within 3 inches; one crack is allowed if no other crosses it',
  ),
);
