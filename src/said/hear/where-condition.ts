// Why: a reading is worth what it was taken under: on gas or electric, at idle or on the grade, at no load or loaded.
import type { Clause } from './clause.ts';
import type { NumberSpan } from './number-span.ts';
import { phrasesOf } from './phrase-index.ts';
import type { Word } from './word.ts';

/** Kinds of conditions; a part takes those of its own kinds. */
export type Under = 'energy' | 'load' | 'engine' | 'battery' | 'air' | 'road';

/** A condition named. An empty text ends the one before. */
export interface Condition {
  readonly kind: Under;
  readonly text: string;
  readonly at: number;
}

const kindsOf: readonly (readonly [Under, RegExp])[] = [
  ['energy', /^(?:refrigerator|ice_maker|water_heater)/],
  ['load', /^(?:generator|inverter|shore_cord|electric_panel|transfer_switch|lp_regulator|surge)/],
  [
    'engine',
    /^(?:engine|coolant|transmission|dash_gauges|radiator|turbo|front_engine|alternator|air_filter|exhaust|belts|cruise|brake|engine_brake|coach$|vents_roof)/,
  ],
  ['battery', /^(?:house_battery|chassis_battery|battery)/],
  ['air', /^(?:air_gauges|air_tanks|brake_chambers|parking_brake|brake_fluid|brake_drum)/],
  [
    'road',
    /^(?:coach$|alignment|road_test|transmission|brake_fluid|steering|tire$|driveline|parking_brake|ignition_steering)/,
  ],
];
/** What was worked out already: asked for at every part named. */
const kept = new Map<string, readonly Under[]>();
/** The kinds of conditions that matter for a part. */
export function kindsFor(part: string): readonly Under[] {
  const known = kept.get(part);
  if (known) return known;
  const kinds = kindsOf.filter(([, re]) => re.test(part)).map(([k]) => k);
  kept.set(part, kinds);
  return kinds;
}

type Says = readonly (readonly [Under, string])[];
const say = (kind: Under, text: string): Says => [[kind, text]];
const table = (kind: Under, text: string, list: string): [string, Says][] =>
  list.split('|').map((p) => [p, say(kind, text)]);

const phrases = phrasesOf<Says>(
  Object.fromEntries([
    ...table('energy', 'on electric', 'electric|electricity|on ac|on shore|on one twenty|electrical'),
    ...table('energy', 'on LP', 'gas|propane|lp|flame|on lp'),
    ...table(
      'load',
      'no load',
      'no load|unloaded|without load|without a load|nothing on it|with nothing on|loafing|zero load',
    ),
    ...table(
      'load',
      'loaded',
      'loaded|load on|under load|both airs|both acs|with a load|full load|half load|load',
    ),
    ...table('engine', 'at idle', 'idle|idling|idles|ticking over'),
    ...table('engine', 'cold', 'cold start|from cold|stone cold|cold'),
    ...table('engine', 'hot', 'hot|warmed up|up to temperature|at temperature|up to temp'),
    ...table('engine', 'on the hill', 'on the hill|up the hill'),
    ...table(
      'engine',
      'on the grade',
      'hill|grade|percent grade|climbing|climb|climbs up|uphill|incline|pass road',
    ),
    ...table('engine', 'after the hill', 'after the hill|over the top'),
    ...table(
      'engine',
      'downgrade',
      'downgrade|downhill|down the back side|down the other side|coming down the|down the hill|down the grade|descending|descent',
    ),
    ...table('engine', 'driving', 'driving|while driving|going down the road'),
    ...table('engine', 'at speed', 'highway speed|at speed|at cruise'),
    ...table('engine', '', 'parked|shut down|shut her off|shut it off|backing in'),
    ...table('battery', 'battery one', 'first one|number one'),
    ...table('battery', 'battery two', 'second one|other one|number two'),
    ...table('battery', 'rested', 'rested|at rest|resting|rest'),
    ...table('battery', 'charging', 'charging|on charge|on the charger|plugged in'),
    ...table(
      'battery',
      'no charging',
      'nothing charging|not charging|no charging|no charger|without charging',
    ),
    ...table(
      'battery',
      'everything off',
      'everything off|everything switched off|thing switched off|thing off|all off',
    ),
    ...table(
      'battery',
      'negative',
      'negative post|negative terminal|minus pole|negative cable|negative side|minus post',
    ),
    ...table(
      'battery',
      'positive',
      'positive post|positive terminal|plus pole|positive cable|positive side|plus post',
    ),
    ...table(
      'air',
      'applied',
      'foot on|on the pedal|pedal down|brake applied|brakes applied|applied|service brake',
    ),
    ...table('air', 'released', 'released|brakes off|let off|button in|foot off'),
    ...table('air', 'parked', 'parked|sitting'),
    ...table(
      'road',
      'road test',
      'road test|test drive|i drove|drove it|on the road|took it out|drive it|took it down the road',
    ),
    ...table('road', 'highway', 'highway|interstate|freeway|at speed'),
  ]),
);
const runners =
  /^(?:airs?|acs?|conditioners?|microwave|furnace|burners?|heater|pump|appliances?|compressor|everything|toaster)$/;
const running = /^(?:on|running|going|lit|cranked|pulling|as)$/;

/** "Sixty flat", "at fifty-five miles an hour", "between fifty-eight and sixty-three": the speed it was read at. */
function speedsIn(words: readonly Word[], numbers: readonly NumberSpan[]): Condition[] {
  const out: Condition[] = [];
  numbers.forEach((n, k) => {
    const v = n.readings[0]?.value ?? 0;
    const before = words[n.from - 1]?.norm ?? '';
    const next = words[n.to]?.norm ?? '';
    if (v < 15 || v > 85) return;
    const lead = words[n.from - 2]?.norm ?? '';
    const second = numbers[k + 1];
    if (before === 'between' && second && second.from - n.to <= 1) {
      const to = second.readings[0]?.value ?? 0;
      if (to > v && to <= 85) out.push({ kind: 'road', text: `${v} to ${to} mph`, at: n.from });
    } else if (
      (before === 'at' || before === 'around' || before === 'about' || before === 'doing') &&
      isSpeed(n)
    )
      out.push(...at(n.from, v));
    else if (next === 'flat' && lead !== 'to') out.push(...at(n.from, v));
  });
  return out;
}
const isSpeed = (n: NumberSpan): boolean => n.unit?.units.includes('[mi_i]/h') ?? false;
const at = (from: number, v: number): Condition[] =>
  (['engine', 'road'] as const).map((kind) => ({ kind, text: `${v} mph`, at: from }));

/** The conditions named in a clause, in the order of their words. */
export function conditionsIn(
  words: readonly Word[],
  clause: Pick<Clause, 'from' | 'to'> & { readonly numbers?: readonly NumberSpan[] },
): Condition[] {
  const out: Condition[] = [];
  for (let i = clause.from; i < clause.to; i++) {
    const hit = phrases.at(words, i);
    const n = words[i]?.norm ?? '';
    if (hit) {
      const before = words[i - 1]?.norm ?? '';
      for (const [kind, text] of hit.values.flat()) {
        if (kind === 'load' && hit.length === 1 && n === 'load' && /^(?:no|without)$/.test(before)) continue;
        if (n === 'cold' && /^(?:ice|not|blow|blows|blowing|the)$/.test(before)) continue;
        if (n === 'hot' && /^(?:blow|blows|blowing|too|nice|make|and|good)$/.test(before)) continue;
        const idle = kind === 'engine' && text === 'at idle' && /^(?:cold|hot|fast|high|warm)$/.test(before);
        out.push({ kind, text: idle ? `${before} idle` : text, at: i });
      }
      i += hit.length - 1;
      continue;
    }
    // "with the front air running", "put the air and the microwave on it"
    if (runners.test(n))
      for (let k = i + 1; k < Math.min(clause.to, i + 5); k++)
        if (running.test(words[k]?.norm ?? '') && withBefore(words, i)) {
          out.push({ kind: 'load', text: 'loaded', at: k });
          break;
        }
  }
  return clause.numbers ? [...out, ...speedsIn(words, clause.numbers)].sort((a, b) => a.at - b.at) : out;
}

function withBefore(words: readonly Word[], i: number): boolean {
  for (let k = i - 1; k >= Math.max(0, i - 8); k--)
    if (/^(?:with|put|kicked|threw|turned|running|ran|once)$/.test(words[k]?.norm ?? '')) return true;
  return false;
}
