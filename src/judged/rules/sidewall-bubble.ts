// Why: a wall that lets go of its skin is the most expensive thing on a coach.
import { bubbleOut, bubbleWatch } from '../../standards/trade-practice/body-and-roof.ts';
import { numberProofs } from '../making/proofs.ts';
import type { Rule } from '../rule.ts';

export const sidewallBubble: Rule = {
  id: 'sidewall-bubble',
  asks: 'Is the sidewall bubbled?',
  why: 'Delamination takes more off the price than anything else.',
  part: 'sidewall_structure',
  aspect: 'bubble',
  look: 'Along the wall in raking light; press and tap every two feet.',
  minutes: 8,
  steps: [
    { weight: 'defect', must: 'at most', limit: bubbleOut },
    { weight: 'wear', must: 'at most', limit: bubbleWatch },
  ],
  says: {
    meets: 'The wall was flat where it was looked at.',
    fails: 'The wall is bubbled.',
    cannotTell: 'How far the bubble goes was not measured.',
    notSeen: 'Nobody has looked along the wall for bubbles.',
  },
  next: 'Measure and mark its edge, find the water, get a price from a body shop, and show it to the buyer.',
  who: 'body technician',
  proofs: numberProofs('[in_i]', [
    [0, 'meets', 'sound'],
    [2, 'fails', 'watch'],
    [6, 'fails', 'watch'],
    [6.5, 'fails', 'repair'],
    [20, 'fails', 'repair'],
    [6, 'fails', 'watch', 1],
    [0, 'cannot tell', 'watch', 0.5],
  ]),
};
