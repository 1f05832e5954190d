// Why: the less used jobs (bench, docs, demo) start the same way: set up, then run their TypeScript.
import { ensureBuilt, ensurePackages, requireNode, run } from './setup.mjs';

const jobs = {
  bench: 'bench/main.ts',
  docs: 'scripts/docs/write.ts',
  demo: 'demo/make/main.ts',
  'hear-fuzz': 'scripts/hear-fuzz.ts',
  'fit-sure': 'scripts/fit-sure.ts',
  'fit-stops': 'scripts/fit-stops.ts',
  'said-score': 'scripts/said-score.ts',
  'hear-score': 'scripts/hear-score.ts',
};
const name = process.argv[2];
const file = jobs[name];
if (!file) {
  console.error(`There is no job "${name}". There are: ${Object.keys(jobs).join(', ')}.`);
  process.exit(2);
}
requireNode();
ensurePackages();
if (name === 'bench') await ensureBuilt();
process.exit(run(process.execPath, ['--import', 'tsx', file, ...process.argv.slice(3)]));
