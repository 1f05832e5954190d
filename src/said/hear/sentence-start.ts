// Why: a capital that is no name begins a sentence, with or without a full stop before it.
import { isKnownWord } from './lexicon.ts';
import type { Word } from './word.ts';

/** Where a sentence begins: after its stop, after a long silence, or at a capital that is no name. */
export function isSentenceStart(words: readonly Word[], i: number): boolean {
  const w = words[i] as Word;
  const before = words[i - 1];
  if (!before || before.stop === 2 || w.pause >= 1.5) return true;
  if (!w.capital || before.stop === 1 || w.norm === 'i' || w.norm.length < 2 || w.written === before.written)
    return false;
  // "stamped May of nineteen"
  if (w.norm === 'may' && /^(?:of|twenty|two|\d+)$/.test(words[i + 1]?.norm ?? '')) return false;
  return (
    isKnownWord(w.norm) &&
    w.norm.length > 1 &&
    !/^(?:lp|led|agm|co|tpo|epdm|tv|tvs|ac|acs|vin|psi|gfci|rv|rpm|abs|v|k|cca|def|january|february|march|april|june|july|august|september|october|november|december|monday|tuesday|wednesday|thursday|friday|saturday|sunday)$/.test(
      w.norm,
    )
  );
}
