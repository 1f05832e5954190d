// Why: parks ask for quiet.
import { genNoise } from '../../standards/trade-practice/house-systems.ts';
import { numberProofs } from '../making/proofs.ts';
import type { Rule } from '../rule.ts';

export const generatorNoise: Rule = {
  id: 'generator-noise',
  asks: 'How loud is the generator at fifty feet?',
  why: 'Parks send a loud one home.',
  part: 'generator_load_run',
  aspect: 'noise_at_50_ft',
  appliesTo: (facts, place) => facts.get('generator_load_run', 'noise_at_50_ft', place) !== undefined,
  expectedAt: () => [],
  look: 'Loaded, in the open, meter at fifty feet.',
  minutes: 5,
  steps: [{ weight: 'wear', must: 'at most', limit: genNoise }],
  says: {
    meets: 'It kept within what parks allow.',
    fails: 'It is louder than parks allow.',
    cannotTell: 'The reading is too near the limit, or is not a sound level.',
    notSeen: 'Nobody has measured it.',
  },
  next: 'Exhaust and mounts.',
  who: 'certified RV technician',
  caution: 'carbon-monoxide',
  proofs: numberProofs('dB{A}', [
    [55, 'meets', 'sound'],
    [60, 'meets', 'sound'],
    [66, 'fails', 'watch'],
    [60, 'cannot tell', 'watch', 3],
  ]),
};
