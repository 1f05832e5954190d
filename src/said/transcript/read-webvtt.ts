// Why: WebVTT is what most recordings come with; a broken cue must not cost the ones beside it.
import type { Cue } from '../entry.ts';
import { plainWords } from './plain-words.ts';
import type { Puzzled } from './puzzled.ts';
import { readVttTimestamp } from './timestamp.ts';
import type { Transcript } from './transcript.ts';

const skipped = /^(?:NOTE|STYLE|REGION)(?:\s|$)/;

/** The blocks of a file: runs of lines that are not empty, with the number of the first. */
export function blocksOf(text: string): { readonly line: number; readonly lines: readonly string[] }[] {
  const blocks: { line: number; lines: string[] }[] = [];
  let open: { line: number; lines: string[] } | undefined;
  text
    .replace(/^\uFEFF/, '')
    .split(/\r\n|\n|\r/)
    .forEach((line, i) => {
      if (line.trim() === '') {
        open = undefined;
      } else if (open) {
        open.lines.push(line);
      } else {
        open = { line: i + 1, lines: [line] };
        blocks.push(open);
      }
    });
  return blocks;
}

/** Turns one block into a cue or a puzzle, with the time notation given. */
export function readBlock(
  block: { readonly line: number; readonly lines: readonly string[] },
  timestamp: (text: string) => number | undefined,
): Cue | Puzzled {
  const raw = block.lines.join('\n');
  const at = block.lines.findIndex((l) => l.includes('-->'));
  if (at < 0) return { line: block.line, code: 'no-times', raw };
  const [left = '', right = ''] = (block.lines[at] ?? '').split('-->');
  const start = timestamp(left.trim());
  const end = timestamp(right.trim().split(/\s+/)[0] ?? '');
  const line = block.line + at;
  if (start === undefined || end === undefined) return { line, code: 'bad-timestamp', raw };
  if (end < start) return { line, code: 'ends-before-it-starts', raw };
  if (end > 200_000) return { line, code: 'time-too-late', raw };
  if (at > 1) return { line: block.line, code: 'words-before-times', raw };
  const text = plainWords(block.lines.slice(at + 1).join(' '));
  return text === '' ? { line, code: 'no-words', raw } : { start, end, text };
}

/** Sorts blocks into cues and puzzles. Cues come back in order of time, ties in order of the file. */
export function gather(read: readonly (Cue | Puzzled)[]): Transcript {
  const cues: Cue[] = [];
  const puzzles: Puzzled[] = [];
  for (const one of read) {
    if ('code' in one) puzzles.push(one);
    else cues.push(one);
  }
  cues.sort((a, b) => a.start - b.start);
  return { cues, puzzles };
}

/** Reads WebVTT (W3C WebVTT 1). Comments, styles and regions are passed over; settings after the times are ignored. */
export function readWebVtt(text: string): Transcript {
  const blocks = blocksOf(text);
  const first = blocks[0];
  const puzzles: Puzzled[] = [];
  let rest = blocks;
  if (first && /^WEBVTT(?:[ \t]|$)/.test(first.lines[0] ?? '')) {
    const at = first.lines.findIndex((l) => l.includes('-->'));
    rest =
      at > 0 ? [{ line: first.line + 1, lines: first.lines.slice(1) }, ...blocks.slice(1)] : blocks.slice(1);
  } else if (first) {
    puzzles.push({ line: first.line, code: 'no-webvtt-header', raw: first.lines[0] ?? '' });
    if (!first.lines.some((l) => l.includes('-->'))) rest = blocks.slice(1);
  }
  const found = gather(
    rest
      .filter((b) => !skipped.test(b.lines[0] ?? ''))
      .flatMap(split)
      .map((b) => readBlock(b, readVttTimestamp)),
  );
  return { cues: found.cues, puzzles: [...puzzles, ...found.puzzles] };
}

/** A block in which a second line of times stands is two cues whose empty line was lost. */
export function split(block: {
  readonly line: number;
  readonly lines: readonly string[];
}): { line: number; lines: string[] }[] {
  const parts: { line: number; lines: string[] }[] = [];
  let lines: string[] = [];
  let line = block.line;
  let timed = false;
  block.lines.forEach((l, i) => {
    if (l.includes('-->') && timed) {
      const id = lines.length > 1 && /^\d+$/.test(lines.at(-1) ?? '') ? lines.splice(-1) : [];
      parts.push({ line, lines });
      lines = [...id];
      line = block.line + i - id.length;
    }
    if (l.includes('-->')) timed = true;
    lines.push(l);
  });
  parts.push({ line, lines });
  return parts;
}
