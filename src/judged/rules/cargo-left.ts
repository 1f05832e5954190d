// Why: overload is common, hidden and dangerous; the label says what is left.
import { cargoRoomy, cargoUseful } from '../../standards/trade-practice/house-systems.ts';
import { cargoLeftAtLeast } from '../../standards/us-code-of-federal-regulations/49-cfr-571-120.ts';
import { numberProofs } from '../making/proofs.ts';
import type { Rule } from '../rule.ts';

export const cargoLeft: Rule = {
  id: 'cargo-left',
  asks: 'How much weight may still be put in?',
  why: 'Overload is common, hidden, and bursts tires.',
  part: 'coach',
  aspect: 'cargo_left',
  look: 'Weigh it, or read the carrying capacity label and take off people and water.',
  minutes: 25,
  steps: [
    { weight: 'danger', must: 'at least', limit: cargoLeftAtLeast },
    { weight: 'defect', must: 'at least', limit: cargoUseful },
    { weight: 'wear', must: 'at least', limit: cargoRoomy },
  ],
  says: {
    meets: 'There is room left for people and their things.',
    fails: 'Little or nothing is left for people and their things.',
    cannotTell: 'The weight left is too near a limit to tell: weigh the coach.',
    notSeen: 'The weight left has not been worked out.',
  },
  next: 'Take load out, or rearrange it, and weigh again; tell the buyer the number.',
  who: 'shop technician',
  caution: 'driving',
  proofs: numberProofs('[lb_av]', [
    [-200, 'fails', 'stop'],
    [0, 'fails', 'repair'],
    [499, 'fails', 'repair'],
    [500, 'fails', 'watch'],
    [999, 'fails', 'watch'],
    [1000, 'meets', 'sound'],
    [2400, 'meets', 'sound'],
    [0, 'cannot tell', 'stop', 300],
    [1000, 'cannot tell', 'watch', 200],
  ]),
};
