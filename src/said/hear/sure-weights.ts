// Why: written by `npm run fit-sure` from the annotated walks; not by hand.

/** One weight for each feature of sure-features.ts, in its order. */
export const sureWeights: readonly number[] = [
  -0.179, 2.55, 0.174, 0.209, -0.133, 0.284, -0.186, -0.05, 0.51, -0.474, -0.335, 0.201, 0.722, -0.054,
  -0.083, -0.562, -1.432, 0.114, -0.855, 1.008, 0.495, 0.407, -0.77, -0.327, -0.862, 0.183, -0.253,
];
