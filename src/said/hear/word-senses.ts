// Why: a blade is a wiper's or a plug's, a bag holds up the coach or saves the driver: what was talked about last decides.
import { wordTable } from './word-table.ts';

/** One meaning of a word: where one of `near` was talked about, `part` is meant; `self` means that very part. */
interface Sense {
  readonly near: RegExp;
  readonly part: string;
}

/** The meanings of a word in order of likelihood, and the part meant where none of them was talked about (or none). */
interface Senses {
  readonly of: readonly Sense[];
  readonly otherwise?: string;
}

const self = 'self';
const power = /^(?:shore_|electric_panel|transfer_switch|inverter_|outlets_)/;
const ride = /^(?:suspension_|shocks|tire|frame_rails|air_tanks|levelling_|wheel|brake_|steering_gear)/;
const house = /^(?:cabinets|countertops|wall_stains|wardrobe|bath_sink|toilet|shower_tub|interior)/;
const rows: readonly (readonly [words: string, senses: readonly Sense[], otherwise?: string])[] = [
  [
    'blade blades',
    [
      { near: /^(?:windshield|wipers_washers|mirrors)$/, part: 'wipers_washers' },
      { near: power, part: 'shore_cord' },
      { near: /^(?:tow_plug|vents_roof|bath_fan|dump_valves)$/, part: self },
    ],
  ],
  [
    'bag bags',
    [
      { near: ride, part: 'suspension_air' },
      { near: /^(?:airbag_srs|seat_belts|ignition_steering|dash_gauges)$/, part: 'airbag_srs' },
    ],
    'suspension_air',
  ],
  [
    'hood',
    [
      { near: /^(?:cooktop|oven|microwave|induction|countertops)$/, part: 'cooktop' },
      {
        near: /^(?:engine|front_engine|front_cap|radiator_cac|headlamps|belts_hoses|windshield)$/,
        part: 'front_cap',
      },
    ],
  ],
  ['head', [{ near: /^(?:toilet|bath_sink|bath_fan)$/, part: 'toilet' }]],
  ['room', [{ near: /^slide/, part: 'slide' }]],
  [
    'cloth canvas fabric',
    [
      { near: /awning/, part: self },
      { near: /_seat|dinette_sofa|shades_/, part: self },
    ],
  ],
  [
    'needle needles',
    [{ near: /extinguisher|dash_gauges|air_gauges|fuel_tank|def_system|lp_tank/, part: self }],
  ],
  ['boards', [{ near: /^(?:floor_main|entry_door|wall_stains|interior|slide)/, part: 'floor_main' }]],
  ['burner', [{ near: /^(?:refrigerator|water_heater|furnace|hydronic)/, part: self }], 'cooktop'],
  ['post', [{ near: /batter/, part: 'battery_cables' }]],
  [
    'lug lugs',
    [{ near: /^(?:shore_|electric_panel|transfer_|inverter_|battery|generator)/, part: self }],
    'wheels_lugs',
  ],
  [
    'inlet',
    [
      { near: /^(?:city_water|fresh_fill|water_bay|plumbing|tank_flush)/, part: 'city_water' },
      { near: power, part: 'shore_cord' },
    ],
  ],
  [
    'pins prongs contacts',
    [
      { near: power, part: self },
      { near: /^tow_plug$/, part: self },
    ],
  ],
  ['pin', [{ near: /^(?:extinguisher|tow_plug|hitch_receiver|tow_bar)$/, part: self }]],
  ['plates plate', [{ near: /batter/, part: self }]],
  ['collar', [{ near: /^lp_/, part: 'lp_tank' }]],
  [
    'solenoid relay',
    [
      { near: /^(?:battery|house_battery|chassis_battery|alternator|inverter_)/, part: 'battery_disconnect' },
      { near: /^(?:generator|starter|transfer_switch|hydraulic_unit|levelling_jacks|slide)/, part: self },
      { near: /^lp_/, part: 'lp_detector_valve' },
    ],
    'lp_detector_valve',
  ],
  ['shelf shelves', [{ near: house, part: 'cabinets' }], 'cabinets'],
  ['lid', [{ near: /^(?:vents_roof|bath_fan|skylight|toilet|lp_tank|cooktop)/, part: self }]],
];

const table: Readonly<Record<string, Senses>> = wordTable(
  Object.fromEntries(
    rows.flatMap(([words, of, otherwise]) =>
      words.split(' ').map((w) => [w, { of, ...(otherwise === undefined ? {} : { otherwise }) }]),
    ),
  ),
);

/** True for a word of several meanings. */
export const hasSenses = (word: string): boolean => table[word] !== undefined;

/** True for one that names some part in any talk. */
export const isAlwaysPart = (word: string): boolean => table[word]?.otherwise !== undefined;

/**
 * The part meant by a word of several meanings. `recent` holds the parts talked about, newest first. `null` where the
 * word has several meanings and none of them fits; `undefined` where it is no such word.
 */
export function senseOf(word: string, recent: readonly string[]): string | null | undefined {
  const senses = table[word];
  if (!senses) return undefined;
  for (const part of recent.slice(0, 6))
    for (const sense of senses.of) if (sense.near.test(part)) return sense.part === self ? part : sense.part;
  return senses.otherwise ?? null;
}
