// Why: what the trade looks for in power, heat, cold and water.
import { day } from '../../units/day.ts';
import { limitOf } from '../limit-of.ts';
import type { Source } from '../standard.ts';
import { parkNoise } from '../us-code-of-federal-regulations/36-cfr-2-12-noise.ts';
import { practiceLimit } from './practice.ts';

const readOn = day('2026-11-24');
const coolingColumns: Source = {
  id: 'cooling-columns',
  title: 'Service columns on rooftop air conditioners',
  publisher: "RV owners' newsletters",
  edition: 'undated',
  standing: 'trade practice',
  address: 'http://rvtravel.com/how-well-is-your-rv-air-conditioner-working/',
  scope: 'After 20 to 30 minutes on high cool. In damp weather the difference is smaller and proves nothing.',
};

export const splitGood = limitOf(
  'ac-split-good',
  'return air less supply air, rooftop air conditioner',
  '[degF]{difference}',
  readOn,
  18,
  {
    source: coolingColumns,
    clause: 'as quoted',
    says: '18 to 22 °F between return and supply after 20 to 30 minutes on high cool',
    read: readOn,
  },
);
export const splitLow = practiceLimit(
  'ac-split-low',
  'return air less supply air, too little',
  '[degF]{difference}',
  14,
  'under 14 °F it is not cooling, unless the day is damp',
);

export const legLow = practiceLimit(
  'shore-volts-low',
  'volts of a leg, low',
  'V',
  108,
  'under 108 V find out why before loading it',
);
export const legWatch = practiceLimit(
  'shore-volts-watch',
  'volts of a leg, watch',
  'V',
  114,
  'under 114 V the supply is weak',
);
export const legHigh = practiceLimit(
  'shore-volts-high',
  'volts of a leg, high',
  'V',
  126,
  'over 126 V the supply is at fault',
);
export const legTooHigh = practiceLimit(
  'shore-volts-too-high',
  'volts of a leg, unplug',
  'V',
  132,
  'over 132 V unplug',
);
export const legTooLow = practiceLimit(
  'shore-volts-too-low',
  'volts of a leg, unplug',
  'V',
  105,
  'under 105 V motors burn: unplug',
);
export const skinWatch = practiceLimit(
  'skin-volts-watch',
  'volts from the skin to earth, watch',
  'V',
  2,
  'any volts from the skin to earth are a fault; under 2 V is what a good meter picks up',
);
export const skinStop = practiceLimit(
  'skin-volts-stop',
  'volts from the skin to earth, unplug',
  'V',
  5,
  'over 5 V unplug and keep people off',
);
export const terminalWarm = practiceLimit(
  'terminal-warm',
  'temperature of a terminal or plug under load, watch',
  '[degF]',
  120,
  'under 120 °F after an hour of load is usual',
);
export const terminalHot = practiceLimit(
  'terminal-hot',
  'temperature of a terminal or plug under load, mend',
  '[degF]',
  140,
  'over 140 °F a terminal is loose',
);
export const terminalBurning = practiceLimit(
  'terminal-burning',
  'temperature of a terminal or plug under load, shut off',
  '[degF]',
  180,
  'over 180 °F shut it off',
);

export const genVoltsLeast = practiceLimit(
  'generator-volts-least',
  'generator under load, volts',
  'V',
  108,
  'under 108 V something is wrong with the set',
);
export const genVoltsWatch = practiceLimit(
  'generator-volts-watch',
  'generator under load, volts, watch',
  'V',
  115,
  'a set in order holds 115 V under load',
);
export const genVoltsHigh = practiceLimit(
  'generator-volts-high',
  'generator under load, volts, high',
  'V',
  126,
  'over 126 V the regulator is at fault',
);
export const genVoltsStop = practiceLimit(
  'generator-volts-stop',
  'generator under load, volts, shut off',
  'V',
  132,
  'over 132 V shut it off before it burns what is plugged in',
);
export const genHertzLeast = practiceLimit(
  'generator-hertz-least',
  'generator under load, hertz',
  'Hz',
  57,
  'under 57 Hz the governor is at fault',
);
export const genHertzWatch = practiceLimit(
  'generator-hertz-watch',
  'generator under load, hertz, watch',
  'Hz',
  58.5,
  'a set in order holds 58.5 Hz under load',
);
export const genHertzHighWatch = practiceLimit(
  'generator-hertz-high-watch',
  'generator under load, hertz, high, watch',
  'Hz',
  61.5,
  'over 61.5 Hz it runs fast',
);
export const genHertzHigh = practiceLimit(
  'generator-hertz-high',
  'generator under load, hertz, high',
  'Hz',
  63,
  'over 63 Hz the governor is at fault',
);
export const genNoise = limitOf(
  'generator-noise',
  'sound of a loaded generator at 50 feet',
  'dB{A}',
  readOn,
  60,
  parkNoise,
);

export const furnaceRiseGood = practiceLimit(
  'furnace-rise-good',
  'air at a near register over room air',
  '[degF]{difference}',
  35,
  'a furnace in order lifts the air 35 °F or more at a near register',
);
export const furnaceRiseLow = practiceLimit(
  'furnace-rise-low',
  'air at a near register over room air, too little',
  '[degF]{difference}',
  25,
  'under 25 °F it does not heat',
);
export const tapLeast = practiceLimit(
  'tap-least',
  'hot water at the tap',
  '[degF]',
  100,
  'under 100 °F the heater does not do its work',
);
export const tapWatch = practiceLimit(
  'tap-watch',
  'hot water at the tap, watch',
  '[degF]',
  110,
  'under 110 °F it is lukewarm',
);
export const tapHot = practiceLimit(
  'tap-hot',
  'hot water at the tap, hot',
  '[degF]',
  140,
  'water of 140 °F scalds in seconds',
);
export const tapScald = practiceLimit(
  'tap-scald',
  'hot water at the tap, dangerous',
  '[degF]',
  150,
  'water of 150 °F scalds in a second or two',
);
export const boxWarm = practiceLimit(
  'fridge-box-warm',
  'temperature of the fresh food box, not cooling',
  '[degF]',
  45,
  'over 45 °F after a day the cooling unit is at fault',
);
export const freezerUsual = practiceLimit(
  'freezer-usual',
  'temperature of an RV freezer',
  '[degF]',
  10,
  'an RV freezer in order reaches 10 °F',
);
export const freezerWarm = practiceLimit(
  'freezer-warm',
  'temperature of an RV freezer, not freezing',
  '[degF]',
  20,
  'over 20 °F after a day it does not freeze',
);
export const drainUsual = practiceLimit(
  'drain-usual',
  'time to drain a basin',
  's',
  10,
  'a basin drains in 10 seconds',
);
export const drainSlow = practiceLimit(
  'drain-slow',
  'time to drain a basin, slow',
  's',
  20,
  'over 20 seconds the drain or its vent is blocked',
);
export const gapEven = practiceLimit(
  'slide-gap-even',
  'gap of a slide room',
  '[in_i]',
  0.25,
  'gaps within a quarter inch are even',
);
export const gapCrooked = practiceLimit(
  'slide-gap-crooked',
  'gap of a slide room, out of square',
  '[in_i]',
  0.5,
  'over half an inch the room is out of square',
);
export const regulatorWatch = practiceLimit(
  'lp-regulator-watch',
  'age of an LP regulator, watch',
  'a',
  8,
  'look closely at a regulator after 8 years',
);
export const regulatorOut = practiceLimit(
  'lp-regulator-out',
  'age of an LP regulator, replace',
  'a',
  12,
  'replace a regulator at 12 years',
);
export const runningLeast = practiceLimit(
  'lp-running-least',
  'LP pressure with about half the load on, low',
  "[in_i'H2O]",
  10.5,
  'running pressure is 10.5 to 11.5 inches of water',
);
export const runningMost = practiceLimit(
  'lp-running-most',
  'LP pressure with about half the load on, high',
  "[in_i'H2O]",
  11.5,
  'running pressure is 10.5 to 11.5 inches of water',
);
export const cargoUseful = practiceLimit(
  'cargo-useful',
  'weight left for people and things that a family can use',
  '[lb_av]',
  500,
  'under 500 lb say so plainly',
);
export const cargoRoomy = practiceLimit(
  'cargo-roomy',
  'weight left that buyers expect',
  '[lb_av]',
  1000,
  'buyers expect 1,000 lb or more',
);
export const runningLow = practiceLimit(
  'lp-running-low',
  'LP pressure with about half the load on, far too low',
  "[in_i'H2O]",
  10,
  'under 10 inches of water appliances burn badly',
);
export const runningHigh = practiceLimit(
  'lp-running-high',
  'LP pressure with about half the load on, far too high',
  "[in_i'H2O]",
  12,
  'over 12 inches of water appliances burn badly',
);
