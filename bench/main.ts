// Why: what the main jobs cost, each beside what a person would use instead, measured in one run on one machine.
import { benchAppend } from './append.ts';
import { benchBundle } from './bundle.ts';
import { benchChapters } from './chapters.ts';
import { benchFold } from './fold.ts';
import { benchHear } from './hear.ts';
import { benchPacket } from './packet.ts';
import { benchStart } from './start.ts';

/** One line of the table. */
export interface Measured {
  readonly name: string;
  readonly measured: string;
  readonly instead: string;
  readonly ratio: string;
}

const jobs: readonly (readonly [string, () => Promise<readonly Measured[]>])[] = [
  ['packet', benchPacket],
  ['hear', benchHear],
  ['chapters', benchChapters],
  ['fold', benchFold],
  ['append', benchAppend],
  ['start', benchStart],
  ['bundle', benchBundle],
];
const wanted = process.argv.slice(2);
const rows: Measured[] = [];
for (const [name, job] of jobs) {
  if (wanted.length > 0 && !wanted.includes(name)) continue;
  process.stderr.write(`measuring ${name} ...\n`);
  rows.push(...(await job()));
}
const columns = ['name', 'measured', 'instead', 'ratio'] as const;
const heads: Measured = {
  name: 'what',
  measured: 'measured',
  instead: 'what a person would use instead',
  ratio: 'ratio',
};
const widths = columns.map((c) => Math.max(...[heads, ...rows].map((r) => r[c].length)));
for (const row of [heads, ...rows])
  console.log(
    columns
      .map((c, i) => row[c].padEnd(widths[i]!))
      .join('  ')
      .trimEnd(),
  );
