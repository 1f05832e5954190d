// Why: what an air brake system in use may lose, and where its governor and warning must work.
import { limitOf } from '../limit-of.ts';
import { asOf2015, read, section570p57, section571p121 } from './title-49.ts';

export const airLossReleased = limitOf(
  'air-loss-released',
  'air lost with brakes released, single vehicle',
  '[psi]/min',
  asOf2015,
  2,
  read(section570p57, '570.57', 'no more than 2 psi a minute with the brakes released, single vehicle'),
);

export const airLossApplied = limitOf(
  'air-loss-applied',
  'air lost with brakes applied, single vehicle',
  '[psi]/min',
  asOf2015,
  3,
  read(section570p57, '570.57', 'no more than 3 psi a minute with the brakes applied, single vehicle'),
);

export const governorCutIn = limitOf(
  'governor-cut-in',
  'pressure at which the compressor starts again',
  '[psi]',
  asOf2015,
  80,
  read(section570p57, '570.57', 'the governor cuts in at 80 psi or more'),
);

export const governorCutOut = limitOf(
  'governor-cut-out',
  'pressure at which the compressor stops',
  '[psi]',
  asOf2015,
  135,
  read(section570p57, '570.57', 'the governor cuts out at 135 psi or less'),
);

export const airRecharge = limitOf(
  'air-recharge',
  'time to build the reservoirs up again',
  's',
  asOf2015,
  45,
  read(section570p57, '570.57', 'vehicles built from March 1975 on recharge within 45 seconds'),
  read(
    section571p121,
    '571.121',
    'the compressor raises the pressure from 85 to 100 psi within a time set by its capacity',
  ),
);

export const lowAirWarning = limitOf(
  'low-air-warning',
  'pressure at which the low-air warning starts',
  '[psi]',
  asOf2015,
  60,
  read(section570p57, '570.57', 'the warning of a vehicle under standard 121 works at 60 psi or more'),
  read(section571p121, '571.121', 'the warning works below 60 psi'),
);
