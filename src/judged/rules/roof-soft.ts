// Why: a soft roof is a rotted deck.
import { softRoof, softRoofStop } from '../../standards/trade-practice/body-and-roof.ts';
import { numberProofs } from '../making/proofs.ts';
import type { Rule } from '../rule.ts';

export const roofSoft: Rule = {
  id: 'roof-soft',
  asks: 'Is the roof soft?',
  why: 'The deck is rotted where it gives.',
  part: 'roof_membrane',
  aspect: 'soft_area',
  look: 'By hand from the ladder first; on foot only where it is firm.',
  minutes: 8,
  steps: [
    { weight: 'danger', must: 'at most', limit: softRoofStop },
    { weight: 'defect', must: 'at most', limit: softRoof },
  ],
  says: {
    meets: 'The roof was firm where it was pressed.',
    fails: 'The roof is soft.',
    cannotTell: 'How large the soft place is was not measured.',
    notSeen: 'Nobody has felt the roof.',
  },
  next: 'Keep off; find the water; price the deck before anything on or under it.',
  who: 'certified RV technician',
  caution: 'roof',
  proofs: numberProofs('[in_i]2', [
    [0, 'meets', 'sound'],
    [60, 'fails', 'repair'],
    [288, 'fails', 'repair'],
    [300, 'fails', 'stop'],
    [288, 'cannot tell', 'stop', 40],
  ]),
};
