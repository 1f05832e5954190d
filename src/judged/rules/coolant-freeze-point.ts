// Why: a frozen block is a new engine.
import { freezeGood, freezeWeak } from '../../standards/trade-practice/engine-and-chassis.ts';
import { numberProofs } from '../making/proofs.ts';
import type { Rule } from '../rule.ts';

export const coolantFreezePoint: Rule = {
  id: 'coolant-freeze-point',
  asks: 'Does the coolant stand the winter?',
  why: 'A frozen block is a new engine.',
  part: 'coolant',
  aspect: 'freeze_point',
  look: 'Cold engine, cap on: refractometer from the tank; strip for the additive.',
  minutes: 5,
  steps: [
    { weight: 'defect', must: 'at most', limit: freezeWeak },
    { weight: 'wear', must: 'at most', limit: freezeGood },
  ],
  says: {
    meets: 'The coolant freezes as low as a half-and-half mix.',
    fails: 'The coolant freezes too early.',
    cannotTell: 'The reading is too near a limit, or is not a temperature.',
    notSeen: 'The freezing point has not been measured.',
  },
  next: 'Change or strengthen it with the kind the maker names.',
  who: 'shop technician',
  caution: 'engine',
  proofs: numberProofs('[degF]', [
    [-40, 'meets', 'sound'],
    [-34, 'meets', 'sound'],
    [-30, 'fails', 'watch'],
    [-20, 'fails', 'watch'],
    [-19, 'fails', 'repair'],
    [5, 'fails', 'repair'],
    [-34, 'cannot tell', 'watch', 2],
  ]),
};
