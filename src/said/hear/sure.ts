// Why: "sure" must mean what it says: of a hundred observations that are 0.8 sure, about eighty should be right.
// Logistic regression fitted on the annotated walks by `npm run fit-sure`; docs/generated/hearing.md shows how well it holds.
import { sureFeatures } from './sure-features.ts';
import { sureStraight, sureWeights } from './sure-weights.ts';

/** The raw score of features: their weighted sum. */
export const scoreOf = (features: readonly number[], weights: readonly number[] = sureWeights): number =>
  sureFeatures.reduce((z, _, k) => z + (features[k] ?? 0) * (weights[k] ?? 0), 0);

/**
 * The probability, 0 to 1, that an observation with these features is right. The weights come from walks that were worked
 * with, where hearing does better than on a stranger's; two numbers from walks that are only scored set that straight
 * (J. Platt, "Probabilistic outputs for support vector machines", 1999).
 */
export const sureOf = (features: readonly number[]): number => straight(scoreOf(features), sureStraight);

/** A score as a probability, set straight by [offset, slope]. */
export const straight = (score: number, [offset = 0, slope = 1]: readonly number[]): number =>
  1 / (1 + Math.exp(-(offset + slope * score)));

/** What is less sure than this is more likely wrong than a person would bear to read; its words stay in the transcript, unused. */
export const leastSure = 0.2;
