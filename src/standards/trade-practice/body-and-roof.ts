// Why: how much damage to body, glass, seals and roof the trade lets pass.
import { practiceLimit } from './practice.ts';

export const noCrack = practiceLimit(
  'windshield-crack',
  'crack of a windshield',
  '[in_i]',
  0,
  'buyers take no cracked windshield: a crack is replaced or disclosed',
);
export const noneOpen = practiceLimit(
  'sealant-open',
  'cracks or voids in sealant',
  '1',
  0,
  'sealant is whole or it is a leak',
);
export const noTear = practiceLimit(
  'roof-tears',
  'tears in a roof covering',
  '1',
  0,
  'any tear lets water in',
);
export const softRoof = practiceLimit(
  'roof-soft',
  'soft area of a roof',
  '[in_i]2',
  0,
  'a roof in order is firm all over',
);
export const softRoofStop = practiceLimit(
  'roof-soft-stop',
  'soft area of a roof, keep off',
  '[in_i]2',
  288,
  'over two square feet keep off it',
);
export const seamOpen = practiceLimit(
  'roof-seam-open',
  'open length of a roof seam',
  '[in_i]',
  0.25,
  'a seam open over a quarter inch lets water in',
);
export const awningTear = practiceLimit(
  'awning-tear',
  'tear in an awning, replace fabric',
  '[in_i]',
  6,
  'replace fabric torn over 6 inches',
);
export const awningHole = practiceLimit(
  'awning-hole',
  'tear in an awning, watch',
  '[in_i]',
  0,
  'a small hole can be patched',
);
export const sealTear = practiceLimit(
  'slide-seal-tear',
  'tear in a slide seal, replace',
  '[in_i]',
  2,
  'replace a seal torn over 2 inches',
);
export const bubbleWatch = practiceLimit(
  'sidewall-bubble-watch',
  'bubble in a sidewall',
  '[in_i]',
  0,
  'a flat wall has no bubble',
);
export const bubbleOut = practiceLimit(
  'sidewall-bubble-out',
  'bubble in a sidewall, delaminated',
  '[in_i]',
  6,
  'a bubble over 6 inches is delamination',
);
export const noLampOut = practiceLimit('marker-lamps-out', 'marker lamps out', '1', 0, 'every lamp is lit');
export const oneLampOut = practiceLimit(
  'marker-lamps-out-many',
  'marker lamps out, more than a bulb',
  '1',
  1,
  'one is a bulb, more are wiring',
);
export const fogOne = practiceLimit(
  'fogged-panes',
  'fogged double panes',
  '1',
  0,
  'a pane between whose glasses there is fog has lost its seal',
);
export const fogMany = practiceLimit(
  'fogged-panes-many',
  'fogged double panes, many',
  '1',
  2,
  'three fogged panes are a job',
);
export const stepSwayWatch = practiceLimit(
  'step-sway-watch',
  'sway of the entry step, watch',
  '[in_i]',
  1,
  'a firm step sways less than an inch',
);
export const stepSwayOut = practiceLimit(
  'step-sway-out',
  'sway of the entry step, mend',
  '[in_i]',
  2,
  'over 2 inches the step is bent or worn out',
);
export const floorSoft = practiceLimit(
  'floor-soft',
  'soft area of the floor',
  '[in_i]2',
  0,
  'a floor in order is firm all over',
);
export const floorSoftMuch = practiceLimit(
  'floor-soft-much',
  'soft area of the floor, rotted',
  '[in_i]2',
  144,
  'soft over a square foot is rot below',
);
export const pondingUsual = practiceLimit(
  'ponding-usual',
  'water standing on the roof',
  '[in_i]',
  0.25,
  'up to a quarter inch runs or dries off',
);
export const pondingStop = practiceLimit(
  'ponding-stop',
  'water standing on the roof, sagging',
  '[in_i]',
  0.5,
  'over half an inch the roof sags',
);
export const ceilingSag = practiceLimit(
  'ceiling-sag',
  'sag of the ceiling',
  '[in_i]',
  0.5,
  'a ceiling that sags over half an inch has been wet',
);
export const noLugMissing = practiceLimit(
  'lugs-missing',
  'wheel nuts missing or loose',
  '1',
  0,
  'every nut is there and tight',
);
export const oneLugMissing = practiceLimit(
  'lugs-missing-many',
  'wheel nuts missing or loose, do not drive',
  '1',
  1,
  'two or more: do not drive',
);
export const brokenLeaf = practiceLimit(
  'leaf-broken',
  'broken leaves of a spring',
  '1',
  0,
  'no leaf is broken',
);
export const brokenLeaves = practiceLimit(
  'leaf-broken-many',
  'broken leaves of a spring, do not drive',
  '1',
  1,
  'more than one: do not drive',
);
export const noOpenRecall = practiceLimit('open-recalls', 'open recalls', '1', 0, 'no recall is open');
export const sealWhole = practiceLimit(
  'slide-seal-whole',
  'tear in a slide seal',
  '[in_i]',
  0,
  'a seal without a tear keeps water out',
);
export const seamWhole = practiceLimit(
  'roof-seam-whole',
  'open length of a roof seam, watch',
  '[in_i]',
  0,
  'a seam is closed along its whole length',
);
export const ceilingFlat = practiceLimit(
  'ceiling-flat',
  'sag of the ceiling, watch',
  '[in_i]',
  0,
  'a dry ceiling is flat',
);
