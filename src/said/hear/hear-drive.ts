// Why: at the wheel numbers come without units: speeds, grades, gears, how far off the speedometer is, from what speed it stopped.
import type { Unit } from '../../units/unit.ts';
import type { Clause, Draft } from './clause.ts';
import type { NumberSpan } from './number-span.ts';
import { ordinals } from './number-words.ts';
import { phraseList } from './phrase-index.ts';
import type { Talk } from './talk.ts';

/** Words that only somebody at the wheel says. Trade usage (common practice, no source). */
const openers = phraseList(
  (
    'took it out,took her out,drove it,drove her,drive it,drove,road test,test drive,on the highway,on the freeway,on the interstate,on the road,took it for a drive,took it for a spin,up to speed,' +
    'up the big hill,speedo,speedometer,on the hill,up the hill,on the grade,percent grade,up a grade,up the grade,on the pass,up the pass,over the pass,on the climb,at speed,while driving,driving down,driving along,behind the wheel,going down the highway,on the two lane,back roads,rpm,rpms,cruise holds,cruise set,straightaway,' +
    'miles an hour,miles per hour,mile an hour,at highway speed,out on the road,on ramp,on the ramp,rolling,out on the highway,we are rolling,pulling out,first stop,cruise is set,down the road,cruising'
  ).split(','),
);
const reach = 160;
const lastAt = new WeakMap<Talk, number>();

const stops =
  /^(?:stop|stops|stopped|stopping|brake|brakes|braked|braking|panic|haul|hauls|hauled|slow|slowed)$/;
const shakes =
  /^(?:vibration|vibrations|vibrates|shimmy|shimmies|shakes|shake|shudder|shudders|wobble|wobbles|buzz|buzzes|buzzing|howl|howls|howling|whine|whines|hum|hums|humming|drone|drones|growl|growls|roar|rumble|rumbles|wander|wanders)$/;
const slopes = /^(?:grade|hill|slope|climb|climbing|pass|mountain|sign|incline|pull|downgrade|upgrade)$/;
const drops =
  /^(?:drops|dropped|drop|downshifts|downshifted|downshift|kicks|kicked|falls|fell|shifts|shifted|goes|went|settles|settled|holds|held|grabs|grabbed|took|takes|pulled|pulls)$/;
const truth = /^(?:gps|satellite|phone|radar|nav|navigation)$/;
const dial = /^(?:speedo|speedometer|dash|needle|it|she|gauge|dial|reading|reads)$/;
const off = /^(?:fast|slow|high|low|off|optimistic|over|under)$/;
const holds = /^(?:holds|held|holding|hold|keeps|kept)$/;
const cruise =
  /^(?:cruise|cruising|cruised|doing|running|ran|settled|set|steady|speed|rolling|got|took|brought|wound|pushed)$/;

/** True where the clause is spoken at the wheel: something that only a driver says was said not long before. */
export function atTheWheel(talk: Talk, clause: Clause): boolean {
  for (let i = clause.from; i < clause.to; i++) if (openers.at(talk.marks.words, i)) lastAt.set(talk, i);
  return clause.from - (lastAt.get(talk) ?? -999) <= reach && !talk.scopes.elsewhere[clause.from];
}

/** Readings taken at the wheel in a clause; takes their words, so that nothing else reads them. */
export function hearDrive(talk: Talk, clause: Clause, taken: Uint8Array): Draft[] {
  const { words } = talk.marks;
  const norm = (i: number): string => words[i]?.norm ?? '';
  if (!atTheWheel(talk, clause)) return [];
  const out: Draft[] = [];
  const has = (test: RegExp, from = clause.from, to = clause.to): boolean => {
    for (let i = from; i < to; i++) if (test.test(norm(i))) return true;
    return false;
  };
  const put = (
    part: string,
    aspect: string,
    value: Draft['value'],
    at: number,
    to: number,
    approx: boolean,
  ): void => {
    const doubt = talk.doubtAt(at);
    out.push({
      part,
      aspect,
      value,
      sense: 'quantity',
      polarity: 'neutral',
      ...doubt,
      hedged: approx || doubt.hedged,
      from: Math.max(clause.from, at - 6),
      to: Math.min(clause.to, to + 2),
      at,
      weight: 0.8,
    });
    taken.fill(1, at, to);
    lastAt.set(talk, Math.max(at, lastAt.get(talk) ?? 0));
  };
  const measure = (part: string, aspect: string, value: number, unit: Unit, n: NumberSpan): void =>
    put(part, aspect, { is: 'quantity', value, unit }, n.from, n.to, n.approx);

  for (const n of clause.numbers) {
    if (taken[n.from] || n.money) continue;
    const value = n.readings[0]?.value ?? -1;
    const said = n.unit?.units[0];
    const before = norm(n.from - 1);
    const next = norm(n.to);
    const mph =
      said === '[mi_i]/h' || (said === undefined && n.items.length === 1 && Number.isInteger(value));
    if (said === '%') {
      if (value >= 2 && value <= 15 && (has(slopes) || slopes.test(next)))
        measure('road_test_drive', 'grade_tried', value, '%', n);
      continue;
    }
    if (!mph || value < 1 || value > 90) continue;
    if (
      value <= 12 &&
      off.test(next) &&
      (has(dial, clause.from, n.from) || has(/^(?:speedo|speedometer)$/))
    ) {
      measure('dash_gauges', 'measured_speed', value, '[mi_i]/h', n);
      continue;
    }
    if (value < 5) continue;
    const fault = lastOf(talk, clause, n.from, shakes);
    const instrument = clause.mentions.find((m) => m.to <= n.from && !m.aside);
    if (has(truth, clause.from, n.from)) measure('dash_gauges', 'measured_speed', value, '[mi_i]/h', n);
    else if (before === 'from' && has(stops, sentenceFrom(talk, n.from), n.from))
      measure('brake_drum_rotor', 'measured_speed', value, '[mi_i]/h', n);
    else if (
      has(holds, clause.from, n.from) &&
      before === 'at' &&
      instrument &&
      talk.marks.words
        .slice(instrument.from, instrument.to)
        .some((w) => /^(?:brake|retarder|jake)$/.test(w.norm))
    )
      measure(instrument.parts[0] ?? 'road_test_drive', 'measured_speed', value, '[mi_i]/h', n);
    else if (
      fault >= 0 &&
      (norm(n.from) === 'between' || /^(?:at|around|about|above|over|past|from|between|after)$/.test(before))
    )
      measure('road_test_drive', 'vibration_mph', value, '[mi_i]/h', n);
    else if (
      said === '[mi_i]/h'
        ? !has(/^(?:wind|rated|limit|governed)$/) &&
          (instrument === undefined || has(cruise) || clause.mentions.every((m) => m.aside || m.weak))
        : value >= 20 &&
          ((/^(?:flat|steady|even)$/.test(next) && n.from - clause.from <= 2) ||
            (next === 'on' &&
              norm(n.to + 1) === 'the' &&
              /^(?:flat|level|straight|highway|cruise)$/.test(norm(n.to + 2))) ||
            (/^(?:at|to|doing|about)$/.test(before) &&
              has(cruise, Math.max(clause.from, n.from - 5), n.from) &&
              instrument === undefined))
    )
      measure('road_test_drive', 'speed', value, '[mi_i]/h', n);
  }
  // "she drops to fourth"
  for (let i = clause.from; i < clause.to; i++) {
    const gear = ordinals[norm(i)];
    if (gear === undefined || gear > 12 || taken[i] || talk.scopes.denied[i]) continue;
    const lead = norm(i - 1);
    const named = norm(i + 1) === 'gear';
    const ends = (words[i]?.stop ?? 2) > 0 || named || /^(?:and|on|at|for|by|with|all)$/.test(norm(i + 1));
    if (!ends || !/^(?:to|into|in|for|down)$/.test(lead)) continue;
    if (!(named || has(drops, Math.max(clause.from, i - 4), i)) || has(/^(?:first|from)$/, clause.from, i))
      continue;
    put('transmission', 'gears', { is: 'count', count: gear }, i, i + (named ? 2 : 1), false);
  }
  return out;
}

/** Where the sentence begins, or eight words before. */
function sentenceFrom(talk: Talk, at: number): number {
  let i = at;
  while (i > 0 && at - i < 8 && talk.marks.sentenceOf[i - 1] === talk.marks.sentenceOf[at]) i--;
  return i;
}

/** The nearest word of a kind before or after the number in its clause, -1 where there is none. */
function lastOf(talk: Talk, clause: Clause, at: number, test: RegExp): number {
  for (let i = at - 1; i >= clause.from && at - i <= 10; i--)
    if (test.test(talk.marks.words[i]?.norm ?? '') && talk.scopes.denied[i] !== 1) return i;
  // "between 55 and 60 miles per hour comes vibration"
  for (let i = at + 1; i < clause.to && i - at <= 11; i++)
    if (test.test(talk.marks.words[i]?.norm ?? '') && talk.scopes.denied[i] !== 1) return i;
  return -1;
}
