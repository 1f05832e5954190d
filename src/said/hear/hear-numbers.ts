// Why: turns every number of a clause into the reading, count, date or name it is.

import { partOf } from '../../catalogue/index.ts';
import { isSameDimension } from '../../units/quantity.ts';
import type { Unit } from '../../units/unit.ts';
import type { Clause, Draft } from './clause.ts';
import { type Counted, counted } from './hear-count.ts';
import { pair } from './hear-quantity.ts';
import { readTire, weekAt } from './hear-tire.ts';
import { isMeasuring, measuredFrom } from './measuring-words.ts';
import { isAsideNumber } from './number-aside.ts';
import { partsDated, saidDate } from './number-date.ts';
import { endsPhrase } from './number-end.ts';
import type { NumberSpan } from './number-span.ts';
import { bothTanks, twinOf } from './number-twin.ts';
import { canonical } from './quantity-table.ts';
import type { Talk } from './talk.ts';
import { inRow, noteTire, rowSoFar, tireOf } from './tire-row.ts';
import { tireSizeAt } from './tire-size.ts';
import { corrections } from './trigger-words.ts';
import { noteUnit, treadUnit } from './unit-carried.ts';

const dated = /^(?:date|dated|stamp|stamped|expires|expire|manufactured|born|expiration|inspected|dates)$/;
const quote = (clause: Clause, span: NumberSpan): { from: number; to: number } => ({
  from: Math.max(clause.from, span.from - 6),
  to: Math.min(Math.max(clause.to, span.to), span.to + 2),
});

/** The last reading of the talk: a bare number after it may be another of the same kind. */
interface Before {
  readonly part: string;
  readonly aspect: string;
  readonly unit: Unit;
  readonly value: number;
  readonly at: number;
}
const lastOf = new WeakMap<Talk, Before>();

/** "The front axle is twelve thousand and the rear is nineteen": the same reading of the other end. */
function siblingOf(part: string, aspect: string, clause: Clause, span: NumberSpan): string | undefined {
  const end = clause.places.filter((p) => p.to <= span.from && span.from - p.to <= 3).at(-1)?.end;
  if (end !== 'front' && end !== 'rear') return undefined;
  const other = aspect.replace(/front|rear/, end);
  return other !== aspect && partOf(part)?.aspects.some((a) => a.id === other) ? other : undefined;
}

/** True for a small word that may close a reading. */
const endsSmall = (talk: Talk, i: number): boolean => isMeasuring(talk.marks.words[i]?.norm ?? '');

/** "Thirty-nine, no, my glasses, forty-two": words that take the number before back stand between. */
function isPutRight(talk: Talk, after: number, at: number): boolean {
  const { words } = talk.marks;
  for (let i = after; i < at && at - after < 26; i++)
    if (
      corrections.at(words, i, 1) ||
      (/^(?:no|nope|wrong|misread|oops)$/.test(words[i]?.norm ?? '') && (words[i]?.stop ?? 0) > 0)
    )
      return true;
  return false;
}

/** "Front pads eight millimeters, rear five": the bare number is another reading like the one before. */
function likeBefore(talk: Talk, clause: Clause, span: NumberSpan): Before | undefined {
  const last = lastOf.get(talk);
  const value = span.readings[0]?.value;
  const fixed =
    last !== undefined &&
    isPutRight(talk, last.at, span.from) &&
    talk.recent.every((r) => r.at < last.at || r.parts.includes(last.part));
  if (
    !last ||
    span.unit ||
    (/^(?:s|min|h)$/.test(last.unit) && !Number.isInteger(value)) ||
    /^(?:both|couple|pair)$/.test(talk.marks.words[span.from]?.norm ?? '') ||
    value === undefined ||
    span.from - last.at > (fixed ? 24 : 14) ||
    span.items.length > 4
  )
    return undefined;
  // "still creeping ... two-oh-five.": a number alone, where nothing else was named since, is the same reading again
  const alone =
    span.from - last.at <= 14 &&
    clause.mentions.length === 0 &&
    measuredFrom(talk.marks, span.from, clause.from) === clause.from &&
    (span.to >= clause.to || endsSmall(talk, span.to)) &&
    talk.recent.every((r) => r.at < last.at);
  const led =
    fixed ||
    alone ||
    clause.mentions.some((m) => !m.aside && m.to === span.from && m.parts.includes(last.part)) ||
    clause.places.some(
      (p) =>
        p.to <= span.from &&
        span.from - p.to <= 2 &&
        /^(?:is|'s|are|at|reads|was|had)?$/.test(
          p.to === span.from ? '' : (talk.marks.words[span.from - 1]?.norm ?? ''),
        ),
    ) ||
    /^(?:other|others|one|second|and|then|next)$/.test(talk.marks.words[span.from - 1]?.norm ?? '');
  if (
    !led ||
    clause.mentions.some((m) => !m.aside && !m.parts.includes(last.part) && m.to <= span.from && !m.weak)
  )
    return undefined;
  const sibling = siblingOf(last.part, last.aspect, clause, span);
  const [low, high] = last.value < 12 ? [0.3, 3] : [0.55, 1.8];
  const fit = span.readings.find((r) => r.value >= last.value * low && r.value <= last.value * high);
  return fit ? { ...last, ...(sibling ? { aspect: sibling } : {}), value: fit.value } : undefined;
}

/** Reads the numbers of a clause. */
export function hearNumbers(talk: Talk, clause: Clause, done: Uint8Array): Draft[] {
  const out: Draft[] = [];
  const words = talk.marks.words;
  for (const span of clause.numbers) {
    noteUnit(talk, span);
    if (done[span.from] || talk.scopes.elsewhere[span.from] || isAsideNumber(talk, clause, span)) continue;
    // "the twelve volt panel": a name, no reading
    if (span.unit?.units[0] === 'V' && clause.mentions.some((m) => m.from <= span.from && span.to < m.to))
      continue;
    const at = span.from;
    const doubt = talk.doubtAt(at);
    const put = (
      part: string,
      aspect: string,
      value: Draft['value'],
      sense: Draft['sense'],
      weight: number,
      from = at,
    ): void => {
      const key = canonical[`${part}/${aspect}`]?.split('/') ?? [part, aspect];
      const place = talk.placeOf(part, from, clause, span);
      if (value.is === 'quantity')
        lastOf.set(talk, { part, aspect, unit: value.unit, value: value.value, at: span.to });
      out.push({
        part: key[0] ?? part,
        ...(place === undefined ? {} : { place }),
        aspect: key[1] ?? aspect,
        value,
        sense,
        polarity: 'neutral',
        hedged: span.approx || doubt.hedged,
        ...(doubt.saidBy === undefined ? {} : { saidBy: doubt.saidBy }),
        ...quote(clause, span),
        at: from,
        weight,
      });
    };
    const parts = talk.partsFor(span.from, span.bare, clause);
    const before = words.slice(Math.max(clause.from, span.from - 4), span.from).map((w) => w.norm);
    const size = span.unit && span.items.length < 3 ? undefined : tireSizeAt(words, span.from);
    if (size) {
      const sized = parts.slice(0, 2).includes('spare_tire') ? 'spare_tire' : 'tire';
      put(sized, 'size', { is: 'text', text: size.text }, 'identity', 0.85);
      done.fill(1, span.from, size.to);
      continue;
    }
    const week = weekAt(words, span);
    const tire = tireOf(talk, clause, span, parts) ?? (week?.named ? 'tire' : undefined);
    const count = counted(talk, clause, span);
    const rowed = tire !== undefined && inRow(talk, span.from) && words[span.bare]?.norm === 'on';
    if ((count?.sure && !rowed) || (count && tire && count.part === 'tire' && before.includes('all'))) {
      put(count.part, count.aspect, countValue(count), 'quantity', 0.75);
      if (count.each !== undefined && partOf(count.part)?.aspects.some((a) => a.id === 'nominal_voltage'))
        put(
          count.part,
          'nominal_voltage',
          { is: 'quantity', value: count.each, unit: 'V' },
          'quantity',
          0.75,
        );
      if (count.each !== undefined && count.part === 'lp_tank')
        put(
          count.part,
          'measured_weight',
          { is: 'quantity', value: count.each, unit: '[lb_av]' },
          'quantity',
          0.7,
        );
      continue;
    }
    if (
      tire &&
      !/^(?:both|couple|pair)$/.test(words[span.from]?.norm ?? '') &&
      !/^(?:these|those|other|next|last|an)$/.test(before.at(-1) ?? '') &&
      !(words[span.from]?.norm === 'one' && span.bare === span.from + 1 && !span.unit)
    ) {
      const place = talk.placeOf(tire, span.from, clause, span);
      const counts = !span.unit && !endsPhrase(talk, span);
      const readings = week ? [week] : readTire(span, rowSoFar(talk, wantsOf(before), place, at));
      for (const r of readings) {
        if (counts && typeof r.value === 'number') continue;
        const unit = r.aspect === 'tread_mid' ? treadUnit(talk, r.from) : '[psi]';
        const value: Draft['value'] =
          typeof r.value === 'string'
            ? { is: 'text', text: r.value }
            : { is: 'quantity', value: r.value, unit };
        const [sense, weight] =
          typeof r.value === 'string'
            ? (['identity', 0.85] as const)
            : (['quantity', span.unit ? 0.92 : 0.75] as const);
        put(tire, r.aspect, value, sense, weight, r.from);
        noteTire(talk, tire, r, talk.placeOf(tire, r.from, clause, span));
      }
      if (week) done.fill(1, week.from, week.to);
      if (readings.length > 0) continue;
    }
    const date = saidDate(talk, clause, span);
    const carriers = date ? partsDated(talk, clause, span, parts, date.of) : [];
    if (date && carriers.length > 0) {
      for (const p of carriers)
        put(
          p,
          p === 'tire' && date.aspect === 'date' ? 'tin' : date.aspect,
          { is: 'text', text: date.text },
          'identity',
          0.82,
        );
      done.fill(1, span.from, Math.max(span.to, date.to));
      continue;
    }
    if (words[span.from]?.norm === 'one' && span.bare === span.from + 1 && !span.unit && !count) continue;
    const pairs = bothTanks(clause, span);
    if (pairs) {
      const unit = span.unit?.units.find((u) => u === '[gal_us]' || u === 'L') ?? '[gal_us]';
      for (const tank of ['gray_tank', 'black_tank'])
        put(tank, 'capacity', { is: 'quantity', value: pairs, unit }, 'quantity', 0.7);
      continue;
    }
    const found = pair(talk, clause, span, lastOf.get(talk));
    const like = found && found.score > 3.4 ? undefined : likeBefore(talk, clause, span);
    if (like) {
      put(like.part, like.aspect, { is: 'quantity', value: like.value, unit: like.unit }, 'quantity', 0.65);
      continue;
    }
    if (
      !found ||
      (found.unit === 'a' &&
        !/old/.test(
          words
            .slice(span.bare, span.to + 1)
            .map((w) => w.norm)
            .join(' '),
        ))
    ) {
      if (count) put(count.part, count.aspect, countValue(count), 'quantity', 0.65);
      continue;
    }
    // "fresh two hundred liters, gray one hundred fifty": the unit said once holds on
    const prior = lastOf.get(talk);
    const held =
      !span.unit &&
      prior &&
      prior.aspect === found.aspect &&
      span.from - prior.at <= 8 &&
      isSameDimension(prior.unit, found.unit)
        ? prior.unit
        : found.unit;
    const weight = Math.min(0.95, 0.35 + found.score * 0.08 + (span.unit ? 0.1 : 0));
    // "half the pad left": a share, no thickness
    const share =
      found.aspect === 'lining' &&
      !span.unit &&
      span.items.length === 1 &&
      span.items[0]?.kind === 'fraction' &&
      /^(?:half|third|thirds|quarter|quarters|fourths)$/.test(words[span.bare - 1]?.norm ?? '');
    put(
      found.part,
      share ? 'measured_share' : found.aspect,
      {
        is: 'quantity',
        value: round(share ? found.value * 100 : found.value),
        unit: share ? '%' : held,
        ...(found.upTo === undefined ? {} : { upTo: round(found.upTo) }),
      },
      'quantity',
      weight,
    );
    const twin = twinOf(talk, clause, span, found.part, found.aspect);
    if (twin)
      put(twin, found.aspect, { is: 'quantity', value: round(found.value), unit: held }, 'quantity', weight);
    const width = span.by?.[0]?.value;
    if (width !== undefined)
      put(
        found.part,
        found.part === 'roof_membrane' ? 'width' : 'measured_width',
        { is: 'quantity', value: width, unit: found.unit },
        'quantity',
        weight - 0.05,
      );
  }
  return out;
}

const countValue = (c: Counted): Draft['value'] => ({
  is: 'count',
  count: c.count,
  ...(c.of === undefined ? {} : { of: c.of }),
});

const wantsOf = (before: readonly string[]): 'date' | 'tread' | 'pressure' | undefined =>
  before.some((w) => dated.test(w) || w === 'code' || w === 'dot')
    ? 'date'
    : before.includes('tread') || before.includes('depth')
      ? 'tread'
      : before.includes('pressure') || before.includes('air')
        ? 'pressure'
        : undefined;

const round = (n: number): number => Math.round(n * 1e6) / 1e6;
