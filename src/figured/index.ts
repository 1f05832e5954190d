// The figures, in the order in which they are shown.
import { acSplit } from './ac-split/figure.ts';
import { axleRoom } from './axle-room/figure.ts';
import { batteryCharge } from './battery-charge/figure.ts';
import { batteryHours } from './battery-hours/figure.ts';
import { cargoLeft } from './cargo-left/figure.ts';
import { engineAverageSpeed } from './engine-average-speed/figure.ts';
import { enginePower } from './engine-power/figure.ts';
import type { FigureCard } from './figure.ts';
import { frontTirePressure } from './front-tire-pressure/figure.ts';
import { fuelRange } from './fuel-range/figure.ts';
import { generatorAltitude } from './generator-altitude/figure.ts';
import { generatorHoursAYear } from './generator-hours-a-year/figure.ts';
import { lpEndurance } from './lp-endurance/figure.ts';
import { milesAYear } from './miles-a-year/figure.ts';
import { modelYear } from './model-year/figure.ts';
import { noiseAt50Feet } from './noise-at-50-feet/figure.ts';
import { odometerDisclosure } from './odometer-disclosure/figure.ts';
import { oldestTire } from './oldest-tire/figure.ts';
import { rearTirePressure } from './rear-tire-pressure/figure.ts';
import { shoreLoad } from './shore-load/figure.ts';
import { solarDay } from './solar-day/figure.ts';
import { stoppingDistance } from './stopping-distance/figure.ts';
import { tailSwing } from './tail-swing/figure.ts';
import { tireAge } from './tire-age/figure.ts';
import { towLimit } from './tow-limit/figure.ts';
import { turningCircle } from './turning-circle/figure.ts';
import { vinCheck } from './vin-check/figure.ts';
import { waterDays } from './water-days/figure.ts';

export const figureCards: readonly FigureCard[] = [
  vinCheck,
  modelYear,
  odometerDisclosure,
  milesAYear,
  engineAverageSpeed,
  cargoLeft,
  axleRoom,
  towLimit,
  oldestTire,
  tireAge,
  frontTirePressure,
  rearTirePressure,
  enginePower,
  stoppingDistance,
  turningCircle,
  tailSwing,
  fuelRange,
  batteryHours,
  batteryCharge,
  solarDay,
  shoreLoad,
  generatorAltitude,
  generatorHoursAYear,
  noiseAt50Feet,
  lpEndurance,
  waterDays,
  acSplit,
];

/** The card of that id, if there is one. */
export const figureCardOf = (id: string): FigureCard | undefined => figureCards.find((c) => c.id === id);
