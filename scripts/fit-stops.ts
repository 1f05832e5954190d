// Why: `npm run fit-stops` learns from talk that has its stops where they belong in talk that came without; written to stop-weights.ts. `--test` shows how well it does on talk left out.
// Averaged perceptron (Y. Freund and R. Schapire, "Large margin classification using the perceptron algorithm", Machine Learning 37, 1999).
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { writeFile } from 'node:fs/promises';
import type { Cue } from '../src/said/entry.ts';
import { kindsOf, stopFeatures } from '../src/said/hear/stop-features.ts';
import { type Word, wordsOf } from '../src/said/hear/word.ts';
import { readTranscript } from '../src/said/transcript/read-transcript.ts';
import { openWalks, walkFolder } from '../test/walks/walk-score.ts';

/** A stream and the stop before each word: 0 none, 1 comma or the like, 2 full stop. */
interface Talk {
  readonly name: string;
  readonly words: readonly Word[];
  readonly stops: readonly number[];
}

/** The stream as it would have come without stops and capitals, and what was taken away. */
function bared(name: string, cues: readonly Cue[]): Talk {
  const full = wordsOf(cues).words;
  const words = full.map((w): Word => ({ ...w, stop: 0, capital: false }));
  return { name, words, stops: full.map((_, i) => full[i - 1]?.stop ?? 0) };
}

const root = new URL('../', import.meta.url);
const inside = (folder: string): URL[] =>
  readdirSync(new URL(folder, root))
    .filter((f) => f.endsWith('.vtt'))
    .map((f) => new URL(folder + f, root));
const demos = readdirSync(new URL('demo/walks/', root)).flatMap((d) => {
  const file = new URL(`demo/walks/${d}/walk.vtt`, root);
  return existsSync(file) ? [file] : [];
});
const files = [
  ...openWalks().map((w) => new URL(`${w}.vtt`, walkFolder)),
  ...inside('test/data/talk/'),
  ...demos,
];
const talks = files
  .map((file) => {
    const text = readFileSync(file, 'utf8');
    return bared(file.pathname, readTranscript(file.pathname, text).cues);
  })
  // talk that itself came without stops teaches nothing about them
  .filter((t) => t.stops.filter((x) => x > 0).length * 22 > t.words.length);

type Weights = Map<string, Float64Array>;

/** Keys that turn up in at least two talks: what one speaker alone says teaches nothing about another. */
function shared(list: readonly Talk[]): ReadonlySet<string> {
  const seen = new Map<string, number>();
  list.forEach((talk) => {
    const own = new Set<string>();
    const kinds = kindsOf(talk.words);
    for (let i = 1, since = 1; i < talk.words.length; i++, since++) {
      for (const f of stopFeatures(talk.words, kinds, i, since)) own.add(f);
      if ((talk.stops[i] ?? 0) > 0) since = 0;
    }
    for (const f of own) seen.set(f, (seen.get(f) ?? 0) + 1);
  });
  return new Set([...seen].flatMap(([f, n]) => (n >= 2 ? [f] : [])));
}

function learn(list: readonly Talk[], rounds: number): Weights {
  const w: Weights = new Map();
  const sum: Weights = new Map();
  const known = shared(list);
  let clock = 1;
  const at = (m: Weights, f: string): Float64Array => {
    const have = m.get(f);
    if (have) return have;
    const made = new Float64Array(3);
    m.set(f, made);
    return made;
  };
  for (let round = 0; round < rounds; round++) {
    for (const talk of list) {
      const kinds = kindsOf(talk.words);
      let since = 0;
      for (let i = 1; i < talk.words.length; i++) {
        since++;
        const features = stopFeatures(talk.words, kinds, i, since).filter((f) => known.has(f));
        const score = new Float64Array(3);
        for (const f of features) {
          const v = w.get(f);
          if (v) for (let c = 0; c < 3; c++) score[c] = (score[c] ?? 0) + (v[c] ?? 0);
        }
        const truth = talk.stops[i] ?? 0;
        let guess = 0;
        for (let c = 1; c < 3; c++) if ((score[c] ?? 0) > (score[guess] ?? 0)) guess = c;
        if (guess !== truth) {
          for (const f of features) {
            const v = at(w, f);
            const s = at(sum, f);
            v[truth] = (v[truth] ?? 0) + 1;
            v[guess] = (v[guess] ?? 0) - 1;
            s[truth] = (s[truth] ?? 0) + clock;
            s[guess] = (s[guess] ?? 0) - clock;
          }
        }
        clock++;
        if (truth > 0) since = 0;
      }
    }
  }
  for (const [f, v] of w) {
    const s = sum.get(f);
    for (let c = 0; c < 3; c++) v[c] = (v[c] ?? 0) - (s?.[c] ?? 0) / clock;
  }
  return w;
}

/** Stops found, right and missed, of any kind; and full stops. */
function tell(
  weights: Weights,
  talk: Talk,
): { tp: number; fp: number; fn: number; full: number; fullOf: number } {
  const kinds = kindsOf(talk.words);
  const r = { tp: 0, fp: 0, fn: 0, full: 0, fullOf: 0 };
  let since = 0;
  for (let i = 1; i < talk.words.length; i++) {
    since++;
    const score = [0, 0, 0];
    for (const f of stopFeatures(talk.words, kinds, i, since)) {
      const v = weights.get(f);
      if (v) for (let c = 0; c < 3; c++) score[c] = (score[c] ?? 0) + (v[c] ?? 0);
    }
    const guess = score.indexOf(Math.max(...score));
    const truth = talk.stops[i] ?? 0;
    if (guess > 0 && truth > 0) r.tp++;
    else if (guess > 0) r.fp++;
    else if (truth > 0) r.fn++;
    if (truth === 2) {
      r.fullOf++;
      if (guess === 2) r.full++;
    }
    if (guess > 0) since = 0;
  }
  return r;
}

const total = { tp: 0, fp: 0, fn: 0, full: 0, fullOf: 0 };
for (const talk of process.argv.includes('--test') ? talks : []) {
  const r = tell(
    learn(
      talks.filter((o) => o !== talk),
      6,
    ),
    talk,
  );
  for (const k of Object.keys(total) as (keyof typeof total)[]) total[k] += r[k];
}
if (total.tp > 0)
  console.log(
    `each talk by the weights of the others: of stops found ${((100 * total.tp) / (total.tp + total.fp)).toFixed(1)} % right, of stops there ${((100 * total.tp) / (total.tp + total.fn)).toFixed(1)} % found, ${((100 * total.full) / total.fullOf).toFixed(1)} % of the full ones as such`,
  );
const weights = learn(talks, 6);
const kept = [...weights]
  .map(([f, v]) => [f, Array.from(v, (x) => Math.round(x))] as const)
  .filter(([, v]) => Math.max(...v) - Math.min(...v) >= 3)
  .sort(([a], [b]) => (a < b ? -1 : 1));
await writeFile(
  new URL('../src/said/hear/stop-weights.ts', import.meta.url),
  `// Why: written by \`npm run fit-stops\` from talk with stops; not by hand. Key, then what it says for no stop, a comma, a full stop.
import { wordTable } from './word-table.ts';

export const stopWeights: Readonly<Record<string, readonly [number, number, number]>> = wordTable(
  JSON.parse(${JSON.stringify(JSON.stringify(Object.fromEntries(kept)))}) as Record<string, [number, number, number]>,
);
`,
);
console.log(`${weights.size} weights learnt, ${kept.length} kept`);
