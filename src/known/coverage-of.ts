// Why: what nobody has looked at is said plainly, station by station, while the person still stands there.
import { parts, stations } from '../catalogue/index.ts';
import { hasNone } from './has-none.ts';
import type { Known, StationCoverage, UnitFacts } from './record.ts';

/**
 * Coverage of every station, in the order of the walk. Expected are the parts of this kind of vehicle that the unit is not
 * known to be without; while its kind is not known, every part there is.
 */
export function coverageOf(unit: UnitFacts, known: readonly Known[]): readonly StationCoverage[] {
  const byPart = new Map<string, Known[]>();
  for (const k of known) {
    const of = byPart.get(k.part);
    if (of) of.push(k);
    else byPart.set(k.part, [k]);
  }
  const of = (part: string): readonly Known[] => byPart.get(part) ?? [];
  return stations.map((station) => {
    const expected: string[] = [];
    const seen: string[] = [];
    const unknown: string[] = [];
    const notSeen: string[] = [];
    for (const { id } of parts.filter((p) => p.station === station.id && !hasNone(p.id, unit, of))) {
      expected.push(id);
      const told = of(id);
      if (told.some((k) => k.standing !== 'unknown')) seen.push(id);
      else if (told.length > 0) unknown.push(id);
      else notSeen.push(id);
    }
    return { station: station.id, expected, seen, unknown, notSeen };
  });
}
