// Why: a belt is cheap, the tow is not.
import { beltsOut, beltsWatch } from '../../standards/trade-practice/engine-and-chassis.ts';
import { numberProofs } from '../making/proofs.ts';
import type { Rule } from '../rule.ts';

export const beltsAge: Rule = {
  id: 'belts-age',
  asks: 'How old are belts and hoses?',
  why: 'They leave a coach at the roadside.',
  part: 'belts_hoses',
  aspect: 'age',
  look: 'Ask; squeeze hoses cold; look for cracks.',
  minutes: 4,
  steps: [
    { weight: 'defect', must: 'at most', limit: beltsOut },
    { weight: 'wear', must: 'at most', limit: beltsWatch },
  ],
  says: {
    meets: 'They are young enough that age is no reason to change them.',
    fails: 'They are old enough to change or to watch.',
    cannotTell: 'Their age is only told or too near a limit: look at them.',
    notSeen: 'Nobody knows how old they are.',
  },
  next: 'Change them as a set, or write down that they are original.',
  who: 'shop technician',
  caution: 'engine',
  proofs: numberProofs('a', [
    [2, 'meets', 'sound'],
    [5, 'meets', 'sound'],
    [6, 'fails', 'watch'],
    [7, 'fails', 'watch'],
    [8, 'fails', 'repair'],
    [5, 'cannot tell', 'watch', 0.5],
  ]),
};
