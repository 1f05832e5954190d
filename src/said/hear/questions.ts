// Why: a question is no finding, but its answer is one: "Does it leak? No." denies the leak.
import type { Marks } from './marks.ts';

const no = /^(?:no|nope|nah|naw|never|none|nothing)$/;
const yes = /^(?:yes|yeah|yep|yup|yea|sure|absolutely|always|correct)$/;
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
      if (i - tag < 3 && tag > from) from = tag;
      const open = inverted.test(norm(from)) || i - from <= 3 ? !ask.test(norm(from)) : false;
      const said = open && !/^(?:you|we)$/.test(norm(from + 1)) ? answerAt(marks, i + 1) : undefined;
      for (let k = from; k <= i; k++) {
        if (said === undefined) elsewhere[k] ||= 2;
        else if (said === 'no') denied[k] = 1;
      }
    } else if (
      bare &&
      inverted.test(norm(i)) &&
      subject.test(norm(i + 1)) &&
      !norm(i + 2).startsWith("'") &&
      i > 0 &&
      clauseOf[i - 1] !== clauseOf[i]
    ) {
      // without stops a question is told by the verb before its subject
      if (/^(?:do|have|any|can|will)$/.test(norm(i)) && !/^(?:you|we|they|it)$/.test(norm(i + 1))) continue;
      for (let k = i; k < n && clauseOf[k] === clauseOf[i]; k++) elsewhere[k] ||= 2;
    }
  }
}

/** The answer that begins at word `i`, where it is no more than that. */
function answerAt(marks: Marks, i: number): 'yes' | 'no' | undefined {
  const { words, sentenceOf } = marks;
  let k = i;
  while (k < i + 2 && /^(?:uh|um|well|oh|ah)$/.test(words[k]?.norm ?? '')) k++;
  const n = words[k]?.norm ?? '';
  const answer = no.test(n) ? 'no' : yes.test(n) ? 'yes' : undefined;
  if (!answer) return undefined;
  let to = k;
  while (to < words.length && sentenceOf[to] === sentenceOf[k]) to++;
  return to - k <= 4 ? answer : undefined;
}
