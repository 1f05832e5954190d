// Why: shop.json: what the shop charges and how much of it a day holds. Without it, jobs have hours and no cost.
import { sayShop } from '../words/say-account.ts';
import { isFields, lineOfKey, readJsonObject } from './read-json.ts';
import type { Reader, Reading } from './reading.ts';
import type { FileFault } from './walk-file.ts';

const isMoney = (raw: unknown): raw is number =>
  typeof raw === 'number' && Number.isFinite(raw) && raw >= 0 && raw < 1e6;

const shopKeys = [
  'labor',
  'hours_per_day',
  'supplies_percent',
  'hold_per_day',
  'note',
  'invented',
  'dealership',
];

/** {"labor": {"default": 165, "tires": 120}, "hours_per_day": 6, "supplies_percent": 5, "hold_per_day": 42}; dollars. */
export function readShop({ file, text }: Reader): Reading {
  const raw = readJsonObject(text, file.name);
  const faults: FileFault[] = [];
  const wrong = (key: string, should: string): void => {
    faults.push({
      file: file.name,
      line: lineOfKey(text, key),
      code: 'shop-field',
      raw: `${JSON.stringify(key)}: ${JSON.stringify(raw[key])}`.slice(0, 2000),
      detail: `${key}|${should}`,
    });
  };
  for (const key of Object.keys(raw))
    if (!shopKeys.includes(key)) wrong(key, `one of ${shopKeys.slice(0, 4).join(', ')}`);
  const labor: Record<string, number> = {};
  for (const [skill, rate] of isFields(raw.labor) ? Object.entries(raw.labor) : []) {
    if (/^[a-z0-9][a-z0-9_.-]*$/.test(skill) && skill.length <= 80 && isMoney(rate))
      labor[skill] = Math.round(rate * 100);
    else wrong('labor', 'a skill in lower case and dollars an hour');
  }
  if (Object.keys(labor).length === 0) wrong('labor', 'at least {"default": dollars an hour}');
  const hours = raw.hours_per_day;
  const hoursAreGood = typeof hours === 'number' && hours >= 0.5 && hours <= 24;
  if (!hoursAreGood) wrong('hours_per_day', 'hours that one technician bills in a day, 0.5 to 24');
  const supplies = raw.supplies_percent;
  const suppliesAreGood = typeof supplies === 'number' && supplies >= 0 && supplies <= 100;
  if (supplies !== undefined && !suppliesAreGood) wrong('supplies_percent', '0 to 100');
  const hold = raw.hold_per_day;
  if (hold !== undefined && !isMoney(hold)) wrong('hold_per_day', 'dollars a day');
  const isComplete = Object.keys(labor).length > 0 && hoursAreGood;
  if (!isComplete) return { drafts: [], faults, account: [] };
  return {
    drafts: [
      {
        kind: 'shop',
        laborCentsPerHour: labor,
        hoursPerDay: hours,
        ...(suppliesAreGood ? { suppliesPercent: supplies } : {}),
        ...(isMoney(hold) ? { holdCentsPerDay: Math.round(hold * 100) } : {}),
      },
    ],
    faults,
    account: [sayShop(file.name, Object.keys(labor).length, faults.length)],
  };
}
