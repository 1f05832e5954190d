// Why: what has been ruled on an observation is its newest ruling.
import type { Entry, Ruling } from '../../../said/entry.ts';

/** The newest ruling on each entry: the one made last, and of two made at the same instant the one with the later id. */
export function rulingsOf(entries: readonly Entry[]): ReadonlyMap<string, Ruling> {
  const found = new Map<string, Ruling>();
  for (const e of entries) {
    if (e.kind !== 'ruling') continue;
    const had = found.get(e.on);
    if (
      !had ||
      Date.parse(had.at) < Date.parse(e.at) ||
      (Date.parse(had.at) === Date.parse(e.at) && had.id < e.id)
    )
      found.set(e.on, e);
  }
  return found;
}
