// Why: open speech recognisers write JSON in a handful of shapes; all of them hold segments, some of them words.
import type { Cue } from '../entry.ts';
import { plainWords } from './plain-words.ts';
import type { Puzzled } from './puzzled.ts';
import { cueFrom } from './spread-words.ts';
import { readMark } from './timestamp.ts';
import type { Transcript } from './transcript.ts';

type Fields = Readonly<Record<string, unknown>>;
interface TimedWord {
  readonly start: number;
  readonly end: number;
  readonly text: string;
}

const isFields = (x: unknown): x is Fields => typeof x === 'object' && x !== null && !Array.isArray(x);
const most = 12;

function secondsOf(x: unknown, scale = 1): number | undefined {
  if (typeof x === 'number') return Number.isFinite(x) && x >= 0 ? x * scale : undefined;
  if (typeof x !== 'string') return undefined;
  const plain = /^(\d+(?:\.\d+)?)s?$/.exec(x.trim());
  return plain ? Number(plain[1]) * scale : readMark(x.trim());
}

const firstOf = (x: Fields, names: readonly string[]): unknown =>
  names.map((n) => x[n]).find((v) => v !== undefined && v !== null);

function timesOf(x: Fields): readonly [number | undefined, number | undefined] {
  const pair = firstOf(x, ['timestamp']);
  if (Array.isArray(pair)) return [secondsOf(pair[0]), secondsOf(pair[1])];
  const offsets = x.offsets;
  if (isFields(offsets)) return [secondsOf(offsets.from, 0.001), secondsOf(offsets.to, 0.001)];
  const stamps = x.timestamps;
  if (isFields(stamps)) return [secondsOf(stamps.from), secondsOf(stamps.to)];
  return [
    secondsOf(firstOf(x, ['start', 'start_time', 'startTime', 'from'])),
    secondsOf(firstOf(x, ['end', 'end_time', 'endTime', 'to'])),
  ];
}

const textOf = (x: Fields): string => {
  const t = firstOf(x, ['text', 'transcript', 'word', 'punctuated_word', 'content']);
  return typeof t === 'string' ? plainWords(t) : '';
};

/** The list of segments, wherever the shape keeps it. */
function segmentsOf(x: unknown): readonly unknown[] | undefined {
  if (Array.isArray(x)) return x;
  if (!isFields(x)) return undefined;
  for (const name of [
    'segments',
    'transcription',
    'chunks',
    'utterances',
    'results',
    'result',
    'monologues',
  ]) {
    const found = x[name];
    if (Array.isArray(found)) return found;
    if (isFields(found)) return segmentsOf(found);
  }
  return typeof x.text === 'string' || Array.isArray(x.words) ? [x] : undefined;
}

function timedWords(x: Fields): TimedWord[] | undefined {
  const list = firstOf(x, ['words', 'tokens', 'elements']);
  if (!Array.isArray(list)) return undefined;
  const words: TimedWord[] = [];
  for (const one of list) {
    if (!isFields(one)) return undefined;
    const [start, end] = timesOf(one);
    const text = textOf(one);
    if (text === '' || start === undefined) continue;
    words.push({ start, end: Math.max(start, end ?? start), text });
  }
  return words.length > 0 ? words : undefined;
}

/** Words with their own times become short cues, so that no word is far from its second. */
const cuesOfWords = (words: readonly TimedWord[]): Cue[] =>
  Array.from({ length: Math.ceil(words.length / most) }, (_, i) => {
    const few = words.slice(i * most, (i + 1) * most);
    const start = few[0]?.start ?? 0;
    return { start, end: Math.max(start, ...few.map((w) => w.end)), text: few.map((w) => w.text).join(' ') };
  });

/**
 * Reads recogniser JSON: segments with or without words and times. A segment without times follows the one before it at
 * the pace of speech and is reported. Text that is not JSON is one puzzle.
 */
export function readRecognizerJson(text: string): Transcript {
  let root: unknown;
  try {
    root = JSON.parse(text.replace(/^\uFEFF/, ''));
  } catch {
    return { cues: [], puzzles: [{ line: 1, code: 'not-json', raw: text.slice(0, 2000) }] };
  }
  const segments = segmentsOf(root);
  if (!segments) return { cues: [], puzzles: [{ line: 1, code: 'no-segments', raw: text.slice(0, 2000) }] };
  const cues: Cue[] = [];
  const puzzles: Puzzled[] = [];
  for (const [i, raw] of segments.entries()) {
    const best =
      isFields(raw) && Array.isArray(raw.alternatives) && isFields(raw.alternatives[0])
        ? { ...raw, ...raw.alternatives[0] }
        : raw;
    const puzzle = (code: string): void => {
      puzzles.push({ line: i + 1, code, raw: JSON.stringify(raw).slice(0, 2000) });
    };
    if (!isFields(best)) {
      puzzle('not-a-segment');
      continue;
    }
    const words = timedWords(best);
    const said = textOf(best);
    if (words && words.map((w) => w.text).join('').length >= said.replaceAll(' ', '').length * 0.9) {
      cues.push(...cuesOfWords(words));
      continue;
    }
    if (said === '') {
      puzzle('no-words');
      continue;
    }
    const [start, end] = timesOf(best);
    if (start === undefined) puzzle('no-times');
    const from = start ?? cues.at(-1)?.end ?? 0;
    cues.push(end !== undefined && end >= from ? { start: from, end, text: said } : cueFrom(from, said));
  }
  const late = cues.filter((c) => c.end > 200_000);
  for (const c of late) puzzles.push({ line: 0, code: 'time-too-late', raw: JSON.stringify(c) });
  return { cues: cues.filter((c) => c.end <= 200_000).sort((a, b) => a.start - b.start), puzzles };
}
