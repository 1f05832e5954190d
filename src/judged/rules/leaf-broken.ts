// Why: a broken leaf lets the axle move.
import { brokenLeaf, brokenLeaves } from '../../standards/trade-practice/body-and-roof.ts';
import { numberProofs } from '../making/proofs.ts';
import type { Rule } from '../rule.ts';

export const leafBroken: Rule = {
  id: 'leaf-broken',
  asks: 'Is a spring leaf broken?',
  why: 'The axle moves.',
  part: 'suspension_leaf',
  aspect: 'broken',
  look: 'Count the leaves, both ends.',
  minutes: 6,
  steps: [
    { weight: 'danger', must: 'at most', limit: brokenLeaves },
    { weight: 'defect', must: 'at most', limit: brokenLeaf },
  ],
  says: {
    meets: 'No leaf was broken.',
    fails: 'A leaf is broken.',
    cannotTell: 'They were not counted.',
    notSeen: 'Nobody has counted the leaves.',
  },
  next: 'Change the spring, both sides of the axle.',
  who: 'heavy-vehicle technician',
  caution: 'lifting',
  proofs: numberProofs('1', [
    [0, 'meets', 'sound'],
    [1, 'fails', 'repair'],
    [2, 'fails', 'stop'],
    [1, 'cannot tell', 'stop', 1],
  ]),
};
