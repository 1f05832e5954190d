// Why: written by `npm run fit-sure` from the annotated walks; not by hand.

/** One weight for each feature of sure-features.ts, in its order. */
export const sureWeights: readonly number[] = [
  1.532, 1.291, 0.931, 0.671, -0.643, 0.476, -0.189, -0.497, -0.016, -0.107, -0.627, -0.169, 0.754, -0.074,
  -0.417, -0.226, -0.921, 0.293, -0.904, 0.005, 0.059, 0.019, -0.165, -0.033, -0.548, -0.399, -0.125,
];

/** Offset and slope that set the score straight on walks that are only scored. */
export const sureStraight: readonly number[] = [-1.295, 1.024];
