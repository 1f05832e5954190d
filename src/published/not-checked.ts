// Why: what nobody looked at is told to the buyer as plainly as what was found, and the weightiest of it first.
import { partOf, stations } from '../catalogue/index.ts';
import { placeName } from '../catalogue/place.ts';
import type { Finding } from '../judged/finding.ts';
import type { Fact } from '../known/facts.ts';
import type { Claim, Unpublished } from './document.ts';
import { listed, reasonOf, type Together, together } from './fault-groups.ts';
import { listingLines } from './listing-lines.ts';
import { aspectName, lowered, partName, partNames, subjectWords } from './plain-subject.ts';

const blank = {
  section: 'not checked',
  standing: 'backed',
  basis: 'none',
  figures: [],
  published: true,
} as const;

/** The station a part belongs to; what the catalogue does not know is put with the papers, where the walk starts. */
export const stationOfPart = (part: string): string => partOf(part)?.station ?? 'papers';

const unanswered = (f: Finding): boolean => f.verdict === 'not seen';
/** Nobody said a word of it. */
const isBare = (f: Finding): boolean => unanswered(f) && f.fact === undefined;

/** House default, no source: so many parts of a station are named in a listing; the report names them all. */
const mostNamed = 4;

const checkNames: Readonly<Record<string, string>> = {
  co_risk: 'exhaust getting in',
  cargo_left: 'what it may still carry',
  tin: 'date code',
};

/** What would have been looked at: "latches", "fuse". */
const checkWords = (f: Finding): string =>
  checkNames[f.aspect] ?? aspectName(f.part, f.aspect).replace(/ (ok|present)$/, '');

/** Checks of what could hurt somebody that nobody made, in one sentence; "tire (age, pressure cold)" where the part was looked at otherwise. */
function weighty(u: Unpublished): readonly Claim[] {
  const open = u.findings.filter((f) => isBare(f) && f.weight === 'danger');
  if (open.length === 0) return [];
  const seen = new Set(u.facts.every().map((f) => f.part));
  const parts = [...new Set(open.map((f) => f.part))];
  const words = parts.map((part) => {
    const aspects = [...new Set(open.filter((f) => f.part === part).map((f) => checkWords(f)))];
    return seen.has(part) ? `${lowered(partName(part))} (${aspects.join(', ')})` : lowered(partName(part));
  });
  return [
    {
      ...blank,
      id: 'not-checked/weighty',
      text: `Nobody checked these, and a fault there could hurt somebody: ${words.join('; ')}.`,
      evidence: [],
      facts: [],
      findings: open.map((f) => f.id),
    },
  ];
}

/** One short sentence a station: the parts nobody looked at, the first few by name. */
function byStation(u: Unpublished): readonly Claim[] {
  return stations.flatMap((s) => {
    const open = u.findings.filter(
      (f) => isBare(f) && f.weight !== 'danger' && stationOfPart(f.part) === s.id,
    );
    const told = new Set(u.findings.filter((f) => isBare(f) && f.weight === 'danger').map((f) => f.part));
    const coverage = u.record.coverage.find((c) => c.station === s.id);
    const seen = new Set([...(coverage?.seen ?? []), ...u.facts.every().map((f) => f.part)]);
    const parts = [...new Set([...open.map((f) => f.part), ...(coverage?.notSeen ?? [])])];
    const whole = parts.filter((part) => !seen.has(part) && !told.has(part));
    const some = parts.filter((part) => seen.has(part));
    if (parts.length === 0) return [];
    const names = whole.slice(0, mostNamed).map((part) => lowered(partName(part)));
    const more = whole.length - names.length;
    const bits = [
      ...names,
      ...(more > 0 ? [`${more} more`] : []),
      ...(some.length > 0
        ? [`${listed(some.slice(0, mostNamed).map((part) => lowered(partName(part))))} only in part`]
        : []),
    ];
    if (bits.length === 0 && open.length === 0) return [];
    const claim: Claim = {
      ...blank,
      id: `not-checked/station/${s.id}`,
      station: s.id,
      text: `Not looked at, ${lowered(s.name)}: ${bits.length === 0 ? 'a few more checks' : bits.join('; ')}.`,
      evidence: [],
      facts: [],
      findings: open.map((f) => f.id),
    };
    return [claim];
  });
}

const placesOf = (group: Together): readonly string[] =>
  group.flatMap((f) => (f.place === undefined ? [] : [placeName(f.place)]));

/** Looked at, but the reading is too near the limit, in conflict, or of a kind that settles nothing. The same at several places is told once. */
function unsettled(u: Unpublished): readonly Claim[] {
  const open = u.findings.filter(
    (f) => unanswered(f) && f.fact !== undefined && f.fact.value.is !== 'unknown',
  );
  return together(open).map((group) => {
    const [first] = group;
    const facts = group.flatMap((f) => (f.fact === undefined ? [] : [f.fact]));
    const whose =
      group.length === 1
        ? subjectWords(first)
        : `${lowered(partNames(first.part))} (${placesOf(group).join(', ')})`;
    return {
      ...blank,
      id: `not-checked/unsettled/${first.id}`,
      text: `Not settled, ${whose}, ${aspectName(first.part, first.aspect)}: ${lowered(reasonOf(first)).replace(/\.$/, '')}.`,
      evidence: facts.flatMap((f) => f.evidence),
      facts,
      findings: group.map((f) => f.id),
    };
  });
}

/** "front brakes"; with the aspect where it is more than the part's condition: "refrigerator, mode". */
const unknownWords = (f: Fact): string =>
  ['condition', 'operates'].includes(f.aspect)
    ? subjectWords(f)
    : `${subjectWords(f)}, ${aspectName(f.part, f.aspect)}`;

/** Asked for and not to be had (a cause that somebody guessed at is no such thing), one sentence a reason. */
function unknowns(u: Unpublished): readonly Claim[] {
  const open = u.facts
    .every()
    .filter((f) => (f.standing === 'unknown' || f.value.is === 'unknown') && f.aspect !== 'cause');
  const byReason = new Map<string, Fact[]>();
  for (const f of open) {
    const why = f.value.is === 'unknown' ? f.value.why : 'not known';
    byReason.set(why, [...(byReason.get(why) ?? []), f]);
  }
  return [...byReason].map(([why, facts]) => ({
    ...blank,
    id: `not-checked/unknown/${facts[0]?.part ?? ''}/${facts[0]?.aspect ?? ''}/${facts[0]?.place ?? ''}`,
    text: `Unknown${why === 'not known' ? '' : ` (${why})`}: ${[...new Set(facts.map(unknownWords))].join('; ')}.`,
    evidence: facts.flatMap((f) => f.evidence),
    facts,
    findings: u.findings
      .filter((g) => unanswered(g) && g.fact !== undefined && g.fact.value.is === 'unknown')
      .filter((g) => facts.some((f) => g.part === f.part && g.aspect === f.aspect && g.place === f.place))
      .map((g) => g.id),
  }));
}

/** What a listing may not be silent about and nobody said a word of. */
function silences(u: Unpublished): readonly Claim[] {
  const silent = listingLines.filter(
    (l) => l.mustTell && u.facts.mayHave(l.part) && u.facts.all(l.part, l.aspect).length === 0,
  );
  if (silent.length === 0) return [];
  return [
    {
      ...blank,
      id: 'not-checked/silent',
      station: stationOfPart(silent[0]?.part ?? ''),
      text: `Unknown, nobody recorded it: ${silent.map((l) => lowered(l.lead)).join('; ')}.`,
      evidence: [],
      facts: [],
      findings: [],
    },
  ];
}

/** Everything that was not looked at, not settled or not to be had; what could hurt somebody before the rest. */
export const notChecked = (u: Unpublished): readonly Claim[] => [
  ...weighty(u),
  ...silences(u),
  ...unknowns(u),
  ...unsettled(u),
  ...byStation(u),
];
