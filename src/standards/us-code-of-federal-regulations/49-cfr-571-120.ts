// Why: what may be put into a coach is what its labels leave.
import { limitOf } from '../limit-of.ts';
import { cargoLabel } from './49-cfr-571-120-cargo.ts';
import { asOf2015 } from './title-49.ts';

export const cargoLeftAtLeast = limitOf(
  'cargo-left',
  'weight still to be added before a rating is passed',
  '[lb_av]',
  asOf2015,
  0,
  cargoLabel,
);
