// Why: every rule, by name. A rule that is not listed here does not exist.

import type { Rule } from '../rule.ts';
import { acSplit } from './ac-split.ts';
import { bayMoisture } from './bay-moisture.ts';
import { cabOverMoisture } from './cab-over-moisture.ts';
import { floorMoisture } from './floor-moisture.ts';
import { houseBatteryChemistry } from './house-battery-chemistry.ts';
import { houseBatteryRestLead } from './house-battery-rest-lead.ts';
import { houseBatteryRestLithium } from './house-battery-rest-lithium.ts';
import { rearWallMoisture } from './rear-wall-moisture.ts';
import { refrigeratorBox } from './refrigerator-box.ts';
import { refrigeratorFreezer } from './refrigerator-freezer.ts';
import { slideFloorMoisture } from './slide-floor-moisture.ts';
import { tireAge } from './tire-age.ts';
import { tireCrack } from './tire-crack.ts';
import { tireTreadOtherInner } from './tire-tread-other-inner.ts';
import { tireTreadOtherMid } from './tire-tread-other-mid.ts';
import { tireTreadOtherOuter } from './tire-tread-other-outer.ts';
import { tireTreadSteerInner } from './tire-tread-steer-inner.ts';
import { tireTreadSteerMid } from './tire-tread-steer-mid.ts';
import { tireTreadSteerOuter } from './tire-tread-steer-outer.ts';
import { tireWeatherCheck } from './tire-weather-check.ts';
import { wallMoisture } from './wall-moisture.ts';
import { windshieldCrack } from './windshield-crack.ts';

/** Every rule, once. */
export const rules: readonly Rule[] = [
  acSplit,
  bayMoisture,
  cabOverMoisture,
  floorMoisture,
  houseBatteryChemistry,
  houseBatteryRestLead,
  houseBatteryRestLithium,
  rearWallMoisture,
  refrigeratorBox,
  refrigeratorFreezer,
  slideFloorMoisture,
  tireAge,
  tireCrack,
  tireTreadOtherInner,
  tireTreadOtherMid,
  tireTreadOtherOuter,
  tireTreadSteerInner,
  tireTreadSteerMid,
  tireTreadSteerOuter,
  tireWeatherCheck,
  wallMoisture,
  windshieldCrack,
];
