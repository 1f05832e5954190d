// Why: much of what is said on a walk is of other coaches, other people, money, weather or what would be; none of it is a fact of this one.
import type { Marks } from './marks.ts';
import { itemAt } from './number-item.ts';
import { ordersIn } from './orders.ts';
import { otherVehicleAt } from './other-vehicle.ts';
import { moneyIn } from './price-talk.ts';
import { rulesIn } from './rule-talk.ts';
import {
  barePeople,
  comparisons,
  conditions,
  estimates,
  expectations,
  hypothetical,
  orderVerbs,
  otherCoach,
  people,
  stories,
  weather,
} from './trigger-words.ts';

/** Words a story may run on for where no stop ends it. */
const longest = 40;
/** What people do to a coach that is looked at: their doing is a fact of it. */
const didToIt =
  /^(?:traded|owned|consigned|packed|put|replaced|fixed|installed|rebuilt|changed|did|built|made|welded|painted|patched|serviced|wired|rewired|added|swapped|redid|resealed|sealed|checked|drove|kept|stored|babied|glued|taped|bolted|screwed|cut|mounted|hit|dented|backed|scraped|broke|tore|removed|took|pulled|repacked|rebuilt|inspected|tested|ran|hung|recovered|reupholstered|cleaned|washed|waxed|spilled|burned|smoked|left|caulked)$/;
/** Bring the talk back to this coach. */
const backHere = /^(?:this|these|ours|here)$/;
const turns = /^(?:but|so|anyway|anyways|anyhow|now|okay|ok|alright|well)$/;
const carriesOn = /^(?:he|she|they|him|it|that|both|hated|about|took|had|cost|drove|never|and)$/;

/** For each word: 1 about another coach or coaches in general, 2 supposed and not so. Linear. */
export function elsewhereIn(marks: Marks): Uint8Array {
  const { words, clauseOf, sentenceOf } = marks;
  const n = words.length;
  const out = new Uint8Array(n);
  const bare = words.every((w) => !w.capital);
  const norm = (i: number): string => words[i]?.norm ?? '';
  const starts = new Int32Array(n);
  for (let i = 1; i < n; i++) starts[i] = clauseOf[i] === clauseOf[i - 1] ? (starts[i - 1] ?? 0) : i;
  /** True where, after a story, the talk is of this coach again. */
  const returns = (k: number): boolean => {
    if (backHere.test(norm(k)) && /^(?:one|here|coach|rig|unit|trailer|van|thing|is|'s)$/.test(norm(k + 1)))
      return turns.test(norm(k - 1)) || starts[k] === k;
    if (turns.test(norm(k)) && (backHere.test(norm(k + 1)) || /^(?:on|in)$/.test(norm(k + 1))))
      return /^(?:this|these|ours|here)$/.test(norm(k + 1)) || /^(?:this|here|ours)$/.test(norm(k + 2));
    // without stops a story ends where a part is named at the head of a clause
    return bare && starts[k] === k && headed(k);
  };
  const headed = (k: number): boolean => {
    const at = /^(?:the|a|okay|and)$/.test(norm(k)) ? k + 1 : k;
    const m = marks.mentionAt.from(at);
    return m !== undefined && !m.weak && !m.aside;
  };
  const clause = (from: number, of: number, kind: 1 | 2): void => {
    for (let k = from; k < n && clauseOf[k] === clauseOf[of]; k++) if (out[k] !== 1) out[k] = kind;
  };
  const story = (from: number, i: number): void => {
    let k = from;
    for (; k < n && sentenceOf[k] === sentenceOf[i] && k - i < (bare ? 12 : longest); k++) {
      if (k > i && returns(k)) break;
      out[k] = 1;
    }
    // "that one wandered": what goes on about it without naming a part
    for (let more = 0; more < 2 && k < n && k > 0 && sentenceOf[k] !== sentenceOf[k - 1]; more++) {
      const to = endOf(sentenceOf, k);
      const of = norm(k) === 'that' && /^(?:one|thing|guy|fella)$/.test(norm(k + 1));
      const named = marks.mentions.length > 0 && mentionedIn(marks, k, to);
      if (!of && (named || !carriesOn.test(norm(k)) || /^(?:'s|is)$/.test(norm(k + 1)) || to - k > 16)) break;
      out.fill(1, k, to);
      k = to;
    }
  };
  for (let i = 0; i < n; i++) {
    const start = starts[i] ?? 0;
    const tale = stories.at(words, i) ?? otherVehicleAt(words, i);
    const spokenTo =
      /^(?:folks|people)$/.test(norm(i)) &&
      ((words[i]?.stop ?? 0) > 0 ||
        /^(?:is|'s|are|we|here|this|that|these|what|you|look|come|there|it)$/.test(norm(i + 1)));
    if (tale && !spokenTo && !endsInNumber(words, i + tale.length - 1) && !isNobodyElse(marks, i)) {
      // "struts are gone, at our place we prop them": what stands before the place was said of this coach
      const apart =
        /^(?:my|our|his|her|their)$/.test(norm(i)) && /^(?:at|on|to|from|than)$/.test(norm(i - 1));
      story(gotOne(norm(i), norm(i + 1)) || (apart && norm(i - 2) !== 'one') ? i - 1 : start, i);
      i += tale.length - 1;
      continue;
    }
    const who = people.at(words, i) ?? (start === i ? barePeople.at(words, i) : undefined);
    if (who && isSubject(marks, i, start)) {
      const verb = verbAfter(marks, i + who.length);
      // "left his out in the rain"
      const own = /^(?:his|her|hers|their|theirs|one)$/.test(norm(verb + 1));
      const generic =
        /^(?:a man|a fella|a feller|a guy|a fellow|a lady)$/.test(`${norm(i)} ${norm(i + 1)}`) &&
        /^(?:can|can't|could|couldn't|cannot)$/.test(norm(i + 2));
      if (
        !generic &&
        (own || !didToIt.test(norm(verb))) &&
        !/^(?:says?|said|told|tells|claims?|swears?|swore)$/.test(norm(verb))
      )
        story(i, i);
      i += who.length - 1;
      continue;
    }
    const estimate = estimates.at(words, i);
    if (estimate) {
      i += estimate.length - 1;
      continue;
    }
    const order = norm(i) === "don't" && start === i && orderVerbs.has(norm(i + 1));
    // "thirty-nine was the other one's"
    const wasOf =
      norm(i) === 'was' &&
      /^(?:the|our|my|his|her)$/.test(norm(i + 1)) &&
      marks.numberAt.to(i) !== undefined &&
      !mentionedIn(marks, i, endOf(clauseOf, i));
    const expected = expectations.at(words, i);
    if (otherCoach.at(words, i) || wasOf) clause(start, i, 1);
    else if (
      expected &&
      !/^(?:where|as|than|like|it|what)$/.test(norm(i - 1)) &&
      !/^(?:where|as|than|like|what)$/.test(norm(i - 2))
    ) {
      for (let k = i; k < n && clauseOf[k] === clauseOf[i]; k++) {
        const span = marks.numberAt.from(k);
        if (!span) continue;
        for (let j = i; j < span.to; j++) out[j] ||= 2;
        break;
      }
    } else if (weather.at(words, i) && !mentionedIn(marks, start, endOf(clauseOf, i))) clause(start, i, 1);
    else if (comparisons.at(words, i)) clause(i, i, 1);
    else if (order || (hypothetical.at(words, i) && !pastPerfect(norm(i + 1), norm(i + 2), norm(i + 3))))
      clause(start, i, 2);
    else if (
      conditions.at(words, i) &&
      !/^(?:say|says|tell|know|see|sure|checked|check|idea|wonder|certain|remember|test|tested)$/.test(
        norm(i - 1),
      )
    )
      clause(i, i, 2);
  }
  moneyIn(marks, out);
  rulesIn(marks, out);
  ordersIn(marks, out);
  otherNames(marks, out);
  return out;
}

function endOf(sentenceOf: readonly number[], from: number): number {
  let k = from;
  while (k < sentenceOf.length && sentenceOf[k] === sentenceOf[from]) k++;
  return k;
}

/** "He'd only had it out twice": had, not would. */
const pastPerfect = (d: string, a: string, b: string): boolean =>
  d === "'d" &&
  (/^(?:had|been|already|gone|done|put|got|gotten|taken)$/.test(a) ||
    (/^(?:only|just|never|always|also)$/.test(a) && /(?:ed|had|been|gone|done|put|got|en)$/.test(b)));

const gotOne = (verb: string, one: string): boolean =>
  one === 'one' && /^(?:had|brought|sold|bought|seen|saw|took|traded|owned|lost|drove)$/.test(verb);

/** A name said in a story of another coach is that coach's: "the Larkmoor's got two of them". */
function otherNames(marks: Marks, out: Uint8Array): void {
  const { words, sentenceOf } = marks;
  const named = new Map<string, { other: boolean; own: boolean }>();
  let tale = -1;
  for (let i = 0; i < words.length; i++) {
    if (out[i] === 1) tale = sentenceOf[i] ?? -1;
    if (!words[i]?.capital || !marks.isName(i)) continue;
    const norm = words[i]?.norm ?? '';
    const has = named.get(norm) ?? { other: false, own: false };
    const the = /^(?:the|long|short|old|big|little)$/.test(words[i - 1]?.norm ?? '');
    const inTale = tale === sentenceOf[i] || tellsLater(marks, out, i);
    named.set(norm, { other: has.other || (the && inTale), own: has.own || (!inTale && !the) });
  }
  for (let i = 1; i < words.length; i++) {
    const of = words[i]?.capital ? named.get(words[i]?.norm ?? '') : undefined;
    if (!of?.other || of.own || !/^(?:the|long|short|old|big|little)$/.test(words[i - 1]?.norm ?? ''))
      continue;
    let from = i;
    while (
      from > 0 &&
      sentenceOf[from - 1] === sentenceOf[i] &&
      marks.clauseOf[from - 1] === marks.clauseOf[i]
    )
      from--;
    for (let k = from; k < words.length && sentenceOf[k] === sentenceOf[i] && k - i < longest; k++) {
      if (k > i && backHere.test(words[k]?.norm ?? '') && (words[k - 1]?.stop ?? 0) > 0) break;
      out[k] = 1;
    }
  }
}

function tellsLater(marks: Marks, out: Uint8Array, i: number): boolean {
  for (let k = i + 1; k < i + 14 && marks.sentenceOf[k] === marks.sentenceOf[i]; k++)
    if (out[k] === 1) return true;
  return false;
}

function mentionedIn(marks: Marks, from: number, to: number): boolean {
  for (let k = from; k < to; k++) {
    const m = marks.mentionAt.from(k);
    if (m && !m.weak) return true;
  }
  return false;
}

/** "I had one seventeen volts": the "one" belongs to a number. */
const endsInNumber = (words: Marks['words'], i: number): boolean =>
  words[i]?.norm === 'one' && words[i]?.stop === 0 && itemAt(words, i + 1) !== undefined;

/** "Nothing people would see", "for most people": no subject of a story. */
const isNobodyElse = (marks: Marks, i: number): boolean =>
  /^(?:people|folks|everybody)$/.test(marks.words[i]?.norm ?? '') &&
  /^(?:for|to|of|sleeps?|seats?|with|by|sleeping|seating)$/.test(marks.words[i - 1]?.norm ?? '');

/** At the head of its clause, or behind "and", "because" and the like. */
const isSubject = (marks: Marks, i: number, start: number): boolean =>
  i - start <= 1 ||
  (i - start <= 2 &&
    /^(?:and|so|but|'cause|because|well|now|when|like)$/.test(marks.words[start]?.norm ?? ''));

/** The word after a person that tells what was done: names and short asides are passed over. */
function verbAfter(marks: Marks, i: number): number {
  let k = i;
  for (let left = 4; left > 0; left--, k++) {
    const w = marks.words[k]?.norm ?? '';
    if (w === 'in' || w === 'at' || w === 'from') {
      k++;
      continue;
    }
    if (
      !marks.words[k]?.capital &&
      !/^(?:has|had|have|just|also|already|actually|even|here|there|the|shop|town|who|that|road|street|'s)$/.test(
        w,
      )
    )
      break;
  }
  return k;
}
