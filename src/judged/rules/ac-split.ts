// Why: the difference between the air going in and coming out says whether an air conditioner cools.
import { splitGood, splitLow } from '../../standards/trade-practice/house-systems.ts';
import { numberProofs } from '../making/proofs.ts';
import type { Rule } from '../rule.ts';

export const acSplit: Rule = {
  id: 'ac-split',
  asks: 'Does each roof air conditioner cool?',
  why: 'An air conditioner costs 1,000 to 2,500 dollars to change.',
  part: 'ac_run',
  aspect: 'drop_F',
  look: 'After 20 to 30 minutes on high cool: thermometer in the return, thermometer in the nearest supply.',
  minutes: 8,
  steps: [
    { weight: 'defect', must: 'at least', limit: splitLow },
    { weight: 'wear', must: 'at least', limit: splitGood },
  ],
  says: {
    meets: 'It took as much heat out of the air as one in order does.',
    fails: 'It took less heat out of the air than one in order does; damp weather alone can do that.',
    cannotTell: 'The readings do not settle it: measure again after 20 minutes on high cool.',
    notSeen: 'The drop between return and supply air has not been measured.',
  },
  next: 'Clean filter and coils, measure again on a dry day; note the weather beside the reading.',
  who: 'certified RV technician',
  caution: 'shore-power',
  proofs: numberProofs('[degF]{difference}', [
    [10, 'fails', 'repair'],
    [13.9, 'fails', 'repair'],
    [14, 'fails', 'watch'],
    [17, 'fails', 'watch'],
    [18, 'meets', 'sound'],
    [21, 'meets', 'sound'],
    [18, 'cannot tell', 'watch', 1],
    [14, 'fails', 'watch', 1],
  ]),
};
