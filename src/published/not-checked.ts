// Why: what nobody looked at is told to the buyer as plainly as what was found.
import { partOf, stations } from '../catalogue/index.ts';
import type { Finding } from '../judged/finding.ts';
import type { Claim, Unpublished } from './document.ts';
import { listingLines } from './listing-lines.ts';
import { aspectName, lowered, partName, subjectTitle, subjectWords } from './plain-subject.ts';

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

/** One sentence a station. A part that nobody looked at is named; of one that was looked at, what is still open. */
function byStation(u: Unpublished): readonly Claim[] {
  return stations.flatMap((s) => {
    const open = u.findings.filter(
      (f) => unanswered(f) && f.fact === undefined && stationOfPart(f.part) === s.id,
    );
    const coverage = u.record.coverage.find((c) => c.station === s.id);
    const parts = [...new Set([...open.map((f) => f.part), ...(coverage?.notSeen ?? [])])];
    if (parts.length === 0) return [];
    const seen = new Set([...(coverage?.seen ?? []), ...u.facts.every().map((f) => f.part)]);
    const words = parts.map((part) => {
      const aspects = [
        ...new Set(open.filter((f) => f.part === part).map((f) => aspectName(f.part, f.aspect))),
      ];
      return seen.has(part) && aspects.length > 0
        ? `${lowered(partName(part))} (${aspects.join(', ')})`
        : lowered(partName(part));
    });
    const claim: Claim = {
      ...blank,
      id: `not-checked/station/${s.id}`,
      station: s.id,
      text: `Not checked, ${lowered(s.name)}: ${words.join('; ')}.`,
      evidence: [],
      facts: [],
      findings: open.map((f) => f.id),
    };
    return [claim];
  });
}

/** Looked at, but the reading is too near the limit, in conflict, or of a kind that settles nothing. */
function unsettled(u: Unpublished): readonly Claim[] {
  return u.findings
    .filter((f) => unanswered(f) && f.fact !== undefined && f.fact.value.is !== 'unknown')
    .map((f) => ({
      ...blank,
      id: `not-checked/unsettled/${f.id}`,
      text: `Not settled, ${subjectWords(f)}, ${aspectName(f.part, f.aspect)}: ${f.reason.replace(/\.$/, '')}.`,
      evidence: f.fact?.evidence ?? [],
      facts: f.fact === undefined ? [] : [f.fact],
      findings: [f.id],
    }));
}

/** Asked for and not to be had (a cause that somebody guessed at is no such thing), with the reason given at the time. */
function unknowns(u: Unpublished): readonly Claim[] {
  return u.facts
    .every()
    .filter((f) => (f.standing === 'unknown' || f.value.is === 'unknown') && f.aspect !== 'cause')
    .map((f) => ({
      ...blank,
      id: `not-checked/unknown/${f.part}/${f.aspect}/${f.place ?? ''}`,
      text: `Unknown: ${subjectTitle(f)}, ${aspectName(f.part, f.aspect)}${f.value.is === 'unknown' && f.value.why !== 'not known' ? ` (${f.value.why})` : ''}.`,
      evidence: f.evidence,
      facts: [f],
      findings: u.findings
        .filter(
          (g) =>
            unanswered(g) &&
            g.fact !== undefined &&
            g.part === f.part &&
            g.aspect === f.aspect &&
            g.place === f.place,
        )
        .map((g) => g.id),
    }));
}

/** What a listing may not be silent about and nobody said a word of. */
function silences(u: Unpublished): readonly Claim[] {
  return listingLines
    .filter((l) => l.mustTell && u.facts.mayHave(l.part) && u.facts.all(l.part, l.aspect).length === 0)
    .map((l) => ({
      ...blank,
      id: `not-checked/silent/${l.part}/${l.aspect}`,
      station: stationOfPart(l.part),
      text: `Unknown: ${lowered(l.lead)}. Nobody recorded it.`,
      evidence: [],
      facts: [],
      findings: [],
    }));
}

/** Everything that was not looked at, not settled or not to be had. */
export const notChecked = (u: Unpublished): readonly Claim[] => [
  ...silences(u),
  ...unknowns(u),
  ...unsettled(u),
  ...byStation(u),
];
