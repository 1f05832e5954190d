// Why: hearing must keep up with typing; beside it two general language libraries that find numbers and denials only, in the same words.
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import nlp from 'compromise';
import { build } from 'esbuild';
import model from 'wink-eng-lite-web-model';
import winkNLP from 'wink-nlp';
import type { Cue } from '../src/said/entry.ts';
import type { hear as hearSource } from '../src/said/hear/hear.ts';
import { walkCues } from '../test/walks/walk-talk.ts';
import type { Measured } from './main.ts';
import { medianMs, showMs } from './median.ts';

/** So many words of real talk: the open walks one after the other, as often as it takes, the last cue cut short. */
function talkOf(words: number): Cue[] {
  const out: Cue[] = [];
  let count = 0;
  let after = 0;
  while (count < words) {
    for (const cue of walkCues()) {
      if (count >= words) break;
      const said = cue.text.split(/\s+/).slice(0, words - count);
      count += said.length;
      out.push({ ...cue, start: cue.start + after, end: cue.end + after, text: said.join(' ') });
    }
    after = (out.at(-1)?.end ?? 0) + 1;
  }
  return out;
}

/** The hearing as it is shipped: one bundled file, without the compiler that the sources run through here. */
async function shipped(dir: string): Promise<{ readonly hear: typeof hearSource; readonly file: string }> {
  const file = join(dir, 'hear.mjs');
  const entry = join(import.meta.dirname, '..', 'src', 'said', 'hear', 'hear.ts');
  await build({ entryPoints: [entry], bundle: true, format: 'esm', platform: 'node', outfile: file });
  const { hear } = (await import(pathToFileURL(file).href)) as { hear: typeof hearSource };
  return { hear, file };
}

/** Peak memory in MB of a process of its own that hears these cues once. */
function memoryOf(dir: string, cues: readonly Cue[]): number {
  writeFileSync(join(dir, 'cues.json'), JSON.stringify(cues));
  writeFileSync(
    join(dir, 'run.mjs'),
    "import { readFileSync } from 'node:fs';\nimport { hear } from './hear.mjs';\n" +
      "hear(JSON.parse(readFileSync(new URL('cues.json', import.meta.url), 'utf8')));\n" +
      'console.log(process.resourceUsage().maxRSS / 1024);\n',
  );
  const ran = spawnSync(process.execPath, [join(dir, 'run.mjs')], { encoding: 'utf8' });
  if (ran.status !== 0) throw new Error(ran.stderr);
  return Number(ran.stdout);
}

export async function benchHear(): Promise<readonly Measured[]> {
  const dir = mkdtempSync(join(tmpdir(), 'walkwright-hear-'));
  const { hear } = await shipped(dir);
  const cues = talkOf(10_000);
  const text = cues.map((c) => c.text).join(' ');
  for (let i = 0; i < 6; i++) hear(cues);
  const ours = await medianMs(9, () => hear(cues));
  const compromise = await medianMs(3, () => {
    const doc = nlp(text);
    return [doc.numbers().json(), doc.match('#Negative').out('array')];
  });
  const wink = winkNLP(model, ['sbd', 'negation', 'ner']);
  const find = (): unknown => {
    const doc = wink.readDoc(text);
    return [
      doc
        .entities()
        .filter((e) => e.out(wink.its.type) === 'CARDINAL')
        .out(),
      doc
        .tokens()
        .filter((t) => t.out(wink.its.negationFlag) === true)
        .out(),
    ];
  };
  find();
  const winkMs = await medianMs(5, find);
  const memory = { hearing: memoryOf(dir, cues), idle: memoryOf(dir, []) };
  const grow: string[] = [];
  let before = 0;
  for (const words of [5_000, 10_000, 20_000, 40_000]) {
    const list = talkOf(words);
    const ms = await medianMs(5, () => hear(list));
    grow.push(
      before === 0
        ? `${words / 1000}k ${showMs(ms)}`
        : `${words / 1000}k ${showMs(ms)} (x ${(ms / before).toFixed(2)})`,
    );
    before = ms;
  }
  rmSync(dir, { recursive: true, force: true });
  return [
    {
      name: 'hear 10,000 words, warm',
      measured: `${showMs(ours)} for observations`,
      instead: `compromise 14.17, numbers and denials alone: ${showMs(compromise)}`,
      ratio: `${(compromise / ours).toFixed(1)} times faster`,
    },
    {
      name: 'the same words',
      measured: showMs(ours),
      instead: `wink-nlp 2.4, numbers and denials alone: ${showMs(winkMs)}`,
      ratio: `${(winkMs / ours).toFixed(2)} of its speed`,
    },
    {
      name: 'hear twice as much',
      measured: grow.join(', '),
      instead: 'linear in length: x 2',
      ratio: '',
    },
    {
      name: 'memory of a process that hears 10,000 words',
      measured: `${memory.hearing.toFixed(0)} MB at most`,
      instead: `loading the same code alone: ${memory.idle.toFixed(0)} MB`,
      ratio: '',
    },
  ];
}
