// Why: journal lines from outside (a backup, another keeper) are checked as strictly as the journal's own, and then as entries.
import { type Entry, readEntry } from '../said/entry.ts';
import { readLine } from './journal/line.ts';
import type { Appended, Damage, Imported } from './log.ts';

const entriesAtOnce = 500;

/** Reads lines and appends what is sound. Lines may come with or without their line feed. `progress` counts lines. */
export async function importLines(
  lines: AsyncIterable<string> | Iterable<string>,
  append: (entries: readonly Entry[]) => Promise<readonly Appended[]>,
  progress?: (done: number) => void,
): Promise<Imported> {
  const damaged: Damage[] = [];
  const refused: string[] = [];
  let kept = 0;
  let already = 0;
  let line = 0;
  let batch: Entry[] = [];
  const flush = async (): Promise<void> => {
    for (const answer of await append(batch)) {
      if (answer.is === 'kept') kept++;
      else if (answer.is === 'already kept') already++;
      else refused.push(answer.id);
    }
    batch = [];
    progress?.(line);
  };
  let before: string | undefined;
  for await (const raw of lines) {
    const text = raw.endsWith('\n') ? raw.slice(0, -1) : raw;
    line++;
    if (text === '') continue;
    const read = readLine(Buffer.from(text, 'utf8'));
    if (!('sound' in read)) {
      damaged.push({ file: 'import', line, code: read.code, detail: read.detail });
      before = undefined;
      continue;
    }
    const { after, sum, n } = read.sound;
    if (before !== undefined && after !== before) {
      damaged.push({
        file: 'import',
        line,
        code: 'out-of-order',
        detail: `line ${n} was not written after the one before it`,
      });
    }
    before = sum;
    const checked = readEntry(read.sound.entry);
    if ('faults' in checked) {
      const fault = checked.faults[0];
      damaged.push({
        file: 'import',
        line,
        code: 'not-an-entry',
        detail: fault ? `${fault.path}: ${fault.message}` : '',
      });
      continue;
    }
    batch.push(read.sound.entry);
    if (batch.length >= entriesAtOnce) await flush();
  }
  if (batch.length > 0) await flush();
  return { kept, already, refused, damaged };
}
