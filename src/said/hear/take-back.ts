// Why: where a speaker takes something back is told from a few firm words, from a "no" that answers nothing, and from pauses for another look.
import type { Marks } from './marks.ts';
import { corrections, looksAgain } from './trigger-words.ts';

/** A place where the words before are taken back. `weak` ones only count where a like number follows. */
export interface TakeBack {
  readonly from: number;
  /** One past its last word. */
  readonly to: number;
  readonly weak: boolean;
  /** Only a number of nearly the same size right behind counts. */
  readonly close?: true;
  /** What is taken back falls even where nothing replaces it. */
  readonly drops: boolean;
}

const noes = new Set('no nope nah naw nay eh'.split(' '));
const fillers = new Set('uh um oh ah er hm hmm well okay ok wait yeah'.split(' '));
/** After a "no" without a stop, one of these begins a new saying; a noun would be denied by it. */
const afterNo = new Set(
  "it it's that that's this i i'm i'd i've we let sir ma'am wait sorry hang hold with they there make you the my with now not read on".split(
    ' ',
  ),
);
const drop = /^(?:scratch|strike|correct|misspoke|i take that|take that|let me take|disregard|ignore|forget)/;

/** A "no" that is neither the answer to a question nor the denial of what follows. */
function bareNo(marks: Marks, i: number): boolean {
  const { words } = marks;
  if (!noes.has(words[i]?.norm ?? '')) return false;
  let b = i - 1;
  while (b >= 0 && i - b <= 3 && fillers.has(words[b]?.norm ?? '')) b--;
  if (b < 0 || words[b]?.asks) return false;
  const afterNumber = marks.numberAt.to(b + 1) !== undefined;
  if ((words[b]?.stop ?? 0) === 0 && !afterNumber) return false;
  if ((words[i]?.stop ?? 0) > 0) return true;
  return (
    words[i]?.norm !== 'no' ||
    afterNo.has(words[i + 1]?.norm ?? '') ||
    (afterNumber && marks.numberAt.from(i + 1) !== undefined)
  );
}

/** "Fresh is sixty, it's seventy-two": said anew of the same thing, with nothing named between. */
function restated(marks: Marks, i: number): boolean {
  const { words } = marks;
  if (!/^(?:it|that|this)$/.test(words[i]?.norm ?? '') || marks.clauseOf[i] === marks.clauseOf[i - 1])
    return false;
  const verb = words[i + 1]?.norm ?? '';
  if (verb !== "'s" && verb !== 'is') return false;
  if (!marks.numberAt.from(i + 2)) return false;
  for (let k = i; k > i - 5; k--) if (marks.numberAt.to(k)) return true;
  return false;
}

/** Every place where something is taken back, in order. */
export function takeBacks(marks: Marks): TakeBack[] {
  const { words } = marks;
  const out: TakeBack[] = [];
  for (let i = 0; i < words.length; i++) {
    const hit = corrections.at(words, i, 1);
    const again = hit ? undefined : looksAgain.at(words, i);
    const no = !hit && !again && bareNo(marks, i);
    if (!hit && !again && !no) {
      if (restated(marks, i)) out.push({ from: i, to: i + 1, weak: true, drops: false, close: true });
      continue;
    }
    const length = hit?.length ?? again?.length ?? 1;
    const said = words
      .slice(i, i + length)
      .map((w) => w.norm)
      .join(' ');
    // "I'd rather", "I say wait": no one takes anything back
    const before = words[i - 1]?.norm ?? '';
    if (
      (length === 1 &&
        !no &&
        (before === 'say' || (words[i - 1]?.stop === 0 && /^(?:would|'d|or|to|i|i'm)$/.test(before)))) ||
      // "my bad knee", "the wrong one is ...": only where the words end there
      (/^(?:my|wrong|again|make it|rather|not that)\b/.test(said) &&
        (words[i + length - 1]?.stop ?? 2) === 0 &&
        !afterNo.has(words[i + length]?.norm ?? '') &&
        marks.numberAt.from(i + length) === undefined) ||
      (said === 'actually' && (words[i - 1]?.stop ?? 2) === 0 && (words[i]?.stop ?? 0) === 0)
    )
      continue;
    out.push({
      from: i,
      to: i + length,
      weak: again !== undefined || said === 'actually' || said === 'sorry',
      drops: drop.test(said),
    });
    i += length - 1;
  }
  return out;
}
