// Why: what people call a reading in passing ("water's one eighty-two", "out the vent", "coming home"), and of which part it then is.
// Trade usage (common practice, no source).
import { PhraseIndex } from './phrase-index.ts';

/** A reading by the words that call it. */
export interface ReadingName {
  readonly part: string;
  readonly aspect: string;
  /** It needs one of these parts in the talk; without, the words call it by themselves. */
  readonly among?: ReadonlySet<string>;
  /** Where a bare number may lie, in the unit of the aspect. */
  readonly within: readonly [low: number, high: number];
}

export const readingNames = new PhraseIndex<ReadingName>();
const set = (text: string): ReadonlySet<string> => new Set(text.split(' '));
const driving = set(
  'engine dash_gauges transmission road_test_drive turbo_exhaust cruise_control alternator air_gauges odometer engine_oil coolant radiator_cac speedometer parking_brake brake_drum_rotor driveline_u',
);
const cooling = set('ac_roof ac_run ducts_air thermostats');
const sliding = set('slide slide_inside slide_seals slide_floor_out');
const pumping = set('water_pump city_water fresh_system_test plumbing water_bay fresh_tank');
const generating = set('generator generator_load_run hour_meters transfer_switch');
const cold = set('refrigerator');
const gas = set('lp_system lp_regulator lp_tank lp_alarm lp_detector_valve');
const mains = set('shore_power shore_cord electric_panel transfer_switch outlets_gfci');

const call = (
  key: string,
  within: readonly [number, number],
  among: ReadonlySet<string> | undefined,
  phrases: string,
): void => {
  const [part = '', aspect = ''] = key.split('/');
  for (const phrase of phrases.split(','))
    readingNames.add(phrase, { part, aspect, within, ...(among ? { among } : {}) });
};

call(
  'engine/coolant_F',
  [60, 260],
  undefined,
  'coolant temp,coolant temperature,water temp,water temperature,engine temp,engine temperature,temp gauge,temperature gauge,water gauge,coolant gauge',
);
call('engine/coolant_F', [60, 260], driving, 'water,coolant,temp,temps,temperature,needle');
call('engine/oil_psi', [5, 110], undefined, 'oil pressure,oil gauge,oil pressure gauge');
call('engine/oil_psi', [5, 110], driving, 'oil,pressure');
call(
  'transmission/temperature',
  [80, 280],
  undefined,
  'trans temp,transmission temp,transmission temperature,trans temperature,tranny temp,gearbox temp,gearbox temperature',
);
call('transmission/temperature', [80, 280], driving, 'trans,transmission,tranny,gearbox');
call('turbo_exhaust/boost', [2, 60], undefined, 'boost,boost gauge,boost pressure,turbo boost');
call('dash_gauges/volts', [10, 30], driving, 'volts,voltmeter,volt meter,volt gauge,voltage,charging');
call('alternator/volts', [10, 30], undefined, 'alternator');
call(
  'engine/engine_speed',
  [350, 4500],
  driving,
  'tach,tachometer,turning,spinning,idle,idles,idling,revs,rev counter,engine speed,fast idle,high idle',
);
call('road_test_drive/speed', [3, 90], driving, 'speed');
call('suspension_air/measured_length', [2, 25], undefined, 'ride height,ride heights');
call(
  'engine_oil/last_change_mi',
  [1000, 500000],
  undefined,
  'change sticker,oil change sticker,oil sticker,last oil change,oil change,service sticker,oil changed at,oil was changed at',
);
call('fuel_tank/level', [0, 100], undefined, 'fuel,fuel gauge,fuel needle,fuel level,gas gauge,diesel gauge');

call(
  'ac_run/return_F',
  [60, 110],
  cooling,
  'return,return air,going in,in,intake,air in,goes in,room,return side',
);
call(
  'ac_run/supply_F',
  [34, 80],
  cooling,
  'supply,supply air,out,coming out,out the vent,at the vent,vent,vents,register,registers,comes out,out of the vent,discharge,blowing,air out,duct,ducts',
);
call(
  'ac_run/drop_F',
  [5, 40],
  cooling,
  'split,drop,delta,delta t,difference,spread,temperature drop,temp drop,degree split',
);
call('ac_run/amps', [5, 30], cooling, 'pulling,pulls,drawing,draws,draw,pull,amps,amp draw');

call(
  'slide/extend_s',
  [8, 150],
  sliding,
  'out,going out,extends,extending,extend,way out,out in,outbound,goes out,runs out,went out',
);
call(
  'slide/retract_s',
  [8, 150],
  sliding,
  'in,going in,retracts,retracting,retract,back in,in in,coming in,coming home,way in,inbound,coming back,goes in,comes in,went in,came in',
);
call('slide/measured_current', [2, 80], sliding, 'pulling,pulls,drawing,draws,draw');

call(
  'water_pump/cut_in',
  [10, 60],
  pumping,
  'cut in,cuts in,kicks on,kicks in,comes on,turns on,comes back on,kicks back on,starts,cut on,cuts on,on at,start,kick on,clicks on,kicks back in',
);
call(
  'water_pump/pressure',
  [20, 90],
  pumping,
  'cut out,cuts out,shuts off,shuts down,quits,kicks off,stops,clicks off,cut off,cuts off,off at,turns off,shutoff,shut off,goes off,stopped,quit,shuts itself off,builds',
);

call(
  'generator/hours',
  [1, 20000],
  generating,
  'hours,hour meter,hours on it,meter,hobbs,hobbs meter,clock,hour',
);
call('generator/volts_unloaded', [90, 260], generating, 'unloaded,no load,without load,without a load');
call(
  'generator/volts_loaded',
  [90, 260],
  generating,
  'loaded,under load,with load,load on,with a load,on load',
);
call('generator_load_run/load_A', [1, 110], generating, 'pulling,pulls,drawing,draws,carrying');

call(
  'refrigerator/freezer_F',
  [-30, 40],
  cold,
  'freezer,freezer side,up top,freezer box,freezer compartment',
);
call(
  'refrigerator/box_F',
  [24, 80],
  cold,
  'box,fridge,food side,fresh food,lower,down below,in the box,fridge side,fresh side',
);

call('lp_regulator/lockup', [6, 20], gas, 'lockup,locks up,lock up,locked up,locks,lock off,no flow');
call(
  'lp_regulator/running',
  [6, 20],
  gas,
  'running,flowing,with flow,burning,under load,operating,working pressure',
);
call(
  'shore_power/volts',
  [90, 260],
  mains,
  'no load,unloaded,loaded,under load,sags,sagged,drops,main,pedestal,outlet,leg,legs,line',
);
call('shore_power/measured_current', [1, 60], mains, 'pulling,pulls,drawing,draws');

call(
  'chassis_battery/cranking_voltage',
  [5, 13],
  set('chassis_battery starter'),
  'cranking,while cranking,when cranking,drops,dips',
);
call(
  'chassis_battery/cca_measured',
  [100, 1500],
  set('chassis_battery'),
  'cranking amps,cold cranking,tested,measured,tests,cca,load test',
);
call(
  'chassis_battery/cca_rated',
  [300, 1500],
  set('chassis_battery'),
  'label,rated,label wants,sticker,rating',
);
call(
  'house_battery/gravity',
  [1.05, 1.35],
  undefined,
  'hydrometer,gravity,specific gravity,gravities,sg,hydrometer says,hydrometer reads',
);
