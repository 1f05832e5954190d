// Why: a refrigerator that does not get cold is a cooling unit to buy.
import { coldBox } from '../../standards/food-and-drug-administration/cold-food.ts';
import { boxWarm } from '../../standards/trade-practice/house-systems.ts';
import { numberProofs } from '../making/proofs.ts';
import type { Rule } from '../rule.ts';

export const refrigeratorBox: Rule = {
  id: 'refrigerator-box',
  asks: 'Does the refrigerator get cold?',
  why: 'A cooling unit costs 1,500 to 4,000 dollars, and warm food makes people ill.',
  part: 'refrigerator',
  aspect: 'box_F',
  look: 'Cool it 12 to 24 hours; thermometer in a glass of water on the middle shelf, read after 5 to 8 hours.',
  minutes: 3,
  steps: [
    { weight: 'defect', must: 'at most', limit: boxWarm },
    { weight: 'wear', must: 'at most', limit: coldBox },
  ],
  says: {
    meets: 'The box was as cold as food needs.',
    fails: 'The box was warmer than food needs.',
    cannotTell:
      'The reading is too near the limit, or is not a temperature: cool it a day and measure in water.',
    notSeen: 'The box temperature has not been measured.',
  },
  next: 'Give it a day on each source of power and measure again; if it stays warm, have the cooling unit looked at.',
  who: 'certified RV technician',
  caution: 'ammonia',
  proofs: numberProofs('[degF]', [
    [36, 'meets', 'sound'],
    [40, 'meets', 'sound'],
    [40.5, 'fails', 'watch'],
    [45, 'fails', 'watch'],
    [45.1, 'fails', 'repair'],
    [58, 'fails', 'repair'],
    [40, 'cannot tell', 'watch', 1],
    [44, 'fails', 'watch', 2],
  ]),
};
