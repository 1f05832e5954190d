// Why: two people talk: "Does the stove light? Yep, all of them." says that it does, though nobody says so in one sentence.
import type { Clause, Draft } from './clause.ts';
import { defectPhrases, goodPhrases } from './lexicon.ts';
import { draftOf } from './state-draft.ts';
import type { Talk } from './talk.ts';
import { verbUses } from './verb-table.ts';

const yes =
  /^(?:yes|yeah|yep|yup|yea|ya|sure|absolutely|certainly|definitely|indeed|correct|affirmative|yessir|aye|mhm|uh-huh|does|is|works|worked|did)$/;
const no = /^(?:no|nope|nah|naw|negative|nossir|nada)$/;
const fillers = /^(?:uh|um|well|oh|ah|hm|hmm|so)$/;
/** Behind a "no" these tell that it was not looked at. */
const untold =
  /^(?:check|checked|know|try|tried|test|tested|look|looked|run|ran|idea|sure|clue|chance|time|tell|yet|haven't|didn't)$/;
const helps = /^(?:do|does|did|will|can|is|are|was|were|has|have|had)$/;
const openers = /^(?:and|so|okay|ok|but|now|then|well|hey|what|about|how|all|right|alright)$/;
const articles = /^(?:a|an|the|any|your|its|that|this|one|both|all|some)$/;
/** Asked of what may be, not of what is. */
const maybe = /^(?:gonna|going|would|could|should|might|ever|you|we|i|if|want|wanna|supposed|think|reckon)$/;
const holders = /^(?:have|got|has|come|comes|include)$/;

/** What was answered: yes or no, right behind the question that ends before word `i`. */
function answerAt(talk: Talk, i: number): 'yes' | 'no' | undefined {
  const { words, sentenceOf } = talk.marks;
  let k = i;
  while (k < i + 2 && fillers.test(words[k]?.norm ?? '')) k++;
  const n = words[k]?.norm ?? '';
  const is = no.test(n)
    ? 'no'
    : yes.test(n)
      ? 'yes'
      : /^(?:it|they|she|he|that|sure|both|all)$/.test(n) &&
          /^(?:does|do|is|are|did|works|work|has|have)$/.test(words[k + 1]?.norm ?? '') &&
          words[k + 1]?.stop !== 0
        ? 'yes'
        : /^(?:it|they|she|he)$/.test(n) &&
            /^(?:doesn't|don't|isn't|aren't|didn't|won't)$/.test(words[k + 1]?.norm ?? '') &&
            words[k + 1]?.stop !== 0
          ? 'no'
          : undefined;
  if (!is) return undefined;
  for (let j = k + 1; j < words.length && sentenceOf[j] === sentenceOf[k]; j++) {
    if (untold.test(words[j]?.norm ?? '') && is === 'no') return undefined;
    if (words[j]?.asks) return undefined;
  }
  return is;
}

/** What a question with its answer says; nothing where no part is asked of or what is asked is a failure. */
export function hearAnswer(talk: Talk, clause: Clause, taken: Uint8Array): Draft[] {
  const { words } = talk.marks;
  if (!words[clause.to - 1]?.asks) return [];
  const answer = answerAt(talk, clause.to);
  if (!answer) return [];
  const norm = (k: number): string => (k >= clause.from && k < clause.to ? (words[k]?.norm ?? '') : '');
  for (let k = clause.from; k < clause.to; k++)
    if (talk.scopes.elsewhere[k] === 1 || taken[k] || maybe.test(norm(k)) || defectPhrases.at(words, k))
      return [];
  let first = clause.from;
  while (first < clause.to && openers.test(norm(first))) first++;
  const own = clause.mentions.filter((m) => !m.aside);
  const m = own.filter((x) => !x.weak).at(-1) ?? own.at(-1);
  const part =
    m?.parts[0] ?? (/^(?:it|they|that|she|he)$/.test(norm(first + 1)) ? talk.recent[0]?.parts[0] : undefined);
  if (!part || part === 'coach') return [];
  const put = (sense: 'works' | 'good' | 'fails' | 'poor' | 'present' | 'no', at: number): Draft[] => [
    draftOf(
      talk,
      clause,
      taken,
      {
        part,
        aspect:
          sense === 'present' || sense === 'no'
            ? 'present'
            : sense === 'works' || sense === 'fails'
              ? 'operates'
              : 'condition',
        state: sense,
        sense:
          sense === 'works'
            ? 'operates'
            : sense === 'no'
              ? 'absent'
              : sense === 'good' || sense === 'present'
                ? 'condition'
                : 'defect',
        polarity:
          sense === 'works' || sense === 'good'
            ? 'good'
            : sense === 'present' || sense === 'no'
              ? 'neutral'
              : 'bad',
        weight: 0.75,
      },
      at,
      1,
    ),
  ];
  // "does it have a washer", "is there a spare", "any ice maker"
  if (m) {
    let k = m.from - 1;
    while (k >= first && articles.test(norm(k))) k--;
    const has =
      (holders.test(norm(k)) && (helps.test(norm(first)) || k === first || k === first + 1)) ||
      (norm(k) === 'there' && helps.test(norm(first))) ||
      (norm(k) === 'with' && /^(?:come|comes)$/.test(norm(k - 1))) ||
      (k < first && /^(?:any|a|an)$/.test(norm(m.from - 1)) && m.to === clause.to);
    if (has && m.to >= clause.to - 3) return put(answer === 'yes' ? 'present' : 'no', m.from);
  }
  const inverted = helps.test(norm(first));
  // "does the stove light": the verb may stand inside what looks like a name
  const end = norm(clause.to - 1);
  if (/^(?:do|does|did|will)$/.test(norm(first)) && verbUses(end).some((u) => u.form === 'base'))
    return put(answer === 'yes' ? 'works' : 'fails', clause.to - 1);
  for (let i = clause.to - 1; i > first; i--) {
    const n = norm(i);
    if (m && m.from <= i && i < m.to) break;
    const verb = verbUses(n).some((u) => u.form === 'base' || u.form === 'ing' || u.form === 'past');
    if (verb && (inverted || /ing$/.test(n)) && (m === undefined || i >= m.to))
      return put(answer === 'yes' ? 'works' : 'fails', i);
  }
  for (let i = clause.to - 1; i >= first; i--) {
    const good = goodPhrases.at(words, i);
    if (
      good &&
      i + good.length === clause.to &&
      !(m && m.from <= i && i < m.to) &&
      (m === undefined || i >= m.to)
    )
      return put(answer === 'yes' ? 'good' : 'poor', i);
  }
  return [];
}
