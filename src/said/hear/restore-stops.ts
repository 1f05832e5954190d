// Why: some recognisers write no full stops or commas; where a clause ends must then be told from the words on both sides.
import { isSentenceStart } from './sentence-start.ts';
import { kindsOf, stopFeatures } from './stop-features.ts';
import { stopWeights } from './stop-weights.ts';
import type { Stop, Word } from './word.ts';

/** With fewer stops than one in this many words a transcript is held to have none. */
const sparse = 22;

/** The stream with stops where clauses end, if it came with hardly any; otherwise as it was. */
export function restoreStops(words: readonly Word[]): readonly Word[] {
  const stops = words.reduce((n, w) => n + (w.stop > 0 ? 1 : 0), 0);
  if (words.length < 12 || stops * sparse > words.length) return words;
  const out = words.slice();
  const kinds = kindsOf(words);
  const lists = listStops(kinds);
  // where capitals came through, they tell the sentences
  const capitals =
    words.reduce((n, w) => n + (w.capital && w.norm !== 'i' ? 1 : 0), 0) * sparse > words.length;
  let since = 0;
  for (let i = 1; i < words.length; i++) {
    since++;
    const before = out[i - 1] as Word;
    const learnt = lists.get(i) ?? stopBefore(words, kinds, i, since);
    const told: Stop = !capitals ? learnt : isSentenceStart(words, i) ? 2 : learnt === 2 ? 1 : learnt;
    const stop = Math.max(before.stop, told) as Stop;
    if (stop === 0) continue;
    since = 0;
    if (stop > before.stop) out[i - 1] = { ...before, stop };
  }
  return out;
}

/** "Fifty left front fifty-two right front": in a run of numbers and places, what comes first leads each pair. */
function listStops(kinds: ReturnType<typeof kindsOf>): ReadonlyMap<number, Stop> {
  const out = new Map<number, Stop>();
  let run: { at: number; number: boolean }[] = [];
  const close = (): void => {
    const first = run[0];
    if (first && run.length >= 4)
      for (const s of run.slice(1)) out.set(s.at, s.number === first.number ? 1 : 0);
    run = [];
  };
  kinds.begins.forEach((k, i) => {
    if (/^[nl]$/.test(k)) return;
    const number = k === 'N' || k === 'Q';
    const last = run.at(-1);
    if ((!number && k !== 'L') || (last && last.number === number)) close();
    if (number || k === 'L') run.push({ at: i, number });
  });
  close();
  return out;
}

/** The likeliest stop before word `i`, by the weights learnt from talk that has its stops. */
function stopBefore(
  words: readonly Word[],
  kinds: ReturnType<typeof kindsOf>,
  i: number,
  since: number,
): Stop {
  let none = 0;
  let comma = 0;
  let full = 0;
  for (const f of stopFeatures(words, kinds, i, since)) {
    const w = stopWeights[f];
    if (!w) continue;
    none += w[0];
    comma += w[1];
    full += w[2];
  }
  return none >= comma && none >= full ? 0 : comma >= full ? 1 : 2;
}
