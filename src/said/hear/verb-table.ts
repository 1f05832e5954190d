// Why: which verbs say that which parts do their work, and with which particles; "shifts fine" names the transmission by its verb.
// Trade usage (common practice, no source).
import { formsOf, isSame, type VerbForm } from './verb-forms.ts';

/** One way of using a verb as good news of a part. */
export interface VerbSense {
  /** Parts it can be said of; undefined: any. */
  readonly of?: RegExp;
  /** One of these must follow; undefined: it stands alone. */
  readonly needs?: ReadonlySet<string>;
  /** What it is said of where nothing is named that could be meant. */
  readonly implies?: string;
}
export interface VerbUse {
  readonly form: VerbForm;
  readonly verb: string;
  readonly senses: readonly VerbSense[];
}

const groups: Readonly<Record<string, string>> = {
  engine: 'engine|generator|generator_load_run|starter|front_engine',
  flame:
    'furnace_run|furnace_out|water_heater_\\w+|hydronic_unit|cooktop|oven|fireplace|refrigerator|outside_kitchen',
  lamp: 'headlamps|marker_lights|tail_lights|lights_led|awning_light|hitch_wiring_run|tow_plug',
  heat: 'furnace_\\w+|water_heater_\\w+|hydronic_unit|fireplace|floor_heat|microwave|oven|cooktop|induction|driver_seat|passenger_seat|mirrors|dash_ac|washer_dryer|ac_r\\w+|outside_kitchen',
  cool: 'ac_roof|ac_run|dash_ac|refrigerator|ice_maker',
  fan: 'vents_roof|bath_fan|furnace_\\w+|ac_roof|ac_run|dash_ac|fireplace|radiator_cac|ducts_air',
  move: 'slide|slide_inside|patio_awning|window_awnings|door_awning|entry_step|levelling_jacks|tongue_jack|pin_box|driver_seat|passenger_seat|dinette_sofa|bed_mattress|tv_living|outside_tv|outside_kitchen|shades_\\w+|cargo_tray|generator_slide|antenna_sat|vents_roof|mirrors|shore_cord|hydraulic_unit|suspension_air|ignition_steering',
  shut: 'entry_door|screen_door|compartment_doors|bay_storage|interior_door|rear_engine_door|windows_side|emergency_exit|bedroom_egress|cabinets|wardrobe|vents_roof|dump_valves|skylight|fuel_fill|fresh_fill|lp_detector_valve|battery_disconnect|keys_set|generator_slide|shower_tub|water_bay|city_water|refrigerator|oven|microwave|toilet|shades_\\w+|smart_controls|dishwasher|washer_dryer',
  lock: 'seat_belts|tow_bar|safety_chain|dinette_sofa|driver_seat|passenger_seat|pin_box|hitch_receiver|tongue_jack|cargo_tray|slide',
  water:
    'toilet|water_pump|countertops|bath_sink|shower_tub|outside_shower|outside_kitchen|tank_flush|dump_valves|macerator|plumbing|city_water|fresh_system_test|wipers_washers|washer_dryer|dishwasher|ice_maker|water_heater_\\w+|(?:fresh|gray|black)_tank|water_filter|hydraulic_unit|air_tanks',
  alarm: 'smoke_alarm|co_alarm|lp_alarm|air_gauges',
  horn: 'horn',
  show: 'tv_living|outside_tv|radio_nav|camera_rear|monitor_panel|battery_monitor|smart_controls|tpms|level_controls|antenna_sat|tank_sensors|thermostats|dash_gauges|brake_controller|inverter_charger',
  play: 'tv_living|outside_tv|radio_nav',
  power:
    'inverter_\\w+|transfer_switch|shore_power|solar_array|alternator|battery_monitor|house_battery|chassis_battery|electric_panel|outlets_gfci',
  device:
    'microwave|induction|washer_dryer|dishwasher|washer_vac_bay|wipers_washers|cruise_control|air_gauges|water_pump|macerator|bath_fan|thermostats',
  trip: 'outlets_gfci|electric_panel|brake_trailer',
  brake: 'brake_\\w+|parking_brake|cruise_control|turbo_exhaust',
  steer: 'steering_gear|alignment|road_test_drive|ignition_steering',
  gear: 'transmission|differential',
};
const part = (names: string): RegExp =>
  new RegExp(
    `^(?:${names
      .split(' ')
      .map((g) => groups[g] ?? g)
      .join('|')})$`,
  );

/** verbs | parts | particles | implied part; "-" for none. */
const rows: readonly string[] = [
  'work function operate perform | - | - | -',
  'run | engine fan cool heat water move device power play flame shut | - | -',
  'start crank | engine | - | engine',
  'start | flame cool device play show | - | -',
  'fire | engine flame | - | engine',
  'take | engine | right off | engine',
  'fire start | engine | right instantly immediately quick quickly first easy easily every instant up off | engine',
  'fire | device show play cool fan | up on | -',
  'light ignite | flame | - | -',
  'light | lamp show alarm trip fireplace cooktop oven | up | -',
  'light | engine | - | engine',
  'light | lamp show alarm trip | - | -',
  'catch | engine flame | - | engine',
  'catch latch lock unlock | shut lock | - | -',
  'idle purr | engine | - | engine',
  'turn | engine | over | engine',
  'turn | lamp cool fan heat flame device show play power water alarm | on off | -',
  'drop make spit dump dispense crank pump put | ice_maker | ice cubes | -',
  'run go do finish complete | washer_dryer dishwasher microwave ice_maker oven refrigerator | cycle cycles load loads wash rinse | -',
  'wash dry tumble agitate rinse spin fill drain pump | washer_dryer dishwasher | - | -',
  'spark click snap | cooktop oven outside_kitchen furnace_\\w+ water_heater_\\w+ | - | -',
  'come | microwave oven cooktop water_heater_\\w+ countertops bath_sink shower_tub outside_shower hydronic_unit | hot boiling steaming scalding bubbling warm | -',
  'run work | fan | directions ways speeds high low forward reverse both | -',
  'slide glide move | dump_valves | . nice nicely slick smooth smoothly easy easily good free freely fine | -',
  'spin rotate | fan microwave washer_dryer wheel_bearings driveline_u driver_seat passenger_seat antenna_sat mirrors dinette_sofa | - | -',
  'turn | fan wheel_bearings driveline_u driver_seat passenger_seat | . freely free smooth around easy | -',
  'swivel recline rock | driver_seat passenger_seat dinette_sofa | - | -',
  'kick lay lean fold tip rock lie ease | driver_seat passenger_seat dinette_sofa | back out flat down all | -',
  'go slide move scoot run travel adjust | driver_seat passenger_seat | forward forwards back up down both every | -',
  'crank wind | windows_side emergency_exit vents_roof patio_awning antenna_sat levelling_jacks | out in open up down shut closed | -',
  'slide glide roll | wardrobe interior_door cabinets windows_side shower_tub | . like fine good smooth smoothly easy freely open nice nicely ok okay right both | -',
  'match agree correspond | vin_plate title_doc cert_label keys_set odometer | - | -',
  'buckle click snap | seat_belts | - | -',
  'retract spool reel lock pull | seat_belts | . in back out fine good smooth up freely | -',
  'fold drop lower convert make turn open pull lift | dinette_sofa bed_mattress | out down into flat up away | -',
  'make | dinette_sofa | bed beds | -',
  'zip close draw snap slide pull | shades_cab shades_house | . across shut closed open good fine around up down | -',
  'tilt telescope | ignition_steering driver_seat passenger_seat antenna_sat bed_mattress | - | -',
  'kick cycle | engine flame cool fan device water power heat | on in off over up out | -',
  'kick pop trip reset test | trip | - | -',
  'cut | water flame cool fan power | in on off out | -',
  'cut change flip swap | transfer_switch inverter_\\w+ lp_regulator | over . | -',
  'flip change | lp_regulator transfer_switch | - | -',
  'clunk click switch | power | in over out across | -',
  'switch | flame lp_regulator show | over | -',
  'transfer | power | - | -',
  'carry handle feed supply | inverter_\\w+ generator generator_load_run solar_array house_battery transfer_switch | the it them both everything a your all | -',
  'kill cut drop isolate | battery_disconnect | the it them both everything all power | -',
  'have get got carry | power | power juice current voltage | -',
  'pop | move shut | out up open down in back shut | -',
  'come | lamp cool fan heat flame device show play power water engine alarm horn | on alive | -',
  'come | move | up out in down home back | -',
  'come | engine show | up | -',
  'go | move | out in up down home back both all | -',
  'go | move shut gear lamp flame horn alarm water brake | well fine smooth smoothly easy easily good okay ok through like | -',
  'go | lamp flame horn alarm engine device | . | -',
  'go | lamp cool fan heat flame device show play power water engine | on | -',
  'go | alarm | off | -',
  'shut | water flame cool fan engine heat | off down | -',
  'shut close open | shut move | - | -',
  'shut stop | water | off - . | -',
  'extend retract deploy fold tuck glide travel slide trundle crawl cycle unfold stow | move | - | -',
  'roll | move | out in up down back smooth smoothly both easy fine along | -',
  'move | move shut | in out up down freely smooth smoothly both easy fine good okay free | -',
  'swing | shut move | - | -',
  'drop lower lift raise rise level | move | - | -',
  'sit settle put set | levelling_jacks | down up itself | -',
  'crank | move tongue_jack vents_roof | up down in out open closed shut back both | -',
  'wind reel | shore_cord move | - | -',
  'power | move show play lamp device shut cool engine | up on down in out | -',
  'boot sync pair link | show | - | -',
  'wipe sweep | wipers_washers | - | -',
  'squirt spray | water | - | -',
  'adjust | move seat_belts show | - | -',
  'engage disengage | gear lock brake cruise_control engine move | - | -',
  'release | brake lock shut | - | -',
  'hold | brake gear cruise_control | - | -',
  'hold | - | pressure water air vacuum charge steady them it her up fine good temp temperature well | -',
  'grab bite | brake | - | brake_drum_rotor',
  'stop brake | brake_drum_rotor brake_trailer | straight even evenly well good right fine smooth smoothly true | brake_drum_rotor',
  'take | brake | hold even evenly right well up | -',
  'haul slow | brake_drum_rotor brake_trailer | down up straight | brake_drum_rotor',
  'shift downshift upshift | gear | - | transmission',
  'change | gear | gear gears up down smooth smoothly soft nice nicely good well fine right clean | transmission',
  'steer track | steer | - | steering_gear',
  'cool chill freeze | cool | - | -',
  'blow push throw put pump crank | furnace_\\w+ fireplace hydronic_unit ducts_air dash_ac | hot warm heat | -',
  'blow push throw | cool heat fan | - | -',
  'put pump crank | heat cool fan | out hot cold warm heat air | -',
  'have | power | current power electricity voltage | -',
  'come | heat | hot warm | -',
  'come | cool | cold cool fresh | -',
  'stay | toilet water | in inside | -',
  'make build give | water | pressure | -',
  'make give show put | lamp show power inverter_\\w+ | light picture image sound current power voltage | -',
  'make give | cooktop oven | flame flames fire | -',
  'make | cool heat flame | ice cubes heat cold hot warm good | -',
  'give get | cool heat flame | heat cold hot warm | -',
  'heat warm cook | microwave oven cooktop induction | my our coffee soup lunch food water | -',
  'heat warm | heat flame | - | -',
  'cook brew bake boil | heat | - | -',
  'hum | fan water cool engine device | along | -',
  'roar whir whirl | fan | - | -',
  'pump prime | water_pump macerator hydraulic_unit fresh_system_test suspension_air | - | -',
  'prime | water engine | - | -',
  'drain dump empty fill refill | water | - | -',
  'flush | toilet tank_flush | - | toilet',
  'charge | power | - | -',
  'invert | inverter_\\w+ | - | -',
  'burn | lamp flame | all both too also complete completely permanent always . fine good bright blue clean steady even evenly right | -',
  'line meet mate | shut move | up flush - . | -',
  'fit | shut move slide_seals | . good tight right flush square well nice snug | -',
  'glow shine flash blink | lamp fireplace | - | -',
  'play | play | - | -',
  'show display read register | show | fine good right clear clearly true correct correctly up | -',
  'answer respond | alarm horn show device shut move | - | -',
  'holler scream shriek screech cry yell sing shout sound alarm blare screams | alarm horn | - | -',
  'beep | alarm horn | on when at with loud fine for | -',
  'honk toot blast blare blow | horn | - | -',
  'spool | turbo_exhaust | - | turbo_exhaust',
  'set resume engage hold accelerate decelerate disengage cancel | cruise_control | - | -',
  'pull climb | engine turbo_exhaust | strong hard good well fine great right | engine',
  'rev | engine | up fine good clean smooth freely right out | engine',
  'draft breathe | air_filter turbo_exhaust engine | - | -',
  'regen regenerate | def_system | - | def_system',
  'crank jack | pin_box tongue_jack levelling_jacks | up down fine easy smooth smoothly | -',
  'pull | shut lock dump_valves gray_tank black_tank parking_brake air_tanks move seat_belts | easy free freely smooth smoothly out open strong | -',
  'pull | water power brake_trailer cool fan |  strong hard them it in | -',
  'suck draw | vents_roof bath_fan washer_vac_bay air_tanks | - | -',
  'seal | shut slide_seals slide toilet | - | -',
  'track walk | slide | - | -',
  'test check ring | - | okay ok good fine out clean clear normal well right correct proper | -',
];

const uses = new Map<string, { form: VerbForm; verb: string; senses: VerbSense[] }[]>();
for (const row of rows) {
  const [verbs = '', parts = '-', needs = '-', implied = '-'] = row.split('|').map((c) => c.trim());
  const sense: VerbSense = {
    ...(parts === '-' ? {} : { of: part(parts) }),
    ...(needs === '-' ? {} : { needs: new Set(needs.split(' ')) }),
    ...(implied === '-' ? {} : { implies: implied }),
  };
  for (const verb of verbs.split(' '))
    for (const [word, form] of [...formsOf(verb), ...(isSame(verb) ? [[verb, 'past'] as const] : [])]) {
      const list = uses.get(word) ?? [];
      const same = list.find((u) => u.form === form && u.verb === verb);
      if (same) same.senses.push(sense);
      else list.push({ form, verb, senses: [sense] });
      uses.set(word, list);
    }
}

/** How a word may be used as a verb of a part's work. */
export const verbUses = (word: string): readonly VerbUse[] => uses.get(word) ?? [];
