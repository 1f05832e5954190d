// Why: "other way round", "I had those backwards": two readings change places, said anew or not; "sixty-five then" settles a number that was disputed.
import type { Draft } from './clause.ts';
import { draftsBetween } from './drafts-between.ts';
import type { Marks } from './marks.ts';
import { phraseList } from './phrase-index.ts';

const turned = phraseList([
  'other way round',
  'other way around',
  'other way about',
  'the other way',
  'other way',
  'wrong way round',
  'wrong way around',
  'vice versa',
  'vice a versa',
  'reverse that',
  'reverse those',
  'reverse them',
  'reversed',
  'flip that',
  'flip those',
  'flip them',
  'flip flopped',
  'flip-flopped',
  'swap that',
  'swap those',
  'swap them',
  'swap these',
  'swapped',
  'switch that',
  'switch those',
  'switch them',
  'switched them',
  'switched those',
  'swapped them',
  'swapped those',
  'got it backwards',
  'got them backwards',
  'got those backwards',
  'got that backwards',
  'got it backward',
  'got them backward',
  'had it backwards',
  'had them backwards',
  'had those backwards',
  'had that backwards',
  'said it backwards',
  'said them backwards',
  'said that backwards',
  'read them backwards',
  'backwards',
  'bass ackwards',
  'mixed them up',
  'mixed those up',
  'mixed up the two',
  'crossed them',
  'crossed those',
  'crossed over',
  'got them crossed',
  'got those crossed',
  'the wrong way',
  'got them swapped',
  'got them switched',
  'got my sides wrong',
  'got my sides mixed up',
  'got them mixed up',
  'turn that around',
  'turn those around',
  'turn them around',
]);
/** Makes "other way" a way to go and no taking back. */
const goes =
  /^(?:go|goes|going|went|look|looks|looking|turn|turns|walk|walking|facing|face|faces|come|comes|run|runs|blows|travels|any|no|every|some|each|an|spins|pull|push|mounted|opens|swings|installed|wired|hung|put|bolted|in|is|'s)$/;
/** Words before in which the pair was read, and after in which it may be read anew. */
const back = 26;
const ahead = 22;

/** Says which draft stands for which after the taking back. `fresh` are drafts to be added. */
export interface Swap {
  readonly wrong: Draft;
  readonly right: Draft;
}

/** Every pair that changed places. Drafts in order of their words. */
export function swapsIn(marks: Marks, drafts: readonly Draft[]): Swap[] {
  const { words } = marks;
  const out: Swap[] = [];
  for (let i = 0; i < words.length; i++) {
    const hit = turned.at(words, i);
    if (!hit) continue;
    const to = i + hit.length;
    const before = words[i - 1];
    const lead = before?.norm === 'the' ? words[i - 2]?.norm : before?.norm;
    const said = words[i]?.norm ?? '';
    if ((before?.stop ?? 2) === 0 && goes.test(lead ?? '') && !/^(?:got|had)$/.test(said)) continue;
    const near = draftsBetween(drafts, i - back, i).filter((d) => isRead(d) && d.place !== undefined);
    const b = near.at(-1);
    const a = b && near.filter((d) => isLike(d, b) && d.place !== b.place).at(-1);
    if (!a || !b) continue;
    // a word alone in the middle of a saying ("swapped", "reversed") tells of the coach
    if (hit.length === 1 && (before?.stop ?? 2) === 0 && (words[to - 1]?.stop ?? 2) === 0) continue;
    const anew = draftsBetween(drafts, to, to + ahead + 1).filter((d) => isRead(d) && isLike(d, b));
    if (anew.length > 0) {
      for (const wrong of [a, b]) {
        const right = anew.find((d) => d.place === wrong.place);
        if (right) out.push({ wrong, right });
      }
    } else {
      out.push({ wrong: a, right: { ...b, ...placed(a), at: i, from: i, to } });
      out.push({ wrong: b, right: { ...a, ...placed(b), at: i, from: i, to } });
    }
    i = to - 1;
  }
  return out;
}

const placed = (d: Draft): { place?: string; where?: string } => ({
  ...(d.place === undefined ? {} : { place: d.place }),
  ...(d.where === undefined ? {} : { where: d.where }),
});
const isRead = (d: Draft): boolean => d.sense === 'quantity' || d.sense === 'identity';
const isLike = (a: Draft, b: Draft): boolean =>
  a.part === b.part && a.aspect === b.aspect && a.sense === b.sense;

/** "Sixty-five then.", "okay, go with ninety-nine": words around a number that settle it. */
const settles = /^(?:then|final|it is|that's it|put|write|go with|we'll say|let's say)$/;

/** "Sixty-six or fifty-six? Fifty-six.": the answer to a choice of two numbers. */
function isChosen(marks: Marks, at: number): boolean {
  const { words, sentenceOf, numberAt } = marks;
  let i = at;
  while (i > 0 && at - i < 4 && sentenceOf[i - 1] === sentenceOf[at]) i--;
  if (!words[i - 1]?.asks) return false;
  let numbers = 0;
  let or = false;
  const of = sentenceOf[i - 1];
  for (let k = i - 1; k >= 0 && sentenceOf[k] === of; k--) {
    if (numberAt.from(k)) numbers++;
    if (words[k]?.norm === 'or') or = true;
  }
  return or && numbers >= 2;
}

/** Numbers that settle a dispute: those of the same thing shortly before are taken back. */
export function settledIn(marks: Marks, drafts: readonly Draft[]): Swap[] {
  const { words } = marks;
  const out: Swap[] = [];
  for (const right of drafts) {
    if (right.sense !== 'quantity' || right.value.is !== 'quantity') continue;
    const span = [0, 1, 2, 3].map((k) => marks.numberAt.from(right.at - k)).find((s) => s !== undefined);
    if (!span) continue;
    const after = words[span.to]?.norm ?? '';
    const last = words[span.to - 1];
    const two = `${after} ${words[span.to + 1]?.norm ?? ''}`;
    const led = `${words[span.from - 2]?.norm ?? ''} ${words[span.from - 1]?.norm ?? ''}`;
    const settled =
      ((last?.stop ?? 2) < 2 && settles.test(after) && (words[span.to]?.stop ?? 2) > 0) ||
      ((last?.stop ?? 2) < 2 && /^(?:it is|it's final)$/.test(two) && (words[span.to + 1]?.stop ?? 2) > 0) ||
      (/^(?:go with|going with|stick with|it's|settle on)$/.test(led) && /with|on$/.test(led));
    if (!settled && !isChosen(marks, span.from)) continue;
    const amount = right.value.value;
    for (const wrong of drafts) {
      if (wrong.at >= right.at || right.at - wrong.at > 34 || !isLike(wrong, right)) continue;
      if (wrong.place !== right.place && right.place !== undefined && wrong.place !== undefined) continue;
      if (wrong.value.is !== 'quantity' || Math.abs(wrong.value.value - amount) < 1e-9) continue;
      out.push({ wrong, right });
    }
  }
  return out;
}
