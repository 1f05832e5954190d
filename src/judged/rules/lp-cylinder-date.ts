// Why: a refiller must refuse a portable cylinder that is out of date.
import {
  cylinderVisual,
  cylinderVolumetric,
} from '../../standards/us-code-of-federal-regulations/49-cfr-180-209.ts';
import { dateProofs, wordProofs } from '../making/proofs.ts';
import type { Rule } from '../rule.ts';

export const lpCylinderDate: Rule = {
  id: 'lp-cylinder-date',
  asks: 'When was the portable cylinder last requalified?',
  why: 'A refiller must refuse one that is out of date.',
  part: 'lp_tank',
  aspect: 'cylinder_requal',
  appliesTo: (facts, place) => facts.get('lp_tank', 'cylinder_requal', place) !== undefined,
  expectedAt: () => [],
  look: 'Stamp on the collar, with its letter. A tank fixed in a motorhome has none.',
  minutes: 2,
  steps: [
    { weight: 'unlawful', must: 'at most', limit: cylinderVolumetric },
    { weight: 'wear', must: 'at most', limit: cylinderVisual },
  ],
  says: {
    meets: 'The cylinder is in date by any method.',
    fails: 'The cylinder is out of date, or may be by its method.',
    cannotTell: 'The stamp does not settle it: read month, year and letter.',
    notSeen: 'The collar stamp has not been read.',
  },
  next: 'Have it requalified or change it; do not fill it.',
  who: 'licensed LP gas technician',
  caution: 'lp-gas',
  proofs: [
    ...wordProofs([]),
    ...dateProofs([
      ['2023-02-01', 'meets', 'sound'],
      ['2021-11-24', 'meets', 'sound'],
      ['2021-11-23', 'fails', 'watch'],
      ['2014-11-24', 'fails', 'watch'],
      ['2014-11-23', 'fails', 'repair'],
      ['2012-04', 'fails', 'repair'],
      ['2014-11', 'cannot tell', 'repair'],
    ]),
  ],
};
