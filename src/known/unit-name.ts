// Why: one answer to "what do we call it", from paper when there is one, else from what was said on the walk.
import { vehicleKindNames } from '../catalogue/vehicle-kind.ts';
import type { Facts } from './facts.ts';

const said = (facts: Facts, aspect: string): string | undefined => {
  const fact = facts.get('coach', aspect);
  if (fact?.standing !== 'known') return undefined;
  if (fact.value.is === 'text') return fact.value.text;
  return fact.value.is === 'count' ? String(fact.value.count) : undefined;
};

/** What the unit is called: its name; else year, maker and model; else its kind; else that it has no name. */
export function unitName(facts: Facts): string {
  const { unit } = facts;
  if (unit.name !== undefined) return unit.name;
  const made = [said(facts, 'maker'), said(facts, 'model')].filter((w) => w !== undefined);
  const year = said(facts, 'year');
  if (made.length > 0) return [...(year === undefined ? [] : [year]), ...made].join(' ');
  return unit.vehicle === undefined ? 'Unnamed unit' : `Unnamed ${vehicleKindNames[unit.vehicle]}`;
}
