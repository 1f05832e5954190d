// Why: "haven't seen a leak" is a finding and "can't find a better one" praise: denials that leave nothing unknown.
import type { Clause } from './clause.ts';
import { defectPhrases } from './lexicon.ts';
import type { Talk } from './talk.ts';

const set = (text: string): ReadonlySet<string> => new Set(text.split(' '));
const faults = set('issue issues problem problems damage sign signs evidence wrong anything nothing trace');
/** What stands for a thing after a verb. */
export const pronouns = set(
  "it that them those these this 'em em one ones any anything either none both any_of",
);

/** "Haven't seen a leak" is a finding, "can't tell you how nice" is praise, "can't find a better one" too. */
export function isHarmless(talk: Talk, clause: Clause, from: number, at: number, verb: string): boolean {
  const { words } = talk.marks;
  const next = (n: number): string => (at + n < clause.to ? (words[at + n]?.norm ?? '') : '');
  if (/^(?:see|find|spot|feel|read|trace|locate|detect|get)$/.test(verb))
    for (let k = at + 1; k < Math.min(clause.to, at + 7); k++) {
      const n = words[k]?.norm ?? '';
      if (/^(?:where|how|what|which|if|whether|because|so|but|from)$/.test(n)) break;
      if (defectPhrases.at(words, k) || faults.has(n) || n === 'none') return true;
    }
  // "rust I can't find": what was looked for stands before
  if (/^(?:see|find|spot|feel|detect)$/.test(verb))
    for (let k = Math.max(clause.from, from - 4); k < from; k++) if (defectPhrases.at(words, k)) return true;
  if (
    /^(?:better|enough|nicer|sweeter|cleaner|anything)$/.test(next(1)) ||
    /^(?:better|nicer|sweeter|cleaner|finer)$/.test(next(2))
  )
    return true;
  // "haven't seen it go down": only where nothing follows
  if (
    verb === 'see' &&
    /^(?:haven't|have|hasn't|never|didn't|don't|do|did|'ve|ain't)$/.test(words[from]?.norm ?? '') &&
    at + 1 < clause.to &&
    !pronouns.has(next(1)) &&
    !clause.mentions.some((m) => m.from > at && m.from - at <= 3)
  )
    return true;
  if (
    verb === 'tell' &&
    /^(?:you|ya)$/.test(next(1)) &&
    next(2) === 'how' &&
    /^(?:nice|much|clean|good|great|many_times|happy|often)$/.test(next(3))
  )
    return true;
  const you = words[from - 1]?.norm === 'you' || words[from - 1]?.norm === 'ya';
  if (you && (verb === 'tell' || (verb === 'see' && next(1) !== ''))) return true;
  if (
    verb === 'touch' &&
    (/^(?:pedal|wheel|wall|ground|brake|button|a)$/.test(next(1)) ||
      /^(?:pedal|wheel|wall|ground|brake|button|brakes)$/.test(next(2)))
  )
    return true;
  // "I don't know what that is", "something I didn't see": nothing is said of a part
  if (
    verb === 'know' &&
    /^(?:what|who)$/.test(next(1)) &&
    /^(?:that|it|they|this|he|she)$/.test(next(2)) &&
    !clause.mentions.some((m) => m.from > at)
  )
    return true;
  if (
    verb === 'see' &&
    /^(?:i|we|you)$/.test(words[from - 1]?.norm ?? '') &&
    /^(?:something|anything|what|things|thing)$/.test(words[from - 2]?.norm ?? '')
  )
    return true;
  if (
    verb === 'know' &&
    /^(?:why|how)$/.test(next(1)) &&
    /^(?:anybody|anyone|people|they|you|many|somebody)$/.test(next(2))
  )
    return true;
  return verb === 'know' && /^(?:about|that)$/.test(next(1)) && /^(?:you|i|we)$/.test(next(2));
}
