// Why: the condition report as words and pictures in reading order; the page and the print lay out the same sheet, so they cannot differ.

import { stationOf } from '../../catalogue/index.ts';
import type { Finding } from '../../judged/finding.ts';
import type { Verdict } from '../../judged/rule.ts';
import { unitName } from '../../known/unit-name.ts';
import type { Packet } from '../../published/document.ts';
import { drawingOf } from '../../published/drawing/drawing.ts';
import { byWorst, isFault, verdictOrder } from '../../published/fault.ts';
import { groupTitle, isSight, readingsOf, type Together, together } from '../../published/fault-groups.ts';
import { isNameSaid, kindWords } from '../../published/headline.ts';
import { stationOfPart } from '../../published/not-checked.ts';
import { lowered } from '../../published/plain-subject.ts';
import { aspectName, partName, sayDay } from '../words/say-value.ts';
import { verdictMeanings } from '../words/say-verdict.ts';
import { askedOf, type CostLine, costliest, costOf } from './costs.ts';
import { drawingSvg, drawingWords } from './drawing-svg.ts';
import { type FaultLine, faultLine } from './fault-line.ts';
import { type FigureLine, figureLines } from './figure-line.ts';
import { methodLines, walkers } from './method-lines.ts';
import { oneReading, placesWords, type ReadingLine, readingLines } from './reading-lines.ts';
import { type PacketPhoto, type ReportPhoto, reportPhoto, shows } from './report-photos.ts';
import { type SourceGroup, sourceList } from './source-list.ts';

export interface StationSheet {
  readonly name: string;
  readonly coverage: string;
  /** Faults here: number and subject; their words stand in the lists before. */
  readonly faults: readonly Pick<FaultLine, 'numbers' | 'verdict' | 'subject'>[];
  /** "Tires, 5 places: the middle groove has tread to spare (7/32 in to 9/32 in)". */
  readonly sound: readonly string[];
  /** Checks that nobody could answer: "brakes: lining". */
  readonly open: readonly string[];
  readonly readings: readonly ReadingLine[];
  readonly notSeen: readonly string[];
  /** Pictures of parts of this station that stand beside no fault. */
  readonly photos: readonly ReportPhoto[];
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
  /** Stops and repairs. */
  readonly first: readonly FaultLine[];
  readonly watch: readonly FaultLine[];
  /** Said once over the lists of faults. */
  readonly howTo: readonly string[];
  readonly costs: readonly CostLine[];
  readonly stations: readonly StationSheet[];
  readonly conflicts: readonly ReadingLine[];
  readonly unknowns: readonly ReadingLine[];
  readonly figures: readonly FigureLine[];
  readonly gaps: readonly FigureLine[];
  readonly sources: readonly SourceGroup[];
  readonly method: readonly string[];
}

/** "Stock 2417 · class A diesel · coach year 2006 · walked 24 Nov 2026 by R. Ames". */
function underTitle(p: Packet): string {
  const { unit } = p.record;
  return [
    unit.stock === undefined ? undefined : `Stock ${unit.stock}`,
    kindWords(unit),
    unit.year === undefined ? undefined : `coach year ${unit.year}`,
    isNameSaid(p) ? 'name as said on the walk, not read off a paper' : undefined,
    p.report.walkedOn.length === 0 ? 'not walked yet' : `walked${walkers(p.report.walkedBy)}`,
    `as of ${sayDay(p.on)}`,
  ]
    .filter((w) => w !== undefined)
    .join(' · ');
}

/** "Tires: age, pressure cold (left front, right front)": one entry a part, whatever the number of checks and places. */
function openChecks(findings: readonly Finding[]): readonly string[] {
  const parts = new Map<string, Map<string, string[]>>();
  for (const f of findings.filter((one) => one.verdict === 'not seen')) {
    const aspects = parts.get(f.part) ?? new Map<string, string[]>();
    const name = aspectName(f.part, f.aspect);
    aspects.set(name, [...(aspects.get(name) ?? []), ...(f.place === undefined ? [] : [f.place])]);
    parts.set(f.part, aspects);
  }
  return [...parts].map(
    ([part, aspects]) =>
      `${partName(part)}: ${[...aspects].map(([name, at]) => `${name}${placesWords([...new Set(at)])}`).join(', ')}`,
  );
}

/** What met its limit or its question, in the rules' own words, each once. */
function soundLines(findings: readonly Finding[]): readonly string[] {
  return together(findings.filter((f) => f.verdict === 'sound')).map((group) => {
    const readings = group[0].limit === undefined ? '' : readingsOf(group);
    const words = lowered(group[0].reason).replace(/\.$/, '').replace(/\. /g, '; ');
    return `${groupTitle(group)}: ${words}${readings === '' ? '' : ` (${readings})`}`;
  });
}

/** What a reader must know who has one minute. */
function summary(p: Packet): readonly string[] {
  const { tally } = p.report;
  const seen = p.report.stations.reduce((n, s) => n + s.coverage.seen.length, 0);
  const expected = p.report.stations.reduce((n, s) => n + s.coverage.expected.length, 0);
  const unconfirmed = p.facts
    .every()
    .filter((f) => f.figure === undefined && f.doubts.includes('not reviewed')).length;
  const bits = [
    ...(tally.stop > 0
      ? ['Not to be driven or used until what says stop has been put right or settled.']
      : []),
    ...(expected > 0
      ? [
          `${seen} of ${expected} parts were spoken of or looked at; nobody looked at the rest, and it is listed.`,
        ]
      : []),
    ...(p.report.conflicts.length > 0
      ? [
          `${p.report.conflicts.length === 1 ? 'In one place' : `In ${p.report.conflicts.length} places`} two sources disagree.`,
        ]
      : []),
    ...(unconfirmed > 0
      ? [`${unconfirmed} readings and remarks come from the recording and nobody has confirmed them yet.`]
      : []),
  ];
  return bits.length === 0 ? [] : [bits.join(' ')];
}

const howToMend =
  'Where nothing else is said: find the cause, and mend it or tell the buyer in writing; what is wearing is noted, shown to the buyer and looked at again before sale.';
const howToLook = 'A guess is looked at again in good light, with a picture that shows its size.';

/** The sheet of a packet; with its photos where there are any, each beside what it shows. */
export function reportSheet(p: Packet, photos: readonly PacketPhoto[] = []): ReportSheet {
  const { report, facts } = p;
  // The report's findings carry figures as they are shown.
  const findings = report.stations.flatMap((s) => s.findings);
  const faults = findings.filter(isFault).toSorted(byWorst);
  const numbers = new Map(faults.map((f, i) => [f.id, i + 1]));
  const groups = together(faults);
  const beside = new Set<string>();
  const line = (group: Together): FaultLine => {
    const mine = photos.filter((photo) => !beside.has(photo.name) && group.some((f) => shows(photo, f)));
    for (const photo of mine) beside.add(photo.name);
    return faultLine(
      group,
      numbers,
      { cost: costOf(group, p.jobs), asked: askedOf(group, p.jobs) },
      mine.map(reportPhoto),
    );
  };
  const lines = groups.map((group) => ({ group, line: line(group) }));
  const isFirst = ({ group: [f] }: { readonly group: Together }): boolean =>
    f.verdict === 'stop' || f.verdict === 'repair';
  const figures = figureLines(p.figures);
  return {
    title: report.title,
    name: unitName(facts),
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
    first: lines.filter(isFirst).map((l) => l.line),
    watch: lines.filter((l) => !isFirst(l)).map((l) => l.line),
    howTo: [
      ...(faults.some((f) => isSight(f) && f.outcome === 'fails') ? [howToMend] : []),
      ...(faults.some((f) => isSight(f) && f.outcome !== 'fails') ? [howToLook] : []),
    ],
    costs: costliest(p.jobs, numbers, 8),
    stations: report.stations.map((s) => ({
      name: stationOf(s.station)?.name ?? s.station,
      coverage:
        s.coverage.expected.length === 0
          ? ''
          : `${s.coverage.seen.length} of ${s.coverage.expected.length} parts seen`,
      faults: lines
        .filter(({ group }) => s.findings.some((f) => f.id === group[0].id))
        .map(({ line: { numbers: at, verdict, subject } }) => ({ numbers: at, verdict, subject })),
      sound: soundLines(s.findings),
      readings: readingLines(s.facts.filter((f) => f.standing === 'known' && f.value.is !== 'unknown')),
      open: openChecks(s.findings),
      notSeen: s.coverage.notSeen.filter((part) => s.findings.every((f) => f.part !== part)).map(partName),
      photos: photos
        .filter(({ name, media }) => !beside.has(name) && stationOfPart(media.part ?? '') === s.station)
        .map(reportPhoto),
    })),
    conflicts: report.conflicts.map(oneReading),
    unknowns: report.unknowns.map(oneReading),
    figures: figures.filter((f) => f.gap === ''),
    gaps: figures.filter((f) => f.gap !== ''),
    sources: sourceList(p),
    method: methodLines(p),
  };
}
