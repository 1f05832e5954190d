// Why: a generator is judged by its hertz under load, here as said of the set itself.
import { sameSaidOf } from '../making/same-said-of.ts';
import { generatorHertz } from './generator-hertz.ts';

export const generatorHertzAtSet = sameSaidOf(generatorHertz, {
  id: 'generator-hertz-at-set',
  part: 'generator',
  aspect: 'hertz_loaded',
});
