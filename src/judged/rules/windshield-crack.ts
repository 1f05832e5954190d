// Why: a cracked windshield costs thousands and lets water in.
import { noCrack } from '../../standards/trade-practice/body-and-roof.ts';
import { windshieldSpot } from '../../standards/us-code-of-federal-regulations/49-cfr-393-60.ts';
import { numberProofs } from '../making/proofs.ts';
import type { Rule } from '../rule.ts';

export const windshieldCrack: Rule = {
  id: 'windshield-crack',
  asks: 'Is the windshield cracked?',
  why: 'A pane costs 1,500 to 4,000 dollars, and a crack leaks and spreads.',
  part: 'windshield',
  aspect: 'longest_crack',
  look: 'Ruler along the longest crack; look from inside against the light, and along the edges.',
  minutes: 4,
  steps: [
    { weight: 'defect', must: 'at most', limit: windshieldSpot },
    { weight: 'wear', must: 'at most', limit: noCrack },
  ],
  says: {
    meets: 'No crack was seen in the glass.',
    fails: 'The glass is cracked.',
    cannotTell: 'It was not settled whether or how far the glass is cracked: measure it.',
    notSeen: 'Nobody has looked at the windshield for cracks.',
  },
  next: 'Get a price from a glass shop; show the buyer where the crack runs. Cracks that cross, or that lie before the driver, are changed before it is driven.',
  who: 'glass shop',
  proofs: numberProofs('[in_i]', [
    [0, 'meets', 'sound'],
    [0.5, 'fails', 'watch'],
    [0.75, 'fails', 'watch'],
    [0.76, 'fails', 'repair'],
    [14, 'fails', 'repair'],
    [0.75, 'fails', 'watch', 0.1],
    [0, 'cannot tell', 'watch', 0.1],
  ]),
};
