// Why: sound is not in the open; what walls and ground give back is stated here.
import type { Supposed } from '../supposed.ts';
import { practice } from './practice.ts';

export const noiseSurroundings: Supposed = {
  id: 'noise-surroundings',
  what: 'what walls and ground may add to a sound',
  value: 3,
  unit: 'dB{A}',
  plusOrMinus: 0,
  citations: [practice('Walls and ground give back 2 to 3 dB.')],
};
