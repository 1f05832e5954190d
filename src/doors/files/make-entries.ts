// Why: every entry made from a file has an id that the same file gives again, so that reading a folder twice is harmless.
import { createHash } from 'node:crypto';
import { type Entry, readEntry } from '../../said/entry.ts';
import { uuidV7 } from '../../said/uuid.ts';

/** Who walked which unit, when, with what. `at` is the instant the walk began; `seed` sets one walk's ids apart from another's. */
export interface About {
  readonly dealership: string;
  readonly unit: string;
  readonly walk: string;
  readonly by: string;
  readonly device: string;
  readonly at: string;
  readonly seed: string;
  readonly title?: string;
}

type Without<T, K extends PropertyKey> = T extends unknown ? Omit<T, K> : never;
/** An entry before its envelope; `at` and `by` only where they differ from the walk's. */
export type Draft = Without<Entry, 'v' | 'id' | 'dealership' | 'unit' | 'at' | 'by' | 'device'> & {
  readonly at?: string;
  readonly by?: string;
};

/** An id that the same words give again: UUIDv7 of an instant and a hash. */
export function idFrom(at: string, ...words: readonly string[]): string {
  const hash = createHash('sha256');
  for (const w of words) hash.update(`${w.length}:${w}`);
  return uuidV7(Date.parse(at), hash.digest());
}

/**
 * Makes entries in order. The id is a hash of the seed, the content and how often that content came before, so that a row
 * put in between leaves the ids of the others as they were. Throws when a draft is not an entry: that is a mistake of the
 * reader that made it, not of the file.
 */
export function makeEntries(about: About): { readonly entries: Entry[]; make(draft: Draft): Entry } {
  const entries: Entry[] = [];
  const seen = new Map<string, number>();
  return {
    entries,
    make(draft) {
      const { at = about.at, by = about.by, ...body } = draft;
      const content = JSON.stringify([about.seed, about.unit, at, by, body]);
      const before = seen.get(content) ?? 0;
      seen.set(content, before + 1);
      const raw = {
        v: 1,
        id: idFrom(at, content, String(before)),
        dealership: about.dealership,
        unit: about.unit,
        at,
        by,
        device: about.device,
        ...body,
      };
      const read = readEntry(raw);
      if ('faults' in read) {
        throw new Error(
          `makeEntries: not an entry: ${read.faults.map((f) => `${f.path}: ${f.message}`).join('; ')} in ${content.slice(0, 300)}`,
        );
      }
      entries.push(read.entry);
      return read.entry;
    },
  };
}
