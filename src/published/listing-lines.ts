// Why: which facts a listing states, under which words and in which order; a table, so that adding one is one line.
// Order and choice: trade usage (common practice, no source).

/** One thing a listing states: every place of that part's aspect, under one lead. */
export interface ListingLine {
  readonly section: 'identity' | 'chassis' | 'house';
  /** What stands over it and its neighbors when several are told in one sentence. */
  readonly head: string;
  readonly part: string;
  readonly aspect: string;
  readonly lead: string;
  /** Its absence is told as unknown: a buyer would drive far on the strength of it. */
  readonly mustTell?: true;
}

type Row = readonly [part: string, aspect: string, lead: string, mustTell?: 'must tell'];

const lines = (section: ListingLine['section'], head: string, ...rows: readonly Row[]): ListingLine[] =>
  rows.map(([part, aspect, lead, mustTell]) => ({
    section,
    head,
    part,
    aspect,
    lead,
    ...(mustTell === undefined ? {} : { mustTell: true as const }),
  }));

export const listingLines: readonly ListingLine[] = [
  ...lines(
    'identity',
    'Miles',
    ['odometer', 'reading', 'Odometer', 'must tell'],
    ['odometer', 'true_known', 'Odometer statement'],
  ),
  ...lines(
    'identity',
    'Size',
    ['coach', 'length', 'Length, bumper to bumper', 'must tell'],
    ['coach', 'height', 'Height with everything on the roof', 'must tell'],
    ['coach', 'width', 'Width'],
  ),
  ...lines(
    'identity',
    'Layout',
    ['coach', 'floor_plan', 'Floor plan'],
    ['coach', 'color', 'Color'],
    ['slide', 'count', 'Slide-outs'],
    ['coach', 'sleeps', 'Sleeps'],
    ['seat_belts', 'count_total', 'Seats with belts'],
    ['cargo_label', 'belted_seats', 'Seats with belts by the label'],
  ),
  ...lines(
    'identity',
    'Papers',
    ['vin_plate', 'vin', 'VIN', 'must tell'],
    ['title_doc', 'title_in_hand', 'Title in hand', 'must tell'],
    ['title_doc', 'brand_on_title', 'Brand on the title'],
    ['recall_status', 'open_chassis', 'Open recalls of the chassis', 'must tell'],
    ['recall_status', 'open_coach', 'Open recalls of the coach', 'must tell'],
    ['recall_status', 'checked_on', 'Recalls looked up'],
    ['records_folder', 'pages', 'Pages of service records'],
    ['records_folder', 'gaps', 'Gaps in the service records'],
  ),
  ...lines(
    'identity',
    'History',
    ['prior_damage', 'reported', 'Earlier damage reported'],
    ['storage_history', 'indoors', 'Kept indoors'],
  ),

  ...lines(
    'chassis',
    'Engine',
    ['engine', 'fuel', 'Fuel'],
    ['engine', 'displacement', 'Engine size'],
    ['engine', 'power', 'Engine power'],
    ['engine', 'torque', 'Engine torque'],
    ['hour_meters', 'engine_hours', 'Engine hours'],
    ['engine_ecm', 'active', 'Active engine codes'],
  ),
  ...lines(
    'chassis',
    'Wheelbase',
    ['coach', 'wheelbase', 'Wheelbase'],
    ['chassis_label', 'wheelbase', 'Wheelbase by the chassis label'],
  ),
  ...lines(
    'chassis',
    'Weight ratings',
    ['cert_label', 'gvwr', 'Gross vehicle weight rating', 'must tell'],
    ['cert_label', 'gawr_front', 'Front axle rating'],
    ['cert_label', 'gawr_rear', 'Rear axle rating'],
    ['chassis_label', 'gcwr', 'Gross combination weight rating'],
  ),
  ...lines(
    'chassis',
    'On the scale',
    ['scale_weight', 'total', 'Weight'],
    ['scale_weight', 'front', 'Front axle'],
    ['scale_weight', 'rear', 'Rear axle'],
  ),
  ...lines(
    'chassis',
    'Carrying and towing',
    ['coach', 'cargo_left', 'Room for people and their things'],
    ['coach', 'tow_limit', 'Tow limit, the lowest of those read'],
    ['hitch_receiver', 'rated_tow', 'Hitch receiver'],
  ),
  ...lines(
    'chassis',
    'Tires',
    ['tire', 'size', 'Tire size'],
    ['tire', 'tin', 'Tire date codes', 'must tell'],
    ['tire', 'tread_mid', 'Tread in the middle', 'must tell'],
    ['tire', 'tread_outer', 'Tread outside'],
    ['tire', 'tread_inner', 'Tread inside'],
    ['tire', 'pressure_cold', 'Tire pressure, cold'],
  ),
  ...lines(
    'chassis',
    'On the road',
    ['road_test_drive', 'miles', 'Miles driven on the road test'],
    ['road_test_drive', 'noise_dBA', 'Sound at the driver'],
    ['air_gauges', 'applied_loss', 'Air lost, brakes applied'],
  ),

  ...lines(
    'house',
    'Tanks',
    ['fresh_tank', 'capacity', 'Fresh water'],
    ['gray_tank', 'capacity', 'Gray water'],
    ['black_tank', 'capacity', 'Black water'],
    ['lp_tank', 'capacity', 'LP gas'],
    ['fuel_tank', 'capacity', 'Fuel tank'],
  ),
  ...lines(
    'house',
    'Generator',
    ['generator', 'rated_kw', 'Generator'],
    ['generator', 'fuel', 'Generator fuel'],
    ['generator', 'hours', 'Generator hours'],
    ['hour_meters', 'generator_hours', 'Generator hours'],
    ['generator', 'volts_loaded', 'Generator under load'],
    ['generator_load_run', 'volts', 'Generator volts in a loaded run'],
    ['generator_load_run', 'minutes', 'Generator loaded run'],
  ),
  ...lines(
    'house',
    'Batteries and power',
    ['house_battery', 'chemistry', 'House batteries'],
    ['house_battery', 'count', 'House batteries, count'],
    ['house_battery', 'date_code', 'House batteries dated'],
    ['house_battery', 'rest_voltage', 'House batteries at rest'],
    ['house_battery', 'load_voltage', 'House batteries under load'],
    ['inverter_charger', 'watts', 'Inverter'],
    ['solar_array', 'watts', 'Solar panels'],
    ['shore_cord', 'amps', 'Shore power inlet'],
  ),
  ...lines(
    'house',
    'Heat, cold and water',
    ['ac_run', 'drop_F', 'Air conditioner, drop at the vent'],
    ['furnace_run', 'rise_F', 'Furnace, rise'],
    ['refrigerator', 'type', 'Refrigerator'],
    ['refrigerator', 'box_F', 'Refrigerator, inside'],
    ['refrigerator', 'freezer_F', 'Freezer'],
    ['water_heater_run', 'gas_ok', 'Water heater on gas'],
    ['water_heater_run', 'electric_ok', 'Water heater on electric'],
    ['water_heater_run', 'outlet_F', 'Hot water at the tap'],
  ),
  ...lines('house', 'Awning', ['patio_awning', 'length', 'Patio awning, length']),
  ...lines(
    'house',
    'Alarms',
    ['smoke_alarm', 'date', 'Smoke alarm dated'],
    ['co_alarm', 'date', 'Carbon monoxide alarm dated'],
    ['lp_alarm', 'date', 'LP gas detector dated'],
  ),
  ...lines('house', 'Odor', ['pet_smoke_odor', 'smoke', 'Smoke odor'], ['pet_smoke_odor', 'pet', 'Pet odor']),
];
