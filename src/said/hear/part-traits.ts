// Why: a predicate and a part must suit each other: a tire has no lamp and a battery no hem. What each part is made of and does.
// From the catalogue's parts; trade sense (common practice, no source).

/** Trait -> the parts that have it. */
const table: Readonly<Record<string, string>> = {
  // holds or carries a liquid, a gas or air
  fluid:
    'bed_mattress driver_seat engine fresh_tank gray_tank black_tank water_filter plumbing lp_system brake_fluid radiator_cac engine_oil coolant belts_hoses def_system turbo_exhaust water_bay city_water fresh_fill dump_valves macerator tank_flush fuel_fill water_heater_out hydronic_unit tire spare_tire valve_stems wheel_bearings brake_drum_rotor brake_chambers outside_shower outside_kitchen house_battery chassis_battery generator lp_tank lp_regulator lp_detector_valve air_tanks levelling_jacks hydraulic_unit fuel_tank suspension_air shocks steering_gear transmission differential exhaust_pipe fuel_lines waste_tanks_under front_engine rear_engine_door air_gauges dash_ac countertops cooktop dishwasher refrigerator ice_maker water_pump toilet shower_tub bath_sink washer_dryer under_bed water_heater_run furnace_run furnace_out fresh_system_test tank_fill_test generator_load_run fuel_injectors evap_system ac_roof ac_run washer_vac_bay oven parking_brake hitch_receiver slide tongue_jack pin_box',
  // lets weather in
  shell:
    'tow_plug windshield windows_side emergency_exit entry_door compartment_doors slide slide_seals slide_inside sealant_side front_cap rear_cap cab_over sidewall_structure roof_membrane roof_sealant roof_seams ac_roof vents_roof skylight plumbing_vents fridge_vent_roof bay_storage wall_stains ceiling rear_wall_inside marker_lights tail_lights bedroom_egress bath_fan water_ponding screen_door slide_floor_out headlamps antenna_sat refrigerator_vent_out roof_walk outside_tv interior under_belly mirrors awning_light camera_rear cargo_tray',
  // turns, beats or burns
  machine:
    'engine generator generator_load_run turbo_exhaust furnace_run furnace_out hydronic_unit water_pump ac_roof ac_run dash_ac front_engine rear_engine_door water_heater_run water_heater_out refrigerator macerator alternator starter transmission differential driveline_u wheel_bearings belts_hoses air_tanks hydraulic_unit vents_roof bath_fan washer_dryer dishwasher ice_maker microwave steering_gear suspension_air fuel_injectors levelling_jacks road_test_drive radiator_cac inverter_charger washer_vac_bay fireplace cooktop oven',
  // runs on current
  electric:
    'shore_power shore_cord electric_panel transfer_switch inverter_charger battery_cables battery_disconnect house_battery chassis_battery outlets_gfci lights_led marker_lights headlamps tail_lights awning_light brake_trailer tow_plug hitch_wiring_run thermostats monitor_panel tank_sensors smoke_alarm co_alarm lp_alarm tv_living outside_tv radio_nav camera_rear tpms solar_array smart_controls battery_monitor brake_controller alternator starter dash_gauges cruise_control level_controls microwave induction fireplace floor_heat horn engine_ecm airbag_srs refrigerator ice_maker washer_dryer dishwasher water_pump ac_roof ac_run furnace_run water_heater_run generator generator_load_run patio_awning slide entry_step levelling_jacks vents_roof bath_fan macerator driver_seat passenger_seat dinette_sofa mirrors wipers_washers bed_mattress shades_cab shades_house antenna_sat inverter_load_run air_gauges hour_meters odometer hydronic_unit def_system water_heater_out tongue_jack oven cooktop door_awning window_awnings dash_ac toilet ignition_steering outside_kitchen hydraulic_unit washer_vac_bay water_bay extinguisher',
  // moves, opens, turns or latches
  moving:
    'entry_door screen_door entry_step patio_awning window_awnings door_awning windows_side emergency_exit compartment_doors slide slide_inside slide_seals ladder_rear levelling_jacks dump_valves generator_slide pin_box tongue_jack hitch_receiver vents_roof skylight antenna_sat driver_seat passenger_seat seat_belts cabinets dinette_sofa bed_mattress wardrobe interior_door shades_cab shades_house mirrors wipers_washers parking_brake brake_drum_rotor brake_chambers brake_trailer transmission steering_gear ignition_steering shocks suspension_leaf suspension_air driveline_u engine cargo_tray toilet bay_storage bedroom_egress battery_disconnect cooktop oven refrigerator microwave shower_tub bath_sink countertops water_bay spare_tire fuel_fill fresh_fill wheel_bearings grab_handle rear_engine_door outside_shower washer_vac_bay level_controls radio_nav road_test_drive keys_set safety_chain turbo_exhaust washer_dryer shore_cord tow_bar horn cruise_control lp_tank lp_detector_valve city_water outlets_gfci bath_fan starter alternator differential water_pump',
  // rolls along the road
  road: 'road_test_drive alignment steering_gear tire wheels_lugs wheel_bearings brake_drum_rotor brake_trailer suspension_leaf suspension_air shocks driveline_u transmission differential engine coach engine_mounts parking_brake interior hitch_receiver tow_bar pin_box tongue_jack dash_gauges',
  // metal that rusts or turns green
  metal:
    'frame_rails hitch_receiver pin_box tongue_jack safety_chain tow_bar tow_plug suspension_leaf suspension_air shocks steering_gear driveline_u transmission differential exhaust_pipe turbo_exhaust fuel_tank fuel_lines lp_tank lp_regulator lp_system wheels_lugs wheel_bearings brake_drum_rotor brake_chambers brake_trailer brake_fluid levelling_jacks hydraulic_unit entry_step ladder_rear roof_rack grab_handle air_tanks engine generator generator_slide engine_mounts radiator_cac front_engine rear_engine_door battery_cables house_battery chassis_battery battery_disconnect electric_panel shore_cord shore_power transfer_switch inverter_charger patio_awning window_awnings door_awning windows_side compartment_doors entry_door screen_door slide slide_floor_out roof_seams ac_roof antenna_sat bay_storage bay_moisture water_heater_out water_heater_run furnace_out furnace_run refrigerator refrigerator_vent_out hydronic_unit cooktop oven under_belly coach body_paint rear_cap front_cap marker_lights tail_lights headlamps outlets_gfci spare_tire valve_stems cargo_tray alternator starter belts_hoses dump_valves water_bay city_water horn mirrors roof_walk solar_array fireplace under_bed toilet bath_sink countertops hitch_wiring_run mud_flaps sidewall_structure radiator_cac engine_oil coolant fuel_fill fridge_vent_roof vents_roof prior_damage roof_membrane skylight',
  // skin, shell or furniture that dents, cracks or is scratched
  panel:
    'coach front_cap rear_cap body_paint sidewall_structure compartment_doors entry_door screen_door cab_over roof_membrane ac_roof skylight vents_roof plumbing_vents fridge_vent_roof mirrors headlamps tail_lights marker_lights slide slide_inside bay_storage cabinets countertops dinette_sofa shower_tub toilet bath_sink wardrobe interior interior_door dash_cracks floor_main ceiling wall_stains rear_wall_inside refrigerator microwave oven cooktop fireplace protective_film ladder_rear hitch_receiver fuel_tank generator mud_flaps under_belly wheels_lugs patio_awning water_heater_out furnace_out refrigerator_vent_out tv_living outside_tv prior_damage bath_fan induction dishwasher washer_dryer rear_engine_door exhaust_pipe entry_step lp_tank windows_side grab_handle cargo_tray solar_array radiator_cac frame_rails levelling_jacks suspension_leaf turbo_exhaust lights_led monitor_panel outlets_gfci waste_tanks_under black_tank gray_tank fresh_tank water_bay bay_moisture pin_box tongue_jack spare_tire slide_floor_out roof_walk outside_kitchen outside_shower antenna_sat tow_plug house_battery battery_cables',
  glass:
    'windshield windows_side emergency_exit skylight mirrors headlamps tail_lights marker_lights bedroom_egress shower_tub tv_living outside_tv solar_array oven microwave cooktop induction fireplace entry_door awning_light camera_rear dash_gauges lights_led air_filter',
  rubber:
    'tire spare_tire slide_seals valve_stems belts_hoses wipers_washers suspension_air lp_regulator mud_flaps entry_door windows_side compartment_doors roof_membrane window_awnings sealant_side roof_sealant roof_seams brake_chambers shocks driveline_u engine_mounts suspension_leaf steering_gear fuel_lines lp_system shore_cord protective_film refrigerator toilet slide turbo_exhaust windshield skylight dump_valves radiator_cac brake_drum_rotor front_cap plumbing water_bay hydraulic_unit air_tanks',
  cloth:
    'patio_awning window_awnings door_awning dinette_sofa driver_seat passenger_seat bed_mattress shades_cab shades_house seat_belts screen_door under_belly floor_main slide_seals ceiling slide_floor_out wall_stains interior dash_cracks cabinets roof_membrane protective_film fridge_vent_roof vents_roof mud_flaps bath_fan interior_door headlamps',
  // surfaces that stain, get wet, rot or go soft
  surface:
    'wall_stains ceiling floor_main rear_wall_inside cab_over under_bed wardrobe cabinets bay_storage bay_moisture interior roof_walk roof_membrane sidewall_structure slide_floor_out slide_inside slide bed_mattress dinette_sofa driver_seat passenger_seat shower_tub toilet bath_sink countertops shades_cab shades_house under_belly patio_awning window_awnings door_awning windows_side skylight vents_roof front_cap rear_cap entry_door entry_step body_paint sealant_side roof_sealant roof_seams interior_door dash_cracks prior_damage coach water_ponding refrigerator ac_roof ducts_air furnace_out water_heater_out refrigerator_vent_out fuel_fill compartment_doors bedroom_egress emergency_exit electric_panel generator_slide washer_vac_bay water_bay washer_dryer lights_led marker_lights tail_lights headlamps shore_cord insulation cargo_tray outside_tv outside_kitchen outside_shower windshield bath_fan tow_plug engine oven storage_history',
  // worn by use
  wearing:
    'tire spare_tire brake_drum_rotor brake_trailer brake_chambers wheel_bearings suspension_leaf suspension_air shocks steering_gear driveline_u wipers_washers belts_hoses driver_seat passenger_seat dinette_sofa floor_main patio_awning window_awnings slide_seals bed_mattress hitch_receiver pin_box tongue_jack engine_mounts transmission dump_valves house_battery chassis_battery water_pump shore_cord entry_step turbo_exhaust slide roof_membrane body_paint differential engine generator seat_belts shades_cab shades_house cabinets alternator starter water_heater_out entry_door tow_bar hydraulic_unit levelling_jacks countertops interior ladder_rear coach protective_film safety_chain wheels_lugs sealant_side roof_sealant tow_plug lp_regulator valve_stems grab_handle refrigerator furnace_run air_filter fuel_injectors battery_cables screen_door door_awning',
  dated:
    'smoke_alarm co_alarm lp_alarm extinguisher tire spare_tire lp_tank lp_regulator house_battery chassis_battery coolant brake_fluid def_system water_filter air_filter valve_stems airbag_srs title_doc records_folder fuel_lines belts_hoses air_tanks engine_oil generator hydronic_unit sealant_side roof_sealant lp_system cert_label wheel_bearings transmission differential coach recall_status fuel_injectors washer_vac_bay water_heater_out suspension_air inverter_charger',
  levelled:
    'engine_oil coolant transmission differential brake_fluid steering_gear hydraulic_unit house_battery chassis_battery tire spare_tire fuel_tank lp_tank def_system wipers_washers hydronic_unit fresh_tank wheel_bearings generator engine lp_system air_gauges radiator_cac levelling_jacks suspension_air slide city_water water_pump shore_power refrigerator electric_panel air_tanks extinguisher battery_monitor dash_ac inverter_charger fresh_system_test dash_gauges cab_over ac_roof ac_run furnace_run brake_drum_rotor alternator solar_array monitor_panel compartment_doors generator_load_run lp_regulator',
  reading:
    'dash_gauges air_gauges monitor_panel tank_sensors thermostats tpms odometer hour_meters battery_monitor fuel_tank def_system fresh_tank gray_tank black_tank lp_tank refrigerator dash_ac radio_nav extinguisher smart_controls solar_array inverter_charger generator shore_power electric_panel engine_oil camera_rear scale_weight',
  smokes:
    'engine generator generator_load_run turbo_exhaust exhaust_pipe front_engine rear_engine_door furnace_run furnace_out hydronic_unit brake_drum_rotor wheel_bearings electric_panel inverter_charger pet_smoke_odor interior water_heater_run water_heater_out oven cooktop alternator storage_history bed_mattress wall_stains shades_house',
  smells:
    'interior bed_mattress wardrobe floor_main dinette_sofa refrigerator toilet black_tank gray_tank lp_system lp_tank lp_detector_valve lp_regulator bay_storage engine engine_oil coolant transmission brake_drum_rotor generator furnace_run ac_run dash_ac cab_over under_bed pet_smoke_odor house_battery electric_panel inverter_charger coach shower_tub bath_sink cabinets water_heater_run water_heater_out shades_house shades_cab cooktop oven fresh_tank differential wheel_bearings exhaust_pipe entry_door countertops plumbing rear_wall_inside washer_dryer dishwasher road_test_drive ducts_air bay_moisture driver_seat outlets_gfci microwave engine fuel_lines fuel_tank shore_cord alternator hydronic_unit storage_history belts_hoses transfer_switch turbo_exhaust plumbing_vents city_water dump_valves',
};

/** The systems of the house: what more they are made of. */
const house: Readonly<Record<string, string>> = {
  metal:
    'ducts_air water_filter plumbing city_water countertops bath_sink cooktop oven microwave dishwasher washer_dryer dump_valves water_heater_run fridge_vent_roof vents_roof',
  panel:
    'ducts_air water_filter plumbing city_water fresh_tank gray_tank black_tank waste_tanks_under dump_valves fresh_fill outside_shower water_bay water_pump thermostats vents_roof furnace_run water_heater_run ac_run ice_maker tank_flush macerator outside_kitchen',
  moving: 'dishwasher washer_dryer ice_maker water_filter city_water fireplace thermostats',
  machine: 'hydronic_unit outside_shower city_water oven',
  fluid: 'water_filter outside_kitchen hydronic_unit outside_shower vents_roof',
  smells:
    'water_heater_run furnace_out ac_roof dump_valves washer_dryer water_bay fresh_tank waste_tanks_under refrigerator_vent_out microwave oven',
};

const traits = new Map<string, Set<string>>();
for (const [trait, list] of [...Object.entries(table), ...Object.entries(house)])
  for (const part of list.split(' ')) traits.set(part, (traits.get(part) ?? new Set()).add(trait));

/** True when the part has one of the traits, or none of its traits are known. */
export function hasTrait(part: string, any: readonly string[]): boolean {
  const own = traits.get(part);
  return own === undefined || any.some((t) => own.has(t));
}
