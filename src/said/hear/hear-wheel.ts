// Why: at the wheel things are said in pieces: a speed and what was felt, which shift, what the brake held; none of them names its part.
import { generalAspects } from '../../catalogue/general-aspect.ts';
import { partOf } from '../../catalogue/index.ts';
import type { State } from '../../catalogue/state.ts';
import type { Unit } from '../../units/unit.ts';
import type { Clause, Draft } from './clause.ts';
import { atTheWheel } from './hear-drive.ts';
import { heldBy, oilIn, parkedIn } from './named-before.ts';
import type { NumberSpan } from './number-span.ts';
import { ordinals } from './number-words.ts';
import { draftOf } from './state-draft.ts';
import type { Talk } from './talk.ts';

/** Where the last shake was felt: speeds right after it are of it. */
const felt = new WeakMap<Talk, number>();
/** The sentence in which a shift was last found bad: revolutions in it are of the shift. */
const shifted = new WeakMap<Talk, number>();
const shakes =
  /^(?:vibration|vibrations|vibrates|shimmy|shimmies|shakes|shake|shaking|shudder|shudders|wobble|wobbles|buzz|buzzing|tremble|trembles)$/;
const calm = /^(?:smooth|nothing|quiet|steady|solid|calm|fine|still|settled|glassy)$/;
const small =
  /^(?:no|it|'s|is|that|was|at|about|around|from|to|between|more|like|say|starts?|started|begins?|comes?|came|in|on|gone|goes|went|away|disappears|disappeared|smooths?|smoothed|out|clears?|cleared|up|by|over|past|above|and|then|it's|till|until|again|quits?|stops?|back|mostly|only|just|so|worst|peaks?|the|of|speed|range|or|through|there|here)$/;
const gone =
  /^(?:gone|goes|went|away|disappears|disappeared|smooths?|smoothed|clears?|cleared|quits?|stops?)$/;
const badShift =
  /^(?:flares?|flared|flaring|slips?|slipped|bangs?|banged|slams?|slammed|hesitates?|hangs?|hung|clunks?|clunked|jerks?|jerked|shudders?|late|harsh|hard|lazy|rough|hunts?|thumps?)$/;
const goodShift = /^(?:clean|smooth|good|fine|crisp|firm|soft|nice|okay|seamless)$/;
const moves =
  /^(?:move|moves|moved|budge|budged|creep|creeps|crept|roll|rolled|rolls|moving|creeping|rolling)$/;
const never = /^(?:not|n't|doesn't|doesnt|didn't|didnt|don't|won't|wouldn't|isn't|never|no|without)$/;
const heat = /^(?:gun|infrared|laser|temps?|temperatures?|thermometer|pyrometer)$/;
const hot: readonly (readonly [RegExp, string])[] = [
  [/^(?:drums?|rotors?|discs?|disks?|brakes?)$/, 'brake_drum_rotor'],
  [/^(?:hubs?)$/, 'wheels_lugs'],
];
const limit = 14;

/** What is said in pieces on the road, and the hold of the parking brake; takes its words, so that nothing else reads them. */
export function hearWheel(talk: Talk, clause: Clause, taken: Uint8Array): Draft[] {
  const { words, sentenceOf } = talk.marks;
  const norm = (i: number): string => words[i]?.norm ?? '';
  if (talk.scopes.elsewhere[clause.from]) return [];
  const out: Draft[] = [];
  let start = clause.from;
  while (start > 0 && clause.from - start < 30 && sentenceOf[start - 1] === clause.sentence) start--;
  const said = (test: RegExp, from = start, to = clause.to): boolean => {
    for (let i = from; i < to; i++) if (test.test(norm(i))) return true;
    return false;
  };
  const measure = (
    part: string,
    aspect: string,
    unit: Unit,
    n: NumberSpan,
    at = n.readings[0]?.value,
  ): void => {
    if (at === undefined) return;
    const known = [...(partOf(part)?.aspects ?? []), ...generalAspects].some((a) => a.id === aspect);
    if (!known) return;
    const doubt = talk.doubtAt(n.from);
    const place = talk.placeOf(part, n.from, clause, n);
    const upTo = n.upTo?.[0]?.value;
    out.push({
      part,
      ...(place === undefined ? {} : { place }),
      aspect,
      value: { is: 'quantity', value: at, unit, ...(upTo === undefined ? {} : { upTo }) },
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
  const state = (
    part: string,
    aspect: string,
    value: State,
    sense: Draft['sense'],
    polarity: Draft['polarity'],
    at: number,
    length = 1,
  ): void => {
    out.push(
      draftOf(talk, clause, taken, { part, aspect, state: value, sense, polarity, weight: 0.8 }, at, length),
    );
  };

  // "parking brake, in drive, twelve hundred rpm, it doesn't move"
  if (parkedIn(talk, start, clause.to)) {
    for (const n of clause.numbers)
      if (!taken[n.from] && n.unit?.units[0] === '{rev}/min')
        measure('parking_brake', 'measured_rotation', '{rev}/min', n);
    for (let i = clause.from; i < clause.to; i++)
      if (moves.test(norm(i)) && !taken[i] && said(never, Math.max(clause.from, i - 3), i)) {
        state('parking_brake', 'operates', 'works', 'operates', 'good', i);
        taken.fill(1, clause.from, clause.to);
      }
  }
  // "drums with the gun, left front one sixty-eight"
  const heated = said(heat) ? hot.find(([word]) => said(word)) : undefined;
  if (heated && clause.places.length > 0)
    for (const n of clause.numbers) {
      const value = n.readings[0]?.value ?? 0;
      if (!taken[n.from] && (!n.unit || n.unit.units[0] === '[degF]') && value >= 60 && value <= 700)
        measure(heated[1], 'measured_temperature', '[degF]', n);
    }
  if (!atTheWheel(talk, clause)) return out;

  for (let i = clause.from; i < clause.to; i++) {
    if (taken[i]) continue;
    const n = norm(i);
    const denied = talk.scopes.denied[i] === 1 || said(never, Math.max(clause.from, i - 3), i);
    if (shakes.test(n) && !denied) felt.set(talk, i);
    // "in the wheel": where it is felt
    const after = i - (felt.get(talk) ?? -999);
    const article = /^(?:the|my)$/.test(norm(i + 1));
    if (/^(?:in|through|thru)$/.test(n) && article && after >= 0 && after <= 24) {
      const place = norm(i + 2) === 'steering' ? norm(i + 3) : norm(i + 2);
      const no = said(/^(?:not|none|nothing|never|no)$/, Math.max(clause.from, i - 3), i);
      const part =
        place === 'wheel'
          ? 'steering_gear'
          : /^(?:seat|chair)$/.test(place) && no
            ? 'driver_seat'
            : undefined;
      if (part && no) state(part, 'vibration', 'no', 'absent', 'good', i + 2);
      else if (part && after <= 4) {
        const at = felt.get(talk) ?? i;
        if (!taken[at] && at >= clause.from) state(part, 'vibration', 'vibrating', 'defect', 'bad', at);
      }
    }
    // "it goes left a little"
    if (
      /^(?:goes|went|heads|steers|drifts|wanders|walks)$/.test(n) &&
      /^(?:it|she|he|coach|rig)$/.test(norm(i - 1)) &&
      /^(?:left|right)$/.test(norm(norm(i + 1) === 'to' ? i + 3 : i + 1)) &&
      !denied
    ) {
      const length = norm(i + 1) === 'to' ? 4 : 2;
      if ((words[i + length - 1]?.stop ?? 2) > 0 || /^(?:a|by|some|when|on|if|under)$/.test(norm(i + length)))
        state('road_test_drive', 'pulling', 'pulling', 'defect', 'bad', i, length);
    }
    // "other shifts are clean"
    if (
      /^(?:shift|shifts|shifting)$/.test(n) &&
      /^(?:is|are|were|was|all)?$/.test(norm(i + 1) === '' ? '' : norm(i + 1)) &&
      /^(?:other|others|the|rest|all|remaining|every)$/.test(norm(i - 1)) &&
      goodShift.test(norm(i + 2))
    )
      state('transmission', 'shift', 'good', 'condition', 'good', i, 3);
    // "no smoke in the mirror"
    if (
      n === 'smoke' &&
      /^(?:no|any)$/.test(norm(i - 1)) &&
      clause.mentions.every((m) => m.aside || m.weak || m.from > i)
    )
      state('turbo_exhaust', 'smoke', 'no', 'absent', 'good', i);
    // "stop from fifty, straight"
    if (
      n === 'straight' &&
      clause.from === i &&
      (words[i]?.stop ?? 2) > 0 &&
      said(/^(?:stop|stopped|stops|stopping|braked|braking|brake)$/, start, i)
    )
      state('brake_drum_rotor', 'pull', 'straight', 'condition', 'good', i);
  }
  for (const n of clause.numbers) {
    const value = n.readings[0]?.value ?? -1;
    if (taken[n.from] || n.money || value < 0) continue;
    const unit = n.unit?.units[0];
    const mph = unit === '[mi_i]/h' || (unit === undefined && Number.isInteger(value));
    const top = n.upTo?.[0]?.value;
    const next = norm(n.to);
    // "two to three bangs"
    if (!unit && top === value + 1 && top <= 12 && badShift.test(next)) {
      const at = n.to;
      taken.fill(1, n.from, n.to);
      state('transmission', 'shift', 'sticky', 'defect', 'bad', at);
      shifted.set(talk, clause.sentence);
      continue;
    }
    // "three to four flares, about two hundred rpm"
    if (unit === '{rev}/min' && shifted.get(talk) === clause.sentence) {
      measure('transmission', 'measured_rotation', '{rev}/min', n);
      continue;
    }
    // "in fourth at nineteen fifty"
    const revs = n.readings.find((r) => r.value >= 900 && r.value <= 3600);
    if (
      !unit &&
      revs &&
      norm(n.from - 1) === 'at' &&
      (ordinals[norm(n.from - 2)] !== undefined || norm(n.from - 2) === 'gear')
    ) {
      measure('engine', 'engine_speed', '{rev}/min', n, revs.value);
      continue;
    }
    // "seven point six miles a gallon"
    if (unit === '[mi_i]/[gal_us]' && value >= 3 && value <= 40) {
      measure('coach', 'economy', '[mi_i]/[gal_us]', n);
      continue;
    }
    // "oil pressure, fifty at cruise, eighteen at hot idle"
    if (
      !unit &&
      value >= 3 &&
      value <= 100 &&
      next === 'at' &&
      said(/^(?:idle|cruise|cruising|speed)$/, n.to + 1, n.to + 4) &&
      oilIn(talk, start, n.from)
    ) {
      measure('engine', 'oil_psi', '[psi]', n);
      continue;
    }
    // "sixty-nine decibels"
    if (unit === 'dB{A}' && clause.mentions.every((m) => m.aside || m.weak)) {
      measure('interior', 'measured_sound', 'dB{A}', n);
      continue;
    }
    if (!mph || value < 15 || value > 85) {
      // "coolant was one ninety at the bottom and it's two ten at the top"
      if (
        !unit &&
        value >= 120 &&
        value <= 260 &&
        said(/^(?:coolant|temp|temps|temperature)$/, start, clause.from) &&
        said(/^(?:it|it's)$/, clause.from, n.from)
      )
        measure('engine', 'coolant_F', '[degF]', n);
      // "fan came on at two oh five"
      else if (
        !unit &&
        value >= 150 &&
        value <= 240 &&
        norm(n.from - 1) === 'at' &&
        said(/^(?:fan|fans)$/, clause.from, n.from) &&
        said(/^(?:on|in|engaged|engages|roars|locked|locks)$/, clause.from, n.from)
      ) {
        measure('radiator_cac', 'measured_temperature', '[degF]', n);
        state('radiator_cac', 'operates', 'works', 'operates', 'good', n.from - 1);
      }
      continue;
    }
    // "noise at sixty"
    if (norm(n.from - 1) === 'at' && norm(n.from - 2) === 'noise') {
      measure('interior', 'measured_speed', '[mi_i]/h', n);
      continue;
    }
    // "thirty-five, smooth"
    const lead =
      clause.from === n.from ||
      (/^(?:at|and|okay|now)$/.test(norm(clause.from)) && n.from - clause.from <= 2);
    const verdict = n.to;
    if (
      lead &&
      calm.test(next) &&
      sentenceOf[verdict] === clause.sentence &&
      ((words[verdict]?.stop ?? 2) > 0 || /^(?:as|and)$/.test(norm(verdict + 1)))
    ) {
      taken.fill(1, n.from, verdict + 1);
      state('road_test_drive', 'vibration', 'no', 'absent', 'good', verdict);
      continue;
    }
    // "shake in the wheel. Fifty-five to fifty-eight. Gone at sixty-two."
    const shaken = felt.get(talk) ?? -999;
    let plain = n.from - shaken <= limit && n.from > shaken && clause.mentions.every((m) => m.weak);
    for (let i = clause.from; i < clause.to; i++)
      if ((i < n.from || i >= n.to) && !small.test(norm(i)) && !(shaken >= clause.from && i <= shaken))
        plain = false;
    // "fifty-two, there it is, shake in the wheel"
    let ahead = false;
    if (lead && n.to === clause.to)
      for (let i = n.to; i < n.to + 8 && sentenceOf[i] === clause.sentence; i++)
        if (shakes.test(norm(i)) && !said(never, n.to, i)) ahead = true;
    if (plain || ahead) {
      measure('road_test_drive', 'vibration_mph', '[mi_i]/h', n);
      const left = said(gone, clause.from, n.from);
      if (left) taken.fill(1, clause.from, n.from);
      if (left) state('road_test_drive', 'vibration', 'no', 'absent', 'good', n.from - 1);
      if (plain) felt.set(talk, n.from);
      continue;
    }
    // "exhaust brake on high, it holds forty-one"
    const holder = clause.index > 0 ? heldBy(talk, start, n.from) : undefined;
    if (holder && said(/^(?:holds|held|holding|keeps|kept)$/, clause.from, n.from)) {
      measure(holder, 'measured_speed', '[mi_i]/h', n);
      state(holder, 'operates', 'works', 'operates', 'good', n.from - 1);
      continue;
    }
    // "the mirror folds over fifty"
    const own = clause.mentions.find((m) => !m.aside && m.to <= n.from);
    if (own && n.to === clause.to && /^(?:over|above|past)$/.test(norm(n.from - 1)) && !unit)
      measure(own.parts[0] ?? 'road_test_drive', 'measured_speed', '[mi_i]/h', n);
  }
  return out;
}
