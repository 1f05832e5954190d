// Why: which part is meant by "the tank", "seals" or "it lights" depends on what is around it and what came before.

import { partOf } from '../../catalogue/index.ts';
import { batteryBySide } from './battery-by-side.ts';
import { isTester } from './instrument.ts';
import { kinOf } from './kin.ts';
import { partPhrases, weakParts } from './lexicon.ts';
import { isSteeringWheel } from './meant-by-words.ts';
import { isAside, isOfBefore, isTool } from './mention-aside.ts';
import { family, followed, unless, verbAfter, verbish, verbWhen } from './mention-table.ts';
import { withoutVerb } from './named-by-next.ts';
import { stainedOver, unlessNext } from './no-part-before.ts';
import type { Word } from './word.ts';
import { hasSenses, isAlwaysPart, senseOf } from './word-sense-table.ts';

/** A part named. `parts` in the order of likelihood; `aside` when it only says where ("over the sink"). */
export interface Mention {
  readonly from: number;
  readonly to: number;
  readonly parts: readonly string[];
  readonly weak: boolean;
  readonly aside: boolean;
}

const words_ = (text: string): Set<string> => new Set(text.split(' '));

/** The parts named before word `i`, newest first. */
function recentAt(recently: readonly { readonly part: string; readonly at: number }[], i: number): string[] {
  const recent: string[] = [];
  for (let k = recently.length - 1; k >= 0 && i - (recently[k]?.at ?? 0) < 80 && recent.length < 14; k--) {
    const part = recently[k]?.part ?? '';
    if (!recent.includes(part)) recent.push(part);
  }
  return recent;
}

const determined = words_(
  "the a an this that these those my your our its his her one both each other another left right front rear top bottom hot cracked torn 's in on of round around for with and no any new old",
);
/** True where a word stands for a thing: behind an article or the like, or first in what is said. */
const isThing = (words: readonly Word[], i: number): boolean => {
  const before = words[i - 1];
  return (
    before === undefined || before.stop > 0 || determined.has(before.norm) || /s$/.test(words[i]?.norm ?? '')
  );
};

/** The words of the sentence close to word `i`. */
function aroundOf(words: readonly Word[], i: number): string[] {
  const out: string[] = [];
  for (let k = i; k > 0 && k > i - 6 && words[k - 1]?.stop !== 2; k--) out.push(words[k - 1]?.norm ?? '');
  for (let k = i; k < i + 10 && k + 1 < words.length && words[k]?.stop !== 2; k++)
    out.push(words[k + 1]?.norm ?? '');
  return out;
}

/** Finds the parts named in a stream. `taken` marks words inside numbers; `starts` those that begin a sentence. */
export function mentionsIn(words: readonly Word[], taken: Uint8Array, starts: Uint8Array): Mention[] {
  const out: Mention[] = [];
  const recently: { readonly part: string; readonly at: number }[] = [];
  for (let i = 0; i < words.length; ) {
    // "Inside it smells of smoke": the whole interior, where a sentence begins with it
    if (
      (starts[i] || i === 0) &&
      words[i]?.norm === 'inside' &&
      /^(?:it|everything|there|the|we|i|'s|she|you|all)$/.test(words[i + 1]?.norm ?? '')
    ) {
      out.push({ from: i, to: i + 1, parts: ['interior'], weak: false, aside: false });
      recently.push({ part: 'interior', at: i });
      i++;
      continue;
    }
    let hit = partPhrases.at(words, i);
    if ((!hit || hit.length === 1) && hasSenses(words[i]?.norm ?? '') && !taken[i]) {
      if (isThing(words, i)) {
        const sense = senseOf(words[i]?.norm ?? '', recentAt(recently, i), aroundOf(words, i));
        hit = sense ? { length: 1, values: [sense] } : undefined;
      } else if (!isAlwaysPart(words[i]?.norm ?? '')) hit = undefined;
    }
    const side =
      (!hit || hit.length === 1) && !taken[i] ? batteryBySide(words, i, recentAt(recently, i)) : undefined;
    if (side) {
      out.push({ from: i, to: i + 1, parts: [side], weak: false, aside: false });
      recently.push({ part: side, at: i });
      i++;
      continue;
    }
    if (!hit || (taken[i] && hit.length === 1)) {
      i++;
      continue;
    }
    hit = withoutVerb(words, i, hit);
    const said = words
      .slice(i, i + hit.length)
      .map((x) => x.norm)
      .join(' ');
    const before = words[i - 1];
    const joined = before !== undefined && before.stop === 0 && !starts[i];
    const last = out.at(-1);
    const next = words[i + hit.length]?.norm ?? '';
    const asVerb =
      hit.length === 1 &&
      verbish.has(said) &&
      // "that pump" is a thing, "that pumps" does it
      !(/^(?:that|this)$/.test(before?.norm ?? '') && !said.endsWith('s')) &&
      ((joined &&
        ((verbWhen.has(before.norm) &&
          !(/^(?:and|one)$/.test(before.norm) && !said.endsWith('s')) &&
          !(before.norm === 'one' && (i < 2 || words[i - 2]?.stop !== 0))) ||
          last?.to === i ||
          (/^lights?$/.test(said) &&
            taken[i - 1] === 1 &&
            (said === 'lights' || /^(?:all|both)$/.test(words[i - 2]?.norm ?? ''))))) ||
        (said.endsWith('s') &&
          verbAfter.has(next) &&
          next !== 'okay' &&
          next !== 'ok' &&
          next !== 'good' &&
          words[i]?.stop === 0 &&
          taken[i - 1] !== 1));
    const recent = recentAt(recently, i);
    // "steers 105, drives all at 95"
    const axle =
      /^(?:steers|drives)$/.test(said) &&
      (taken[i + 1] === 1 || (/^(?:all|both|at|are|'re|is|read|reading)$/.test(next) && taken[i + 2] === 1));
    const needs = family[said];
    const after = followed[said];
    if (
      (asVerb && !axle) ||
      unless[said]?.test(recent[0] ?? '') ||
      unlessNext[said]?.test(next) ||
      // "tight as a drum"
      (/^an?$/.test(before?.norm ?? '') &&
        words[i - 2]?.norm === 'as' &&
        words[i - 2]?.stop === 0 &&
        hit.length === 1) ||
      (isTester(next) && hit.length === 1) ||
      (said === 'inside' && /^(?:left|right|dual|duals|tire|one|'s|driver|passenger|edge)$/.test(next)) ||
      (/^valves?$/.test(said) && /^(?:cover|covers|stem|stems|train|job)$/.test(next)) ||
      (said === 'spring' && /^(?:this|last|next|in|every|each|early|late)$/.test(before?.norm ?? '')) ||
      (needs && !axle && !isFamily(needs, said, recent)) ||
      (/^(?:bottles?|cylinders?)$/.test(said) && !isGasBottle(words, i, recent)) ||
      (after && !after.test(next))
    ) {
      i++;
      continue;
    }
    // "the awning motor", "the exhaust hanger": a piece named right behind its part belongs to it
    const lastWord = words[i + hit.length - 1]?.norm ?? '';
    const whole = last && !last.weak && !last.aside && last.to > i - 3 ? last : undefined;
    const linked =
      whole !== undefined &&
      (whole.to === i || (whole.to === i - 1 && words[i - 1]?.norm === "'s")) &&
      words[whole.to - 1]?.stop === 0 &&
      words[i - 1]?.stop === 0;
    if (whole && linked && (piece.test(lastWord) || /^(?:gauge|needle)/.test(said)) && hit.length <= 2) {
      out[out.length - 1] = { ...whole, to: i + hit.length };
      i += hit.length;
      continue;
    }
    const oneOf =
      next === 'one' &&
      taken[i + hit.length + 1] !== 1 &&
      last &&
      i - last.to <= 6 &&
      !last.parts.some((p) => /^(?:fresh|gray|black)_tank$/.test(p)) &&
      /^(?:black|gray|grey|galley|fresh)$/.test(said)
        ? last.parts
        : undefined;
    const lid =
      /^doors?(?: |$)/.test(said) && i - (recently.at(-1)?.at ?? 0) < 30 && !starts[i - 1]
        ? recent.slice(0, 3).find((p) => lidded.test(p))
        : undefined;
    const ofCoach =
      /^sidewalls?$/.test(said) &&
      /^(?:driver|passenger|left|right|street|curb|road|side|'s|lower)$/.test(before?.norm ?? '');
    const ofLeg =
      /^(?:leg|legs|line|phase)\b/.test(said) &&
      recent.slice(0, 6).find((p) => mains.test(p)) === 'generator';
    const steers = /^wheel$/.test(said) && /^(?:tilts?|tilted|telescopes?|telescoped|adjusts?)$/.test(next);
    const seat = /^(?:chair|seat)$/.test(said) ? seatAt(words, i + hit.length) : undefined;
    const oiled = /^oil(?: level)?$/.test(said) ? recent.slice(0, 1).find((p) => oils.test(p)) : undefined;
    const steering = said === 'wheel' && isSteeringWheel(words, i);
    const mention = {
      from: i,
      to: i + hit.length,
      parts: steers
        ? ['ignition_steering']
        : steering
          ? ['steering_gear', ...hit.values]
          : oiled
            ? [oiled, ...hit.values]
            : seat
              ? [seat]
              : oneOf
                ? [...oneOf]
                : ofLeg
                  ? ['generator', ...hit.values]
                  : lid
                    ? [lid, ...hit.values]
                    : ofCoach
                      ? ['sidewall_structure', ...hit.values]
                      : inOrder(hit.values, recent, said, isAiry(words, i)),
      weak: isWeak(said) && !(said === 'inside' && starts[i]),
      aside:
        joined &&
        (isAside(words, i, i + hit.length) ||
          isTool(words, i, i + hit.length) ||
          isOfBefore(words, i, last, isWeak(said))),
    };
    // "a stain over the bed": of the ceiling there
    if (mention.aside && stainedOver(words, i)) {
      if (last?.parts[0] === 'wall_stains' && i - last.to <= 3)
        out[out.length - 1] = { ...last, parts: ['ceiling', ...last.parts] };
      else out.push({ ...mention, parts: ['ceiling'], weak: false, aside: false });
      recently.push({ part: 'ceiling', at: i });
      i += hit.length;
      continue;
    }
    // "the oil in the generator": of the oils it may be, that one
    const owner = mention.aside ? mention.parts[0] : undefined;
    if (last && owner && last.parts[0] !== owner && last.parts.includes(owner) && i - last.to <= 3)
      out[out.length - 1] = { ...last, parts: [owner, ...last.parts.filter((p) => p !== owner)] };
    out.push(mention);
    if (!mention.aside) for (const part of [...mention.parts].reverse()) recently.push({ part, at: i });
    i += hit.length;
  }
  return out;
}

/** "The chair on the passenger side": which of the two in front. */
function seatAt(words: readonly Word[], to: number): string | undefined {
  if (words[to]?.norm !== 'on' || words[to - 1]?.stop !== 0) return undefined;
  const n = words[words[to + 1]?.norm === 'the' ? to + 2 : to + 1]?.norm ?? '';
  return /^(?:passenger|copilot)$/.test(n)
    ? 'passenger_seat'
    : /^driver$/.test(n)
      ? 'driver_seat'
      : undefined;
}

const ofGas =
  /^(?:recert|recertified|recertification|requal|requalified|hydro|collars?|stamp|stamped|propane|gas|lp|regulator|pigtails?|pounds?|pounders?|straps?|strapped|locker|opd|valves?|swap|exchange|changeover|rusty|rust)$/;
/** A bottle or a cylinder is one of gas where gas is or was talked about. */
const isGasBottle = (words: readonly Word[], i: number, recent: readonly string[]): boolean =>
  recent.some((p) => p.startsWith('lp_')) ||
  words.slice(Math.max(0, i - 4), i + 12).some((w) => ofGas.test(w.norm));

/** Seals and batteries are those of what is talked about; the other families may be a little further back. */
const isFamily = (needs: RegExp, said: string, recent: readonly string[]): boolean =>
  /^(?:batter|cells?$)/.test(said)
    ? recent.length === 0 || needs.test(recent[0] ?? '')
    : recent.slice(0, /^seal/.test(said) ? 3 : recent.length).some((p) => needs.test(p));

const piece =
  /^(?:motors?|doors?|seals?|handles?|latch(?:es)?|locks?|fans?|hoses?|compressors?|hangers?|covers?|lids?|gaskets?|knobs?|switch(?:es)?|arms?|fabric|filters?|caps?|mounts?|brackets?|boards?|displays?|elements?|hinges?|struts?|drawers?|trays?|rails?|cords?|bulbs?|gauges?|needles?|dials?|nozzles?|collars?|lens(?:es)?|panels?|valves?)$/;
const mains = /^(?:generator|shore_power|shore_cord|electric_panel|transfer_switch|inverter_charger)$/;
const lidded =
  /^(?:refrigerator|oven|microwave|washer_dryer|dishwasher|shower_tub|cabinets|bay_storage|water_heater_out|water_heater_run|generator|outside_shower|fresh_fill|city_water|shore_power|outside_kitchen|furnace_out|refrigerator_vent_out|fuel_fill|medicine|vents_roof)$/;

/** Parts with an oil of their own. */
const oils =
  /^(?:differential|wheel_bearings|hydraulic_unit|transmission|generator|steering_gear|shocks|air_tanks|levelling_jacks)$/;

const isWeak = (said: string): boolean =>
  weakParts.has(said) || weakParts.has(said.replace(/s$/, '')) || weakParts.has(`${said}s`);

/** True where the words around tell of air that blows, not of a lid on the roof. */
const isAiry = (words: readonly Word[], i: number): boolean => {
  const around = words.slice(Math.max(0, i - 5), i + 8).map((w) => w.norm);
  return (
    around.some((n) => /^(?:air|airflow|blowing|blow|blows|degrees|heat|cold)$/.test(n)) &&
    !around.some((n) =>
      /^(?:lid|lids|crank|cranks|fan|fans|roof|open|opens|opened|dome|cover|covers|rain)$/.test(n),
    )
  );
};

/** A washer is one of clothes unless the talk was of glass and its wipers. */
const washes = /^(?:wipers_washers|windshield|dash_gauges|headlamps|mirrors|horn|engine|front_cap)$/;

const stationOf = (part: string): string | undefined => partOf(part)?.station;
function inOrder(
  parts: readonly string[],
  recent: readonly string[],
  said: string,
  airy = false,
): readonly string[] {
  if (airy && /^(?:ceiling )?vents?$/.test(said)) return ['ducts_air', ...parts];
  if (parts.length < 2) return parts;
  if (/^washers?$/.test(said)) {
    const first = washes.test(recent[0] ?? '') ? 'wipers_washers' : 'washer_dryer';
    return [first, ...parts.filter((p) => p !== first)];
  }
  const near =
    (recent.includes('generator') ? parts.find((p) => p === 'generator_slide') : undefined) ??
    parts.find((p) => partOf(p)?.name.toLowerCase() === said) ??
    recent.find((r) => parts.includes(r)) ??
    recent.map((r) => parts.find((p) => kinOf(r).includes(p))).find((p) => p !== undefined) ??
    (recent[0] === undefined ? undefined : parts.find((p) => stationOf(p) === stationOf(recent[0] ?? '')));
  return near ? [near, ...parts.filter((p) => p !== near)] : parts;
}
