// Why: are the chapters of a walk better than what its words alone would give? Measured on walks whose stations were marked by hand.
// WindowDiff: L. Pevzner and M. Hearst, "A Critique and Improvement of an Evaluation Metric for Text Segmentation", Computational Linguistics 28(1), 2002.
import { existsSync, readFileSync } from 'node:fs';
import { hear } from '../src/said/hear/hear.ts';
import { openWalks, walkFolder } from '../test/walks/walk-score.ts';
import { cuesOf } from '../test/walks/walk-talk.ts';
import type { Measured } from './main.ts';
import { textTiling } from './texttiling.ts';

interface Mark {
  readonly t: number;
  readonly station: string;
}

const step = 5;
/** The chapter that holds at each fifth second; a chapter is named by its number where it has no station. */
const held = (marks: readonly Mark[], end: number): string[] =>
  Array.from({ length: Math.ceil(end / step) }, (_, i) => {
    const at = i * step;
    return marks.filter((m) => m.t <= at).at(-1)?.station ?? marks[0]?.station ?? '';
  });

/** Share of windows, half a mean chapter long, in which the number of boundaries differs; 0 is perfect. */
function windowDiff(truth: readonly string[], guess: readonly string[]): number {
  const cuts = (s: readonly string[]): number[] => s.map((x, i) => (i > 0 && x !== s[i - 1] ? 1 : 0));
  const a = cuts(truth);
  const b = cuts(guess);
  const chapters = a.reduce((s, x) => s + x, 1);
  const k = Math.max(2, Math.round(truth.length / chapters / 2));
  let wrong = 0;
  let all = 0;
  for (let i = 0; i + k < a.length; i++, all++) {
    const count = (c: number[]): number => c.slice(i + 1, i + 1 + k).reduce((s, x) => s + x, 0);
    if (count(a) !== count(b)) wrong++;
  }
  return wrong / Math.max(1, all);
}

export function benchChapters(): Promise<readonly Measured[]> {
  let ours = 0;
  let tiling = 0;
  let none = 0;
  let named = 0;
  let walks = 0;
  let found = 0;
  let marked = 0;
  for (const walk of openWalks()) {
    const file = new URL(`${walk}.stations.json`, walkFolder);
    if (!existsSync(file)) continue;
    const truth = JSON.parse(readFileSync(file, 'utf8')) as Mark[];
    const cues = cuesOf(walk);
    const end = cues.at(-1)?.end ?? 0;
    const chapters = hear(cues).chapters.map((c) => ({ t: c.start, station: c.station }));
    const words = cues.flatMap((c) => c.text.split(/\s+/).map((w) => ({ w, t: c.start })));
    const topics = [0, ...textTiling(words.map((x) => x.w))].map((i) => ({
      t: words[i]?.t ?? 0,
      station: `topic ${i}`,
    }));
    const right = held(truth, end);
    const mine = held(chapters, end);
    ours += windowDiff(right, mine);
    tiling += windowDiff(right, held(topics, end));
    none += windowDiff(right, held([{ t: 0, station: 'all' }], end));
    named += right.filter((s, i) => s === mine[i]).length / Math.max(1, right.length);
    found += chapters.length;
    marked += truth.length;
    walks++;
  }
  const mean = (n: number): string => (n / Math.max(1, walks)).toFixed(2);
  return Promise.resolve([
    {
      name: `chapters of ${walks} marked walks, WindowDiff (less is better)`,
      measured: `${mean(ours)}; the right station ${Math.round((100 * named) / Math.max(1, walks))} % of the time; ${found} chapters, ${marked} marked`,
      instead: `TextTiling ${mean(tiling)}, one chapter for all ${mean(none)}; neither names a station`,
      ratio: `${(tiling / Math.max(1e-9, ours)).toFixed(2)} times closer`,
    },
  ]);
}
