// Why: roof sealant leaks long before it shows inside.
import { noneOpen } from '../../standards/trade-practice/body-and-roof.ts';
import { numberProofs } from '../making/proofs.ts';
import type { Rule } from '../rule.ts';

export const roofSealantCracked: Rule = {
  id: 'roof-sealant-cracked',
  asks: 'Is roof sealant cracked?',
  why: 'It is ninety days from a leak.',
  part: 'roof_sealant',
  aspect: 'cracked',
  look: 'A finger round every vent, seam, antenna and air conditioner.',
  minutes: 10,
  steps: [{ weight: 'defect', must: 'at most', limit: noneOpen }],
  says: {
    meets: 'No cracked sealant was found.',
    fails: 'Roof sealant is cracked.',
    cannotTell: 'They were not counted: go round with a finger.',
    notSeen: 'Nobody has gone round the roof sealant.',
  },
  next: 'Clean and reseal; write down the date.',
  who: 'certified RV technician',
  caution: 'roof',
  proofs: numberProofs('1', [
    [0, 'meets', 'sound'],
    [1, 'fails', 'repair'],
    [6, 'fails', 'repair'],
    [0, 'cannot tell', 'watch', 1],
  ]),
};
