// Why: nobody reads pounds of pressure off a sofa: a reading goes only to a part that can have its dimension.
import { partOf } from '../../catalogue/index.ts';
import { unitFact } from '../../units/unit.ts';
import { kinOf } from './kin.ts';

const list = (text: string): ReadonlySet<string> => new Set(text.split(' '));
const electric =
  'microwave lights_led refrigerator water_heater_out water_heater_run furnace_run furnace_out ac_roof ac_run slide slide_inside levelling_jacks level_controls patio_awning window_awnings door_awning entry_step water_pump bath_fan vents_roof tv_living fireplace induction dishwasher washer_dryer macerator brake_trailer brake_controller tow_plug hitch_wiring_run battery_disconnect battery_cables transfer_switch solar_array inverter_charger inverter_load_run alternator starter outlets_gfci shore_power shore_cord electric_panel house_battery chassis_battery battery_monitor generator generator_load_run dash_gauges engine tongue_jack hydraulic_unit floor_heat radio_nav monitor_panel horn headlamps tail_lights marker_lights outside_kitchen thermostats smart_controls camera_rear ice_maker oven wipers_washers generator_slide cargo_tray tank_sensors';
/** Parts beside those of the catalogue's own aspects that may have a reading of the dimension; without a row every part may. */
const more: Readonly<Record<string, ReadonlySet<string>>> = {
  voltage: list(electric),
  current: list(electric),
  charge: list('house_battery chassis_battery battery_monitor solar_array'),
  frequency: list(
    'generator generator_load_run shore_power electric_panel inverter_charger inverter_load_run transfer_switch',
  ),
  power: list(electric),
  energy: list(electric),
  pressure: list(
    'tire spare_tire engine engine_oil turbo_exhaust fuel_lines fuel_tank air_tanks air_gauges parking_brake brake_chambers suspension_air water_pump city_water plumbing fresh_system_test lp_system lp_regulator lp_tank lp_detector_valve hydraulic_unit levelling_jacks water_heater_out ac_run dash_ac transmission coolant radiator_cac outside_shower shower_tub toilet extinguisher driver_seat water_filter air_filter cert_label tank_flush brake_drum_rotor cooktop furnace_run tpms',
  ),
  volume: list(
    'fresh_tank gray_tank black_tank waste_tanks_under fuel_tank lp_tank water_heater_out water_heater_run def_system hydronic_unit engine_oil coolant transmission refrigerator under_belly tank_fill_test bay_storage hydraulic_unit engine toilet shower_tub lp_system',
  ),
  flow: list(
    'water_pump city_water countertops bath_sink shower_tub outside_shower plumbing toilet macerator',
  ),
  rotation: list('engine dash_gauges generator road_test_drive driveline_u'),
  speed: list(
    'road_test_drive dash_gauges engine transmission cruise_control turbo_exhaust driveline_u brake_drum_rotor brake_trailer alignment steering_gear tire coach wheel_bearings shocks parking_brake',
  ),
  sound: list('generator generator_load_run road_test_drive ac_run engine furnace_run'),
  mass: list(
    'coach cert_label cargo_label scale_weight hitch_receiver pin_box tongue_jack lp_tank tow_bar ladder_rear chassis_label tire levelling_jacks bay_storage cargo_tray roof_rack extinguisher',
  ),
  torque: list('engine wheels_lugs hitch_receiver'),
};

/** True when the part can have a reading of the dimension. */
export function canHave(part: string, dimension: string): boolean {
  const others = more[dimension];
  if (!others || others.has(part)) return true;
  return [part, ...kinOf(part)].some((p) =>
    partOf(p)?.aspects.some((a) => a.unit !== undefined && unitFact(a.unit).dimension === dimension),
  );
}
