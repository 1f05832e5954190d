// Why: the freezer tells more of a cooling unit than the box does.
import { freezerUsual, freezerWarm } from '../../standards/trade-practice/house-systems.ts';
import { numberProofs } from '../making/proofs.ts';
import type { Rule } from '../rule.ts';

export const refrigeratorFreezer: Rule = {
  id: 'refrigerator-freezer',
  asks: 'Does the freezer freeze?',
  why: 'A weak cooling unit shows in the freezer first.',
  part: 'refrigerator',
  aspect: 'freezer_F',
  look: 'After 12 to 24 hours, a thermometer between two frozen things.',
  minutes: 3,
  steps: [
    { weight: 'defect', must: 'at most', limit: freezerWarm },
    { weight: 'wear', must: 'at most', limit: freezerUsual },
  ],
  says: {
    meets: 'The freezer was cold.',
    fails: 'The freezer was not cold enough.',
    cannotTell: 'The reading is too near the limit, or is not a temperature: measure again after a day.',
    notSeen: 'The freezer temperature has not been measured.',
  },
  next: 'Measure again after a day on each source of power; if it stays warm, have the cooling unit looked at.',
  who: 'certified RV technician',
  caution: 'ammonia',
  proofs: numberProofs('[degF]', [
    [0, 'meets', 'sound'],
    [10, 'meets', 'sound'],
    [12, 'fails', 'watch'],
    [20, 'fails', 'watch'],
    [20.5, 'fails', 'repair'],
    [10, 'cannot tell', 'watch', 2],
  ]),
};
