// Why: on opening, every byte of the journal is checked; what is sound is served and what is not is named.
import type { Damage } from '../log.ts';
import { cutLines, origin, readLine, type SoundLine } from './line.ts';

/** How far a scan has got: the number and sum of the last sound line. */
export interface Reached {
  readonly n: number;
  readonly sum: string;
  /** A bad line, already named, stands between that one and the next. */
  readonly gap: boolean;
}

export const nothingYet: Reached = { n: 0, sum: origin, gap: false };

export interface Scanned {
  readonly reached: Reached;
  readonly damage: readonly Damage[];
  /** Where the last sound line ends, line feed included; bytes after it are a bad tail. */
  readonly soundEnd: number;
  /** Which line that is, from 1; 0 when none is sound. */
  readonly soundLines: number;
  /** The last line is sound but for its line feed. */
  readonly lacksLineFeed: boolean;
}

/**
 * Checks one segment. A bad line with sound lines after it stays where it is, named at every opening; the sound ones after
 * it are served all the same, because each line carries its own sum.
 */
export function scanSegment(
  file: string,
  bytes: Buffer,
  from: Reached,
  found: (line: SoundLine, offset: number, length: number) => void,
): Scanned {
  const damage: Damage[] = [];
  let { n, sum, gap } = from;
  let line = 0;
  let soundEnd = 0;
  let soundLines = 0;
  let lacksLineFeed = false;
  for (const raw of cutLines(bytes)) {
    line++;
    const read = readLine(raw.bytes);
    if (!('sound' in read)) {
      const code = raw.ended ? read.code : 'cut-short';
      damage.push({
        file,
        line,
        code,
        detail: raw.ended ? read.detail : `stops after ${raw.bytes.length} bytes`,
      });
      gap = true;
      continue;
    }
    const sound = read.sound;
    if (sound.n <= n) {
      damage.push({ file, line, code: 'out-of-order', detail: `line ${sound.n} stands after line ${n}` });
      gap = true;
      continue;
    }
    if (sound.after !== sum && !gap) {
      const detail = `lines between ${n} and ${sound.n} are missing or are not those it was written after`;
      damage.push({ file, line, code: 'out-of-order', detail });
    }
    gap = false;
    if (!raw.ended) {
      lacksLineFeed = true;
      damage.push({
        file,
        line,
        code: 'cut-short',
        detail: 'only the line feed is missing; the entry is whole and is kept',
      });
    }
    n = sound.n;
    soundLines = line;
    sum = sound.sum;
    soundEnd = raw.offset + raw.bytes.length + (raw.ended ? 1 : 0);
    found(sound, raw.offset, raw.bytes.length);
  }
  return { reached: { n, sum, gap }, damage, soundEnd, soundLines, lacksLineFeed };
}
