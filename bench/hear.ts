// Why: hearing must keep up with typing; beside it a general language library finding numbers only.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import nlp from 'compromise';
import { hear } from '../src/said/hear/hear.ts';
import { readWebVtt } from '../src/said/transcript/read-webvtt.ts';
import type { Measured } from './main.ts';
import { medianMs, showMs } from './median.ts';

export async function benchHear(): Promise<readonly Measured[]> {
  const file = join(import.meta.dirname, '..', 'demo', 'walks', 'hollowell-tern-38', 'walk.vtt');
  const once = readWebVtt(readFileSync(file, 'utf8')).cues;
  const words = once.reduce((n, c) => n + c.text.split(/\s+/).length, 0);
  const times = Math.ceil(10_000 / words);
  const length = once.at(-1)!.end + 1;
  const cues = Array.from({ length: times }, (_, i) =>
    once.map((c) => ({ ...c, start: c.start + i * length, end: c.end + i * length })),
  ).flat();
  const scale = 10_000 / (words * times);
  const text = cues.map((c) => c.text).join(' ');
  const ours = (await medianMs(5, () => hear(cues, { vehicle: 'class-a-diesel' }))) * scale;
  const theirs = (await medianMs(3, () => nlp(text).match('#Value').out('array'))) * scale;
  return [
    {
      name: 'hear 10,000 words',
      measured: `${showMs(ours)} for observations`,
      instead: `compromise 14.17, finding numbers alone: ${showMs(theirs)}`,
      ratio: `${(theirs / ours).toFixed(1)} times faster`,
    },
  ];
}
