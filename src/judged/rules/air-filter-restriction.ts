// Why: a choked filter costs power; a torn one costs the engine.
import { filterOut, filterWatch } from '../../standards/trade-practice/engine-and-chassis.ts';
import { numberProofs } from '../making/proofs.ts';
import type { Rule } from '../rule.ts';

export const airFilterRestriction: Rule = {
  id: 'air-filter-restriction',
  asks: 'Is the air filter choked?',
  why: 'Dust kills turbo and rings.',
  part: 'air_filter',
  aspect: 'restriction',
  look: 'Read the restriction gauge.',
  minutes: 2,
  steps: [
    { weight: 'defect', must: 'at most', limit: filterOut },
    { weight: 'wear', must: 'at most', limit: filterWatch },
  ],
  says: {
    meets: 'The filter let enough air through.',
    fails: 'The filter is choked.',
    cannotTell: 'The reading does not settle it.',
    notSeen: 'The restriction gauge has not been read.',
  },
  next: 'Change the filter, reset the gauge.',
  who: 'shop technician',
  caution: 'engine',
  proofs: numberProofs("[in_i'H2O]", [
    [8, 'meets', 'sound'],
    [15, 'meets', 'sound'],
    [18, 'fails', 'watch'],
    [20, 'fails', 'watch'],
    [21, 'fails', 'repair'],
    [15, 'cannot tell', 'watch', 1],
  ]),
};
