// Why: what is known of a part is read as one line: "Front cap: no crack; chipped", with how it is known and where that comes from.
import { placeName } from '../../catalogue/place.ts';
import type { Fact } from '../../known/facts.ts';
import { basisOf } from '../../published/basis.ts';
import type { Observation } from '../../said/entry.ts';
import { minutes } from '../words/minutes.ts';
import { sayBasis, sayEvidence } from '../words/say-evidence.ts';
import { aspectName, sayFact, saySides, subjectTitle } from '../words/say-value.ts';

export interface ReadingLine {
  readonly what: string;
  readonly says: string;
  readonly how: string;
  readonly evidence: string;
}

const most = 4;

/** "said at 1:22, 1:24 and later; typed by R. Ames on 24 Nov 2026". */
function fromWords(evidence: readonly Observation[]): string {
  const times = evidence
    .flatMap((o) => (o.source.from === 'speech' && o.saidBy === undefined ? [o.source.start] : []))
    .sort((a, b) => a - b)
    .map(minutes);
  const said = [...new Set(times)];
  const rest = evidence.filter((o) => o.source.from !== 'speech' || o.saidBy !== undefined).map(sayEvidence);
  return (
    [
      ...(said.length === 0
        ? []
        : [`said at ${said.slice(0, most).join(', ')}${said.length > most ? ' and later' : ''}`]),
      ...new Set(rest),
    ].join('; ') || 'written down by the dealership'
  );
}

/** One line a fact: for conflicts, and for what was asked for and is not known. */
export const oneReading = (fact: Fact): ReadingLine => ({
  what: `${subjectTitle(fact)}: ${aspectName(fact.part, fact.aspect)}`,
  says: saySides(fact),
  how: fact.standing === 'conflict' ? 'sources disagree' : sayBasis(basisOf(fact)),
  evidence: fromWords(fact.evidence.slice(0, 6)),
});

/** One line a part, place and way of knowing, in the order of the facts. */
export function readingLines(facts: readonly Fact[]): readonly ReadingLine[] {
  const groups = new Map<string, [Fact, ...Fact[]]>();
  for (const f of facts) {
    const key = [f.part, f.place ?? '', basisOf(f)].join('|');
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [f]);
    else group.push(f);
  }
  return [...groups.values()].map((group) => ({
    what: subjectTitle(group[0]),
    says: group.map(sayFact).join('; '),
    how: sayBasis(basisOf(group[0])),
    evidence: fromWords(group.flatMap((f) => f.evidence.slice(0, 2))),
  }));
}

/** Places behind a name: " (left front, right front)". */
export const placesWords = (places: readonly string[]): string =>
  places.length === 0 ? '' : ` (${places.map(placeName).join(', ')})`;
