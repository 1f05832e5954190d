// Why: written by `npm run fit-sure` from the annotated walks; not by hand.

/** One weight for each feature of sure-features.ts, in its order. */
export const sureWeights: readonly number[] = [
  1.864, 0.972, 0.859, 0.855, -0.39, 0.491, -0.36, -0.457, 0.377, -0.893, -0.482, -0.18, 0.63, -0.175, -0.466,
  -0.49, -1.029, 0.403, -0.848, 0.325, 0.464, 0.229, -0.438, -0.332, -0.992, -0.427, -0.414,
];

/** Offset and slope that set the score straight on walks that are only scored. */
export const sureStraight: readonly number[] = [-1.338, 1.035];
