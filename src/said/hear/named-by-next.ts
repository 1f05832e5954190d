// Why: "bathroom door latches", "the bed lifts": the last word of a name may be what the part does.
import { partPhrases } from './lexicon.ts';
import type { Word } from './word.ts';

/** Last words of part names that are also what the part does, and what may follow where they are. */
const doing =
  /^(?:latches|locks|lifts|cranks|drains|slides|catches|swivels|reclines|tilts|retracts|drops|folds)$/;
const done =
  /^(?:fine|good|ok|okay|right|out|in|up|down|open|shut|back|smooth|smoothly|easy|easily|well|tight|and|but|like|with|when|every|nice|nicely|great|freely|by|on|off|without|though|too|from|so)$/;

/** The name at `i` without its last word, where that is a verb: "the bed lifts", "bathroom door latches". */
export function withoutVerb<T extends { readonly length: number; readonly values: readonly string[] }>(
  words: readonly Word[],
  i: number,
  hit: T,
): T | { readonly length: number; readonly values: readonly string[] } {
  const last = words[i + hit.length - 1];
  if (hit.length < 2 || !doing.test(last?.norm ?? '')) return hit;
  const behind = last?.stop === 0 ? (words[i + hit.length]?.norm ?? '') : '';
  const short = partPhrases.at(words.slice(i, i + hit.length - 1), 0);
  return short?.length === hit.length - 1 && (behind === '' || done.test(behind)) ? short : hit;
}
