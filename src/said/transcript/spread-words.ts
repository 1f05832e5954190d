// Why: words without times still need a second each; they are spread evenly at the pace of ordinary speech.
import type { Cue } from '../entry.ts';

/** Seconds a spoken word takes, about 150 words a minute (common practice, no source). */
const pace = 0.4;

/** A cue for words that came without an end: it lasts as long as saying them takes, but not past `before`. */
export function cueFrom(start: number, text: string, before?: number): Cue {
  const spoken = start + Math.max(1, text.split(' ').length) * pace;
  const end = before === undefined || before <= start ? spoken : Math.min(spoken, before);
  return { start: Math.min(start, 200_000), end: Math.min(Math.max(start, end), 200_000), text };
}
