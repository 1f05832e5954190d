// Why: some ways of not knowing are whole phrases: "no idea", "ran out of day", "no tester on me".
import type { Clause } from './clause.ts';
import { phraseList } from './phrase-index.ts';
import type { Talk } from './talk.ts';
import { tools, unknownPhrases, type Why } from './unknown-words.ts';

/** Something not known, and the words that say so. */
export interface UnknownHit {
  readonly from: number;
  /** One past the last word of the phrase. */
  readonly to: number;
  readonly why: Why;
  readonly verb: string;
  /** Said of knowledge in general: it needs a part named close by. */
  readonly general: boolean;
}

const coded =
  /^(?:dates?|codes?|numbers?|stickers?|plates?|tags?|labels?|dot|stamps?|serials?|gauges?|dials?)$/;
const plainlyUnseen = /visible|readable|legible|access|reach/;

/** A whole phrase that says so: "no idea", "left that alone", "no paper on that". */
export function phraseAt(talk: Talk, clause: Clause, i: number): UnknownHit | undefined {
  const { words } = talk.marks;
  const paper = papersAt(talk, clause, i);
  if (paper) return paper;
  const put = putOff(talk, clause, i);
  if (put) return put;
  const hit = unknownPhrases.at(words, i);
  const why = hit?.values[0];
  if (!hit || !why || i + hit.length > clause.to) return undefined;
  if (talk.scopes.elsewhere[i] === 1 && words[i + hit.length - 1]?.norm !== 'mine') return undefined;
  const text = words
    .slice(i, i + hit.length)
    .map((w) => w.norm)
    .join(' ');
  if (why === 'could not be seen or reached' && !plainlyUnseen.test(text)) {
    let k = i;
    while (k > 0 && i - k < 16 && talk.marks.sentenceOf[k - 1] === clause.sentence) k--;
    if (!words.slice(k, clause.to).some((w) => coded.test(w.norm))) return undefined;
  }
  // "before I forget", "in case I forgot": nothing is not known
  if (/forg[eo]t$/.test(text) && /^(?:before|lest|if|case|when)$/.test(words[i - 1]?.norm ?? ''))
    return undefined;
  const general =
    /^(?:not (?:sure|certain|positive)|unsure|hard to|a mystery|next time|pending|awaiting|not yet)/.test(
      text,
    );
  return { from: i, to: i + hit.length, why, verb: text, general };
}

/** "Road test, later", "drop test, none": a thing named, and by itself that it was put off. */
function putOff(talk: Talk, clause: Clause, i: number): UnknownHit | undefined {
  const { words, sentenceOf, clauseOf } = talk.marks;
  const n = words[i]?.norm ?? '';
  if (clause.from !== i || clause.to !== i + 1 || i === 0) return undefined;
  let from = i - 1;
  while (from > 0 && clauseOf[from - 1] === clauseOf[i - 1]) from--;
  if (sentenceOf[from] !== clause.sentence || i - from > 5) return undefined;
  if (n === 'later' || n === 'tomorrow' || n === 'skipped')
    return { from: i, to: i + 1, why: 'not tried', verb: 'later', general: true };
  if (n === 'none' && /^(?:test|tests|check|reading|readings)$/.test(words[i - 1]?.norm ?? ''))
    return { from: i, to: i + 1, why: 'not tried', verb: 'test', general: true };
  return undefined;
}

const paper = /^(?:paper|papers|paperwork|records?|receipts?|documentation|invoices?|slips|history)$/;
const lacks = phraseList([
  'no',
  "don't have",
  "don't have any",
  'do not have',
  'do not have any',
  "haven't got any",
  'have no',
  'has no',
  'had no',
  'got no',
  "hasn't got any",
  "doesn't have any",
  "doesn't have",
  "ain't got no",
  'without',
]);
/** "I don't have any paper on that": what was done is not known. */
function papersAt(talk: Talk, clause: Clause, i: number): UnknownHit | undefined {
  const lack = lacks.at(talk.marks.words, i);
  const at = i + (lack?.length ?? 0);
  if (!lack || at >= clause.to || !paper.test(talk.marks.words[at]?.norm ?? '')) return undefined;
  const bare = /^(?:no|without|has|had|hasn't)$/.test(talk.marks.words[i]?.norm ?? '');
  if (
    bare &&
    (!/^(?:on|for|of|to|about|with)$/.test(
      at + 1 < clause.to ? (talk.marks.words[at + 1]?.norm ?? '') : '',
    ) ||
      /^(?:any|whatever|whatsoever|it|this|her)$/.test(
        at + 2 < clause.to ? (talk.marks.words[at + 2]?.norm ?? '') : '',
      ))
  )
    return undefined;
  return { from: i, to: at + 1, why: 'not known', verb: 'paper', general: false };
}

/** "I don't own a tread gauge", "no tester on me", "left my meter at the shop". */
export function toolAt(talk: Talk, clause: Clause, i: number): UnknownHit | undefined {
  const { words } = talk.marks;
  const norm = (k: number): string => (k < clause.to ? (words[k]?.norm ?? '') : '');
  const no = norm(i) === 'no';
  let k = i;
  if (/^(?:don't|didn't|haven't|ain't|dont|never)$/.test(norm(i))) {
    if (!/^(?:own|have|got|carry|bring|brought)$/.test(norm(i + 1))) return undefined;
    if (!/^(?:i|we)$/.test(norm(i - 1)) && i !== clause.from) return undefined;
    k = i + 2;
  } else if (/^(?:left|forgot|need|without)$/.test(norm(i)) && /^(?:my|the|our|a)$/.test(norm(i + 1)))
    k = i + 1;
  else if (no) k = i + 1;
  else return undefined;
  const body = k;
  for (; k < body + 6; k++) {
    const n = norm(k);
    if (tools.has(n)) break;
    if (/^(?:those|them)$/.test(n) && norm(k - 1) === 'of' && tools.has(norm(k + 1))) continue;
    if (n === '' || /^(?:no|not|but|and|to|is|are|was|on|in|so)$/.test(n)) return undefined;
  }
  while (tools.has(norm(k + 1))) k++;
  const n = norm(k);
  if (!tools.has(n) && !tools.has(n.replace(/s$/, ''))) return undefined;
  const after = norm(k + 1);
  const atHand =
    /^(?:on|with|handy|today|here|along|for)$/.test(after) &&
    /^(?:me|us|here|today|handy|along|hand|it|that|those|this|)$/.test(
      /^(?:on|with|for)$/.test(after) ? norm(k + 2) : after,
    );
  if (no && !atHand) return undefined;
  if (/^(?:left|without|need)$/.test(norm(i)) && !/^(?:key|keys|remote|ladder|meter|gauge)$/.test(n))
    return undefined;
  return { from: i, to: k + 1, why: 'not tried', verb: 'measure', general: false };
}
