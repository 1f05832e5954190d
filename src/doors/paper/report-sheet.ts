// Why: the condition report as words and pictures in reading order; the page and the print lay out the same sheet, so they cannot differ.

import { stationOf } from '../../catalogue/index.ts';
import { placeName } from '../../catalogue/place.ts';
import { vehicleKindNames } from '../../catalogue/vehicle-kind.ts';
import type { Finding } from '../../judged/finding.ts';
import type { Verdict } from '../../judged/rule.ts';
import type { Fact } from '../../known/facts.ts';
import { unitName } from '../../known/unit-name.ts';
import { basisOf } from '../../published/basis.ts';
import type { Packet } from '../../published/document.ts';
import { drawingOf } from '../../published/drawing/drawing.ts';
import { byWorst, isFault, verdictOrder } from '../../published/fault.ts';

import { sayBasis, sayEvidence } from '../words/say-evidence.ts';
import { aspectName, partName, sayDay, saySides, subjectTitle } from '../words/say-value.ts';
import { sayTally, verdictMeanings } from '../words/say-verdict.ts';
import { drawingSvg, drawingWords } from './drawing-svg.ts';
import { type FigureLine, figureLine } from './figure-line.ts';
import { type FindingLine, findingLine } from './finding-line.ts';
import { methodLines } from './method-lines.ts';
import { type SourceGroup, sourceList } from './source-list.ts';

export interface ReadingLine {
  readonly what: string;
  readonly says: string;
  readonly how: string;
  readonly evidence: string;
}

export interface StationSheet {
  readonly name: string;
  readonly coverage: string;
  /** All but those not seen. */
  readonly findings: readonly FindingLine[];
  /** Checks that nobody could answer, each once with its places. */
  readonly open: readonly string[];
  readonly readings: readonly ReadingLine[];
  readonly notSeen: readonly string[];
}

/** Everything the report prints, as plain text, beside SVG pictures whose texts are escaped. */
export interface ReportSheet {
  readonly title: string;
  readonly name: string;
  readonly under: string;
  readonly invented: boolean;
  readonly on: string;
  readonly tally: readonly { readonly verdict: Verdict; readonly count: number; readonly means: string }[];
  readonly summary: readonly string[];
  readonly drawings: readonly { readonly svg: string; readonly words: string }[];
  readonly first: readonly FindingLine[];
  readonly watch: readonly FindingLine[];
  readonly stations: readonly StationSheet[];
  readonly conflicts: readonly ReadingLine[];
  readonly unknowns: readonly ReadingLine[];
  readonly figures: readonly FigureLine[];
  readonly gaps: readonly FigureLine[];
  readonly sources: readonly SourceGroup[];
  readonly method: readonly string[];
}

function readingLine(fact: Fact): ReadingLine {
  return {
    what: `${subjectTitle(fact)}: ${aspectName(fact.part, fact.aspect)}`,
    says: saySides(fact),
    how: fact.standing === 'conflict' ? 'sources disagree' : sayBasis(basisOf(fact)),
    evidence:
      [...new Set(fact.evidence.slice(0, 3).map(sayEvidence))].join('; ') || 'written down by the dealership',
  };
}

/** "Stock 2417 · class A diesel · coach year 2006 · walked 24 Nov 2026 by R. Ames". */
function underTitle({ record: { unit }, report, on }: Packet): string {
  return [
    unit.stock === undefined ? undefined : `Stock ${unit.stock}`,
    unit.vehicle === undefined ? undefined : vehicleKindNames[unit.vehicle],
    unit.year === undefined ? 'coach year not known' : `coach year ${unit.year}`,
    report.walkedBy.length === 0 ? 'not walked yet' : `walked by ${report.walkedBy.join(', ')}`,
    `as of ${sayDay(on)}`,
  ]
    .filter((w) => w !== undefined)
    .join(' · ');
}

/** "Tire: How old are the tires? (left front, right front)": one line a question, whatever the number of places. */
function openChecks(findings: readonly Finding[]): readonly string[] {
  const places = new Map<string, string[]>();
  for (const f of findings.filter((one) => one.verdict === 'not seen')) {
    const key = `${partName(f.part)}: ${f.asks}`;
    places.set(key, [...(places.get(key) ?? []), ...(f.place === undefined ? [] : [placeName(f.place)])]);
  }
  return [...places].map(([asks, where]) => (where.length === 0 ? asks : `${asks} (${where.join(', ')})`));
}

/** What a reader must know who has one minute. */
function summary(p: Packet): readonly string[] {
  const { tally } = p.report;
  const seen = p.report.stations.reduce((n, s) => n + s.coverage.seen.length, 0);
  const expected = p.report.stations.reduce((n, s) => n + s.coverage.expected.length, 0);
  return [
    `${p.findings.length} ${p.findings.length === 1 ? 'check' : 'checks'}: ${sayTally(tally)}.`,
    ...(tally.stop > 0
      ? [
          `${tally.stop === 1 ? 'One finding says' : `${tally.stop} findings say`} stop: the unit is not to be driven or used until ${tally.stop === 1 ? 'that is' : 'those are'} repaired.`,
        ]
      : []),
    ...(expected > 0
      ? [`${seen} of ${expected} parts were spoken of or looked at; the rest is listed as not seen.`]
      : []),
    ...(p.report.conflicts.length > 0
      ? [
          `${p.report.conflicts.length === 1 ? 'One reading is' : `${p.report.conflicts.length} readings are`} not settled: sources disagree.`,
        ]
      : []),
  ];
}

/** The sheet of a packet. */
export function reportSheet(p: Packet): ReportSheet {
  const { report, facts, findings } = p;
  const faults = findings.filter(isFault).toSorted(byWorst);
  const numbers = new Map(faults.map((f, i) => [f.id, i + 1]));
  const line = (f: (typeof findings)[number]): FindingLine => findingLine(f, numbers);
  const figures = p.figures.map(figureLine);
  return {
    title: report.title,
    name: unitName(p.facts),
    under: underTitle(p),
    invented: report.invented,
    on: sayDay(p.on),
    tally: verdictOrder.map((verdict) => ({
      verdict,
      count: report.tally[verdict],
      means: verdictMeanings[verdict],
    })),
    summary: summary(p),
    drawings: (['road side', 'curb side'] as const)
      .map((view) => drawingOf(facts, findings, view))
      .map((d) => ({ svg: drawingSvg(d), words: drawingWords(d) })),
    first: report.first.map(line),
    watch: findings
      .filter((f) => f.verdict === 'watch')
      .toSorted(byWorst)
      .map(line),
    stations: report.stations.map((s) => ({
      name: stationOf(s.station)?.name ?? s.station,
      coverage:
        s.coverage.expected.length === 0
          ? ''
          : `${s.coverage.seen.length} of ${s.coverage.expected.length} parts seen`,
      findings: s.findings.filter((f) => f.verdict !== 'not seen').map(line),
      readings: s.facts.filter((f) => f.standing === 'known' && f.value.is !== 'unknown').map(readingLine),
      open: openChecks(s.findings),
      notSeen: s.coverage.notSeen.filter((part) => s.findings.every((f) => f.part !== part)).map(partName),
    })),
    conflicts: report.conflicts.map(readingLine),
    unknowns: report.unknowns.map(readingLine),
    figures: figures.filter((f) => f.gap === ''),
    gaps: figures.filter((f) => f.gap !== ''),
    sources: sourceList(p),
    method: methodLines(p),
  };
}
