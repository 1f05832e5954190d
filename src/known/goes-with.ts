// Why: a unit without slide-outs has no slide seals either; nobody should be asked to look at them.
// Trade usage (common practice, no source).

/** Part -> the part that it comes and goes with. */
export const goesWith: Readonly<Record<string, string>> = {
  slide_seals: 'slide',
  slide_floor_out: 'slide',
  slide_inside: 'slide',
  generator_slide: 'generator',
  generator_load_run: 'generator',
  inverter_load_run: 'inverter_charger',
  lp_regulator: 'lp_tank',
  lp_detector_valve: 'lp_tank',
  lp_system: 'lp_tank',
  level_controls: 'levelling_jacks',
  ac_run: 'ac_roof',
  refrigerator_vent_out: 'refrigerator',
  fridge_vent_roof: 'refrigerator',
  water_heater_run: 'water_heater_out',
  furnace_run: 'furnace_out',
  hitch_wiring_run: 'hitch_receiver',
};
