// Why: only these readings may be meant by a bare number, and only where it lies where such readings lie: then unit and name are left out.
// Trade usage (common practice, no source).
import { wordTable } from './word-table.ts';

/** Where a bare spoken number may lie, in the unit of the aspect. */
type Ranges = readonly (readonly [low: number, high: number])[];
/** What is read off a part, the likeliest first. */
export type Typical = readonly (readonly [aspect: string, ranges: Ranges | undefined])[];

const volts12: Ranges = [
  [9.5, 15.2],
  [5.6, 7.6],
  [24, 29.5],
  [48, 57],
];
const mains: Ranges = [
  [96, 132],
  [200, 252],
];
const wet: Ranges = [[2, 60]];
const share: Ranges = [[0, 100]];
const typical: Readonly<Record<string, Typical>> = wordTable({
  fresh_tank: [
    ['capacity', [[8, 200]]],
    ['level', share],
  ],
  gray_tank: [
    ['capacity', [[8, 200]]],
    ['level', share],
  ],
  black_tank: [
    ['capacity', [[5, 200]]],
    ['level', share],
  ],
  fuel_tank: [
    ['capacity', [[14, 200]]],
    ['level', share],
  ],
  def_system: [['level', share]],
  lp_tank: [
    ['capacity', [[4, 60]]],
    ['gauge', share],
  ],
  tank_sensors: [['reading', [[0, 1]]]],
  tire: [
    ['tread_mid', undefined],
    ['pressure_cold', undefined],
  ],
  generator: [
    ['volts_loaded', mains],
    [
      'hertz_loaded',
      [
        [56, 64.5],
        [49, 51.5],
      ],
    ],
    ['rated_kw', [[2, 20]]],
    ['hours', [[133, 9999]]],
  ],
  generator_load_run: [
    ['volts', mains],
    ['hz', [[56, 64.5]]],
  ],
  odometer: [['reading', [[900, 450000]]]],
  hour_meters: [
    ['engine_hours', undefined],
    ['generator_hours', undefined],
  ],
  engine: [
    ['power', [[150, 650]]],
    ['displacement', [[1.9, 15]]],
  ],
  house_battery: [
    ['rest_voltage', volts12],
    ['gravity', [[1.1, 1.32]]],
  ],
  chassis_battery: [
    [
      'rest_voltage',
      [
        [9.5, 15.2],
        [24, 29.5],
      ],
    ],
    ['gravity', [[1.1, 1.32]]],
  ],
  inverter_charger: [
    [
      'charge_volts',
      [
        [12.6, 15.2],
        [25, 29.5],
      ],
    ],
    ['watts', [[300, 6000]]],
  ],
  alternator: [
    [
      'volts',
      [
        [12.6, 15.2],
        [25, 29.5],
      ],
    ],
  ],
  shore_power: [['volts', mains]],
  electric_panel: [['volts_leg1', mains]],
  shore_cord: [
    [
      'amps',
      [
        [15, 15],
        [20, 20],
        [30, 30],
        [50, 50],
      ],
    ],
  ],
  refrigerator: [
    ['box_F', [[28, 62]]],
    ['freezer_F', [[-22, 27]]],
  ],
  wall_stains: [['moisture', wet]],
  floor_main: [['moisture', wet]],
  ceiling: [['moisture', wet]],
  rear_wall_inside: [['moisture', wet]],
  cab_over: [['moisture', wet]],
  slide_floor_out: [['moisture', wet]],
  dash_ac: [['vent_F', [[32, 72]]]],
  furnace_run: [
    ['outlet_F', [[85, 190]]],
    ['btu', [[12000, 60000]]],
  ],
  ac_roof: [['btu', [[9000, 18000]]]],
  ac_run: [
    ['supply_F', [[36, 70]]],
    ['return_F', [[71, 100]]],
  ],
  water_heater_out: [['capacity', [[4, 20]]]],
  water_heater_run: [['outlet_F', [[90, 165]]]],
  solar_array: [['watts', [[40, 3000]]]],
  patio_awning: [['length', [[7, 26]]]],
  brake_drum_rotor: [['lining', [[0.06, 0.45]]]],
  hitch_receiver: [['rated_tow', [[2000, 30000]]]],
  coolant: [['freeze_point', [[-70, 25]]]],
  water_pump: [['pressure', [[25, 75]]]],
  scale_weight: [
    ['front', undefined],
    ['rear', undefined],
    ['total', undefined],
  ],
  city_water: [['pressure_start', [[20, 90]]]],
  coach: [['length', undefined]],
  battery_monitor: [['charge_left', share]],
  air_gauges: [['primary', [[60, 140]]]],
  brake_chambers: [['stroke', undefined]],
  lp_system: [['drop_test', [[5, 14]]]],
  lp_regulator: [['running', [[8, 14]]]],
  cargo_label: [['occc', undefined]],
  engine_ecm: [['stored', undefined]],
  transmission: [['temperature', [[120, 260]]]],
});

/** True when a bare number beside the part may be this reading, `value` in its unit. */
export function isTypical(part: string, aspect: string, value?: number): boolean {
  const row = typical[part]?.find(([a]) => a === aspect);
  if (!row) return false;
  return (
    value === undefined ||
    !row[1] ||
    row[1].some(([low, high]) => value >= low - 1e-9 && value <= high + 1e-9)
  );
}

/** The place of the reading in the order of likelihood; -1 where a bare number is never it. */
export const typicalRank = (part: string, aspect: string): number =>
  typical[part]?.findIndex(([a]) => a === aspect) ?? -1;
