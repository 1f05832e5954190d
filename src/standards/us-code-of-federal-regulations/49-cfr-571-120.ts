// Why: what may be put into a coach is what its labels leave.
import { limitOf } from '../limit-of.ts';
import { asOf2015, read, section571p120 } from './title-49.ts';

export const cargoLeftAtLeast = limitOf(
  'cargo-left',
  'weight still to be added before a rating is passed',
  '[lb_av]',
  asOf2015,
  0,
  read(
    section571p120,
    'S10.4',
    'people, water and cargo together weigh no more than the labelled carrying capacity, which is what the gross rating leaves over the unloaded weight',
  ),
);
