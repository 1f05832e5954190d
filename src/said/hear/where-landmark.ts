// Why: "by the ladder" and "over the sink" say which of many things is meant as surely as left and right do.
import type { Clause } from './clause.ts';
import { containers, landmarks, nextTo } from './where-table.ts';
import type { Word } from './word.ts';

/** Where something is beside, in the words it is written with. */
export interface Landmark {
  readonly from: number;
  readonly to: number;
  readonly text: string;
}

const small =
  /^(?:the|a|an|my|your|our|that|this|those|both|all|them|each|one|some|front|rear|back|driver|passenger|entry|middle|left|right|top|bottom|side|big|little|corner|of|'s|right-hand|upper|lower)$/;
const ended = /^(?:front|rear|back|middle|left|right|driver|passenger)$/;

const firstWords = (table: Readonly<Record<string, string>>): ReadonlySet<string> =>
  new Set(Object.keys(table).flatMap((k) => (k.includes(' ') ? [k.slice(0, k.indexOf(' '))] : [])));
const pairFirst = firstWords(nextTo);
const landmarkFirst = firstWords(landmarks);

/** The landmark that ends the words from `i` on: small words are passed over. */
function landmarkAt(
  words: readonly Word[],
  i: number,
): { to: number; text: string; lead: string } | undefined {
  let lead = '';
  for (let k = i; k < i + 4 && k < words.length; k++) {
    const n = words[k]?.norm ?? '';
    const open = words[k]?.stop === 0;
    const two = open && landmarkFirst.has(n) ? landmarks[`${n} ${words[k + 1]?.norm ?? ''}`] : undefined;
    if (two) return { to: k + 2, text: two, lead };
    const one = landmarks[n];
    if (one && !(open && small.test(n) && landmarks[words[k + 1]?.norm ?? '']))
      return { to: k + 1, text: one, lead };
    if (!open || !small.test(n)) return undefined;
    if (ended.test(n)) lead = n === 'back' ? 'rear ' : `${n} `;
  }
  return undefined;
}

/** The landmarks named in a clause. */
export function landmarksIn(words: readonly Word[], clause: Pick<Clause, 'from' | 'to'>): Landmark[] {
  const out: Landmark[] = [];
  for (let i = clause.from; i < clause.to; i++) {
    if (words[i]?.stop !== 0) continue;
    const n = words[i]?.norm ?? '';
    const next = words[i + 1]?.norm ?? '';
    const pair = pairFirst.has(n) ? nextTo[`${n} ${next}`] : undefined;
    const prep = pair ?? nextTo[n];
    if (prep === undefined) continue;
    const hit = landmarkAt(words, i + (pair === undefined ? 1 : 2));
    if (!hit || hit.to > clause.to) continue;
    const inside = pair === undefined && /^(?:in|on|inside)$/.test(n);
    if (inside && !containers.has(hit.text.replace(' ', '_')) && !containers.has(hit.text)) continue;
    out.push({ from: i, to: hit.to, text: `${prep === '' ? '' : `${prep} `}${hit.lead}${hit.text}` });
    i = hit.to - 1;
  }
  return out;
}
