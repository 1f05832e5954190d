// Why: "does it work" is asked of thirty things in the same way; only the thing, the words and the weight differ.
import type { Citation } from '../../standards/standard.ts';
import type { Rule, Verdict, Weight } from '../rule.ts';
import { verdictOf } from '../verdict.ts';
import type { Asked } from './asked.ts';
import { wordProofs } from './proofs.ts';

/** It does not do what it is for. */
const failing = [
  'no',
  'fails',
  'broken',
  'stuck',
  'missing',
  'out',
  'tripped',
  'burnt',
  'expired',
  'discharged',
  'separated',
  'damaged',
  'leaking',
  'rotted',
];
/** It does, but badly. */
const poorly = [
  'slow',
  'noisy',
  'sticky',
  'weak',
  'intermittent',
  'worn',
  'loose',
  'low',
  'drifting',
  'marginal',
  'poor',
  'bent',
  'cracked',
  'torn',
  'vibrating',
  'corroded',
  'rusted',
  'dirty',
  'smelling',
  'smoking',
  'warm',
  'sagging',
  'overdue',
  'soft',
  'wet',
  'damp',
];

export interface WorksCard extends Asked {
  /** What it is when it does not work. */
  readonly weight: Weight;
  /** What it is when it works badly; a defect where badly is not good enough. */
  readonly weightOfPoor?: Weight;
  readonly cite: Citation;
}

/** A rule that asks whether a thing does what it is for. The aspect must be one whose good answer is "yes". */
export function worksRule(card: WorksCard): Rule {
  const { weight, weightOfPoor = 'wear', cite, ...rest } = card;
  const bad: Verdict = verdictOf(weight);
  const poor: Verdict = verdictOf(weightOfPoor);
  return {
    ...rest,
    steps: [
      { weight, mustBe: 'none of', words: failing, cites: [cite] },
      { weight: weightOfPoor, mustBe: 'none of', words: poorly, cites: [cite] },
    ],
    proofs: wordProofs([
      ['yes', 'meets', 'sound'],
      ['works', 'meets', 'sound'],
      ['holds', 'meets', 'sound'],
      ['no', 'fails', bad],
      ['fails', 'fails', bad],
      ['stuck', 'fails', bad],
      ['slow', 'fails', poor],
      ['intermittent', 'fails', poor],
    ]),
  };
}
