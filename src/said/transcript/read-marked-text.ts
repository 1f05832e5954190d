// Why: a person may type the words with a mark of minutes and seconds here and there; that is a transcript too.
import type { Cue } from '../entry.ts';
import type { Puzzled } from './puzzled.ts';
import { cueFrom } from './spread-words.ts';
import { readMark } from './timestamp.ts';
import type { Transcript } from './transcript.ts';

/** Reads plain text with marks like [3:07] or [1:02:03], anywhere in a line. Words before the first mark start at zero. */
export function readMarkedText(text: string): Transcript {
  const cues: Cue[] = [];
  const puzzles: Puzzled[] = [];
  let at = 0;
  let words: string[] = [];
  let marked = false;
  const close = (until?: number): void => {
    const said = words.join(' ').replace(/\s+/g, ' ').trim();
    if (said !== '') cues.push(cueFrom(at, said, until));
    words = [];
  };
  text
    .replace(/^\uFEFF/, '')
    .split(/\r\n|\n|\r/)
    .forEach((line, i) => {
      for (const piece of line.split(/(\[[^[\]]*\])/)) {
        const mark = /^\[([\d:.,]+)\]$/.exec(piece);
        const seconds = mark ? readMark(mark[1] ?? '') : undefined;
        if (mark && (seconds === undefined || seconds > 200_000)) {
          puzzles.push({ line: i + 1, code: 'bad-timestamp', raw: piece });
        } else if (seconds !== undefined) {
          if (seconds < at) puzzles.push({ line: i + 1, code: 'time-runs-back', raw: piece });
          close(seconds);
          at = seconds;
          marked = true;
        } else words.push(piece);
      }
      words.push(' ');
    });
  close();
  if (!marked && cues.length > 0) puzzles.unshift({ line: 1, code: 'no-times', raw: text.slice(0, 200) });
  cues.sort((a, b) => a.start - b.start);
  return { cues, puzzles };
}
