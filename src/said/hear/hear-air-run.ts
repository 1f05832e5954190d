// Why: an air-brake check runs over several short clauses: from what to what, in how long, how much was lost; none of them says it all.
import type { Clause, Draft } from './clause.ts';
import type { NumberSpan } from './number-span.ts';
import type { Talk } from './talk.ts';

/** What the sentence has said so far of its check. */
interface Run {
  sentence: number;
  how: 'static_loss' | 'applied_loss' | undefined;
  minutes: number | undefined;
  /** The reading it fell from. */
  high: number | undefined;
  /** Word of "eighty-five to a hundred". */
  rise: number;
}
const runs = new WeakMap<Talk, Run>();
const still = /^(?:released|static|parked)$/;
const pressed = /^(?:applied|pedal|treadle)$/;
const losing = /^(?:lost|loses|lose|loss|dropped|drops|drop|down|gone|leaked|leaks|bled|so|total)$/;
const gaining = /^(?:build|builds|building|built|buildup|charge|charging|rise|climb|recovery|fill|fills)$/;
const compares = /^(?:agree|agrees|match|matches|apart|differ|within|difference|spread)$/;

/** Readings of a check that are spread over the clauses of a sentence; takes their words. */
export function hearAirRun(talk: Talk, clause: Clause, taken: Uint8Array, near: boolean): Draft[] {
  const { words, numberAt, sentenceOf } = talk.marks;
  const norm = (i: number): string => words[i]?.norm ?? '';
  const old = runs.get(talk);
  const run: Run =
    old && old.sentence === clause.sentence
      ? old
      : { sentence: clause.sentence, how: undefined, minutes: undefined, high: undefined, rise: -1 };
  runs.set(talk, run);
  const out: Draft[] = [];
  const put = (
    aspect: string,
    value: number,
    unit: '[psi]' | '[psi]/min' | 's' | 'min',
    n: NumberSpan,
    upTo?: number,
  ): void => {
    const doubt = talk.doubtAt(n.from);
    out.push({
      part: 'air_gauges',
      aspect,
      value: { is: 'quantity', value, unit, ...(upTo === undefined ? {} : { upTo }) },
      sense: 'quantity',
      polarity: 'neutral',
      ...doubt,
      hedged: n.approx || doubt.hedged,
      from: Math.max(clause.from, n.from - 6),
      to: Math.min(clause.to, n.to + 3),
      at: n.from,
      weight: 0.85,
    });
    taken.fill(1, n.from, n.to);
  };
  const has = (test: RegExp): boolean => words.slice(clause.from, clause.to).some((w) => test.test(w.norm));
  if (has(still)) run.how = 'static_loss';
  if (has(pressed)) run.how = 'applied_loss';
  clause.numbers.forEach((n) => {
    const value = n.readings[0]?.value;
    if (value === undefined || taken[n.from]) return;
    const unit = n.unit?.units[0];
    const psi = !unit || n.unit?.units.includes('[psi]') === true;
    const upTo = n.upTo?.[0]?.value;
    if (psi && upTo !== undefined && value >= 50 && value <= 95 && upTo >= 90 && upTo <= 125) {
      let timed = has(gaining);
      for (let i = n.to; i < n.to + 8 && sentenceOf[i] === clause.sentence; i++)
        if (numberAt.from(i)?.unit?.units[0] === 's') timed = true;
      if (!timed) return;
      run.rise = n.from;
      put('primary', value, '[psi]', n, upTo);
    } else if (unit === 's' && run.rise >= 0 && value >= 3 && value <= 900) put('buildup_s', value, 's', n);
    else if (!near) return;
    else if (unit === 'min' && run.how && value <= 15 && n.from - clause.from <= 2) {
      run.minutes = value;
      put('test_time', value, 'min', n);
    } else if (psi && !unit && value >= 60 && value <= 150 && (run.how || run.minutes)) {
      const falls = norm(n.to) === 'to' || (norm(n.to) === 'down' && norm(n.to + 1) === 'to');
      if (run.high !== undefined && value < run.high && run.high - value <= 60) {
        put('primary', value, '[psi]', n);
        run.high = undefined;
      } else if (falls || norm(n.from - 1) === 'from') {
        run.high = value;
        put('primary', value, '[psi]', n);
      }
    } else if (
      psi &&
      value <= 30 &&
      run.how &&
      run.minutes &&
      (unit || has(/^(?:lost|loss)$/)) &&
      has(losing)
    )
      put(run.how, value / run.minutes, '[psi]/min', n);
    else if (
      psi &&
      (unit || norm(n.from - 1) === 'within') &&
      value <= 20 &&
      has(compares) &&
      has(/^(?:gauges?|needles?|tanks?)$/)
    )
      put('measured_pressure', value, '[psi]', n);
  });
  if (out.length > 0) taken.fill(1, clause.from, clause.to);
  return out;
}
