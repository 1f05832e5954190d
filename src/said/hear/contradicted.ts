// Why: one says "it drags", the other "it doesn't, it's the rug": what is denied to its face is no finding any more.
import type { Draft } from './clause.ts';
import { draftsBetween } from './drafts-between.ts';
import type { Marks } from './marks.ts';

/** Words within which a saying is answered. */
const reach = 26;
const pronoun = /^(?:it|they|that|this|she|he|those|these)$/;
const openers =
  /^(?:no|nah|nope|well|but|oh|hey|actually|sorry|okay|ok|wait|come|on|hang|uh|um|yes|yeah|sure|yup|yep|now)$/;
const denies = /^(?:isn't|doesn't|aren't|wasn't|weren't|don't|ain't|didn't|won't|hasn't|haven't|can't|not)$/;
const affirms = /^(?:does|is|are|do|will|did|has|can)$/;
/** "Nothing wrong with the slide": all that was said against it falls. */
const clears = /^(?:wrong|bad|broken|amiss|faulty|loose|leaking)$/;

const stem = (w: string): string => w.replace(/(?:ing|ed|es|s|y)$/, '').replace(/(.)\1$/, '$1');

/** Drafts that somebody denied to their face. Drafts in order of their words; each sentence is looked at once. */
export function contradicted(marks: Marks, drafts: readonly Draft[]): Set<Draft> {
  const { words, sentenceOf } = marks;
  const norm = (i: number): string => words[i]?.norm ?? '';
  const gone = new Set<Draft>();
  for (let from = 0; from < words.length; ) {
    let to = from;
    while (to < words.length && sentenceOf[to] === sentenceOf[from]) to++;
    const start = from;
    from = to;
    if (start === 0 || words[start - 1]?.asks || words[to - 1]?.asks) continue;
    const before = draftsBetween(drafts, start - reach, start).filter((d) => d.sense !== 'claim');
    const last = before.at(-1);
    if (!last) continue;
    let k = start;
    while (k < start + 3 && openers.test(norm(k))) k++;
    const said = norm(start);
    if (pronoun.test(norm(k))) {
      let v = k + 1;
      if (/^(?:'s|is|'re|are|does|do|was|did|has)$/.test(norm(v)) && norm(v + 1) === 'not') v++;
      const near = sentenceOf[last.at] === (sentenceOf[start] ?? 0) - 1;
      // "No it doesn't.", "They're not.": all of the sentence before
      if (denies.test(norm(v)) && (words[v]?.stop ?? 0) > 0 && near && isSaid(last)) {
        if (last.sense === 'defect' || last.sense === 'operates' || last.sense === 'condition')
          gone.add(last);
        continue;
      }
      // "Yes it does.": what was denied before
      if (
        affirms.test(norm(v)) &&
        (words[v]?.stop ?? 0) > 0 &&
        near &&
        last.sense === 'defect' &&
        /^(?:yes|sure|oh|but|actually|yeah|yup|yep)$/.test(said)
      ) {
        if (words.slice(last.from, last.to).some((w) => denies.test(w.norm) || /n't$/.test(w.norm)))
          gone.add(last);
        continue;
      }
      // "It doesn't drag", "it wasn't dead for me": the very word that was said
      if (denies.test(norm(v)))
        for (const d of before) {
          if (d.sense !== 'defect') continue;
          const key = stem(norm(d.at));
          if (key.length < 3) continue;
          for (let w = v + 1; w < Math.min(to, v + 5); w++)
            if (stem(norm(w)) === key && marks.clauseOf[w] === marks.clauseOf[v]) gone.add(d);
        }
      continue;
    }
    if (norm(k) === 'there' && norm(k + 1) === "'s") k += 2;
    if (/^(?:nothing|nothing's|not)$/.test(norm(k))) {
      let w = k + 1;
      while (w < k + 4 && !clears.test(norm(w))) w++;
      if (!clears.test(norm(w))) continue;
      for (let m = w + 1; m < to; m++) {
        const named = marks.mentionAt.from(m);
        if (!named) continue;
        for (const d of before) if (d.sense === 'defect' && named.parts.includes(d.part)) gone.add(d);
        break;
      }
    }
  }
  return gone;
}

const isSaid = (d: Draft): boolean => d.value.is === 'state';
