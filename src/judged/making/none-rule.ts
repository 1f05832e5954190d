// Why: "is there a leak, a crack, a burn" is asked of many things in the same way.
import type { Citation } from '../../standards/standard.ts';
import type { Rule, Verdict, Weight } from '../rule.ts';
import { verdictOf } from '../verdict.ts';
import type { Asked } from './asked.ts';
import { wordProofs } from './proofs.ts';

export interface NoneCard extends Asked {
  readonly weight: Weight;
  readonly cite: Citation;
}

/** A rule that asks whether a bad thing is there. The aspect must be one whose good answer is "no". */
export function noneRule(card: NoneCard): Rule {
  const { weight, cite, ...rest } = card;
  const bad: Verdict = verdictOf(weight);
  return {
    ...rest,
    steps: [{ weight, mustBe: 'none of', words: ['yes'], cites: [cite] }],
    proofs: wordProofs([
      ['no', 'meets', 'sound'],
      ['absent', 'meets', 'sound'],
      ['dry', 'meets', 'sound'],
      ['yes', 'fails', bad],
      ['present', 'fails', bad],
      ['leaking', 'fails', bad],
    ]),
  };
}
