// Why: a number means what part, aspect, unit and believable range together allow; the likeliest pairing wins.
import { generalAspects } from '../../catalogue/general-aspect.ts';
import { partOf } from '../../catalogue/index.ts';
import type { Aspect } from '../../catalogue/part.ts';
import { convert } from '../../units/quantity.ts';
import { type Unit, unitFact } from '../../units/unit.ts';
import { named } from './aspect-named.ts';
import { canHave } from './can-have.ts';
import type { Clause } from './clause.ts';
import { instrumentAt } from './instrument.ts';
import { kinOf } from './kin.ts';
import { measuredFrom } from './measuring-words.ts';
import { called } from './number-called.ts';
import { endsPhrase, faultIn, looksLikeYear } from './number-end.ts';
import { fits, isNumeric, isRoad } from './number-fits.ts';
import type { NumberSpan } from './number-span.ts';
import { namedBetween, refersBack, sentenceMentions, sizeOfFault } from './number-subject.ts';
import { byUnit, general, strongNames } from './quantity-table.ts';
import type { ReadingName } from './reading-names.ts';
import type { Talk } from './talk.ts';
import { isTypical, typicalRank } from './typical.ts';
import { carriedUnit, isBesideHertz, usualUnit } from './unit-carried.ts';

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
    last.aspect !== 'level' &&
    last.aspect !== 'gauge' &&
    !namedBetween(talk, last.at, span.from);
  const named_ = carried ? [last.part, ...byName.filter((p) => p !== last.part)] : byName;
  // "fourteen four at the house batteries": read there
  const there = clause.mentions.find(
    (m) => m.aside && m.from >= span.to && m.from - span.to <= 3 && words_(talk, span.to, m.from),
  );
  const led = there ? [...there.parts, ...named_.filter((p) => !there.parts.includes(p))] : named_;
  const all = isBesideHertz(talk, span) ? mainsFirst(led) : led;
  const ownMentions = clause.mentions.filter((m) => !m.aside);
  const start = measuredFrom(talk.marks, span.from, clause.from);
  // "with a burner lit it holds eleven": "it" is what was talked about before
  const goesBack = refersBack(talk, clause, start, span.from);
  const own = new Set(goesBack ? [] : ownMentions.flatMap((m) => m.parts));
  const said = span.unit ?? carriedUnit(talk, clause, span) ?? sizeOfFault(talk, span);
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
  const lead = talk.marks.words[clause.from]?.norm ?? '';
  const unnamed =
    !near.has('coach') || (!own.has('coach') && !/^(?:it|it's|she|she's|he|this|that|coach)$/.test(lead));
  const fromAfar = /^(?:from|within|at|every|another|of|up|till|until)$/.test(
    talk.marks.words[span.from - 1]?.norm ?? '',
  );
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
    const renamed = last !== undefined && others(talk, last.at, span.from, part);
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
    // the coach at the bottom of what may be meant is meant by no bare number
    if (!said && words === 0 && unnamed && (part === 'coach' || coachKin.has(part))) return;
    if (said && words === 0 && unnamed && part === 'coach' && fromAfar) return;
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
    if (!said && a.id === 'moisture' && (span.items[0]?.kind === 'fraction' || span.by !== undefined)) return;
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
    [...(tool.part ? [tool.part] : []), ...parts].slice(0, 3).forEach((p, rank) => {
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

/** True where the words between are no more than "at the", "across the". */
const words_ = (talk: Talk, from: number, to: number): boolean =>
  talk.marks.words.slice(from, to).every((w) => /^(?:at|the|across|over|on|my|your|both)$/.test(w.norm)) &&
  /^(?:at|across)$/.test(talk.marks.words[from]?.norm ?? '');
/** True where another part than this was named between two words. */
function others(talk: Talk, from: number, to: number, part: string): boolean {
  for (let i = from; i < to; i++) {
    const m = talk.marks.mentionAt.from(i);
    if (
      m &&
      m.to <= to &&
      (!m.aside || talk.marks.clauseOf[i] === talk.marks.clauseOf[to]) &&
      !m.parts.includes(part)
    )
      return true;
  }
  return false;
}
const isMains = (p: string): boolean =>
  /^(?:generator|generator_load_run|shore_power|shore_cord|electric_panel|transfer_switch|inverter_charger|outlets_gfci)$/.test(
    p,
  );
/** Volts beside hertz are of a source of mains, whatever else was switched on. */
const mainsFirst = (parts: readonly string[]): string[] => {
  const own = parts.filter(isMains);
  return [...(own.length > 0 ? own : ['generator']), ...parts.filter((p) => !isMains(p))];
};
const coachKin: ReadonlySet<string> = new Set(kinOf('coach'));
const anything = { within: [-1e12, 1e12] } as const;

/** True when the part can have a reading in one of the units. */
const canHaveAny = (part: string, units: readonly Unit[]): boolean =>
  units.some((u) => canHave(part, unitFact(u).dimension));
