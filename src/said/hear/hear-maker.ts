// Why: who made a part is said by a bare name, and names are also people and other coaches; only where a maker is due is one heard.
import type { Clause } from './clause.ts';
import type { Put } from './hear-plates.ts';
import { isKnownWord } from './lexicon.ts';
import { made } from './made.ts';
import { isNameLike, isOrdinaryShape } from './name-like.ts';
import { itemAt } from './number-item.ts';
import type { Talk } from './talk.ts';
import { nameAt } from './written-name.ts';

const copula = /^(?:'s|'re|is|are|was|were|be)$/;
const article = /^(?:a|an|the|that|your|my|our)$/;
const plainBefore =
  /^(?:'s|'re|is|are|by|make|maker|brand|all|both|six|four|two|five|eight|with|got|new|called|tires|made|has|have|of|on|engine|generator|named)$/;
const onChassis = /^(?:chassis|cutaway|cab|platform|frame|undercarriage)$/;
const allRound = /^(?:all|on|both|everywhere|throughout|front|up|in)$/;

/** One past the last word of the name that begins at `i`. */
function nameEnd(talk: Talk, clause: Clause, i: number): number {
  let to = i + 1;
  while (to < clause.to && to - i < 3 && isNameLike(talk, to) && talk.marks.words[to - 1]?.stop === 0) to++;
  return to;
}

const nameOf = (talk: Talk, from: number, to: number): string =>
  talk.marks.words
    .slice(from, to)
    .map((w) => nameAt(talk, w.written))
    .join(' ');

/** "Pinholes": two words everybody knows written as one. */
function isCompound(norm: string): boolean {
  for (let k = 3; k <= norm.length - 3; k++)
    if (isKnownWord(norm.slice(0, k)) && isKnownWord(norm.slice(k))) return true;
  return false;
}

/** The maker that the word `i` begins to name, noted; gives one past its last word, or undefined where none is named. */
export function makerAt(
  talk: Talk,
  clause: Clause,
  i: number,
  put: Put,
  taken: Uint8Array,
): number | undefined {
  const { words, isName } = talk.marks;
  const w = words[i];
  if (!w || taken[i] || !isNameLike(talk, i) || isOrdinaryShape(w.norm)) return undefined;
  const to = nameEnd(talk, clause, i);
  const end = words[to - 1]?.stop ?? 2;
  const next = end === 0 ? (words[to]?.norm ?? '') : '';
  const joined = i > clause.from || words[i - 1]?.stop === 0;
  const told = joined ? (words[i - 1]?.norm ?? '') : '';
  const b = /^(?:okay|ok|and|so|now|alright|yeah|yes|well|uh|um)$/.test(told) ? '' : told;
  const lead = words[i - 2]?.norm ?? '';
  if (next === "'s" || /^(?:like|than)$/.test(b)) return to;
  // "on the Holvane chassis", "a Brandvik 3500 chassis"
  const model = end === 0 ? itemAt(words, to) : undefined;
  const behind = model ? (words[model.to]?.norm ?? '') : next;
  if (onChassis.test(behind) && (behind !== 'cab' || b !== 'the')) {
    put('chassis_label', 'maker', nameOf(talk, i, to), i, to - i, 0.85);
    if (model)
      put(
        'chassis_label',
        'model',
        model.written ?? String(model.value),
        model.from,
        model.to - model.from,
        0.75,
      );
    taken.fill(1, i, model ? model.to : to);
    return model ? model.to : to;
  }
  const own = clause.mentions.filter((m) => !m.aside);
  const after = own.find((m) => m.from >= to && m.from - to <= 6 && made.test(m.parts[0] ?? ''));
  const before = [...own].reverse().find((m) => m.to <= i && m.parts.some((p) => made.test(p)));
  const isA =
    (copula.test(b) && !/^(?:here|there|where|what|who|how)$/.test(lead)) ||
    (article.test(b) && copula.test(lead)) ||
    /^(?:by|make|maker|brand|called)$/.test(b);
  const sized = model !== undefined || (after !== undefined && after.from - to <= 1);
  const due =
    isA ||
    (b === 'the' || b === 'that' ? sized : article.test(b) || (plainBefore.test(b) && !copula.test(b))) ||
    before?.to === i ||
    (b === '' &&
      !isCompound(w.norm) &&
      (model !== undefined || end === 1 || allRound.test(next) || (end === 2 && w.norm.endsWith('s')))) ||
    (model !== undefined && b !== 'old');
  if (!due) return to;
  // without capitals only what is said of a part named in the same clause
  if (
    !isName(i) &&
    !(before && ((isA && article.test(b)) || (before.to === i && /s$/.test(w.norm)))) &&
    !(after && after.from === to && /^(?:a|an)$/.test(b))
  )
    return undefined;
  const part =
    (after && (after.from - to <= 1 || !before) ? after.parts[0] : undefined) ??
    before?.parts.find((p) => made.test(p)) ??
    talk
      .partsFor(i, to, clause)
      .slice(0, 3)
      .find((p) => made.test(p));
  if (part) {
    put(part, 'maker', nameOf(talk, i, to), i, to - i, 0.7);
    taken.fill(1, i, to);
  }
  return to;
}
