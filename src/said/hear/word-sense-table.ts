// Why: a blade is a wiper's or a plug's, a bag holds up the coach or saves the driver: what was talked about last decides.
import { wordTable } from './word-table.ts';

/**
 * One meaning of a word: where one of `near` was talked about, `part` is meant; `self` means that very part. With
 * `beside` it is also meant where one of those words stands close by, whatever was talked about.
 */
interface Sense {
  readonly near: RegExp;
  readonly part: string;
  readonly beside?: RegExp;
  /** Only where the part was talked about last. */
  readonly latest?: true;
}

/** The meanings of a word in order of likelihood, and the part meant where none of them was talked about (or none). */
interface Senses {
  readonly of: readonly Sense[];
  readonly otherwise?: string;
}

const self = 'self';
const indoors =
  /^(?:inside|bedroom|bathroom|bath|closet|wardrobe|cabinet|cabinets|panelling|paneling|wallpaper|hallway|dinette|sofa|shower)$/;
const outdoors =
  /^(?:flat|straight|delam|delaminated|delaminating|delamination|bubble|bubbles|bubbled|bubbling|hollow|wave|waves|wavy|ripple|ripples|rippled|outside|exterior|fiberglass|fibreglass|laminate|laminated|tapped|tap|thump|thumped|knock|knocked|rap|rapped|bowed|blister|blisters)$/;
const skin =
  /^(?:body_paint|sidewall_structure|compartment_doors|windows_side|entry_door|sealant_side|front_cap|rear_cap|patio_awning|window_awnings|marker_lights)$/;
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
  [
    'book books booklet booklets literature pamphlets',
    [{ near: /^(?:coach|title_doc|keys_set|records_folder|manuals_bag|odometer)$/, part: 'manuals_bag' }],
  ],
  [
    'airbag airbags',
    [
      { near: ride, part: 'suspension_air' },
      {
        near: /^(?:airbag_srs|seat_belts|ignition_steering|dash_|driver_seat|passenger_seat|horn)/,
        part: 'airbag_srs',
      },
    ],
    'suspension_air',
  ],
  [
    'blower',
    [
      {
        near: /^(?:dash_ac|dash_gauges|radio_nav|ignition_steering|driver_seat|wipers_washers|windshield)$/,
        part: 'dash_ac',
      },
      { near: /^(?:furnace|ac_r|fireplace|hydronic|ducts)/, part: self },
    ],
    'furnace_run',
  ],
  [
    'spring springs',
    [
      {
        near: /^(?:dinette_sofa|bed_mattress|driver_seat|passenger_seat|entry_door|screen_door|patio_awning|tongue_jack)$/,
        part: self,
      },
    ],
    'suspension_leaf',
  ],
  [
    'washer',
    [{ near: /^(?:windshield|wipers_washers|headlamps|horn|dash_gauges|mirrors)$/, part: 'wipers_washers' }],
    'washer_dryer',
  ],
  [
    'lamp lamps',
    [
      {
        near: /^(?:headlamps|marker_lights|tail_lights|dash_gauges|awning_light|airbag_srs|cab_over|tow_plug|hitch_wiring_run|brake_trailer)$/,
        part: self,
      },
    ],
    'lights_led',
  ],
  ['pilot', [{ near: /^(?:furnace|water_heater|oven|cooktop|refrigerator|fireplace|hydronic)/, part: self }]],
  [
    'foam stuffing padding',
    [{ near: /^(?:dinette_sofa|bed_mattress|driver_seat|passenger_seat)$/, part: self }],
  ],
  ['head', [{ near: /^(?:toilet|bath_sink|bath_fan)$/, part: 'toilet' }]],
  [
    'seal seals gasket gaskets',
    [
      {
        near: /^(?:toilet|refrigerator|oven|microwave|shower_tub|skylight|dump_valves|dishwasher|washer_dryer|ice_maker|water_heater_out|compartment_doors)$/,
        part: self,
      },
      { near: /^slide/, part: 'slide_seals' },
      { near: /^(?:windows_side|entry_door|windshield|patio_awning|window_awnings)/, part: self },
    ],
  ],
  ['pedal pedals', [{ near: /^toilet$/, part: self }], 'brake_drum_rotor'],
  ['room', [{ near: /^slide/, part: 'slide' }]],
  [
    'code codes',
    [
      { near: /^(?:tire|spare_tire)$/, part: self },
      { near: /^(?:engine|engine_ecm|dash_gauges|transmission|generator|def_system)$/, part: 'engine_ecm' },
    ],
    'engine_ecm',
  ],
  [
    'motor motors',
    [
      { near: /^(?:slide|patio_awning|window_awnings|entry_step|levelling_jacks|tongue_jack)$/, part: self },
      {
        near: /^(?:engine|coolant|engine_oil|transmission|front_engine|odometer|belts_hoses|coach)$/,
        part: 'engine',
      },
    ],
    'engine',
  ],
  [
    'stroke strokes',
    [
      {
        near: /^(?:brake_drum_rotor|brake_chambers|air_gauges|air_tanks|parking_brake)$/,
        part: 'brake_chambers',
      },
    ],
  ],
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
  [
    'plug',
    [
      { near: /^(?:outlets_gfci)/, part: 'outlets_gfci' },
      { near: /^shore_/, part: 'shore_cord' },
    ],
    'tow_plug',
  ],
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
  [
    'bearing bearings',
    [
      {
        near: /^(?:driveline_u|alternator|belts_hoses|generator|water_pump|vents_roof|bath_fan|washer_dryer|ac_\w+|furnace_\w+|antenna_sat)$/,
        part: self,
      },
    ],
    'wheel_bearings',
  ],
  [
    'reservoir reservoirs',
    [
      { near: /^(?:steering_gear|coolant|hydraulic_unit|brake_fluid|wipers_washers|air_tanks)$/, part: self },
      { near: /^brake_(?:drum_rotor|chambers)$/, part: 'brake_fluid' },
      { near: /^(?:levelling_jacks|slide|pin_box)$/, part: 'hydraulic_unit' },
      { near: /^(?:radiator_cac|belts_hoses|engine)$/, part: 'coolant' },
    ],
  ],
  [
    'pipe pipes',
    [
      { near: /^(?:exhaust_pipe|turbo_exhaust)$/, part: self },
      {
        near: /^(?:plumbing|water_|fresh_|gray_|black_|dump_|city_|lp_|fuel_|bath_|countertops|toilet)/,
        part: 'plumbing',
      },
    ],
    'plumbing',
  ],
  ['lid', [{ near: /^(?:vents_roof|bath_fan|skylight|toilet|lp_tank|cooktop)/, part: self }]],
  // outside: the wall is that of the coach, its corners and trim are seams
  [
    'wall walls',
    [
      { near: /^interior$|^$/, part: 'wall_stains', beside: indoors },
      { near: skin, part: 'sidewall_structure', beside: outdoors },
    ],
    'wall_stains',
  ],
  [
    'fiberglass',
    [{ near: /^(?:front_cap|rear_cap|sidewall_structure|shower_tub|cab_over|ac_roof)$/, part: self }],
    'body_paint',
  ],
  ['receiver', [{ near: /^(?:antenna_sat|tv_living|outside_tv|radio_nav)$/, part: self }], 'hitch_receiver'],
  ['bra', [], 'protective_film'],
  ['fogs', [{ near: /^headlamps$/, part: self }]],
  [
    'boot boots',
    [
      {
        near: /^(?:antenna_sat|plumbing_vents|tow_plug|steering_gear|driveline_u|shocks|suspension_air)$/,
        part: self,
      },
    ],
  ],
  [
    'glass',
    [
      {
        near: /^(?:mirrors|entry_door|windows_side|headlamps|skylight|solar_array|emergency_exit|shower_tub|oven|cooktop|microwave)$/,
        part: self,
        latest: true,
      },
    ],
    'windshield',
  ],
  [
    'frame',
    [
      {
        near: /^(?:entry_door|screen_door|windows_side|emergency_exit|compartment_doors|mirrors|skylight|solar_array|bed_mattress|dinette_sofa|interior_door|vents_roof)$/,
        part: self,
        latest: true,
      },
    ],
    'frame_rails',
  ],
  [
    'motor motors',
    [
      {
        near: /awning|^(?:entry_step|slide|vents_roof|bath_fan|wipers_washers|mirrors|levelling_jacks|tongue_jack|pin_box|antenna_sat|generator_slide|shades_\w+|macerator|bed_mattress|tv_living|hydraulic_unit|shore_cord)$/,
        part: self,
        latest: true,
      },
    ],
    'engine',
  ],
  [
    'sidewall sidewalls',
    [
      {
        near: /^(?:tire|spare_tire|wheels_lugs|valve_stems|tpms)$/,
        part: 'tire',
        beside:
          /^(?:tire|tires|tread|checking|checked|cords?|ply|dot|psi|weather|rubber|duals?|inner|inners|outer|outers|steer|steers|tag|axle)$/,
      },
    ],
    'sidewall_structure',
  ],
  ['arm arms', [{ near: /awning|^(?:wipers_washers|mirrors|slide|antenna_sat|tow_bar)$/, part: self }]],
  [
    'corner corners',
    [
      { near: /^interior$|^$/, part: 'wall_stains', beside: indoors },
      { near: /^(?:cab_over|front_cap|rear_cap|compartment_doors|windows_side|windshield)$/, part: self },
      { near: /^(?:sealant_side|body_paint|sidewall_structure)$/, part: 'sealant_side' },
      { near: /^roof_/, part: 'roof_seams' },
    ],
    'wall_stains',
  ],
  [
    'trim molding moulding moldings mouldings',
    [
      { near: /^(?:roof_)/, part: 'roof_seams' },
      {
        near: /^(?:sealant_side|body_paint|sidewall_structure|compartment_doors|marker_lights)$/,
        part: 'sealant_side',
        beside: /^(?:caulk|caulked|caulking|sealant|silicone|butyl|putty|insert|exterior)$/,
      },
      { near: /^(?:slide|windows_side|windshield|entry_door|slide_inside|cabinets|headlamps)$/, part: self },
      {
        near: /^(?:dash_|driver_seat|passenger_seat|radio_nav|ignition_|cruise_|shades_cab|horn|steering)/,
        part: 'dash_cracks',
      },
    ],
  ],
  [
    'seal seals gasket gaskets weatherstrip weatherstripping weather-strip',
    [
      { near: /^slide/, part: 'slide_seals' },
      {
        near: /^(?:windows_side|entry_door|screen_door|compartment_doors|windshield|skylight|vents_roof|refrigerator|toilet|emergency_exit|bay_storage|rear_engine_door|headlamps|marker_lights|tail_lights|ac_roof|fuel_fill|lp_tank|oven|shower_tub)$/,
        part: self,
      },
      { near: /awning/, part: 'slide_seals' },
    ],
  ],
  [
    'screen',
    [
      {
        near: /^(?:camera_rear|radio_nav|monitor_panel|tv_living|outside_tv|dash_gauges|smart_controls|battery_monitor|tpms)$/,
        part: self,
      },
      {
        near: /^(?:entry_door|screen_door)$/,
        part: 'screen_door',
        beside: /^(?:tear|torn|tears|rip|ripped|mesh|bug|bugs|fly|flies|hole|holes|latch|latches|cat|dog)$/,
      },
      { near: /^windows_side$/, part: self },
    ],
  ],
  [
    'heater heaters',
    [{ near: /^(?:mirrors|driver_seat|passenger_seat|fresh_tank|gray_tank|black_tank)$/, part: self }],
    'furnace_run',
  ],
  [
    'crank cranks handle handles knob knobs latch latches hinge hinges lock locks catch hasp hook hooks',
    [
      {
        near: /awning|^(?:windows_side|vents_roof|antenna_sat|compartment_doors|entry_door|screen_door|emergency_exit|bay_storage|fuel_fill|safety_chain|hitch_receiver|tongue_jack|pin_box|ladder_rear|cabinets|interior_door|wardrobe|mirrors|toilet|countertops|bath_sink|shower_tub|refrigerator|oven|cooktop|rear_engine_door)$/,
        part: self,
      },
    ],
  ],
  [
    'cable cables',
    [
      {
        near: /^(?:slide|entry_door|compartment_doors|spare_tire|brake_trailer|safety_chain|bay_storage|tow_plug|antenna_sat|solar_array|parking_brake)$/,
        part: self,
      },
    ],
    'battery_cables',
  ],
  [
    'manual',
    [{ near: /awning|^(?:tongue_jack|levelling_jacks|entry_step|shades_)/, part: self }],
    'manuals_bag',
  ],
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
 * The part meant by a word of several meanings. `recent` holds the parts talked about, newest first, `around` the words near it. `null` where the
 * word has several meanings and none of them fits; `undefined` where it is no such word.
 */
export function senseOf(
  word: string,
  recent: readonly string[],
  around: readonly string[] = [],
): string | null | undefined {
  const senses = table[word];
  if (!senses) return undefined;
  for (const sense of senses.of)
    if (sense.beside && sense.part !== self && around.some((w) => sense.beside?.test(w))) return sense.part;
  for (const part of recent.slice(0, 6))
    for (const sense of senses.of)
      if (sense.near.test(part) && (!sense.latest || part === recent[0]))
        return sense.part === self ? part : sense.part;
  return senses.otherwise ?? null;
}
