// Why: what stands on paper of a unit is corrected field by field; the latest word on each field stands.
import type { EntryOf } from '../said/entry.ts';
import { cents } from '../units/money.ts';
import type { UnitFacts } from './record.ts';

/** The unit after all corrections. `entries` in order of time; equipment is corrected part by part. */
export function unitFactsOf(id: string, entries: readonly EntryOf<'unit'>[]): UnitFacts {
  const equipment: Record<string, boolean> = {};
  let facts: Omit<UnitFacts, 'equipment'> = { id, invented: false, putAway: false };
  for (const e of entries) {
    facts = {
      ...facts,
      ...(e.vehicle === undefined ? {} : { vehicle: e.vehicle }),
      ...(e.stock === undefined ? {} : { stock: e.stock }),
      ...(e.name === undefined ? {} : { name: e.name }),
      ...(e.maker === undefined ? {} : { maker: e.maker }),
      ...(e.model === undefined ? {} : { model: e.model }),
      ...(e.year === undefined ? {} : { year: e.year }),
      ...(e.arrived === undefined ? {} : { arrived: e.arrived }),
      ...(e.consigned === undefined ? {} : { consigned: e.consigned }),
      ...(e.askingCents === undefined ? {} : { asking: cents(e.askingCents) }),
      ...(e.invented === undefined ? {} : { invented: e.invented }),
      ...(e.putAway === undefined ? {} : { putAway: e.putAway }),
    };
    Object.assign(equipment, e.equipment);
  }
  return { ...facts, equipment };
}
