// Why: an air-brake check is spoken in the words of drivers; taken for ordinary talk they become brake failures that nobody found.
import type { Clause, Draft } from './clause.ts';
import { hearAirRun } from './hear-air-run.ts';
import type { NumberSpan } from './number-span.ts';
import { phraseList } from './phrase-index.ts';
import type { Talk } from './talk.ts';

/** Words that only an air-brake check has. Driver training usage (common practice, no source). */
const openers = phraseList([
  'governor',
  'buzzer',
  'low air',
  'wigwag',
  'air brake',
  'air brakes',
  'air test',
  'air check',
  'brake test',
  'brake check',
  'brake stuff',
  'spring brake',
  'spring brakes',
  'leak down',
  'leakdown',
  'pops off',
  'pop off',
  'air is up',
  "air 's up",
  'builds air',
  'build air',
  'static loss',
  'applied loss',
  'static test',
  'applied test',
  'gauges agree',
  'building air',
  'pumped up',
  'pump it up',
  'pump it down',
  'pumped it down',
  'fanned it down',
  'fan it down',
  'pumping air',
  'air built',
  'air up',
  'air gone',
  "air 's gone",
  'air went',
  'air dropped',
  'air has dropped',
  'fan it',
  'fanning it',
  'air brake test',
  'psi in a minute',
  'psi a minute',
]);
const still = /^(?:released|off|static|parked)$/;
const pressed = /^(?:applied|pedal|foot|pressed|treadle|pushing)$/;
const falls = /^(?:lost|loses|lose|drops|dropped|drop|leaks|leak|leaked|bleeds|bled|loss|down|went|fell)$/;
const cutOut =
  /^(?:cuts?|cutting|pops?|popped|kicks?|kicked|shuts?|unloads?|unloaded|cutout|stops?|stopped)$/;
const outs = /^(?:out|off)$/;
const ins = /^(?:in|on|back)$/;
const warnings = /^(?:buzzer|alarm|warning|wigwag|light|buzzes|buzzed)$/;
const quiet =
  /^(?:engine|off|released|applied|brake|brakes|air|low|buzzer|governor|cuts|cut|out|in|lost|key|on|the|pedal|foot|parking|chocks|wheels|up|and|with|are|is|'s|all|now|okay|so|down|hold|held|it|psi|a|minute)$/;

interface State {
  /** Word at which the check was last talked of. */
  last: number;
  how: 'static_loss' | 'applied_loss' | undefined;
  /** Minutes that the last fall took. */
  minutes?: number;
  rise: number;
}
const states = new WeakMap<Talk, State>();

/** Readings of an air-brake check in a clause; takes its words, so that nothing else reads them. */
export function hearAirBrakes(talk: Talk, clause: Clause, taken: Uint8Array): Draft[] {
  const { words, sentenceOf } = talk.marks;
  const norm = (i: number): string => words[i]?.norm ?? '';
  const s: State = states.get(talk) ?? { last: -999, how: undefined, rise: -999 };
  states.set(talk, s);
  if (talk.scopes.elsewhere[clause.from]) return [];
  for (let i = clause.from; i < clause.to; i++) if (openers.at(words, i)) s.last = i;
  const rising = clause.numbers.find((n) => {
    const low = n.readings[0]?.value ?? 0;
    const high = n.upTo?.[0]?.value ?? 0;
    return low >= 50 && low <= 95 && high >= 90 && high <= 110 && (!n.unit || n.unit.units.includes('[psi]'));
  });
  const timed = clause.numbers.find((n) => n.unit?.units[0] === 's');
  const far = clause.from - s.last > 70;
  const run = hearAirRun(talk, clause, taken, !far);
  if (run.length > 0) {
    s.last = clause.to;
    return run;
  }
  const falling =
    words[clause.numbers[0]?.from ?? -1] !== undefined &&
    norm((clause.numbers[0]?.from ?? 0) - 1) === 'from' &&
    words.slice(clause.from, clause.from + 3).some((w) => w.norm === 'air');
  if (far && !(rising && timed) && !falling) return [];
  if (far) s.how = undefined;
  const out: Draft[] = [];
  const put = (
    part: string,
    aspect: string,
    value: number,
    unit: '[psi]' | '[psi]/min' | 's' | 'min',
    n: NumberSpan,
  ): void => {
    const doubt = talk.doubtAt(n.from);
    out.push({
      part,
      aspect,
      value: { is: 'quantity', value, unit },
      sense: 'quantity',
      polarity: 'neutral',
      ...doubt,
      hedged: n.approx || doubt.hedged,
      from: Math.max(clause.from, n.from - 6),
      to: Math.min(clause.to, n.to + 3),
      at: n.from,
      weight: 0.85,
    });
    taken.fill(1, clause.from, clause.to);
    s.last = n.from;
  };
  let cut: 'cut_out' | 'cut_in' | undefined;
  let warns = false;
  let fell = false;
  let pops = false;
  let pressedHere = false;
  for (let i = clause.from; i < clause.to; i++) {
    const n = norm(i);
    if (still.test(n) && !(n === 'off' && cutOut.test(norm(i - 1)))) s.how = 'static_loss';
    if (pressed.test(n)) {
      s.how = 'applied_loss';
      pressedHere = true;
    }
    if (falls.test(n)) fell = true;
    if (warnings.test(n) || (n === 'low' && norm(i + 1) === 'air')) warns = true;
    if (cutOut.test(n))
      cut =
        outs.test(norm(i + 1)) || n === 'cutout' || /^unload/.test(n)
          ? 'cut_out'
          : ins.test(norm(i + 1))
            ? 'cut_in'
            : cut;
    if (n === 'governor' && outs.test(norm(i + 1))) cut = 'cut_out';
    if (n === 'governor' && /^(?:in|on)$/.test(norm(i + 1))) cut = 'cut_in';
    if (/^(?:comes?|came)$/.test(n) && norm(i + 1) === 'back') cut = 'cut_in';
    if (
      /^pop(?:s|ped)?$/.test(n) ||
      (/^(?:set|sets|applied|apply|applies)$/.test(n) && /^(?:at|around|by)$/.test(norm(i + 1)))
    )
      pops = true;
  }
  const parked =
    clause.mentions.some((m) => m.parts[0] === 'parking_brake') ||
    words
      .slice(clause.from, clause.to)
      .some((w) => /^(?:button|knob|valve|spring|springs|parking|yellow)$/.test(w.norm));
  fallen(talk, clause, taken, put);
  for (const n of clause.numbers) {
    const value = n.readings[0]?.value;
    const unit = n.unit?.units[0];
    if (value === undefined || taken[n.from]) continue;
    const psi = !unit || n.unit?.units.includes('[psi]');
    if (unit === 's') {
      const held = rising ?? (s.rise >= 0 && sentenceOf[s.rise] === clause.sentence ? n : undefined);
      if (held && value >= 5 && value <= 900) put('air_gauges', 'buildup_s', value, 's', n);
    } else if (n === rising) s.rise = n.from;
    else if (unit === '[psi]/min' || (psi && value <= 30 && inMinutes(talk, n) !== undefined)) {
      const minutes = unit === '[psi]/min' ? 1 : (inMinutes(talk, n) ?? 1);
      const how = s.how ?? (fell ? 'static_loss' : undefined);
      if (how) {
        put('air_gauges', how, value / minutes, '[psi]/min', n);
        s.minutes = minutes;
        put('air_gauges', 'test_time', minutes, 'min', n);
      }
    } else if (unit === 'min' && value <= 20 && builds(norm(n.to), norm(n.to + 1))) {
      // "four minutes to make ninety"
      const top = clause.numbers.find((x) => x.from > n.to && x.from - n.to <= 6);
      const reached = top?.readings[0]?.value ?? 0;
      if (top && reached >= 50 && reached <= 140) {
        put('air_gauges', 'test_time', value, 'min', n);
        put('air_gauges', 'primary', reached, '[psi]', top);
      }
    } else if (!psi) continue;
    else if (s.minutes !== undefined && s.how === 'applied_loss' && pressedHere && value <= 12)
      put('air_gauges', 'applied_loss', value / s.minutes, '[psi]/min', n);
    else if (pops && parked && value >= 10 && value <= 60) put('parking_brake', 'pops_at', value, '[psi]', n);
    else if (warns && value >= 30 && value <= 90) put('air_gauges', 'alarm_at', value, '[psi]', n);
    else if (cut && value >= 60 && value <= 150) put('air_gauges', cut, value, '[psi]', n);
  }
  // "engine off, brakes released": how it was tried, not how it is
  let plain = words
    .slice(clause.from, clause.to)
    .some((w) => /^(?:released|applied|pedal|buzzer|engine|brakes?|air)$/.test(w.norm));
  for (let i = clause.from; i < clause.to; i++) if (!quiet.test(norm(i))) plain = false;
  if (plain && clause.to - clause.from > 1) taken.fill(1, clause.from, clause.to);
  return out;
}

/** Minutes that the fall took: "in a minute", "over two minutes"; undefined where none are said. */
function inMinutes(talk: Talk, n: NumberSpan): number | undefined {
  const { words, numberAt } = talk.marks;
  for (let i = n.to; i < n.to + 5 && i < words.length; i++) {
    const w = words[i]?.norm ?? '';
    if (/^minutes?$/.test(w)) return 1;
    const other = numberAt.from(i);
    if (other) return other.unit?.units[0] === 'min' ? (other.readings[0]?.value ?? 1) : undefined;
    if (!/^(?:in|a|per|over|the|one|psi|pounds|for|after)$/.test(w)) return undefined;
  }
  return undefined;
}

const builds = (a: string, b: string): boolean =>
  a === 'to' && /^(?:make|build|reach|get|come|hit|pump|fill|air|see|go)$/.test(b);

/** "Air's gone from one twenty to one fourteen in twenty minutes": where it began, where it ended, how long it took. */
function fallen(
  talk: Talk,
  clause: Clause,
  taken: Uint8Array,
  put: (part: string, aspect: string, value: number, unit: '[psi]' | 'min', n: NumberSpan) => void,
): void {
  const { words } = talk.marks;
  const [a, b, c] = clause.numbers;
  const high = a?.readings[0]?.value ?? 0;
  const low = b?.readings[0]?.value ?? 0;
  const bare = (n: NumberSpan): boolean => !n.unit || n.unit.units.includes('[psi]');
  if (!a || !b || taken[a.from] || !bare(a) || !bare(b) || words[a.from - 1]?.norm !== 'from') return;
  if (words[b.from - 1]?.norm !== 'to' || high < 60 || high > 150 || low >= high || low < 30) return;
  if (
    !words
      .slice(clause.from, a.from)
      .some((w) => /^(?:air|pressure|gauge|gauges|needle|needles|tanks)$/.test(w.norm))
  )
    return;
  put('air_gauges', 'primary', high, '[psi]', a);
  put('air_gauges', 'primary', low, '[psi]', b);
  if (c?.unit?.units[0] === 'min') put('air_gauges', 'test_time', c.readings[0]?.value ?? 0, 'min', c);
}
