// Why: "it works" is a finding and "I work" is none; what stands before a verb decides who or what does it.
import type { Clause } from './clause.ts';
import type { Mention } from './mention.ts';
import type { Talk } from './talk.ts';
import type { VerbForm } from './verb-forms.ts';
import { verbUses } from './verb-table.ts';

const set = (text: string): Set<string> => new Set(text.split(' '));
const adverbs = set(
  'just still right also fine first easily smoothly only always now then actually really automatically already even finally immediately instantly again today ok okay good great nice nicely well each too definitely sure obviously normally properly mostly straight',
);
const quantities = set('all both each everything every');
const auxiliaries = set(
  "do does did will 'll is are was were 's 're am been being has have had 've gets got keeps kept doesn't don't didn't won't wouldn't can't not never isn't aren't wasn't weren't ain't",
);
/** Before the verb of a possibility, an intention or an order. */
const barred = set(
  "to can could would should might may must 'd gonna wanna gotta let lets if when whether cannot make makes help helps made please and/or",
);
const people = set(
  "i we you who anyone everyone somebody someone nobody folks guy guys man owner seller i'm we're they've",
);
const subordinate = set(
  'before after until once when whenever while if as unless because where how why whether till',
);
/** Words that stand for the part talked about. */
export const subjects = set('it they that everything both all these those which burners he and them');
const pronouns = set(
  "it they that this these those everything both all each which one ones them 'em others other two three she he sides",
);
const links = set('on in by of for over under at above behind with below up inside around near to from');

/** Who does it: a part named, what the talk is about, somebody, or nothing that could be told. */
export interface Subject {
  readonly is: 'named' | 'pronoun' | 'elided' | 'person';
  readonly mention?: Mention;
  /** The pronoun, or the word of quantity, that stands for it. */
  readonly word?: string;
  readonly aux?: string;
  readonly all?: boolean;
}

/** True where a form of the verb agrees with its subject. */
function agrees(form: VerbForm, aux: string | undefined, plural: boolean | undefined, verb: string): boolean {
  const does =
    aux !== undefined &&
    /^(?:do|does|did|will|'ll|doesn't|don't|didn't|won't|wouldn't|can't|not|never)$/.test(aux);
  const be =
    aux !== undefined &&
    /^(?:is|are|was|were|'s|'re|am|been|being|gets|got|keeps|kept|isn't|aren't|wasn't|weren't|ain't|not)$/.test(
      aux,
    );
  const have = aux !== undefined && /^(?:has|have|had|'ve)$/.test(aux);
  switch (form) {
    case 'base':
      return does || (aux === undefined && plural !== false);
    case 'third':
      return (
        aux === undefined && (plural !== true || /^(?:works|functions|operates|runs|comes|goes)$/.test(verb))
      );
    case 'past':
      return aux === undefined || have;
    case 'ing':
      return (
        be ||
        (aux === undefined &&
          (plural === undefined ||
            /^(?:working|running|blowing|heating|cooling|cooking|making|dropping|charging|spraying|draining|pumping|firing|burning|flushing|lighting)$/.test(
              verb,
            )))
      );
  }
}

/** The subject of a verb that stands at `i`; undefined where it is no predicate of a part's work. */
export function subjectBefore(
  talk: Talk,
  clause: Clause,
  i: number,
  form: VerbForm,
  depth = 0,
): Subject | undefined {
  const { words, placeAt, numberAt } = talk.marks;
  const norm = (k: number): string => (k < clause.from ? '' : (words[k]?.norm ?? ''));
  let k = i - 1;
  let aux: string | undefined;
  let quantity: string | undefined;
  while (k >= clause.from && !namedAt(talk, clause, k + 1)) {
    const n = norm(k);
    if (auxiliaries.has(n)) aux ??= n;
    else if (quantities.has(n)) quantity ??= n;
    else if (!adverbs.has(n)) break;
    k--;
  }
  const verb = words[i]?.norm ?? '';
  const more = {
    ...(aux === undefined ? {} : { aux }),
    ...(quantity === undefined ? {} : { all: true, word: quantity }),
  };
  const fits = (plural: boolean | undefined): boolean => agrees(form, aux, plural, verb);
  if (k < clause.from) {
    if (quantity !== undefined)
      return fits(true) || form === 'third' ? { is: 'pronoun', ...more } : undefined;
    if (form === 'base' && aux === undefined) return undefined;
    return fits(undefined) ? { is: 'elided', ...more } : undefined;
  }
  const named = namedAt(talk, clause, k + 1);
  if (named) {
    const last = words[named.to - 1]?.norm ?? '';
    const plural = (/s$/.test(last) && !/ss$/.test(last)) || quantity !== undefined;
    // "does the fan run?": in a question the verb that helps stands before the subject
    let first = named.from - 1;
    while (first > clause.from && /^(?:the|a|an|your|that|this|all|both|of)$/.test(norm(first))) first--;
    const asks = /^(?:does|do|did|will|won't|doesn't|don't|didn't)$/.test(norm(first))
      ? norm(first)
      : undefined;
    if (asks && aux === undefined && (form === 'base' || form === 'ing'))
      return {
        is: 'named',
        mention: named,
        aux: asks,
        ...(quantity === undefined ? {} : { all: true, word: quantity }),
      };
    if (!fits(plural)) return undefined;
    const lead = /^(?:the|a|your|that|this)$/.test(norm(named.from - 1))
      ? norm(named.from - 2)
      : norm(named.from - 1);
    if ((form === 'base' && barred.has(lead)) || subordinate.has(lead)) return undefined;
    return { is: 'named', mention: named, ...more };
  }
  const n = norm(k);
  if (barred.has(n)) return undefined;
  if (people.has(n)) return { is: 'person', word: n, ...more };
  if (pronouns.has(n)) {
    if (
      aux === undefined &&
      form === 'base' &&
      /^(?:does|did|will)$/.test(norm(k - 1)) &&
      k - 1 === clause.from
    )
      return {
        is: 'pronoun',
        word: quantity ?? n,
        aux: norm(k - 1),
        ...(quantity === undefined ? {} : { all: true }),
      };
    if (subordinate.has(norm(k - 1))) return undefined;
    if (n === 'one' && /^(?:no|any|some|every)$/.test(norm(k - 1)) && norm(k - 1) !== 'every')
      return undefined;
    const many = /^(?:they|these|those|both|all|ones|them|'em|others|two|three|sides|which|everything)$/.test(
      n,
    );
    return fits(
      many ? (n === 'which' || n === 'everything' ? undefined : true) : n === 'other' ? undefined : false,
    ) ||
      (many && form === 'third' && n !== 'they')
      ? { is: 'pronoun', word: quantity ?? n, ...more }
      : undefined;
  }
  const number = numberAt.to(k + 1);
  if (
    number &&
    number.from >= clause.from &&
    !number.unit &&
    k + 1 - number.from <= 2 &&
    (form === 'base' || form === 'past')
  )
    return { is: 'pronoun', word: 'all', ...more };
  if (/^(?:and|then|or|but|nor)$/.test(n) && depth < 3) {
    for (let j = k - 1; j >= clause.from && k - j < 9; j--) {
      const use = verbUses(norm(j))[0];
      if (!use || mentionInside(clause, j)) continue;
      const s = subjectBefore(talk, clause, j, use.form, depth + 1);
      if (s) return s;
    }
    return k === clause.from && form !== 'base' ? { is: 'elided', ...more } : undefined;
  }
  // a noun that is no part, right behind one: "the toilet bowl fills"
  const owner = namedAt(talk, clause, k);
  if (owner && words[k - 1]?.stop === 0 && !verbUses(n).some((u) => u.form !== 'base') && !/ly$/.test(n))
    return fits(/s$/.test(n)) ? { is: 'named', mention: owner, ...more } : undefined;
  // "the outlet in the bath trips": what only says where is looked through
  for (let p = k; p >= clause.from && k - p < 6; p--) {
    if (!links.has(norm(p))) {
      if (auxiliaries.has(norm(p)) || people.has(norm(p)) || (words[p - 1]?.stop ?? 0) > 0) break;
      continue;
    }
    const head = namedAt(talk, clause, p);
    if (head) {
      const last = words[head.to - 1]?.norm ?? '';
      return fits(/s$/.test(last) && !/ss$/.test(last)) ? { is: 'named', mention: head, ...more } : undefined;
    }
    if (pronouns.has(norm(p - 1)) && norm(p) !== 'to')
      return fits(undefined) ? { is: 'pronoun', word: norm(p - 1), ...more } : undefined;
  }
  const place = placeAt.to(k + 1);
  if (place && place.from >= clause.from) {
    const before = namedAt(talk, clause, place.from) ?? namedAt(talk, clause, place.from - 1);
    if (before)
      return fits(undefined) || form === 'base' ? { is: 'named', mention: before, ...more } : undefined;
    if (form === 'base' && aux === undefined) return quantity ? { is: 'pronoun', ...more } : undefined;
    return { is: 'pronoun', word: 'one', ...more };
  }
  return /^work(?:s|ing|ed)$/.test(verb) && !people.has(norm(clause.from))
    ? { is: 'pronoun', word: 'it', ...more }
    : undefined;
}

/** The part whose name ends right before word `end`. */
function namedAt(talk: Talk, clause: Clause, end: number): Mention | undefined {
  const m = talk.marks.mentionAt.to(end);
  return m && !m.aside && m.from >= clause.from ? m : undefined;
}

const mentionInside = (clause: Clause, i: number): boolean =>
  clause.mentions.some((m) => m.from <= i && i < m.to);

/** "The outside one does not", "the other two do": a verb said before and left out here. Undefined where it is none. */
export function leftOut(talk: Talk, clause: Clause, i: number): 'does' | 'fails' | undefined {
  const { words, placeAt } = talk.marks;
  const n = words[i]?.norm ?? '';
  // "odometer don't work, speedometer neither"
  if (/^(?:neither|either)$/.test(n) && i === clause.to - 1) {
    const m = talk.marks.mentionAt.to(i);
    const no = words
      .slice(Math.max(0, i - 12), i - 1)
      .some((w) => /n't$|^(?:not|no|dead|out|never)$/.test(w.norm));
    return m &&
      !m.aside &&
      no &&
      talk.marks.words[i - 1]?.stop === 0 &&
      !words.slice(clause.from, m.from).some((w) => /^(?:no|any)$/.test(w.norm))
      ? 'fails'
      : undefined;
  }
  const short = /^(?:doesn't|won't|didn't|don't)$/.test(n) && i === clause.to - 1;
  const long = /^(?:does|do|did|will)$/.test(n) && words[i + 1]?.norm === 'not' && i + 2 === clause.to;
  const good = /^(?:does|do|did)$/.test(n) && (i === clause.to - 1 || words[i]?.stop !== 0);
  if ((!short && !long && !good) || i === clause.from) return undefined;
  const before = words[i - 1]?.norm ?? '';
  const other = words[i - 2]?.norm ?? '';
  if (
    good &&
    /^(?:two|three|four|five|rest|others|ones|both|one|all)$/.test(before) &&
    /^(?:the|other|other)$/.test(other) &&
    before !== 'one'
  )
    return 'does';
  if (good) return undefined;
  const named = talk.marks.mentionAt.to(i);
  return /^(?:one|ones|other|others|side|part|half|rest)$/.test(before) ||
    placeAt.to(i) !== undefined ||
    (named !== undefined && !named.aside)
    ? 'fails'
    : undefined;
}
