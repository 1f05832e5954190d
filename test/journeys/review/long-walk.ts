// Why: a walk of 25 minutes with everything a reviewer meets, made of the invented walks that are there already.
import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import type { Cue } from '../../../src/said/entry.ts';
import { hear } from '../../../src/said/hear/hear.ts';
import { hearJson } from '../../../src/said/hear/hear-json.ts';
import type { HeardObservation } from '../../../src/said/hear/heard.ts';
import { readTranscript } from '../../../src/said/transcript/read-transcript.ts';

const root = resolve(import.meta.dirname, '..', '..', '..');
const cuesOf = (path: string): readonly Cue[] =>
  readTranscript(path, readFileSync(resolve(root, path), 'utf8')).cues;

/** Said at the end, coming round again: readings that contradict what was said before. */
export const comingRound: readonly string[] = [
  'Okay, coming round once more. Left front tire, tread is six thirty-seconds.',
  'Right front tire, ninety psi. The water pump does not work.',
  'The microwave does not work. Solar panels, three hundred watts.',
];

/**
 * One walk of walks, one after the other, with pauses for looking after every tenth cue until it is as long as wanted.
 * Nobody talks without a pause for 25 minutes; how fast he talks between the pauses is left as it was.
 */
export function longWalk(
  paths: readonly string[],
  seconds: number,
  more: readonly string[] = [],
): readonly Cue[] {
  const walks = paths.map(cuesOf);
  const spoken = walks.reduce((s, w) => s + (w.at(-1)?.end ?? 0), 0) + more.length * 6;
  const count = walks.reduce((n, w) => n + w.length, 0);
  const pause = Math.max(0, seconds - spoken) / Math.floor(count / 10);
  const all: Cue[] = [];
  let shift = 0;
  let nth = 0;
  for (const walk of walks) {
    for (const c of walk) {
      all.push({ ...c, start: c.start + shift, end: c.end + shift });
      nth += 1;
      if (nth % 10 === 0) shift += pause;
    }
    shift += walk.at(-1)?.end ?? 0;
  }
  let at = all.at(-1)?.end ?? 0;
  for (const text of more) {
    all.push({ start: at, end: at + 6, text });
    at += 6;
  }
  return all;
}

const stamp = (s: number): string => {
  const ms = Math.round(s * 1000);
  const two = (n: number): string => String(Math.floor(n)).padStart(2, '0');
  return `${two(ms / 3_600_000)}:${two((ms / 60_000) % 60)}:${two((ms / 1000) % 60)}.${String(ms % 1000).padStart(3, '0')}`;
};
export const asVtt = (cues: readonly Cue[]): string =>
  `WEBVTT\n\n${cues.map((c) => `${stamp(c.start)} --> ${stamp(c.end)}\n${c.text}\n`).join('\n')}`;

type Plain = Pick<HeardObservation, 'part' | 'place' | 'aspect' | 'value'>;
/** What is heard and in which words, without its second. */
export const signOf = (o: Plain, words: string): string =>
  JSON.stringify([o.part, o.place ?? '', o.aspect, o.value, words.slice(0, 24)]);

/** What an annotated walk says was misheard in it, by its scorer. */
export async function misheardIn(walk: string): Promise<ReadonlySet<string>> {
  const data = resolve(root, 'test', 'data', 'walks');
  const { score } = (await import(resolve(data, 'score.mjs'))) as {
    score: (gold: unknown, rows: unknown) => { bad: readonly (readonly [unknown, string])[] };
  };
  const heard = hear(cuesOf(`test/data/walks/${walk}.vtt`));
  const rows = hearJson(heard);
  const gold: unknown = JSON.parse(readFileSync(resolve(data, `${walk}.gold.json`), 'utf8'));
  const bad = new Set(score(gold, rows).bad.map(([row]) => row));
  return new Set(heard.observations.filter((_, i) => bad.has(rows[i])).map((o) => signOf(o, o.words)));
}
