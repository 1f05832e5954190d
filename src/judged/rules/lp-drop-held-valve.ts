// Why: a gas leak is the fire that ends everything. The same test, where it was said of the detector valve.
import { sameSaidOf } from '../making/same-said-of.ts';
import { lpDropHeld } from './lp-drop-held.ts';

export const lpDropHeldValve = sameSaidOf(lpDropHeld, {
  id: 'lp-drop-held-valve',
  part: 'lp_detector_valve',
  aspect: 'drop_test',
});
