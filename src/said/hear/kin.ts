// Why: some parts are in the catalogue twice, once as a thing and once as a test of it; a reading may be of either.

const groups: readonly (readonly string[])[] = [
  ['generator', 'generator_load_run', 'hour_meters'],
  ['ac_roof', 'ac_run'],
  ['water_heater_out', 'water_heater_run'],
  ['furnace_run', 'furnace_out'],
  ['inverter_charger', 'inverter_load_run'],
  ['shore_power', 'electric_panel', 'shore_cord', 'outlets_gfci'],
  ['road_test_drive', 'dash_gauges'],
  ['battery_cables', 'house_battery', 'chassis_battery'],
  ['lp_tank', 'lp_system', 'lp_regulator', 'lp_alarm'],
  ['engine', 'dash_gauges', 'engine_oil'],
  ['coach', 'cert_label', 'odometer', 'cargo_label'],
  ['water_pump', 'city_water', 'fresh_system_test'],
  ['tongue_jack', 'hitch_receiver'],
];

const kin = new Map<string, string[]>();
for (const group of groups)
  for (const p of group) kin.set(p, [...(kin.get(p) ?? []), ...group.filter((x) => x !== p)]);

/** The parts whose readings may be meant where this one is named. */
export const kinOf = (part: string): readonly string[] => kin.get(part) ?? [];
