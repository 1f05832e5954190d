// Why: only these readings may be meant by a bare number: people say them so often that the unit and the name are left out.
// Trade usage (common practice, no source).

const table: Readonly<Record<string, string>> = {
  fresh_tank: 'capacity',
  gray_tank: 'capacity',
  black_tank: 'capacity',
  fuel_tank: 'capacity',
  lp_tank: 'capacity gauge',
  tank_sensors: 'reading',
  tire: 'tread_mid pressure_cold',
  generator: 'rated_kw',
  odometer: 'reading',
  hour_meters: 'engine_hours generator_hours',
  engine: 'power displacement',
  house_battery: 'rest_voltage gravity',
  chassis_battery: 'rest_voltage gravity',
  inverter_charger: 'charge_volts watts',
  shore_power: 'volts',
  electric_panel: 'volts_leg1',
  refrigerator: 'box_F freezer_F',
  wall_stains: 'moisture',
  floor_main: 'moisture',
  ceiling: 'moisture',
  rear_wall_inside: 'moisture',
  cab_over: 'moisture',
  slide_floor_out: 'moisture',
  dash_ac: 'vent_F',
  furnace_run: 'btu outlet_F',
  ac_roof: 'btu',
  ac_run: 'supply_F',
  water_heater_out: 'capacity',
  water_heater_run: 'outlet_F',
  solar_array: 'watts',
  patio_awning: 'length',
  brake_drum_rotor: 'lining',
  hitch_receiver: 'rated_tow',
  coolant: 'freeze_point',
  water_pump: 'pressure',
  scale_weight: 'front rear total',
  city_water: 'pressure_start',
  dash_gauges: 'coolant_F oil_psi',
  coach: 'length',
  battery_monitor: 'charge_left',
  air_gauges: 'primary',
  brake_chambers: 'stroke',
  lp_system: 'drop_test',
  shore_cord: 'amps',
  cargo_label: 'occc',
  engine_ecm: 'stored',
};

const pairs = new Set(
  Object.entries(table).flatMap(([part, aspects]) => aspects.split(' ').map((a) => `${part}/${a}`)),
);

/** True when a bare number beside the part may be this reading. */
export const isImplied = (part: string, aspect: string): boolean => pairs.has(`${part}/${aspect}`);
