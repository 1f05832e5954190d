// Why: what is supposed of a front axle and a body when nobody measured them.
import type { Supposed } from '../supposed.ts';
import { practice } from './practice.ts';

export const kingPinTrack: Supposed = {
  id: 'king-pin-track',
  what: 'distance between the king pins',
  value: 6.8,
  unit: '[ft_i]',
  plusOrMinus: 0.3,
  citations: [practice('About 6.5 to 7 ft on a heavy front axle.')],
};
export const bodyWidth: Supposed = {
  id: 'body-width',
  what: 'body width',
  value: 8.5,
  unit: '[ft_i]',
  plusOrMinus: 0.25,
  citations: [practice('96 to 102 in; most coaches are 102.')],
};
/** Half width, as a share of the radius: tires slip, and a steering linkage is not quite true at full cut. */
export const turningSlip: Supposed = {
  id: 'turning-slip',
  what: 'share by which slip changes a radius',
  value: 0,
  unit: '1',
  plusOrMinus: 0.02,
  citations: [practice('Published design vehicles differ from the geometry by up to 2 percent.')],
};
