// Why: `npm run said-score -- FILE` shows how the batteries of short pieces fare, and what is missed or made up.
import { readdirSync } from 'node:fs';
import { pathToFileURL } from 'node:url';
import { readSaid, scoreBattery } from '../test/walks/said-score.ts';

const folder = new URL('../test/data/said/', import.meta.url);
const args = process.argv.slice(2).filter((a) => !a.startsWith('--'));
const files =
  args.length > 0
    ? args.map((a) => pathToFileURL(a))
    : readdirSync(folder)
        .filter((f) => f.endsWith('.said'))
        .map((f) => new URL(f, folder));
for (const file of files) {
  const s = scoreBattery(readSaid(file));
  const pct = (n: number): string => `${(100 * n).toFixed(1)} %`;
  console.log(
    `${file.pathname.split('/').at(-1)}: ${s.facts} facts, recall ${pct(s.recall)}, precision ${pct(s.precision)}, places ${pct(s.places)}`,
  );
  if (args.length > 0 || process.argv.includes('--verbose')) for (const f of s.faults) console.log(`  ${f}`);
}
