// Why: "it works" is a finding and "I work" is none; what stands before a verb decides.
import type { Clause } from './clause.ts';
import { verbs } from './lexicon.ts';
import type { Talk } from './talk.ts';

const set = (text: string): Set<string> => new Set(text.split(' '));
const adverbs = set(
  'all both just still right also fine first easily smoothly only always now do does did are is were then actually great will can each really of them three four two',
);
/** Words that stand for the part talked about. */
export const subjects = set('it they that everything both all these those which burners he and them');

/** The verb is said of a thing right before it, not of what somebody did. */
export function isPredicate(talk: Talk, clause: Clause, i: number, mentionEnd: number | undefined): boolean {
  const { words } = talk.marks;
  const norm = (k: number): string => words[k]?.norm ?? '';
  const lead =
    norm(clause.from) === 'and' || norm(clause.from) === 'so' ? norm(clause.from + 1) : norm(clause.from);
  const verb = norm(i);
  let k = i - 1;
  while (k >= clause.from && adverbs.has(norm(k)) && k >= (mentionEnd ?? clause.from)) k--;
  if (k < clause.from)
    return (
      (/^(?:all|both)$/.test(lead) && (!/ing$/.test(verb) || verb === 'working')) ||
      (/s$/.test(verb) && !/ss$/.test(verb))
    );
  const ends = talk.marks.numberAt.to(k + 1);
  const number = ends && ends.from >= clause.from ? ends : undefined;
  if (number && mentionEnd !== undefined && number.from >= mentionEnd) k = number.from - 1;
  const n = norm(k);
  if (
    /^(?:to|i|we|you|he|she|who|let|can|could|would|should|might|may|must|if|when|a|an|'d|'ll|gonna|the|with|before|for|my)$/.test(
      n,
    )
  )
    return false;
  if (
    /^(?:open|light|lights|level|seal|power|sound|trip)$/.test(verb) &&
    !(mentionEnd !== undefined && k < mentionEnd) &&
    !subjects.has(n) &&
    !talk.marks.placeAt.to(i)
  )
    return false;
  if (/^(?:open|close|light|lock|level|seal)$/.test(verb) && !subjects.has(n) && !/s$/.test(n)) return false;
  if (verb === 'work' && !subjects.has(n) && !/s$/.test(n)) return false;
  if (/^(?:works|work|working|worked)$/.test(verb) && !/^(?:i|we|you|he|she)$/.test(lead)) return true;
  if (mentionEnd !== undefined && (k < mentionEnd || k - mentionEnd <= 1)) return true;
  if (subjects.has(n) || n === "'s" || n === "'re" || n === 'are' || n === 'is') return lead !== 'let';
  if (talk.marks.placeAt.to(i)) return true;
  return (
    (verbs.at(words, k) !== undefined && mentionEnd !== undefined) ||
    (n === 'and' && k > clause.from && verbs.at(words, k - 1) !== undefined)
  );
}

/** A denial that ends its clause and whose verb was said before: "the outside one does not". */
export function isLeftOut(talk: Talk, clause: Clause, i: number): boolean {
  const { words, placeAt } = talk.marks;
  const n = words[i]?.norm ?? '';
  const short = /^(?:doesn't|won't|didn't|don't)$/.test(n) && i === clause.to - 1;
  const long = /^(?:does|do|did|will)$/.test(n) && words[i + 1]?.norm === 'not' && i + 2 === clause.to;
  if ((!short && !long) || i === clause.from) return false;
  const before = words[i - 1]?.norm ?? '';
  return /^(?:one|ones|other|others|side)$/.test(before) || placeAt.to(i) !== undefined;
}
