// Why: turns every number of a clause into the reading, count, date or name it is.

import { counted } from './hear-count.ts';
import { pair } from './hear-quantity.ts';
import { readTire } from './hear-tire.ts';
import { kinOf } from './kin.ts';
import { digitString } from './number-reading.ts';
import type { NumberSpan } from './number-span.ts';
import type { Clause, Draft, Talk } from './talk.ts';

const dated = /^(?:date|dated|stamp|stamped|expires|expire|manufactured|born|expiration|inspected|dates)$/;
const alarms = new Set([
  'smoke_alarm',
  'co_alarm',
  'lp_alarm',
  'extinguisher',
  'lp_tank',
  'house_battery',
  'chassis_battery',
  'lp_regulator',
  'ac_roof',
  'water_heater_out',
  'refrigerator',
  'furnace_run',
  'fuel_tank',
  'hitch_receiver',
  'air_tanks',
  'belts_hoses',
  'emergency_exit',
]);

const quote = (clause: Clause, span: NumberSpan): { from: number; to: number } => ({
  from: Math.max(clause.from, span.from - 6),
  to: Math.min(Math.max(clause.to, span.to), span.to + 2),
});

/** A year or month and year as said beside "date": "oh eight twenty-two" -> 08/22, "twenty-twenty" -> 2020. */
function dateText(span: NumberSpan): string | undefined {
  const [a, b, c] = span.items;
  const joined = span.readings.find((r) => r.value >= 1960 && r.value <= 2045);
  if (joined && Number.isInteger(joined.value)) return String(joined.value);
  if (
    span.items.length === 3 &&
    a?.kind === 'oh' &&
    b?.kind === 'digit' &&
    c &&
    c.value >= 5 &&
    c.value <= 45
  )
    return `0${b.value}/${String(c.value).padStart(2, '0')}`;
  if (
    span.items.length === 2 &&
    a &&
    b &&
    a.value <= 12 &&
    a.value > 0 &&
    b.kind === 'small' &&
    b.value <= 45
  )
    return `${String(a.value).padStart(2, '0')}/${String(b.value).padStart(2, '0')}`;
  const text = digitString(span.items);
  return text && /^\d{4}$/.test(text) ? text : undefined;
}

/** Reads the numbers of a clause. */
export function hearNumbers(talk: Talk, clause: Clause, done: Uint8Array): Draft[] {
  const out: Draft[] = [];
  const words = talk.marks.words;
  for (const span of clause.numbers) {
    if (done[span.from] || talk.scopes.elsewhere[span.from] || span.money) continue;
    const at = span.from;
    const doubt = talk.doubtAt(at);
    const hedged = span.approx || doubt.hedged;
    const said = doubt.saidBy === undefined ? {} : { saidBy: doubt.saidBy };
    const put = (
      part: string,
      aspect: string,
      value: Draft['value'],
      sense: Draft['sense'],
      weight: number,
      from = at,
    ): void => {
      const place = talk.placeOf(part, from, clause);
      out.push({
        part,
        ...(place === undefined ? {} : { place }),
        aspect,
        value,
        sense,
        polarity: 'neutral',
        hedged,
        ...said,
        ...quote(clause, span),
        at: from,
        weight,
      });
    };
    const parts = talk.partsFor(span.from, span.bare, clause);
    const before = words.slice(Math.max(clause.from, span.from - 4), span.from).map((w) => w.norm);
    const count = counted(talk, clause, span);
    const tire =
      parts.slice(0, 2).find((p) => p === 'tire' || p === 'spare_tire') ??
      (clause.places.some((p) => p.side && p.depth) && parts.includes('tire') ? 'tire' : undefined);
    if (count && (count.aspect !== 'count' || !tire || count.part !== 'tire' || count.count > 3)) {
      put(
        count.part,
        count.aspect,
        { is: 'count', count: count.count, ...(count.of === undefined ? {} : { of: count.of }) },
        'quantity',
        0.75,
      );
      continue;
    }
    if (tire) {
      const wants = before.some((w) => dated.test(w) || w === 'code' || w === 'dot')
        ? 'date'
        : before.includes('tread') || before.includes('depth')
          ? 'tread'
          : before.includes('pressure') || before.includes('air')
            ? 'pressure'
            : undefined;
      const readings = readTire(span, wants);
      for (const r of readings) {
        const unit = r.aspect === 'tread_mid' ? '[in_i]/32' : '[psi]';
        if (typeof r.value === 'string')
          put(tire, r.aspect, { is: 'text', text: r.value }, 'identity', 0.85, r.from);
        else
          put(
            tire,
            r.aspect,
            { is: 'quantity', value: r.value, unit },
            'quantity',
            span.unit ? 0.92 : 0.75,
            r.from,
          );
      }
      if (readings.length > 0) continue;
    }
    const isDated =
      before.some((w) => dated.test(w)) || (before.includes('replace') && before.includes('by'));
    const text = isDated ? dateText(span) : undefined;
    if (text) {
      const part = parts.find((p) => alarms.has(p)) ?? parts[0];
      if (part) {
        put(part, 'date', { is: 'text', text }, 'identity', 0.8);
        continue;
      }
    }
    const found = pair(talk, clause, span);
    if (
      !found ||
      (found.unit === 'a' &&
        !/^(?:years? old|year old)/.test(
          words
            .slice(span.bare, span.bare + 2)
            .map((w) => w.norm)
            .join(' '),
        ) &&
        found.aspect === 'age')
    )
      continue;
    const weight = Math.min(0.95, 0.35 + found.score * 0.08 + (span.unit ? 0.1 : 0));
    put(
      found.part,
      found.aspect,
      {
        is: 'quantity',
        value: round(found.value),
        unit: found.unit,
        ...(found.upTo === undefined ? {} : { upTo: round(found.upTo) }),
      },
      'quantity',
      weight,
    );
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
  void kinOf;
  return out;
}

const round = (n: number): number => Math.round(n * 1e6) / 1e6;
