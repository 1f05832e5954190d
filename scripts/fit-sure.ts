// Why: `npm run fit-sure` fits how sure an observation is to the annotated walks, and shows on walks left out how well that holds.
import { writeFile } from 'node:fs/promises';
import { openWalks, sealedWalks } from '../test/walks/walk-score.ts';
import {
  leftOut,
  reliabilityOf,
  type SureRow,
  straightened,
  straightenedLeftOut,
  sureRows,
} from '../test/walks/walk-sure.ts';
import { fitLogistic } from './logistic.ts';

const worked = openWalks().map((w) => sureRows(w));
const onlyScored = [...sealedWalks].map((w) => sureRows(w));
const weights = fitLogistic(worked.flat()).map((v) => Math.round(v * 1000) / 1000);
const map = straightened(onlyScored.flat(), weights).map((v) => Math.round(v * 1000) / 1000);
console.log('walks worked with, each by the weights fitted on the others:');
tell(leftOut(worked));
console.log('walks that are only scored, each set straight by the others:');
tell(straightenedLeftOut(onlyScored));

function tell(rows: readonly SureRow[]): void {
  const { bands, brier, gap } = reliabilityOf(rows);
  for (const b of bands)
    console.log(
      `${b.from.toFixed(1)}-${b.to.toFixed(1)}  ${String(b.count).padStart(5)} observations, promised ${b.promised.toFixed(2)}, right ${b.held.toFixed(2)}`,
    );
  console.log(`Brier score ${brier.toFixed(3)}, mean gap ${gap.toFixed(3)}`);
}
await writeFile(
  new URL('../src/said/hear/sure-weights.ts', import.meta.url),
  `// Why: written by \`npm run fit-sure\` from the annotated walks; not by hand.

/** One weight for each feature of sure-features.ts, in its order. */
export const sureWeights: readonly number[] = [
${weights.map((w) => `  ${w},`).join('\n')}
];

/** Offset and slope that set the score straight on walks that are only scored. */
export const sureStraight: readonly number[] = [${map.join(', ')}];
`,
);
