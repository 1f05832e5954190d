// Why: the condition report as a plain document: every finding once, under the station where it was looked for.

import { stations } from '../catalogue/index.ts';
import type { Verdict } from '../judged/rule.ts';
import type { StationCoverage } from '../known/record.ts';
import { unitName } from '../known/unit-name.ts';
import { dayOf } from '../units/day.ts';
import type { Report, Unpublished } from './document.ts';
import { byWorst } from './fault.ts';

import { stationOfPart } from './not-checked.ts';

const uncovered = (station: string): StationCoverage => ({
  station,
  expected: [],
  seen: [],
  unknown: [],
  notSeen: [],
});

/** Gathers the report. Findings are counted, sorted and placed; none is dropped and none appears in two stations. */
export function report(u: Unpublished): Report {
  const tally: Record<Verdict, number> = { stop: 0, repair: 0, watch: 0, 'not seen': 0, sound: 0 };
  for (const f of u.findings) tally[f.verdict] += 1;
  const seen = u.facts.every().filter((f) => f.figure === undefined);
  const observed = [...u.record.standing.values()];
  return {
    title: `Condition report: ${unitName(u.facts)}`,
    on: u.on,
    invented: u.record.unit.invented,
    tally,
    first: u.findings.filter((f) => f.verdict === 'stop' || f.verdict === 'repair').toSorted(byWorst),
    stations: stations.map(({ id }) => ({
      station: id,
      findings: u.findings.filter((f) => stationOfPart(f.part) === id).toSorted(byWorst),
      facts: seen.filter((f) => stationOfPart(f.part) === id),
      coverage: u.record.coverage.find((c) => c.station === id) ?? uncovered(id),
    })),
    conflicts: seen.filter((f) => f.standing === 'conflict'),
    unknowns: seen.filter((f) => f.standing === 'unknown' || f.value.is === 'unknown'),
    figures: u.figures,
    walkedBy: [...new Set(observed.map((o) => o.by))].sort(),
    walkedOn: [...new Set(observed.map((o) => dayOf(o.at)))].sort(),
  };
}
