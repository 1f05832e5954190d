// Why: dates are spoken as bare numbers: the year a thing was made or seen to, and the year by which it is to be replaced.
import type { Clause } from './clause.ts';
import type { NumberSpan } from './number-span.ts';
import { phraseList } from './phrase-index.ts';
import { type SpokenDate, spokenDateAt } from './spoken-date.ts';
import type { Talk } from './talk.ts';

/** Said before the year in which a thing is to go: the year after is its limit. */
const limits = phraseList(
  (
    'replace by,replaced by,replacement by,replace before,replace in,replace it by,replace it in,replace after,replacement date,due by,due in,good till,good until,good thru,good through,good to,' +
    "good 'til,best by,use by,valid until,valid through,valid till,expires,expired,expire,expires in,expired in,expiration,expiry,expiration date,end of life,outdated in," +
    'out of date,outta date,run out in,ran out in,runs out in,lapsed,lapsed in,dies in,not after'
  ).split(','),
);
/** Said of when a thing was made. */
const made =
  /^(?:date|dated|dates|stamp|stamped|stamps|stamping|manufactured|manufacture|born|made|built|produced|wrote|written|tag|tagged|printed|print|mfg|mfd|vintage|marked|embossed|engraved|etched)$/;
/** Said of when it was seen to, put in or bought. */
const seen =
  /^(?:inspected|inspection|serviced|service|replaced|installed|changed|certified|recertified|recert|tested|hydro|recharged|charged|bought|purchased|rebuilt|overhauled|new|fitted|renewed|put|cleaned|flushed|resealed|recoated|cert|registered|done)$/;
const says = /^(?:says|say|said|reads|read|shows|showing|sticker|label|collar|plate|placard|from)$/;
/** A short year may end what is said; where a noun follows it was a count. */
const ends =
  /^(?:on|so|and|but|by|it|its|the|they|which|that|i|we|or|is|then|not|in|at|was|has|also|too|for|if|yeah|okay|with|as|stamped|dated|manufacture)$/;

/** A date that is said of a thing. */
export interface SaidDate {
  readonly text: string;
  readonly aspect: 'date' | 'replace_by';
  readonly to: number;
  /** The words speak of making, so that the thing itself is dated. */
  readonly of: 'made' | 'seen' | 'bought' | 'limit';
}

/** The date that a number is; undefined where nothing around it says that it is one. */
export function saidDate(talk: Talk, clause: Clause, span: NumberSpan): SaidDate | undefined {
  if (span.unit || span.money || span.upTo) return undefined;
  const { words, sentenceOf } = talk.marks;
  const date = spokenDateAt(words, span.from);
  if (!date) return undefined;
  const norm = (i: number): string => words[i]?.norm ?? '';
  let limit = false;
  let make = -1;
  let see = -1;
  let read = false;
  // "when is it dated? twenty sixteen": the question tells what the number is
  const of = sentenceOf[span.from] ?? 0;
  let opening = span.from;
  while (opening > 0 && sentenceOf[opening - 1] === of) opening--;
  const first = words[opening - 1]?.asks ? (sentenceOf[opening - 1] ?? of) : of;
  for (let i = date.from - 1; i >= 0 && date.from - i <= 9 && (sentenceOf[i] ?? -1) >= first; i--) {
    // "out of date, stamped oh nine": the stamp is the date
    if (make < 0 && limits.at(words, i, 1) && date.from - i <= 7) limit = true;
    if (make < 0 && made.test(norm(i))) make = i;
    if (see < 0 && seen.test(norm(i))) see = i;
    if (says.test(norm(i)) && date.from - i <= 3) read = true;
    // another number between: the date word was for that one
    if (i < date.from - 1 && i >= clause.from && talk.marks.numberAt.from(i) && date.form === 'short') break;
  }
  for (let i = date.to; i < date.to + 5 && sentenceOf[i] === sentenceOf[span.from]; i++)
    if (made.test(norm(i)) && make < 0 && (date.form !== 'short' || i <= date.to + 1)) make = i;
  // "the alarm is a 2016"
  const isA =
    date.form === 'year' &&
    norm(date.from - 1) === 'a' &&
    /^(?:is|'s|was)$/.test(norm(date.from - 2)) &&
    clause.mentions.some((m) => m.to <= date.from && m.parts.some((p) => datedParts.has(p) && p !== 'coach'));
  if (
    !isA &&
    !mayBe(
      date,
      { limit, make, see, read, before: norm(date.from - 1) },
      norm(date.to),
      (words[date.to - 1]?.stop ?? 2) > 0,
    )
  )
    return undefined;
  return {
    text: date.text,
    aspect: limit ? 'replace_by' : 'date',
    to: date.to,
    of: limit
      ? 'limit'
      : make >= 0 && make >= see - 3
        ? 'made'
        : see >= 0
          ? /^(?:bought|purchased)$/.test(norm(see))
            ? 'bought'
            : 'seen'
          : 'made',
  };
}

interface Around {
  readonly limit: boolean;
  readonly make: number;
  readonly see: number;
  readonly read: boolean;
  readonly before: string;
}

function mayBe(date: SpokenDate, a: Around, next: string, stops: boolean): boolean {
  if (date.form === 'month')
    return a.limit || a.make >= 0 || a.see >= 0 || a.read || /^(?:of|from|is)$/.test(a.before);
  const onIt = next === 'on';
  if (date.form === 'year')
    return (
      a.limit || a.make >= 0 || a.see >= 0 || a.read || a.before === 'from' || a.before === 'since' || onIt
    );
  const ended = stops || next === '' || ends.test(next);
  if (!ended) return false;
  if (a.limit)
    return /^(?:by|till|until|thru|through|'til|in|date|expired|expires|to|of|after|before|life|expiration|expiry)$/.test(
      a.before,
    );
  return (
    (a.make >= 0 && date.from - a.make <= 3) || (a.see >= 0 && a.before === 'in' && date.from - a.see <= 6)
  );
}

/** Parts that carry a date or a limit of their own. */
const limited = /_alarm$|^extinguisher$/;
const datedParts = new Set(
  'smoke_alarm co_alarm lp_alarm extinguisher lp_tank house_battery chassis_battery lp_regulator ac_roof water_heater_out refrigerator furnace_run fuel_tank hitch_receiver air_tanks belts_hoses emergency_exit'.split(
    ' ',
  ),
);

/** The parts that the date is of: mostly one; two where "they" are two alarms just named. */
export function partsDated(
  talk: Talk,
  clause: Clause,
  span: NumberSpan,
  parts: readonly string[],
  of: SaidDate['of'],
): string[] {
  const { words, mentionAt } = talk.marks;
  const own = clause.mentions.filter((m) => !m.aside && m.to <= span.from).at(-1);
  const lately: string[] = [];
  for (let i = span.from; i > span.from - 40 && i > 0; i--) {
    const m = mentionAt.to(i);
    const p =
      m && !m.aside
        ? (m.parts.find((x) => limited.test(x)) ??
          (lately.length === 0 ? m.parts.find((x) => datedParts.has(x)) : undefined))
        : undefined;
    if (m && !p && lately.length > 0 && !m.weak) break;
    if (p && !lately.includes(p)) lately.push(p);
  }
  const many = words.slice(clause.from, span.from).some((w) => /^(?:they|both|these|them|two)$/.test(w.norm));
  if (many && lately.length >= 2 && limited.test(lately[0] ?? '') && limited.test(lately[1] ?? ''))
    return lately.slice(0, 2);
  const named = own?.parts.find((p) => datedParts.has(p)) ?? (own && !own.weak ? own.parts[0] : undefined);
  if (named && (of !== 'bought' || named !== 'coach')) return [named];
  if (of === 'limit')
    return [lately.find((p) => limited.test(p)) ?? parts.find((p) => limited.test(p)) ?? ''].filter(
      (p) => p !== '',
    );
  // "we bought her in twenty seventeen": the whole of it
  if (of === 'bought') return own ? [] : ['coach'];
  const first = lately[0] ?? parts.slice(0, 4).find((p) => datedParts.has(p)) ?? parts[0];
  return first === undefined || (of === 'seen' && first === 'coach') ? [] : [first];
}
