// Why: old hydronic fluid eats the unit from inside.
import { hydronicOut, hydronicWatch } from '../../standards/trade-practice/engine-and-chassis.ts';
import { numberProofs } from '../making/proofs.ts';
import type { Rule } from '../rule.ts';

export const hydronicFluidAge: Rule = {
  id: 'hydronic-fluid-age',
  asks: 'How old is the hydronic fluid?',
  why: 'A unit costs 8,000 dollars and more.',
  part: 'hydronic_unit',
  aspect: 'fluid_age',
  look: 'Label and service record; test strip.',
  minutes: 5,
  steps: [
    { weight: 'defect', must: 'at most', limit: hydronicOut },
    { weight: 'wear', must: 'at most', limit: hydronicWatch },
  ],
  says: {
    meets: 'The fluid is young enough.',
    fails: 'The fluid is due.',
    cannotTell: 'Its age is only told or too near a limit: test it.',
    notSeen: 'Nobody knows how old the fluid is.',
  },
  next: 'Test or change it; service the burner at the same time.',
  who: 'certified RV technician',
  caution: 'carbon-monoxide',
  proofs: numberProofs('a', [
    [1, 'meets', 'sound'],
    [3, 'meets', 'sound'],
    [4, 'fails', 'watch'],
    [5, 'fails', 'watch'],
    [6, 'fails', 'repair'],
    [3, 'cannot tell', 'watch', 0.5],
  ]),
};
