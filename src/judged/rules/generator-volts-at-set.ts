// Why: a generator is judged by its volts under load, here as said of the set itself.
import { sameSaidOf } from '../making/same-said-of.ts';
import { generatorVolts } from './generator-volts.ts';

export const generatorVoltsAtSet = sameSaidOf(generatorVolts, {
  id: 'generator-volts-at-set',
  part: 'generator',
  aspect: 'volts_loaded',
});
