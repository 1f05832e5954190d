// Why: `npm run fit-sure` fits how sure an observation is to the annotated walks, and shows on walks left out how well that holds.
import { writeFile } from 'node:fs/promises';
import { pathToFileURL } from 'node:url';
import { openWalks, walkNames } from '../test/walks/walk-score.ts';
import { reliabilityOf, sureRows } from '../test/walks/walk-sure.ts';
import { fitLogistic } from './logistic.ts';

const at = process.argv.indexOf('--in');
const dir = at >= 0 ? pathToFileURL(`${process.argv[at + 1]}/`) : undefined;
const walks = [
  ...openWalks().map((w) => ({ walk: w, rows: sureRows(w) })),
  ...(dir ? walkNames(dir).map((w) => ({ walk: w, rows: sureRows(w, dir) })) : []),
];
const held = walks.flatMap(({ walk, rows }) => {
  const weights = fitLogistic(walks.filter((o) => o.walk !== walk).flatMap((o) => o.rows));
  return rows.map((r) => ({ ...r, weights }));
});
console.log('each walk by the weights fitted on the others:');
const { bands, brier, gap } = reliabilityOf(held);
for (const b of bands)
  console.log(
    `${b.from.toFixed(1)}-${b.to.toFixed(1)}  ${String(b.count).padStart(5)} observations, promised ${b.promised.toFixed(2)}, right ${b.held.toFixed(2)}`,
  );
console.log(`Brier score ${brier.toFixed(3)}, mean gap ${gap.toFixed(3)}`);
const weights = fitLogistic(walks.flatMap((w) => w.rows)).map((v) => Math.round(v * 1000) / 1000);
await writeFile(
  new URL('../src/said/hear/sure-weights.ts', import.meta.url),
  `// Why: written by \`npm run fit-sure\` from the annotated walks; not by hand.

/** One weight for each feature of sure-features.ts, in its order. */
export const sureWeights: readonly number[] = [
${weights.map((w) => `  ${w},`).join('\n')}
];
`,
);
