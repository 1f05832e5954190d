// Why: a number means what part, aspect, unit and believable range together allow; the likeliest pairing wins.
import { generalAspects } from '../../catalogue/general-aspect.ts';
import { partOf } from '../../catalogue/index.ts';
import type { Aspect } from '../../catalogue/part.ts';
import { convert, isSameDimension } from '../../units/quantity.ts';
import { type Unit, unitFact } from '../../units/unit.ts';
import { canHave } from './can-have.ts';
import type { Clause } from './clause.ts';
import { instrumentAt } from './instrument.ts';
import { kinOf } from './kin.ts';
import { measuredFrom } from './measuring-words.ts';
import type { Mention } from './mention.ts';
import { endsPhrase, faultIn, inOutOwner, looksLikeYear } from './number-end.ts';
import type { Reading } from './number-reading.ts';
import type { NumberSpan } from './number-span.ts';
import { byUnit, general, strongNames } from './quantity-table.ts';
import { type ReadingName, readingNames } from './reading-names.ts';
import type { Talk } from './talk.ts';
import { isTypical, typicalRank } from './typical.ts';
import { carriedUnit, usualUnit } from './unit-carried.ts';

/** A pairing of a number with what it is a reading of. */
export interface Pairing {
  readonly part: string;
  readonly aspect: string;
  readonly kind: Aspect['kind'];
  readonly value: number;
  readonly upTo?: number;
  readonly unit: Unit;
  readonly score: number;
}

/** Miles and inches are both lengths, but never of the same thing. */
const isRoad = (u: Unit): boolean => u === '[mi_i]' || u === 'km';
const isNumeric = (a: Aspect): boolean => a.kind === 'quantity' || a.kind === 'count';

/** Readings in the unit of an aspect that its range believes, the likeliest first. */
function fits(
  readings: readonly Reading[],
  a: Aspect,
  said: { units: readonly Unit[]; times: number; loose?: true } | undefined,
  usual: (unit: Unit) => Unit | undefined,
): { value: number; unit: Unit } | undefined {
  const metric = a.unit && (!said || said.units[0] === '[degF]') ? usual(a.unit) : undefined;
  for (const r of readings) {
    const options: { value: number; unit: Unit }[] = [];
    if (metric) options.push({ value: r.value, unit: metric });
    if (a.unit === undefined) {
      if (!said && Number.isInteger(r.value)) options.push({ value: r.value, unit: '1' });
    } else if (said?.loose) {
      if (a.unit === 'kW' || a.unit === 'W') options.push({ value: r.value, unit: 'kW' });
      else options.push({ value: r.value * 1000, unit: a.unit });
    } else if (said) {
      const water = a.unit === "[in_i'H2O]" && said.units[0] === '[in_i]';
      if (
        isRoad(a.unit) !== isRoad(said.units[0] as Unit) &&
        (isRoad(a.unit) || isRoad(said.units[0] as Unit))
      )
        continue;
      const unit = water ? a.unit : said.units.find((u) => isSameDimension(u, a.unit as Unit));
      if (unit) options.push({ value: r.value * said.times, unit });
    } else {
      // "half" on a gauge is half of a hundred
      if (a.unit === '%' && r.value > 0 && r.value < 1) options.push({ value: r.value * 100, unit: '%' });
      options.push({ value: r.value, unit: a.unit });
      // "five five" is kilowatts, "fifty-five hundred" is watts
      if (a.unit === 'kW') options.push({ value: r.value, unit: 'W' });
      if (a.unit === '[Btu]/h' && r.value >= 5 && r.value <= 80)
        options.push({ value: r.value * 1000, unit: a.unit });
      if (a.unit === 'g/mL') options.push({ value: r.value / 1000, unit: a.unit });
    }
    for (const o of options) {
      const inOwn = a.unit === undefined ? o.value : convert(o.value, o.unit, a.unit);
      if (!a.within || (inOwn >= a.within[0] - 1e-9 && inOwn <= a.within[1] + 1e-9)) return o;
    }
  }
  return undefined;
}

/** How well the words beside the number name the aspect: 0 where they do not. */
function named(talk: Talk, clause: Clause, span: NumberSpan, part: string, a: Aspect): number {
  let best = 0;
  const lead = talk.lead.filter(
    (h) => clause.from - h.to <= 4 && clause.numbers[0] === span && clause.mentions.length === 0,
  );
  for (const hit of [...clause.aspects, ...lead]) {
    if (!hit.keys.has(`${part}/${a.id}`)) continue;
    // the unit itself names nothing
    if (span.unit && hit.from >= span.bare && hit.to <= span.to) continue;
    // "seventy-five in and sixty-four out": these two belong to the number right before them
    const text = talk.marks.words[hit.from]?.norm;
    // "goes out in twenty-five seconds": this "in" only leads to the time
    if (
      text === 'in' &&
      hit.to - hit.from === 1 &&
      hit.to === span.from &&
      (span.unit?.units[0] === 's' ||
        span.unit?.units[0] === 'min' ||
        talk.marks.words[hit.from - 1]?.norm === 'out') &&
      talk.marks.words[hit.from - 1]?.norm !== 'in'
    )
      continue;
    if (hit.to - hit.from === 1 && (text === 'in' || text === 'out')) {
      const owner = inOutOwner(talk, hit.from);
      if (owner === span) best = Math.max(best, 5.5);
      if (owner) continue;
    }
    const gap =
      hit.to <= span.from ? span.from - hit.to : hit.from >= span.bare ? hit.from - span.bare + 0.5 : 0;
    const other = clause.numbers.some(
      (n) =>
        n !== span &&
        (hit.to <= span.from ? n.from >= hit.to && n.to <= span.from : n.from >= span.to && n.to <= hit.from),
    );
    best = Math.max(best, (other ? 1.2 : 4) - Math.min(2.5, gap * 0.3) + (hit.to - hit.from) * 0.3);
  }
  return best;
}

/** Words that call a reading, led up to the number by nothing but measuring words, or right behind it. */
function called(talk: Talk, clause: Clause, span: NumberSpan, among: ReadonlySet<string>): ReadingName[] {
  const { words } = talk.marks;
  const out: ReadingName[] = [];
  const take = (names: readonly ReadingName[]): void => {
    for (const n of names) if (!n.among || [...n.among].some((p) => among.has(p))) out.push(n);
  };
  const first = sentenceStart(talk, clause);
  const start = measuredFrom(talk.marks, span.from, first);
  for (let i = span.from - 1; i >= Math.max(first, start - 3) && span.from - i < 10; i--) {
    if (talk.marks.numberAt.to(i + 1)) break;
    const wide = i > first ? readingNames.at(words, i - 1) : undefined;
    const hit = wide && wide.length > 1 ? wide : readingNames.at(words, i);
    const from = hit === wide ? i - 1 : i;
    if (!hit || from + hit.length > span.from || from + hit.length < start) continue;
    if (hit.length === 1 && isPlainInOut(words[i]?.norm) && i !== span.from - 1) continue;
    take(hit.values);
    if (out.length > 0) break;
  }
  if (out.length === 0) {
    const aspect = inAndOut(talk, span);
    if (aspect)
      return (readingNames.at([{ norm: aspect }], 0)?.values ?? []).filter((n) => n.part === 'ac_run');
  }
  if (out.length === 0 && (words[span.to - 1]?.stop ?? 2) === 0) {
    let at = span.to;
    while (
      at < span.to + 2 &&
      /^(?:on|at|the|it|coming|of|going)$/.test(words[at]?.norm ?? '') &&
      !readingNames.at(words, at)
    )
      at++;
    const hit = readingNames.at(words, at);
    const end = at + (hit?.length ?? 0);
    const next = words[end]?.norm ?? '';
    if (
      hit &&
      talk.marks.clauseOf[at] === clause.id &&
      ((words[end - 1]?.stop ?? 2) > 0 || end >= words.length || next === 'and' || hit.length > 1)
    )
      take(hit.values);
  }
  return out;
}
/** "Eighty-one in and sixty-three out": air that comes back warm and goes out cold. */
function inAndOut(talk: Talk, span: NumberSpan): 'return' | 'supply' | undefined {
  const { words, numberAt } = talk.marks;
  const side = words[span.to]?.norm;
  const value = span.readings[0]?.value ?? 0;
  if ((side !== 'in' && side !== 'out') || value < 35 || value > 110) return undefined;
  for (let i = Math.max(0, span.from - 8); i <= span.from + 8; i++) {
    const other = numberAt.from(i);
    if (!other || other === span) continue;
    const theirs = words[other.to]?.norm;
    const v = other.readings[0]?.value ?? 0;
    if (side === 'in' && theirs === 'out' && other.from > span.from && v < value && v > 30) return 'return';
    if (side === 'out' && theirs === 'in' && other.from < span.from && v > value && v < 112) return 'supply';
  }
  return undefined;
}

const anything = { within: [-1e12, 1e12] } as const;

/** The first word of the clause's sentence, not far back. */
function sentenceStart(talk: Talk, clause: Clause): number {
  let i = clause.from;
  while (i > 0 && clause.from - i < 14 && talk.marks.sentenceOf[i - 1] === clause.sentence) i--;
  return i;
}
const isPlainInOut = (n: string | undefined): boolean => n === 'in' || n === 'out';

/** The likeliest pairing of a number in its clause; undefined where nothing is likely enough. */
export function pair(
  talk: Talk,
  clause: Clause,
  span: NumberSpan,
  last?: { readonly part: string; readonly aspect: string; readonly at: number },
): Pairing | undefined {
  if (
    span.of !== undefined ||
    (!span.unit && /^(?:both|couple|pair)$/.test(talk.marks.words[span.from]?.norm ?? ''))
  )
    return undefined;
  const byName = talk.partsFor(span.from, span.bare, clause);
  // what was read last is still read, until another thing is named
  const carried =
    last !== undefined &&
    span.from - last.at <= 14 &&
    clause.mentions.every((m) => m.aside) &&
    (talk.recent[0]?.at ?? -1) < last.at;
  const all = carried ? [last.part, ...byName.filter((p) => p !== last.part)] : byName;
  const ownMentions = clause.mentions.filter((m) => !m.aside);
  const start = measuredFrom(talk.marks, span.from, clause.from);
  // "with a burner lit it holds eleven": "it" is what was talked about before
  const goesBack = refersBack(talk, clause, start, span.from);
  const own = new Set(goesBack ? [] : ownMentions.flatMap((m) => m.parts));
  const said = span.unit ?? carriedUnit(talk, clause, span);
  const inClause = new Set((goesBack ? sentenceMentions(talk, clause) : ownMentions).flatMap((m) => m.parts));
  const parts = goesBack
    ? [...all.filter((p) => !inClause.has(p)), ...all.filter((p) => inClause.has(p))]
    : all;
  const usual = (u: Unit): Unit | undefined => usualUnit(talk, u);
  const fault = faultIn(talk, clause, span) ?? talk.fault;
  const ofFault = (part: string): boolean =>
    fault !== undefined &&
    fault.part === part &&
    span.from - fault.at <= 14 &&
    talk.marks.sentenceOf[fault.at] === clause.sentence;
  const failed =
    fault !== undefined && said?.units[0] === '[in_i]' && ofFault(fault.part) && !own.has(fault.part);
  let best: Pairing | undefined;
  const isLastWord = endsPhrase(talk, span);
  const isYear = looksLikeYear(span);
  // what the measuring words before the number lead back to
  const subject = [...ownMentions].reverse().find((m) => m.to <= span.from && m.to >= start);
  const linked = new Set(subject?.parts ?? []);
  const open = goesBack || start === clause.from || (start - clause.from <= 2 && ownMentions.length === 0);
  const near = new Set(parts.slice(0, 5));
  for (const r of talk.recent.slice(0, 4)) for (const p of r.parts) near.add(p);
  const names = called(talk, clause, span, near);
  const offer = (
    part: string,
    a: Aspect,
    base: number,
    isGeneral: boolean,
    name?: Pick<ReadingName, 'within'>,
    sure = 4.4,
  ): void => {
    // a reading at no load is one only where that was said
    if (!name && /_unloaded$/.test(a.id)) return;
    const value = fits(span.readings, a, said, usual);
    if (!value) return;
    const inOwn = a.unit === undefined ? value.value : convert(value.value, value.unit, a.unit);
    if (name && !said && (inOwn < name.within[0] || inOwn > name.within[1])) return;
    const words = name ? sure : named(talk, clause, span, part, a);
    const renamed = clause.mentions.some(
      (m) => last !== undefined && m.from >= last.at && m.to <= span.from && !m.parts.includes(part),
    );
    const again =
      !renamed && last && last.part === part && last.aspect === a.id && span.from - last.at < 30 ? 0.9 : 0;
    const typical = isTypical(part, a.id, inOwn);
    if (
      !said &&
      words === 0 &&
      !(
        base >= 1.4 &&
        !isGeneral &&
        a.within &&
        (linked.has(part) || own.has(part) || open) &&
        (typical || (span.by !== undefined && a.id === 'length'))
      )
    )
      return;
    if (!said && !a.within && words < 1.5) return;
    // an aspect that believes anything is meant only where it is named
    if (
      said &&
      !a.within &&
      !isGeneral &&
      words === 0 &&
      !(a.unit === '[in_i]' && (own.has(part) || ofFault(part)))
    )
      return;
    // a length said in one breath with a failure is the length of the failure
    if (failed && said && part !== fault?.part && !own.has(part) && words < 3) return;
    if (
      part === 'coach' &&
      words === 0 &&
      !isGeneral &&
      (a.id === 'length' ? !said && talk.marks.isName(span.from - 1) : !own.has(part))
    )
      return;
    if (!said && words < 2 && (isYear || !isLastWord)) return;
    if (!said && isYear && words < 3) return;
    // a bare number is a share only of moisture, or where it is a part of one
    if (
      !said &&
      a.unit === '%' &&
      words < 4 &&
      sure > 2 &&
      a.id !== 'moisture' &&
      span.items[0]?.kind !== 'fraction'
    )
      return;
    if (!said && a.id === 'moisture' && span.items[0]?.kind === 'fraction') return;
    const rank = span.readings.findIndex((r) => Math.abs(r.value - value.value) < 1e-9);
    const score =
      base +
      words +
      again +
      (linked.has(part) ? 0.4 : 0) +
      (said ? 2 : 0) +
      (!said && words === 0 ? -0.12 * Math.max(0, rank) - 0.06 * Math.max(0, typicalRank(part, a.id)) : 0) +
      (isGeneral ? (ofFault(part) ? -0.2 : -1.6) : 0) +
      (a.unit !== undefined && said && a.unit === value.unit ? 0.2 : 0);
    if (best && best.score >= score - 1e-9) return;
    const high = span.upTo ? fits(span.upTo, a, said, usual) : undefined;
    best = {
      part,
      aspect: a.id,
      kind: a.kind,
      value: value.value,
      ...(high && high.value > value.value ? { upTo: high.value } : {}),
      unit: value.unit,
      score,
    };
  };
  const dimension = said && !said.loose ? unitFact(said.units[0] as Unit).dimension : undefined;
  const road = said !== undefined && isRoad(said.units[0] as Unit);
  let generals = 0;
  parts.slice(0, 8).forEach((id, rank) => {
    const base = (own.has(id) ? 3.2 : 2.4) - rank * 0.55;
    const consider = (p: string, less: number): void => {
      (partOf(p)?.aspects ?? []).forEach((a, i) => {
        if (isNumeric(a) && a.kind !== 'count') offer(p, a, base - less - i * 0.04, false);
      });
    };
    if (rank < 6) {
      consider(id, 0);
      for (const k of kinOf(id)) consider(k, own.has(k) ? 0.1 : 0.35);
    }
    const a = generalAspects.find((g) => g.id === general[dimension ?? '']);
    if (a && dimension && !road && generals < 3 && id !== 'coach' && canHaveAny(id, said?.units ?? [])) {
      generals++;
      offer(id, a, Math.max(base, 1.4 - 0.1 * rank), true);
    }
  });
  for (const n of names) {
    const a = [...(partOf(n.part)?.aspects ?? []), ...generalAspects].find((x) => x.id === n.aspect);
    if (a) offer(n.part, a, near.has(n.part) || n.among ? 2.2 : 1.6, false, n);
  }
  const tool = said || !isLastWord || isYear ? undefined : instrumentAt(talk, span.from);
  const shown = tool && generalAspects.find((g) => g.id === tool.aspect);
  if (tool && shown)
    parts.slice(0, 3).forEach((p, rank) => {
      if ((tool.of?.test(p) ?? true) && (open || linked.has(p) || own.has(p)))
        offer(p, shown, 2.2 - rank * 0.4, true, tool, 1.6);
    });
  if (said) {
    for (const [p, aspect] of byUnit[said.units[0] as Unit] ?? []) {
      const a = partOf(p)?.aspects.find((x) => x.id === aspect);
      if (a) offer(p, a, 1.2, false, anything, Math.max(0, named(talk, clause, span, p, a)));
    }
  }
  // the aspect's own name calls its part: "gross twenty-two thousand", "shuts off at fifty-two psi"
  for (const hit of [...clause.aspects, ...talk.lead]) {
    if (hit.to > span.from || span.from - hit.to > (hit.from < clause.from ? 5 : 3)) continue;
    for (const key of hit.keys) {
      const [p = '', aspect = ''] = key.split('/');
      if (
        !strongNames.has(
          talk.marks.words
            .slice(hit.from, hit.to)
            .map((w) => w.norm)
            .join(' '),
        )
      )
        continue;
      const a = partOf(p)?.aspects.find((x) => x.id === aspect);
      if (a && isNumeric(a)) offer(p, a, 1.1, false);
    }
  }
  return best && best.score >= 1.7 ? best : undefined;
}

/** What was named in the clause's sentence up to its end. */
const sentenceMentions = (talk: Talk, clause: Clause): Mention[] => {
  const out: Mention[] = [];
  for (let i = sentenceStart(talk, clause); i < clause.to; i++) {
    const m = talk.marks.mentionAt.from(i);
    if (m && !m.aside) out.push(m);
  }
  return out;
};

/** True where "it" right before the measuring words means something named before the clause: "with a burner lit it holds". */
function refersBack(talk: Talk, clause: Clause, start: number, at: number): boolean {
  const { words } = talk.marks;
  const opening = sentenceStart(talk, clause);
  const lead = /^(?:and|so|then|but|now|okay)$/.test(words[opening]?.norm ?? '') ? opening + 1 : opening;
  // "with both airs running, one eighteen volts": the airs are only what it was tested with
  if (
    clause.mentions.length === 0 &&
    clause.from > lead + 1 &&
    /^(?:with|without|under)$/.test(words[lead]?.norm ?? '')
  )
    return true;
  // "both airs on, one sixteen": they are the load, not what is read
  const last = clause.mentions.filter((m) => !m.aside && m.to <= at).at(-1);
  if (
    last &&
    /^(?:on|running|going|off|lit|open)$/.test(words[last.to]?.norm ?? '') &&
    at - last.to <= 2 &&
    (last.to + 1 === at ||
      (words[last.to]?.stop ?? 0) > 0 ||
      /^(?:it|i|she)$/.test(words[at - 1]?.norm ?? ''))
  )
    return true;
  const first = clause.mentions.find((m) => !m.aside);
  if (!first || (first.from >= start && first.to > start)) return false;
  let it = -1;
  for (let i = Math.max(start, first.to); i < at && it < 0; i++)
    if (/^(?:it|she|he)$/.test(words[i]?.norm ?? '')) it = i;
  if (it < 0) return false;
  for (let i = sentenceStart(talk, clause); i < first.from; i++)
    if (/^(?:with|without|under)$/.test(words[i]?.norm ?? '')) return true;
  return false;
}

/** True when the part can have a reading in one of the units. */
const canHaveAny = (part: string, units: readonly Unit[]): boolean =>
  units.some((u) => canHave(part, unitFact(u).dimension));
