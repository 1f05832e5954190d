// Why: what the trade looks for in a tire beyond the legal floor.
import { day } from '../../units/day.ts';
import { limitOf } from '../limit-of.ts';
import type { Source } from '../standard.ts';
import { practiceLimit } from './practice.ts';

const readOn = day('2026-11-24');
const tireAgeAdvice: Source = {
  id: 'tire-age-advice',
  title: "Tire makers' advice on age, as the trade repeats it",
  publisher: "an owners' forum quoting makers",
  edition: 'undated',
  standing: 'trade practice',
  scope:
    'No federal age limit exists for these tires. Secondary source only; lenders, insurers and towing companies set their own.',
};
const age = (id: string, what: string, years: number, says: string) =>
  limitOf(id, what, 'a', readOn, years, { source: tireAgeAdvice, clause: 'as quoted', says, read: readOn });

export const tireAgeLook = age(
  'tire-age-look',
  'tire age from which a yearly inspection is advised',
  5,
  'a full inspection every year after 5 years',
);
export const tireAgePlan = age(
  'tire-age-plan',
  'tire age at which many sellers and lenders balk',
  7,
  'many sellers and lenders balk at 7 years',
);
export const tireAgeOut = age(
  'tire-age-out',
  'tire age at which a tire goes out of service',
  10,
  'out of service at 10 years whatever the tread',
);

export const treadSteerSoon = practiceLimit(
  'tread-steer-soon',
  'steer tread, replacement due',
  '[in_i]/32',
  5,
  'under 5/32 on the front a set is due',
);
export const treadSteerWatch = practiceLimit(
  'tread-steer-watch',
  'steer tread, watch',
  '[in_i]/32',
  7,
  'under 7/32 on the front a buyer will ask',
);
export const treadOtherSoon = practiceLimit(
  'tread-other-soon',
  'tread elsewhere, replacement due',
  '[in_i]/32',
  4,
  'under 4/32 elsewhere a set is due',
);
export const treadOtherWatch = practiceLimit(
  'tread-other-watch',
  'tread elsewhere, watch',
  '[in_i]/32',
  6,
  'under 6/32 elsewhere a buyer will ask',
);
export const spareAgePlan = practiceLimit(
  'spare-age-plan',
  'age of a spare, watch',
  'a',
  7,
  'an old spare is the first to fail: watch from 7 years',
);
export const spareAgeOut = practiceLimit(
  'spare-age-out',
  'age of a spare, replace',
  'a',
  10,
  'replace a spare at 10 years',
);
