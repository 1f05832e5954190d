// Why: how far a steering wheel may turn before the front wheels move.
import { limitOf } from '../limit-of.ts';
import { asOf2015, read, section393p209 } from './title-49.ts';

/** The table goes by wheel diameter; an 18-inch wheel is the common one on coaches (trade practice). */
export const lashPower18 = limitOf(
  'steering-lash-18-power',
  'lash at the rim, 18-inch wheel, power steering',
  '[in_i]',
  asOf2015,
  4.75,
  read(
    section393p209,
    '393.209(b)',
    'an 18-inch steering wheel with power steering has no more than 4 3/4 inches of lash',
  ),
);

export const lashManual18 = limitOf(
  'steering-lash-18-manual',
  'lash at the rim, 18-inch wheel, manual steering',
  '[in_i]',
  asOf2015,
  2.25,
  read(
    section393p209,
    '393.209(b)',
    'an 18-inch steering wheel with manual steering has no more than 2 1/4 inches of lash',
  ),
);
