// Why: a torn seal lets the rain in at each stop.
import { sealTear, sealWhole } from '../../standards/trade-practice/body-and-roof.ts';
import { numberProofs } from '../making/proofs.ts';
import type { Rule } from '../rule.ts';

export const slideSealTorn: Rule = {
  id: 'slide-seal-torn',
  asks: 'Is a slide seal torn?',
  why: 'It is a leak path.',
  part: 'slide_seals',
  aspect: 'torn',
  look: 'A finger along every wiper and bulb seal; look for flipped edges.',
  minutes: 4,
  steps: [
    { weight: 'defect', must: 'at most', limit: sealTear },
    { weight: 'wear', must: 'at most', limit: sealWhole },
  ],
  says: {
    meets: 'No tear was felt in the seal.',
    fails: 'The seal is torn.',
    cannotTell: 'How long the tear is was not measured.',
    notSeen: 'Nobody has felt along the slide seals.',
  },
  next: 'Patch a short one, change a long one.',
  who: 'certified RV technician',
  caution: 'slides',
  proofs: numberProofs('[in_i]', [
    [0, 'meets', 'sound'],
    [1, 'fails', 'watch'],
    [2, 'fails', 'watch'],
    [3, 'fails', 'repair'],
    [0, 'cannot tell', 'watch', 0.5],
  ]),
};
