// Why: a question is no finding, but its answer is one: "Does it leak? No." denies the leak.
import type { Marks } from './marks.ts';
import { phraseList } from './phrase-index.ts';

const no = /^(?:no|nope|nah|naw|never|none|nothing|nay|nada|negative|nuh-uh)$/;
const yes =
  /^(?:yes|yeah|yep|yup|yea|sure|absolutely|always|correct|affirmative|aye|definitely|indeed|yessir)$/;
const inverted =
  /^(?:is|are|was|were|does|do|did|has|have|can|could|will|any|ain't|isn't|doesn't|don't|didn't)$/;
const subject = /^(?:it|that|this|they|those|these|there|the|he|she|you|we|your|everything|anything)$/;
const ask = /^(?:who|what|what's|where|where's|when|why|how|which|whose)$/;

/** Marks questions as no finding, unless a short answer follows: then as what it says. */
export function questionsIn(marks: Marks, elsewhere: Uint8Array, denied: Uint8Array): void {
  const { words, clauseOf, sentenceOf } = marks;
  const n = words.length;
  const norm = (i: number): string => words[i]?.norm ?? '';
  const bare = words.every((w) => !w.capital);
  for (let i = 0; i < n; i++) {
    if (words[i]?.asks) {
      let from = i;
      while (from > 0 && sentenceOf[from - 1] === sentenceOf[i]) from--;
      let tag = i;
      while (tag > from && clauseOf[tag - 1] === clauseOf[i]) tag--;
      // of "it's dry, see that?" only the tag is a question
      if (i - tag < 3 && tag > from && !ask.test(norm(from))) from = tag;
      const open = inverted.test(norm(from)) || i - from <= 3 ? !ask.test(norm(from)) : false;
      const said = open && !/^(?:you|we)$/.test(norm(from + 1)) ? answerAt(marks, i + 1, from) : undefined;
      for (let k = from; k <= i; k++) {
        if (said === undefined) elsewhere[k] ||= 2;
        else if (said === 'no') denied[k] = 1;
      }
    } else if (
      bare &&
      inverted.test(norm(i)) &&
      subject.test(norm(i + 1)) &&
      !norm(i + 2).startsWith("'") &&
      (i === 0 || clauseOf[i - 1] !== clauseOf[i])
    ) {
      // without stops a question is told by the verb before its subject
      if (/^(?:do|have|any|can|will)$/.test(norm(i)) && !/^(?:you|we|they|it)$/.test(norm(i + 1))) continue;
      for (let k = i; k < n && clauseOf[k] === clauseOf[i]; k++) elsewhere[k] ||= 2;
    }
  }
}

const helper =
  /^(?:is|are|was|were|does|do|did|has|have|had|can|could|will|would|'s|ain't|isn't|aren't|wasn't|weren't|doesn't|don't|didn't|hasn't|haven't|can't|couldn't|won't|wouldn't)$/;
const negative = /n't$/;
/** "Sure does", "they all do", "both do": what may stand before the verb of a short answer. */
const shortSubject =
  /^(?:it|they|that|this|those|these|she|he|sure|all|both|everything|there|still|certainly|definitely|one|each)$/;
const noPhrases = phraseList(
  "not really,not at all,not anymore,not any more,not a bit,not unless,not that i can see,not that i can tell,not that i could see,not that i saw,not that i see,not that i found,not that i can find,not that i noticed,not that i know,not here,not on this one,not this one,not a chance,no way,afraid not,fraid not,i'm afraid not,don't think so,i don't think so,negative,hardly,barely,not a drop,not a one,neither,no sir,no ma'am,not in here,not a thing,not a mark,not so far,dead,forget it".split(
    ',',
  ),
);
const yesPhrases = phraseList(
  'you bet,of course,sure does,sure is,all but,all except,everything but,everything except,most of them,sure do,sure did,mm hmm,mm-hmm,uh huh,uh-huh,mhm,mm hm,affirmative,definitely,perfectly,certainly,every time,all of them,all of it,both of them,both sides,i think so,believe so,sure thing,oh yeah,oh yes,aye,both,right,indeed,you got it,roger,like a charm,like new'.split(
    ',',
  ),
);

/** The answer that begins at word `i`: a short one, or one set off by a stop. */
function answerAt(marks: Marks, i: number, from: number): 'yes' | 'no' | undefined {
  const { words, sentenceOf } = marks;
  let k = i;
  while (k < i + 2 && /^(?:uh|um|well|oh|ah|so|hmm)$/.test(words[k]?.norm ?? '')) k++;
  const n = words[k]?.norm ?? '';
  let to = k;
  while (to < words.length && sentenceOf[to] === sentenceOf[k]) to++;
  if (words[to - 1]?.asks) return undefined;
  const short = to - k <= 4;
  const told = no.test(n) ? 'no' : yes.test(n) ? 'yes' : undefined;
  // "No, it kicks in every minute": the first word answers, the rest tells more
  if (told) return short || (words[k]?.stop ?? 0) > 0 ? told : undefined;
  const denies = noPhrases.at(words, k);
  if (denies && (short || (words[k + denies.length - 1]?.stop ?? 0) > 0 || n === 'not')) return 'no';
  const affirms = yesPhrases.at(words, k);
  if (affirms && to - k <= affirms.length + 1) return 'yes';
  // "It does.", "They all do.", "Sure does.", "It won't."
  let v = k;
  while (v < k + 3 && shortSubject.test(words[v]?.norm ?? '')) v++;
  if (v > k && helper.test(words[v]?.norm ?? '') && (words[v]?.stop ?? 0) > 0 && to - v <= 3)
    return negative.test(words[v]?.norm ?? '') ? 'no' : 'yes';
  if (v > k && helper.test(words[v]?.norm ?? '') && words[v + 1]?.norm === 'not' && to - v <= 2) return 'no';
  // "Ladder's tight? Tight.": the echo says yes
  if (to - k <= 3 && echoes(marks, from, i, k, to)) return 'yes';
  return undefined;
}

/** Every word of the answer stood in the question, which left nothing to choose. */
function echoes(marks: Marks, from: number, i: number, k: number, to: number): boolean {
  const asked = new Set<string>();
  for (let q = from; q < i; q++) {
    const n = marks.words[q]?.norm ?? '';
    if (n === 'or') return false;
    asked.add(n);
  }
  for (let a = k; a < to; a++)
    if (!asked.has(marks.words[a]?.norm ?? '') || marks.mentionAt.from(a) || marks.numberAt.from(a))
      return false;
  return to > k;
}
