// Why: "sure" must mean what it says: of a hundred observations that are 0.8 sure, about eighty should be right.
// Logistic regression fitted on the annotated walks by `npm run fit-sure`; docs/generated/hearing.md shows how well it holds.
import { sureFeatures } from './sure-features.ts';
import { sureWeights } from './sure-weights.ts';

/** The probability, 0 to 1, that an observation with these features is right. */
export function sureOf(features: readonly number[], weights: readonly number[] = sureWeights): number {
  let z = 0;
  for (let k = 0; k < sureFeatures.length; k++) z += (features[k] ?? 0) * (weights[k] ?? 0);
  return 1 / (1 + Math.exp(-z));
}

/** What is less sure than this is more likely wrong than a person would bear to read; its words stay in the transcript, unused. */
export const leastSure = 0.2;
