// Why: a fogged pane has lost its seal.
import { fogMany, fogOne } from '../../standards/trade-practice/body-and-roof.ts';
import { numberProofs } from '../making/proofs.ts';
import type { Rule } from '../rule.ts';

export const windowsFogged: Rule = {
  id: 'windows-fogged',
  asks: 'How many panes are fogged?',
  why: 'A fogged double pane costs 300 to 900 dollars.',
  part: 'windows_side',
  aspect: 'fogged',
  look: 'Each pane against the light.',
  minutes: 4,
  steps: [
    { weight: 'defect', must: 'at most', limit: fogMany },
    { weight: 'wear', must: 'at most', limit: fogOne },
  ],
  says: {
    meets: 'No pane was fogged.',
    fails: 'Panes are fogged.',
    cannotTell: 'They were not counted: count them against the light.',
    notSeen: 'Nobody has counted the panes.',
  },
  next: 'Count and measure; reseal or replace, or show the buyer.',
  who: 'glass shop',
  proofs: numberProofs('1', [
    [0, 'meets', 'sound'],
    [1, 'fails', 'watch'],
    [2, 'fails', 'watch'],
    [3, 'fails', 'repair'],
    [0, 'cannot tell', 'watch', 1],
  ]),
};
