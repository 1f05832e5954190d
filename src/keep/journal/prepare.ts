// Why: decides for each entry of a group whether it is new, was there before, or takes an id that means something else.
import type { Entry } from '../../said/entry.ts';
import { canonicalJson } from '../canonical.ts';
import type { Appended, Position } from '../log.ts';
import { type SoundLine, writeLine } from './line.ts';
import type { Reached } from './scan.ts';

/** A line that is ready to be written; `offset` counts from the start of the group. */
export interface Prepared {
  readonly line: SoundLine;
  readonly offset: number;
  readonly length: number;
}

export interface PreparedGroup {
  readonly bytes: Buffer;
  readonly lines: readonly Prepared[];
  /** One list for each call, in the order of the calls. */
  readonly answers: readonly (readonly Appended[])[];
}

/** What is kept already. */
export interface KeptBefore {
  last(dealership: string): Position;
  find(
    dealership: string,
    id: string,
  ): Promise<{ readonly position: Position; readonly entry: Entry } | undefined>;
}

/** Prepares the calls of a group, in order; nothing is changed until the group is on disk. */
export async function prepareGroup(
  calls: readonly (readonly Entry[])[],
  from: Reached,
  before: KeptBefore,
): Promise<PreparedGroup> {
  const lines: Prepared[] = [];
  const texts: string[] = [];
  const answers: Appended[][] = [];
  const fresh = new Map<string, { position: Position; entry: Entry }>();
  const last = new Map<string, Position>();
  let { n, sum } = from;
  let offset = 0;
  for (const call of calls) {
    const answer: Appended[] = [];
    answers.push(answer);
    for (const entry of call) {
      const { dealership, id } = entry;
      const key = `${dealership} ${id}`;
      const there = fresh.get(key) ?? (await before.find(dealership, id));
      if (there) {
        const same = canonicalJson(there.entry) === canonicalJson(entry);
        answer.push(
          same
            ? { is: 'already kept', id, position: there.position }
            : { is: 'refused', id, code: 'id-taken' },
        );
        continue;
      }
      const text = JSON.stringify(entry);
      const position = (last.get(dealership) ?? before.last(dealership)) + 1;
      const after = sum;
      const written = writeLine(++n, position, after, text);
      sum = written.sum;
      const length = Buffer.byteLength(written.line);
      lines.push({ line: { n, position, after, sum, text, entry }, offset, length: length - 1 });
      texts.push(written.line);
      offset += length;
      fresh.set(key, { position, entry });
      last.set(dealership, position);
      answer.push({ is: 'kept', id, position });
    }
  }
  return { bytes: Buffer.from(texts.join('')), lines, answers };
}
