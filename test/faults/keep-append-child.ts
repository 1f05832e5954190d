// Why: the process that gets killed: it appends, and says which entries were acknowledged, and nothing else.
import { writeSync } from 'node:fs';
import { join } from 'node:path';
import { Journal } from '../../src/keep/journal/journal.ts';
import type { Appended } from '../../src/keep/log.ts';
import { openKeeper } from '../../src/keep/open-keeper.ts';
import type { Entry } from '../../src/said/entry.ts';
import { madeEntries, seeded } from './keep-entries.ts';

const [mode, folder, first, count, seed, databaseUrl] = process.argv.slice(2) as [
  string,
  string,
  string,
  string,
  string,
  string?,
];

type Append = (entries: readonly Entry[]) => Promise<readonly Appended[]>;

async function openAppend(): Promise<Append> {
  if (mode === 'journal') {
    const journal = await Journal.open(join(folder, 'journal'), { segmentBytes: 400_000 });
    return (entries) => journal.append(entries);
  }
  const keeper = await openKeeper({ folder, ...(databaseUrl ? { databaseUrl } : {}) });
  return (entries) => keeper.log.append(entries);
}

const append = await openAppend();
const dice = seeded(Number(seed));
writeSync(1, `ready ${process.pid}\n`);
const end = Number(first) + Number(count);
let next = Number(first);
/** Several callers at once, each with calls of 1 to 40 entries. */
async function appendOn(): Promise<void> {
  while (next < end) {
    const from = next;
    const size = Math.min(1 + Math.floor(dice() * 40), end - from);
    next += size;
    await append(madeEntries(from, size));
    writeSync(1, `kept ${from} ${size}\n`);
  }
}
await Promise.all([appendOn(), appendOn(), appendOn()]);
writeSync(1, 'all\n');
setInterval(() => undefined, 1000);
