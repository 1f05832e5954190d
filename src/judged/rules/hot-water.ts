// Why: too cold is a complaint, too hot is a burn.
import { tapHot, tapLeast, tapScald, tapWatch } from '../../standards/trade-practice/house-systems.ts';
import { numberProofs } from '../making/proofs.ts';
import type { Rule } from '../rule.ts';

export const hotWater: Rule = {
  id: 'hot-water',
  asks: 'How hot is the water at the tap?',
  why: 'Too hot scalds, too cold is a complaint.',
  part: 'water_heater_run',
  aspect: 'outlet_F',
  look: 'Thermometer in the stream, after it has heated.',
  minutes: 3,
  steps: [
    { weight: 'danger', must: 'at most', limit: tapScald },
    { weight: 'defect', must: 'at least', limit: tapLeast },
    { weight: 'wear', must: 'at least', limit: tapWatch },
    { weight: 'wear', must: 'at most', limit: tapHot },
  ],
  says: {
    meets: 'The water was as hot as it should be.',
    fails: 'The water is too hot or too cold.',
    cannotTell: 'The reading is too near a limit, or is not a temperature.',
    notSeen: 'The water has not been measured.',
  },
  next: 'Thermostat or mixing valve; too hot: shut it off.',
  who: 'certified RV technician',
  caution: 'hot-water',
  proofs: numberProofs('[degF]', [
    [90, 'fails', 'repair'],
    [100, 'fails', 'watch'],
    [105, 'fails', 'watch'],
    [110, 'meets', 'sound'],
    [125, 'meets', 'sound'],
    [140, 'meets', 'sound'],
    [145, 'fails', 'watch'],
    [150, 'fails', 'watch'],
    [155, 'fails', 'stop'],
    [140, 'cannot tell', 'watch', 2],
    [150, 'cannot tell', 'stop', 3],
  ]),
};
