// Why: a finding says what failed; the shop needs to know which usual work that is, or that there is none.
import { aspectOf, partOf } from '../catalogue/index.ts';
import type { Finding } from '../judged/finding.ts';
import type { DefectWork } from './defect-work.ts';
import { defectWork } from './table/index.ts';

/** What a hit counts: the check that means it, its words spoken, the state or text seen, the aspect's own words. */
const worth = { means: 4, cue: 3, seen: 2, word: 1 } as const;
const enough = 2;

/**
 * The usual work that a finding comes down to: of the part's rows, the one whose checks and words fit best; the first of
 * equals. Undefined when none fits well enough: then somebody has to look.
 */
export function matchDefect(finding: Finding): DefectWork | undefined {
  let best: { readonly row: DefectWork; readonly score: number } | undefined;
  const key = `${finding.part}/${finding.aspect}`;
  const words = wordsOf(finding);
  for (const row of defectWork) {
    const isMeant = row.means.includes(key);
    if (row.part !== finding.part && !isMeant) continue;
    if (row.onlyAt !== undefined && !row.onlyAt.includes(finding.place ?? '')) continue;
    const score = (isMeant ? worth.means : 0) + scoreWords(row, words);
    if (score >= enough && (best === undefined || score > best.score)) best = { row, score };
  }
  return best?.row;
}

interface Words {
  readonly spoken: string;
  readonly seen: ReadonlySet<string>;
  readonly aspect: ReadonlySet<string>;
}

function wordsOf(finding: Finding): Words {
  const said: string[] = [];
  const seen: string[] = [];
  for (const o of finding.fact?.evidence ?? []) {
    if (o.source.from === 'speech') said.push(o.source.words);
    else if (o.source.note !== undefined) said.push(o.source.note);
    if (o.note !== undefined) said.push(o.note);
    if (o.value.is === 'state') seen.push(o.value.state);
    if (o.value.is === 'text') said.push(o.value.text);
  }
  const value = finding.fact?.value;
  if (value?.is === 'state') seen.push(value.state);
  if (value?.is === 'text') said.push(value.text);
  const aspect = aspectOf(finding.part, finding.aspect);
  const ownName = new Set(stems(`${finding.part} ${partOf(finding.part)?.name ?? ''}`));
  const aspectWords = stems(`${finding.aspect} ${aspect?.name ?? ''}`).filter((w) => !ownName.has(w));
  return {
    spoken: said.map(plain).join(' | '),
    seen: new Set(stems(seen.join(' '))),
    aspect: new Set(aspectWords),
  };
}

function scoreWords(row: DefectWork, words: Words): number {
  const cues = row.cues.filter((cue) => ` ${words.spoken} `.includes(` ${plain(cue)} `)).length;
  const own = new Set(stems([row.defect, ...row.cues].join(' ')));
  const hits = (of: ReadonlySet<string>): number => [...of].filter((w) => own.has(w)).length;
  return cues * worth.cue + hits(words.seen) * worth.seen + hits(words.aspect) * worth.word;
}

const plain = (text: string): string =>
  text
    .toLowerCase()
    .replace(/[’']/g, '')
    .replace(/[^a-z0-9]+/g, ' ')
    .trim();

const small = new Set([
  'a',
  'an',
  'the',
  'of',
  'on',
  'in',
  'at',
  'to',
  'or',
  'and',
  'is',
  'not',
  'no',
  'wont',
  'yes',
  'ok',
  'with',
  'will',
]);

/** Words without their usual endings: "cracked", "cracks" and "cracking" are one. */
const stems = (text: string): string[] =>
  plain(text)
    .split(' ')
    .filter((w) => w.length > 1 && !small.has(w))
    .map((w) => w.replace(/(ing|ed|es|s)$/, ''));
