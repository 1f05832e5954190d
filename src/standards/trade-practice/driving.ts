// Why: what is supposed of a driver, a stop and a tank of fuel.

import type { Supposed } from '../supposed.ts';
import { practice } from './practice.ts';
import type { VehicleKindSupposed } from './vehicle-kind-supposed.ts';

export const reactionTime: Supposed = {
  id: 'reaction-time',
  what: 'reaction time',
  value: 1.5,
  unit: 's',
  plusOrMinus: 0.5,
  citations: [practice('1 to 2 seconds.')],
};
export const highwaySpeed: Supposed = {
  id: 'highway-speed',
  what: 'speed',
  value: 60,
  unit: '[mi_i]/h',
  plusOrMinus: 0,
  citations: [practice('60 mph.')],
};
export const testSpeed: Supposed = {
  id: 'test-speed',
  what: 'speed of the test stop',
  value: 20,
  unit: '[mi_i]/h',
  plusOrMinus: 0.5,
  citations: [practice('The test stop is made from 20 mph.')],
};
export const levelRoad: Supposed = {
  id: 'level-road',
  what: 'grade, down is positive',
  value: 0,
  unit: '%',
  plusOrMinus: 0,
  citations: [practice('Level.')],
};
export const brakingKept: Supposed = {
  id: 'braking-kept',
  what: "share of the test's deceleration that is kept from highway speed",
  value: 1,
  unit: '1',
  plusOrMinus: 0.15,
  citations: [
    practice(
      'Hot brakes give less, and the lag at the start counts less in a long stop; nobody publishes it for a coach.',
    ),
  ],
};
export const fuelReserve: Supposed = {
  id: 'fuel-reserve',
  what: 'share of the tank kept',
  value: 0.125,
  unit: '1',
  plusOrMinus: 0.025,
  citations: [practice('10 to 15 percent; the generator stops at a quarter.')],
};
const mpg = (id: string, value: number, plusOrMinus: number, says: string): Supposed => ({
  id,
  what: 'fuel economy',
  value,
  unit: '[mi_i]/[gal_us]',
  plusOrMinus,
  citations: [practice(says)],
});
export const fuelEconomy: VehicleKindSupposed = {
  'class-a-diesel': mpg('mpg-a-diesel', 8, 1, 'Class A diesel 7 to 9 mpg.'),
  'class-a-gas': mpg('mpg-a-gas', 7, 1, 'Class A gas 6 to 8 mpg.'),
  'class-c': mpg('mpg-c', 10, 2, 'Class C 8 to 12 mpg.'),
  'class-b': mpg('mpg-b', 17, 3, 'Class B 14 to 20 mpg.'),
};
