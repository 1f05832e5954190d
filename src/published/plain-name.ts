// Why: the catalogue names a part by all that belongs to it; a person says "brakes". These are the names that go into sentences and heads.
import { partOf } from '../catalogue/index.ts';

/** One, and several, where they are not the catalogue's name and that name with an s. */
const spoken: Readonly<Record<string, readonly [one: string, many?: string]>> = {
  brake_drum_rotor: ['Brakes', 'Brakes'],
  brake_chambers: ['Air brake chambers', 'Air brake chambers'],
  wheels_lugs: ['Wheel', 'Wheels'],
  valve_stems: ['Tire valve stem', 'Tire valve stems'],
  wheel_bearings: ['Wheel bearings', 'Wheel bearings'],
  outlets_gfci: ['Protected outlets', 'Protected outlets'],
  levelling_jacks: ['Levelling jacks', 'Levelling jacks'],
  wipers_washers: ['Wipers and washers', 'Wipers and washers'],
  wall_stains: ['Inside walls', 'Inside walls'],
  rear_wall_inside: ['Rear wall, inside', 'Rear walls, inside'],
  roof_sealant: ['Roof sealant', 'Roof sealant'],
  roof_seams: ['Roof edge seams', 'Roof edge seams'],
  ac_roof: ['Roof air conditioner', 'Roof air conditioners'],
  ac_run: ['Air conditioner', 'Air conditioners'],
  furnace_run: ['Furnace', 'Furnaces'],
  water_heater_run: ['Water heater', 'Water heaters'],
  water_heater_out: ['Water heater, outside', 'Water heaters, outside'],
  furnace_out: ['Furnace outlet', 'Furnace outlets'],
  refrigerator_vent_out: ['Behind the refrigerator'],
  generator_load_run: ['Generator under load', 'Generators under load'],
  inverter_load_run: ['Inverter under load'],
  compartment_doors: ['Bay doors', 'Bay doors'],
  bay_storage: ['Storage bay', 'Storage bays'],
  bay_moisture: ['Bay walls and floors'],
  battery_cables: ['Battery cables', 'Battery cables'],
  house_battery: ['House batteries', 'House batteries'],
  chassis_battery: ['Chassis batteries', 'Chassis batteries'],
  shore_cord: ['Shore power cord', 'Shore power cords'],
  transfer_switch: ['Transfer switch', 'Transfer switches'],
  inverter_charger: ['Inverter or charger', 'Inverters or chargers'],
  solar_array: ['Solar panels', 'Solar panels'],
  lp_tank: ['LP gas tank', 'LP gas tanks'],
  lp_regulator: ['LP gas regulator', 'LP gas regulators'],
  lp_detector_valve: ['LP gas shut-off', 'LP gas shut-offs'],
  city_water: ['City water inlet', 'City water inlets'],
  dump_valves: ['Dump valves', 'Dump valves'],
  frame_rails: ['Frame', 'Frame'],
  suspension_air: ['Air springs', 'Air springs'],
  suspension_leaf: ['Leaf springs', 'Leaf springs'],
  shocks: ['Shock absorbers', 'Shock absorbers'],
  steering_gear: ['Steering', 'Steering'],
  driveline_u: ['Driveline', 'Driveline'],
  exhaust_pipe: ['Exhaust pipe', 'Exhaust pipes'],
  fuel_lines: ['Fuel lines', 'Fuel lines'],
  under_belly: ['Underbelly', 'Underbelly'],
  belts_hoses: ['Belts and hoses', 'Belts and hoses'],
  air_tanks: ['Air tanks', 'Air tanks'],
  hydraulic_unit: ['Hydraulic pump', 'Hydraulic pumps'],
  front_engine: ['Front engine'],
  evap_system: ['Fuel vapor system'],
  marker_lights: ['Clearance lamps', 'Clearance lamps'],
  tail_lights: ['Rear lamps', 'Rear lamps'],
  headlamps: ['Headlamps', 'Headlamps'],
  mirrors: ['Outside mirrors', 'Outside mirrors'],
  body_paint: ['Paint and side wall', 'Paint and side walls'],
  sidewall_structure: ['Side wall, bond', 'Side walls, bond'],
  window_awnings: ['Window or slide topper', 'Window and slide toppers'],
  windows_side: ['Side windows', 'Side windows'],
  vents_roof: ['Roof vent', 'Roof vents'],
  lights_led: ['Interior lights', 'Interior lights'],
  dash_gauges: ['Dash gauges', 'Dash gauges'],
  dash_ac: ['Dash air conditioning', 'Dash air conditioning'],
  seat_belts: ['Seat belts', 'Seat belts'],
  cruise_control: ['Cruise control and engine brake', 'Cruise control and engine brake'],
  keys_set: ['Keys', 'Keys'],
  title_doc: ['Title', 'Titles'],
  records_folder: ['Service records', 'Service records'],
  floor_main: ['Floor', 'Floors'],
  dinette_sofa: ['Dinette and sofa', 'Dinette and sofa'],
  cooktop: ['Cooktop', 'Cooktops'],
  microwave: ['Microwave', 'Microwaves'],
  tv_living: ['Televisions', 'Televisions'],
  shades_house: ['Shades and blinds', 'Shades and blinds'],
  ducts_air: ['Ceiling ducts', 'Ceiling ducts'],
  pet_smoke_odor: ['Odor', 'Odors'],
  bed_mattress: ['Bed and mattress', 'Beds and mattresses'],
  electric_panel: ['Breaker panel', 'Breaker panels'],
  lp_system: ['LP gas system', 'LP gas systems'],
  engine_ecm: ['Engine codes', 'Engine codes'],
  rear_engine_door: ['Rear engine compartment'],
  scale_weight: ['Weight on the scale', 'Weights on the scale'],
};

/** Names that end in a plural already, or cannot take one. */
const isMany = (name: string): boolean => /(s|lamps|water|oil|fluid|storage|history)$/.test(name);

const bare = (id: string): string => id.replaceAll(/[_.-]/g, ' ');

/** The part's name as a person says it; an id that the catalogue does not have is shown as words. */
export const partName = (part: string): string => spoken[part]?.[0] ?? partOf(part)?.name ?? bare(part);

/** The name of several: "Tires". */
export function partNames(part: string): string {
  const many = spoken[part]?.[1];
  if (many !== undefined) return many;
  const name = partName(part);
  return isMany(name) ? name : `${name}s`;
}
