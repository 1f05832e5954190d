// Why: which words say a thing is at fault, which that it is only worn, and where a fault can hurt someone.
// Trade usage (common practice, no source).
import type { State } from '../catalogue/state.ts';
import type { CautionKey } from './caution.ts';

/** Worn or ugly, but doing what it is for. Every other bad state is a fault. */
export const wornStates: ReadonlySet<string> = new Set<State>([
  'worn',
  'weak',
  'slow',
  'chipped',
  'stained',
  'sticky',
  'noisy',
  'corroded',
  'rusted',
  'faded',
  'fogged',
  'dented',
  'scratched',
  'low',
  'sagging',
  'mildewed',
  'warm',
  'drifting',
  'marginal',
  'dirty',
  'crazed',
  'poor',
]);

/** Aspects that are a blemish or wear when they are said to be there. */
export const wornAspects: ReadonlySet<string> = new Set([
  'rust',
  'stain',
  'noise',
  'wear',
  'water_stain',
  'spill_stain',
  'rust_streak',
  'rust_trail',
  'musty',
  'pet',
  'smoke',
  'glaze',
  'chips',
  'scratches',
]);

/** A part whose fault can hurt someone: with which states or aspects, and which caution belongs to it. */
export interface Hazard {
  readonly when: 'any fault' | readonly string[];
  readonly caution: CautionKey;
}

const leaks = ['leaking', 'dripping', 'weeping', 'smelling', 'leak', 'smell'] as const;
const breaks = [
  'cracked',
  'broken',
  'loose',
  'missing',
  'bent',
  'separated',
  'crack',
  'cracks',
  'damaged',
] as const;
const burns = ['burnt', 'smoking', 'smelling', 'smell', 'burn', 'burn_marks', 'breaker_burn'] as const;

export const hazards: Readonly<Record<string, Hazard>> = {
  brake_drum_rotor: { when: 'any fault', caution: 'lifting' },
  brake_chambers: { when: 'any fault', caution: 'air-brakes' },
  brake_trailer: { when: 'any fault', caution: 'lifting' },
  brake_fluid: { when: leaks, caution: 'lifting' },
  parking_brake: { when: 'any fault', caution: 'driving' },
  air_gauges: { when: ['fails', 'broken', 'leaking', 'leak'], caution: 'air-brakes' },
  steering_gear: { when: [...breaks, ...leaks], caution: 'lifting' },
  driveline_u: { when: breaks, caution: 'lifting' },
  suspension_leaf: { when: breaks, caution: 'lifting' },
  suspension_air: { when: breaks, caution: 'lifting' },
  frame_rails: { when: breaks, caution: 'lifting' },
  wheels_lugs: { when: breaks, caution: 'lifting' },
  wheel_bearings: { when: ['loose', 'smoking', 'burnt', 'separated'], caution: 'lifting' },
  tire: { when: ['separated', 'torn', 'broken', 'fails', 'leaking', 'leak', 'expired'], caution: 'tires' },
  hitch_receiver: { when: breaks, caution: 'lifting' },
  pin_box: { when: breaks, caution: 'lifting' },
  tongue_jack: { when: breaks, caution: 'lifting' },
  safety_chain: { when: breaks, caution: 'lifting' },
  lp_system: { when: [...leaks, 'fails', 'damaged'], caution: 'lp-gas' },
  lp_tank: { when: [...leaks, 'loose', 'damaged', 'dented'], caution: 'lp-gas' },
  lp_regulator: { when: [...leaks, 'cracked', 'hose_cracks', 'crack'], caution: 'lp-gas' },
  lp_detector_valve: { when: [...leaks, 'fails'], caution: 'lp-gas' },
  cooktop: { when: leaks, caution: 'lp-gas' },
  outside_kitchen: { when: leaks, caution: 'lp-gas' },
  lp_alarm: { when: 'any fault', caution: 'lp-gas' },
  co_alarm: { when: 'any fault', caution: 'carbon-monoxide' },
  smoke_alarm: { when: 'any fault', caution: 'carbon-monoxide' },
  furnace_run: { when: ['smoking', 'smelling', 'smell'], caution: 'carbon-monoxide' },
  exhaust_pipe: { when: ['broken', 'missing', 'smell', 'smelling'], caution: 'carbon-monoxide' },
  refrigerator: { when: ['smelling', 'smell', 'ammonia_smell'], caution: 'ammonia' },
  refrigerator_vent_out: { when: ['yellow_residue', 'smelling', 'smell', 'burnt'], caution: 'ammonia' },
  fuel_tank: { when: leaks, caution: 'fuel' },
  fuel_lines: { when: leaks, caution: 'fuel' },
  generator: { when: ['smell', 'smelling', 'smoking', 'co_risk'], caution: 'carbon-monoxide' },
  house_battery: { when: ['swelling', 'hot', 'leaking', 'leak', 'smelling', 'smell'], caution: 'batteries' },
  chassis_battery: { when: ['leaking', 'leak', 'smelling', 'smell'], caution: 'batteries' },
  battery_cables: { when: burns, caution: 'batteries' },
  shore_cord: { when: burns, caution: 'shore-power' },
  shore_power: { when: burns, caution: 'shore-power' },
  transfer_switch: { when: burns, caution: 'shore-power' },
  inverter_charger: { when: burns, caution: 'shore-power' },
  electric_panel: { when: burns, caution: 'shore-power' },
  outlets_gfci: { when: ['fails', 'broken', 'missing', 'burnt'], caution: 'shore-power' },
  entry_step: { when: ['broken', 'loose'], caution: 'lifting' },
};

/** Aspects that tell of the same thing: a crack that a rule has measured is not told again as a crack. */
export const kin: Readonly<Record<string, string>> = {
  cracks: 'crack',
  longest_crack: 'crack',
  weather_check: 'crack',
  cracked: 'crack',
  soft_area: 'soft',
  soft_pan: 'soft',
  moisture: 'wet',
  ammonia_smell: 'smell',
};
