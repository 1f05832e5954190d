// Why: a name is a word nobody knows: with a capital where there are capitals; without them only where a name is due.
import { isKnownWord } from './lexicon.ts';
import { ordinaryWords } from './ordinary-words.ts';
import type { Talk } from './talk.ts';
import type { Word } from './word.ts';

/** Endings and calls of ordinary English that make no maker. */
const ordinary =
  /(?:ed|ing|ly|ness|less|ful|tion|sion|ment|able|ible|ish|ous|n't|ity|ance|ence|ward|wards|self|selves|ever|body|thing)$/;
const calls = new Set(
  'whoa naw yeah yup yep nope nah wow ouch oof ugh shoot dang darn damn hell gosh golly jeez geez huh hmm mhm uhm umm uh-huh aha ooh ahh aah ope shucks hurray boom bam bingo cheers sorry congrats phew scooch howdy buddy dude folks fellas fella feller hon honey bud boss bro pal mate ma pa grandma grandpa mom dad god lord jesus'.split(
    ' ',
  ),
);

/** True for a word whose shape is that of no name. */
export const isOrdinaryShape = (norm: string): boolean => ordinary.test(norm) || calls.has(norm);

/** In talk without capitals these are no names; a name with its capital may be one of them. */
const everyday: ReadonlySet<string> = new Set(ordinaryWords);
const bareOf = new WeakMap<readonly Word[], boolean>();
/** True for a transcript that writes hardly any capital. */
function isBare(words: readonly Word[]): boolean {
  const held = bareOf.get(words);
  if (held !== undefined) return held;
  const capitals = words.reduce((n, w) => n + (w.capital && w.norm !== 'i' ? 1 : 0), 0);
  const bare = capitals * 60 < words.length;
  bareOf.set(words, bare);
  return bare;
}

/** A word that may be a name where one is due. */
export function isNameLike(talk: Talk, i: number): boolean {
  const { words, isName } = talk.marks;
  const w = words[i];
  if (!w) return false;
  if (isName(i)) return !isOrdinaryShape(w.norm);
  return (
    isBare(words) &&
    /^[a-z]{4,}$/.test(w.norm) &&
    !isKnownWord(w.norm) &&
    !everyday.has(w.norm) &&
    !isOrdinaryShape(w.norm)
  );
}
