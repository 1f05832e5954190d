// Why: a tire has no smell and a floor no frequency: what cannot be said of a part is said of another one that was talked about.

const never: readonly (readonly [aspect: RegExp, parts: RegExp])[] = [
  [
    /^(?:wet|stain|lit|delamination|cooling|fogged)$/,
    /^(?:tire|spare_tire|wheels_lugs|brake_|odometer|keys_|title|valve_stems)/,
  ],
  [/^(?:smell|soft)$/, /^(?:tire|spare_tire|wheels_lugs|brake_(?!drum)|odometer|keys_|title|valve_stems)/],
  [/^(?:smell|soft|delamination)$/, /^(?:headlamps|marker_lights|tail_lights|wipers|mirrors|horn)/],
  [/^(?:delamination)$/, /^(?:interior|coach)$/],
  [
    /^(?:delamination)$/,
    /^(?:dump_valves|water_|city_water|plumbing|fresh_|gray_|black_|waste_|furnace|ac_run|thermostats|vents_roof|outside_shower|ice_maker|tank_|macerator|lp_|fuel_|toilet|cooktop|oven|microwave|refrigerator|washer|dishwasher|ducts_air)/,
  ],
  [/^(?:heat)$/, /^(?:wipers|windows|mirrors|roof_|ladder|awning|bed_)/],
  [/^(?:smoke)$/, /^(?:tire|roof_|floor_|window|slide|steps|entry)/],
  [/^(?:safety)$/, /^(?:coach|records_folder|keys_)/],
];

/** True when a failure of this kind can be of the part. */
export const isPlausible = (part: string, aspect: string): boolean =>
  !never.some(([a, p]) => a.test(aspect) && p.test(part));

/** Parts by which somebody may be hurt: what is wrong with one is only heard where it was named close by. */
export const canHurt = (part: string): boolean =>
  /^(?:brake|steering|lp_|tire|spare_tire|air_gauges|parking_brake|service_brake|suspension|wheels_lugs|smoke_alarm|co_alarm|lp_alarm|hitch|tie_rod|ball_joint)/.test(
    part,
  );
