// Why: a unit is said once and meant on: "eighteen amps going and twenty-two coming home"; who reads in Celsius goes on in Celsius.
import type { Unit } from '../../units/unit.ts';
import type { Clause } from './clause.ts';
import type { NumberSpan } from './number-span.ts';
import type { Talk } from './talk.ts';
import type { SaidUnit } from './unit-words.ts';

const metric: readonly Unit[] = ['Cel', 'bar', 'kPa', 'L', 'kg', 'm', 'cm', 'mm', 'km', 'km/h'];
/** "Five minutes and still eight": a time does not carry on. */
const timely: ReadonlySet<Unit> = new Set<Unit>(['s', 'min', 'h', 'd', 'mo', 'a']);
const systems = new WeakMap<Talk, Set<Unit>>();

/** Takes note of the units a speaker uses. */
export function noteUnit(talk: Talk, span: NumberSpan): void {
  const unit = span.unit?.units[0];
  if (!unit || !metric.includes(unit)) return;
  (systems.get(talk) ?? metricBy(talk)).add(unit);
}

/** Who speaks of kilometers and centimeters anywhere in the walk reads a thermometer in Celsius. */
function metricBy(talk: Talk): Set<Unit> {
  const set = new Set<Unit>();
  for (const w of talk.marks.words) {
    if (/^kilomet(?:er|re)s?$/.test(w.norm)) set.add('km').add('Cel');
    else if (/^(?:centimet(?:er|re)s?|kilos?|celsius|centigrade)$/.test(w.norm)) set.add('Cel');
    if (/^kilos?$/.test(w.norm)) set.add('kg');
  }
  systems.set(talk, set);
  return set;
}

/** The metric unit that the speaker uses for what `unit` measures, if there is one. */
export function usualUnit(talk: Talk, unit: Unit): Unit | undefined {
  const known = systems.get(talk) ?? metricBy(talk);
  // millimetres and kilometres are both lengths, but nobody means one by the other
  if (unit === '[degF]') return known.has('Cel') ? 'Cel' : undefined;
  if (unit === '[psi]') return known.has('bar') ? 'bar' : known.has('kPa') ? 'kPa' : undefined;
  if (unit === '[gal_us]') return known.has('L') ? 'L' : undefined;
  if (unit === '[lb_av]') return known.has('kg') ? 'kg' : undefined;
  if (unit === '[mi_i]') return known.has('km') ? 'km' : undefined;
  return undefined;
}

/** "One twenty and sixty hertz", "fifty-nine five at one eighteen": what stands beside hertz is volts of the same source. */
export function isBesideHertz(talk: Talk, span: NumberSpan): boolean {
  const volts = span.readings.some(
    (r) => (r.value >= 95 && r.value <= 135) || (r.value >= 195 && r.value <= 260),
  );
  if (span.unit || !volts) return false;
  const { words, numberAt, sentenceOf } = talk.marks;
  for (let i = span.to; i <= span.to + 4; i++) {
    const next = numberAt.from(i);
    if (next) return isHertz(next) && sentenceOf[i] === sentenceOf[span.from];
    if ((words[i - 1]?.stop ?? 2) === 2) break;
  }
  for (let i = span.from; i > span.from - 5 && i > 0; i--) {
    const before = numberAt.to(i);
    if (before) return isHertz(before) && sentenceOf[before.from] === sentenceOf[span.from];
    if ((words[i - 1]?.stop ?? 2) === 2) break;
  }
  return false;
}
const isHertz = (span: NumberSpan): boolean =>
  span.unit?.units[0] === 'Hz' ||
  (span.unit === undefined &&
    span.readings.some((r) => r.value > 55 && r.value < 65 && !Number.isInteger(r.value)));

/** The unit of the number before it, where that was said in the same breath and is of the same size. */
export function carriedUnit(talk: Talk, clause: Clause, span: NumberSpan): SaidUnit | undefined {
  const value = span.readings[0]?.value;
  if (span.unit || span.money || value === undefined || span.items[0]?.kind === 'fraction') return undefined;
  if (isBesideHertz(talk, span)) return { units: ['V'], times: 1 };
  const { words, sentenceOf } = talk.marks;
  let before: NumberSpan | undefined;
  for (let i = span.from - 1; i >= Math.max(0, span.from - 8) && !before; i--) {
    if ((words[i]?.stop ?? 2) === 2) return undefined;
    before = talk.marks.numberAt.to(i + 1);
  }
  if (!before?.unit || before.unit.loose || timely.has(before.unit.units[0] as Unit)) return undefined;
  if (sentenceOf[before.from] !== sentenceOf[span.from]) return undefined;
  const old = before.readings[0]?.value ?? 0;
  if (value < old * 0.55 || value > old * 1.8) return undefined;
  const between = words.slice(before.to, span.from).map((w) => w.norm);
  if (!between.some((n) => /^(?:and|then|to|but|now|or)$/.test(n)) && (words[before.to - 1]?.stop ?? 0) === 0)
    return undefined;
  const named = clause.mentions.some((m) => !m.aside && m.from >= before.to && m.to <= span.from);
  return named ? undefined : before.unit;
}

/** Tread without a unit is in the unit it was last read in: thirty-seconds, unless that was millimetres. */
export function treadUnit(talk: Talk, at: number): '[in_i]/32' | 'mm' {
  for (let i = at - 1; i >= 0 && at - i < 60; i--) {
    const unit = talk.marks.numberAt.to(i + 1)?.unit?.units[0];
    if (unit === 'mm' || unit === '[in_i]/32') return unit;
  }
  return '[in_i]/32';
}
