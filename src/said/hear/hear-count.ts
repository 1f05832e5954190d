// Why: "three slides", "six of them", "TV two", "six speed": bare whole numbers that count.
import { partOf } from '../../catalogue/index.ts';
import type { Clause } from './clause.ts';
import { betweens, bottleSizes, nouns, uncounted } from './count-table.ts';
import { impliedBy } from './failed-part.ts';
import { defectPhrases, isKnownWord, typePhrases } from './lexicon.ts';
import type { Mention } from './mention.ts';
import type { NumberSpan } from './number-span.ts';
import type { Talk } from './talk.ts';

/** What a bare number counts. */
export interface Counted {
  readonly part: string;
  readonly aspect: string;
  readonly count: number;
  readonly of?: number;
  /** Volts of each of them. */
  readonly each?: number;
  /** The words leave no other reading. */
  readonly sure?: true;
}

const partAfter = (clause: Clause, talk: Talk, span: NumberSpan): Mention | undefined => {
  for (const m of clause.mentions) {
    if (m.from < span.bare || m.from - span.bare > 3) continue;
    for (let k = span.bare; k < m.from; k++)
      if (!betweens.has(talk.marks.words[k]?.norm ?? '')) return undefined;
    return m;
  }
  return undefined;
};

const isNumeral = (n: string | undefined): boolean => n === undefined || /^(?:total|only|each|of)$/.test(n);

/** "With three burners lit", "with the two airs running": under what something was read. */
function isLoad(talk: Talk, clause: Clause, span: NumberSpan): boolean {
  const norm = (k: number): string =>
    k >= clause.from && k < clause.to ? (talk.marks.words[k]?.norm ?? '') : '';
  const at = /^(?:the|all|only|just)$/.test(norm(span.from - 1)) ? span.from - 2 : span.from - 1;
  if (norm(at) !== 'with') return false;
  for (let k = span.bare; k < span.bare + 5; k++)
    if (/^(?:on|off|lit|running|going|burning|open|pulling)$/.test(norm(k))) return true;
  return false;
}

/** What a number without a unit counts, if it counts anything. */
export function counted(talk: Talk, clause: Clause, span: NumberSpan): Counted | undefined {
  const words = talk.marks.words;
  // "two six volts": a count and what each is
  const [many, each] = span.items;
  if (
    span.items.length === 2 &&
    many?.kind === 'digit' &&
    (many.value > 1 ||
      (many.value === 1 && /^(?:is|are|have|has)$/.test(words[span.from - 1]?.norm ?? ''))) &&
    each &&
    /^(?:6|8|12)$/.test(String(each.value)) &&
    span.unit?.units[0] === 'V' &&
    words[span.to - 1]?.norm !== 'v'
  ) {
    const part = talk.partsFor(span.from, span.bare, clause).find((p) => /battery/.test(p));
    if (part) return { part, aspect: 'count', count: many.value, sure: true, each: each.value };
  }
  // "two thirty pound cylinders"
  if (
    span.items.length === 2 &&
    many?.kind === 'digit' &&
    many.value > 1 &&
    each &&
    bottleSizes.has(each.value) &&
    span.unit?.units[0] === '[lb_av]'
  ) {
    const part = talk.partsFor(span.from, span.bare, clause).find((p) => p === 'lp_tank');
    if (part) return { part, aspect: 'count', count: many.value, sure: true, each: each.value };
  }
  const value = span.readings[0]?.value;
  if (
    span.unit ||
    span.money ||
    value === undefined ||
    !Number.isInteger(value) ||
    value < 0 ||
    words[span.from - 1]?.norm === 'number' ||
    value > 60 ||
    span.items.length > 1
  )
    return undefined;
  if (
    (words[span.from - 1]?.norm === 'v' ||
      words[span.from - 1]?.norm === 'inline' ||
      words[span.from - 1]?.norm === 'straight') &&
    value <= 12
  )
    return { part: 'engine', aspect: 'cylinders', count: value, sure: true };
  const lead = words[span.from - 1]?.norm ?? '';
  // "the other three", "these two", "all but one": no count of how many there are
  const without =
    /^(?:but|except)$/.test(lead) &&
    /^(?:all|every|everything|none|nothing|any|everyone)$/.test(words[span.from - 2]?.norm ?? '');
  if (!span.of && (without || /^(?:other|these|those|last|first|next|every|this|that)$/.test(lead)))
    return undefined;
  if (isLoad(talk, clause, span)) return undefined;
  // "the CO one": which of them
  if (
    words[span.from]?.norm === 'one' &&
    words[span.from - 1]?.stop === 0 &&
    clause.mentions.some((m) => m.to === span.from) &&
    !isNumeral(words[span.bare]?.norm)
  )
    return undefined;
  const both = words[span.from]?.norm === 'both';
  const behind = span.of === undefined ? span.bare : span.to;
  const next = words[behind]?.norm ?? '';
  const joined = words[behind - 1]?.stop === 0;
  const noun = joined ? nouns[next] : undefined;
  const parts = talk.partsFor(span.from, span.bare, clause);
  if (noun) {
    const part = parts.find((p) => noun.parts.includes(p)) ?? (noun.alone ? noun.parts[0] : undefined);
    if (part && !(next === 'point' && value < 3))
      return {
        part,
        aspect: noun.aspect,
        count: value,
        sure: true,
        ...(span.of === undefined ? {} : { of: span.of }),
      };
  }
  if (joined && next === 'group' && parts[0] && value > 1)
    return { part: parts[0], aspect: 'count', count: value, sure: true };
  const found = joined ? partAfter(clause, talk, span) : undefined;
  const of = span.of;
  if (
    found &&
    !(both && found.parts[0] !== 'keys_set') &&
    !uncounted.has(found.parts[0] ?? '') &&
    (value !== 1 ||
      (found.to === clause.to &&
        !/^(?:on|in|at|of|from|to|by|over|under|behind|near|off|down|for|than)$/.test(lead)))
  ) {
    return {
      part: found.parts[0] ?? '',
      aspect: 'count',
      count: value,
      sure: true,
      ...(of === undefined ? {} : { of }),
    };
  }
  if (both) return undefined;
  if (
    joined &&
    next === 'of' &&
    /^(?:them|these|those|em|'em)$/.test(words[span.bare + 1]?.norm ?? '') &&
    value > 1
  ) {
    const part = parts[0];
    return part && !uncounted.has(part) ? { part, aspect: 'count', count: value, sure: true } : undefined;
  }
  // "two will not lock", "two dead", "a dozen little spots"
  for (let k = span.bare; k < Math.min(clause.to, span.bare + 3) && joined; k++) {
    const defect = defectPhrases.at(words, k);
    const plain = parts[0];
    const wanted = defect?.values[0] && plain === 'coach' ? impliedBy(defect.values[0]) : undefined;
    const part = wanted ?? plain;
    if (
      part &&
      value > 1 &&
      value <= 30 &&
      (defect?.values[0]?.noun ||
        defect ||
        /^(?:spots|places|marks|screws|bolts|nuts|bulbs|patches|repairs|chips|dings|rivets|clips)$/.test(
          words[k]?.norm ?? '',
        ) ||
        (k === span.bare &&
          /^(?:will|won't|do|don't|does|doesn't|are|can't)$/.test(words[k]?.norm ?? '') &&
          (/^(?:won't|don't|can't|doesn't)$/.test(words[k]?.norm ?? '') || words[k + 1]?.norm === 'not')))
    ) {
      return { part, aspect: 'failed_count', count: value, sure: true };
    }
  }
  // "six Stavrics": tires go by their maker
  const name = words[span.bare];
  if (
    joined &&
    value > 1 &&
    value <= 10 &&
    parts.slice(0, 2).includes('tire') &&
    name?.capital &&
    name.norm.endsWith('s') &&
    !isKnownWord(name.norm)
  )
    return { part: 'tire', aspect: 'count', count: value, sure: true };
  // "slides are four"
  const verb = clause.mentions.filter((m) => !m.aside && m.to === span.from - 1).at(-1);
  if (
    verb &&
    !verb.weak &&
    /^(?:are|is|'s|'re|total|number|be)$/.test(lead) &&
    (words[verb.to - 1]?.norm.endsWith('s') || value === 1) &&
    ((words[span.bare - 1]?.stop ?? 2) > 0 ||
      span.bare === clause.to ||
      /^(?:the|this|one|i|and|but|all)$/.test(next)) &&
    value > 0 &&
    value <= 12 &&
    !uncounted.has(verb.parts[0] ?? '')
  )
    return { part: verb.parts[0] ?? '', aspect: 'count', count: value };
  // "four six-volt flooded"
  if (joined && value > 1 && clause.numbers.some((n) => n.from === span.bare && n.unit !== undefined)) {
    const part = parts[0];
    if (part && /batter|solar|ac_|tank|slide|tire/.test(part))
      return { part, aspect: 'count', count: value, sure: true };
  }
  // "batteries, two flooded"
  if (joined && value > 1 && value <= 12) {
    const type = typePhrases.at(words, span.bare);
    const part = type ? parts.slice(0, 2).find((p) => /batter|solar_array|lp_tank/.test(p)) : undefined;
    if (part) return { part, aspect: 'count', count: value, sure: true };
  }
  // "three slides ... two on the passenger side"
  if (
    next === 'on' &&
    joined &&
    value > 1 &&
    clause.places.some((p) => p.from - span.bare <= 2 && p.from > span.bare)
  ) {
    const part = parts[0];
    if (part && !uncounted.has(part)) return { part, aspect: 'count', count: value, sure: true };
  }
  const before = clause.mentions.filter((m) => m.to <= span.from).at(-1);
  // "keys I have received two", "slides there are three"
  if (
    before &&
    value > 1 &&
    value <= 14 &&
    before.from - clause.from <= 2 &&
    (span.bare === clause.to || words[span.bare - 1]?.stop !== 0) &&
    before.to < span.from &&
    span.from - before.to <= 4 &&
    words
      .slice(before.to, span.from)
      .every((w) =>
        /^(?:i|we|you|they|he|she|it|there|have|has|had|got|get|received|found|count|counted|see|are|is|exist|with|only|'ve|'s)$/.test(
          w.norm,
        ),
      ) &&
    words
      .slice(before.to, span.from)
      .some((w) => /^(?:have|has|had|got|received|found|count|counted|see|there|exist|'ve)$/.test(w.norm)) &&
    before.parts[0] &&
    !uncounted.has(before.parts[0])
  )
    return { part: before.parts[0], aspect: 'count', count: value, sure: true };
  const alone = span.bare === clause.to || words[span.bare - 1]?.stop !== 0 || next === 'total';
  const isAll = words[span.from - 1]?.norm === 'all' && value > 1;
  const part =
    before && before.to === span.from
      ? before.parts[0]
      : alone || isAll || next === 'total'
        ? parts[0]
        : undefined;
  if (
    alone &&
    value > 1 &&
    /^there$/.test(words[clause.from]?.norm ?? '') &&
    clause.to - clause.from <= 4 &&
    parts[0] &&
    !uncounted.has(parts[0])
  ) {
    return { part: parts[0], aspect: 'count', count: value, sure: true };
  }
  const header = before !== undefined && before.to === span.from && words[before.from]?.capital === true;
  const own = part ? partOf(part) : undefined;
  if (
    own &&
    part &&
    !uncounted.has(part) &&
    (header ||
      next === 'total' ||
      isAll ||
      (alone &&
        clause.to - clause.from <= 2 &&
        value <= 14 &&
        (value !== 1 || words[span.from]?.norm !== 'one' || clause.from === span.from)))
  ) {
    return { part, aspect: 'count', count: value };
  }
  return undefined;
}
