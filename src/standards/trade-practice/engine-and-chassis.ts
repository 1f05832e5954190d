// Why: what the trade looks for under the hood and under the floor.
import { practiceLimit } from './practice.ts';

export const freezeGood = practiceLimit(
  'coolant-freeze-good',
  'freezing point of the coolant',
  '[degF]',
  -34,
  'a half-and-half mix freezes at about -34 °F',
);
export const freezeWeak = practiceLimit(
  'coolant-freeze-weak',
  'freezing point of a coolant that is too thin',
  '[degF]',
  -20,
  'a coolant that freezes above -20 °F is too thin for a cold yard',
);
export const beltsWatch = practiceLimit(
  'belts-age-watch',
  'age of belts and hoses, watch',
  'a',
  5,
  'look closely at belts and hoses after 5 years',
);
export const beltsOut = practiceLimit(
  'belts-age-out',
  'age of belts and hoses, replace',
  'a',
  7,
  'replace belts and hoses at 7 years',
);
export const filterWatch = practiceLimit(
  'air-filter-watch',
  'restriction of the air filter, watch',
  "[in_i'H2O]",
  15,
  'a filter over 15 inches of water is half spent',
);
export const filterOut = practiceLimit(
  'air-filter-out',
  'restriction of the air filter, replace',
  "[in_i'H2O]",
  20,
  'replace a filter over 20 inches of water',
);
export const hydronicWatch = practiceLimit(
  'hydronic-fluid-watch',
  'age of hydronic heating fluid, watch',
  'a',
  3,
  'test hydronic fluid after 3 years',
);
export const hydronicOut = practiceLimit(
  'hydronic-fluid-out',
  'age of hydronic heating fluid, replace',
  'a',
  5,
  'replace hydronic fluid at 5 years',
);
export const brakeFluidWet = practiceLimit(
  'brake-fluid-wet',
  'water in brake fluid',
  '%',
  3,
  'change brake fluid at 3 percent water',
);
export const brakeFluidDamp = practiceLimit(
  'brake-fluid-damp',
  'water in brake fluid, watch',
  '%',
  2,
  'watch brake fluid from 2 percent water',
);
export const liningWatch = practiceLimit(
  'lining-air-drum-watch',
  'lining of an air drum brake, watch',
  '[in_i]',
  0.375,
  'under 3/8 inch a reline is near',
);
export const stopHeavyWatch = practiceLimit(
  'stop-heavy-watch',
  'stopping distance from 20 mph over 10,000 lb, watch',
  '[ft_i]',
  30,
  'over 30 feet the brakes want a look',
);
export const stopLightWatch = practiceLimit(
  'stop-light-watch',
  'stopping distance from 20 mph up to 10,000 lb, watch',
  '[ft_i]',
  22,
  'over 22 feet the brakes want a look',
);
export const heightDiffWatch = practiceLimit(
  'ride-height-watch',
  'difference of ride height, watch',
  '[in_i]',
  0.5,
  'up to half an inch side to side is usual',
);
export const heightDiffOut = practiceLimit(
  'ride-height-out',
  'difference of ride height, mend',
  '[in_i]',
  1,
  'over an inch the coach leans and steers to one side',
);
export const lashWatch = practiceLimit(
  'steering-lash-watch',
  'lash at the rim, watch',
  '[in_i]',
  1,
  'more than an inch at the rim is felt on the road',
);
export const radiatorWatch = practiceLimit(
  'radiator-blocked-watch',
  'radiator face blocked, watch',
  '%',
  10,
  'up to a tenth of the face blocked is usual',
);
export const radiatorOut = practiceLimit(
  'radiator-blocked-out',
  'radiator face blocked, clean',
  '%',
  30,
  'clean a radiator that is blocked over three tenths',
);
export const cutInWatch = practiceLimit(
  'governor-cut-in-watch',
  'governor cut-in, watch',
  '[psi]',
  85,
  'a cut-in under 85 psi leaves little in reserve',
);
export const airLossReleasedStop = practiceLimit(
  'air-loss-released-stop',
  'air lost with brakes released, do not drive',
  '[psi]/min',
  3,
  'a psi over the limit is a leak that will not wait',
);
export const airLossAppliedStop = practiceLimit(
  'air-loss-applied-stop',
  'air lost with brakes applied, do not drive',
  '[psi]/min',
  4,
  'a psi over the limit is a leak that will not wait',
);
export const rechargeSlow = practiceLimit(
  'air-recharge-slow',
  'time to build up air, do not drive',
  's',
  180,
  'three minutes to build up air is a compressor or a leak that will not wait',
);
export const warningLate = practiceLimit(
  'low-air-warning-late',
  'low-air warning, far too late',
  '[psi]',
  55,
  'a warning under 55 psi comes when the brakes are already going',
);
export const activeCodes = practiceLimit(
  'active-codes',
  'active fault codes',
  '1',
  0,
  'no code is active on an engine that is well',
);
export const jackDropWatch = practiceLimit(
  'jack-drop-watch',
  'jack drop in 24 hours, watch',
  '[in_i]',
  0.25,
  'a jack may settle a quarter inch overnight',
);
export const jackDropOut = practiceLimit(
  'jack-drop-out',
  'jack drop in 24 hours, mend',
  '[in_i]',
  1,
  'a jack that drops over an inch overnight leaks',
);
export const reliefValve = practiceLimit(
  'air-relief',
  'air pressure at which the safety valve opens',
  '[psi]',
  150,
  'the safety valve opens at about 150 psi',
);
