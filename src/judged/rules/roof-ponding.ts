// Why: standing water finds its way in.
import { pondingStop, pondingUsual } from '../../standards/trade-practice/body-and-roof.ts';
import { numberProofs } from '../making/proofs.ts';
import type { Rule } from '../rule.ts';

export const roofPonding: Rule = {
  id: 'roof-ponding',
  asks: 'Does water stand on the roof?',
  why: 'Under standing water the roof is soft or sagging.',
  part: 'water_ponding',
  aspect: 'depth',
  look: 'After rain or a hose.',
  minutes: 5,
  steps: [
    { weight: 'danger', must: 'at most', limit: pondingStop },
    { weight: 'defect', must: 'at most', limit: pondingUsual },
  ],
  says: {
    meets: 'No more water stood than runs off or dries.',
    fails: 'Water stands on the roof.',
    cannotTell: 'How deep it stands was not measured.',
    notSeen: 'Nobody has seen the roof after rain.',
  },
  next: 'Keep off; find out what sags.',
  who: 'certified RV technician',
  caution: 'roof',
  proofs: numberProofs('[in_i]', [
    [0, 'meets', 'sound'],
    [0.25, 'meets', 'sound'],
    [0.4, 'fails', 'repair'],
    [0.5, 'fails', 'repair'],
    [0.7, 'fails', 'stop'],
    [0.25, 'cannot tell', 'watch', 0.1],
  ]),
};
