// Why: a jack that sinks overnight leaks.
import { jackDropOut, jackDropWatch } from '../../standards/trade-practice/engine-and-chassis.ts';
import { numberProofs } from '../making/proofs.ts';
import type { Rule } from '../rule.ts';

export const jackDrop: Rule = {
  id: 'jack-drop',
  asks: 'How far does a jack sink overnight?',
  why: 'It twists slides and floor.',
  part: 'levelling_jacks',
  aspect: 'drop_in_24h',
  look: 'Mark it in the evening, measure next day.',
  minutes: 3,
  steps: [
    { weight: 'defect', must: 'at most', limit: jackDropOut },
    { weight: 'wear', must: 'at most', limit: jackDropWatch },
  ],
  says: {
    meets: 'It stayed where it was put.',
    fails: 'It sank.',
    cannotTell: 'How far it sank does not settle it.',
    notSeen: 'Nobody has measured it overnight.',
  },
  next: 'Find the leak: cylinder, valve or hose.',
  who: 'certified RV technician',
  caution: 'hydraulics',
  proofs: numberProofs('[in_i]', [
    [0.1, 'meets', 'sound'],
    [0.25, 'meets', 'sound'],
    [0.5, 'fails', 'watch'],
    [1, 'fails', 'watch'],
    [1.5, 'fails', 'repair'],
    [0.25, 'cannot tell', 'watch', 0.1],
  ]),
};
