// Why: a recogniser splits and mishears words of the trade ("head light", "lab sealant", "mill dew"); they are put right before anything is looked for.
import { parts } from '../../catalogue/index.ts';
import { defectTable } from './defect-table.ts';
import { isKnownWord, partPhrases } from './lexicon.ts';
import { normsOf, type Word } from './word.ts';

/** Letters as they sound: voiced and unvoiced alike, doubles once. */
function soundOf(text: string): string {
  return text
    .replace(/ck|q/g, 'k')
    .replace(/ph/g, 'f')
    .replace(/c(?=[eiy])/g, 's')
    .replace(/c/g, 'k')
    .replace(/b/g, 'p')
    .replace(/d/g, 't')
    .replace(/g/g, 'k')
    .replace(/v/g, 'f')
    .replace(/z/g, 's')
    .replace(/(.)\1+/g, '$1');
}

/** Shorter sounds are like too many words. */
const least = 6;
const whole = new Map<string, string[]>();
const bySound = new Map<string, string[]>();
function learn(phrase: string): void {
  const norms = normsOf(phrase.toLowerCase());
  const joined = norms.join('');
  if (!/^[a-z]+$/.test(joined) || joined.length < least) return;
  if (norms.length === 1 && !whole.has(joined)) whole.set(joined, norms);
  const sound = soundOf(joined);
  if (sound.length >= least && !bySound.has(sound)) bySound.set(sound, norms);
}
for (const p of parts) for (const phrase of [p.name, ...p.say]) learn(phrase);
for (const phrase of Object.keys(defectTable)) learn(phrase);

/** What the words `i`..`i + length` should have been; undefined where they stand as they are. */
function meantBy(words: readonly Word[], i: number, length: number): readonly string[] | undefined {
  const run = words.slice(i, i + length);
  if (run.length < length || run.some((w, k) => k < length - 1 && w.stop > 0)) return undefined;
  if (run.some((w) => !/^[a-z]{2,}$/.test(w.norm))) return undefined;
  const joined = run.map((w) => w.norm).join('');
  if (joined.length < least) return undefined;
  const exact = whole.get(joined);
  if (exact) return exact;
  if (run.every((w) => isKnownWord(w.norm))) return undefined;
  const found = bySound.get(soundOf(joined));
  return found && found.join('') !== joined ? found : undefined;
}

/** The stream with split and misheard words put right; each keeps the written words it came from. */
export function putRight(words: readonly Word[]): Word[] {
  const out: Word[] = [];
  for (let i = 0; i < words.length; ) {
    const first = words[i] as Word;
    const known = partPhrases.at(words, i);
    let taken = 0;
    for (let length = 3; length >= 2 && taken === 0; length--) {
      if (known && known.length >= length) break;
      const meant = meantBy(words, i, length);
      if (!meant) continue;
      const last = words[i + length - 1] as Word;
      meant.forEach((norm, k) => {
        const from = words[Math.min(i + k, i + length - 1)] as Word;
        const end = k === meant.length - 1;
        const { asks: _asks, ...plain } = from;
        out.push({
          ...plain,
          norm,
          written: end ? (meant.length === 1 ? first.written : last.written) : from.written,
          start: k === 0 ? first.start : from.start,
          end: end ? last.end : from.end,
          stop: end ? last.stop : 0,
          capital: k === 0 && first.capital,
          pause: k === 0 ? first.pause : 0,
          ...(end && last.asks ? { asks: true as const } : {}),
        });
      });
      taken = length;
    }
    if (taken === 0) out.push(first);
    i += taken || 1;
  }
  return out;
}
