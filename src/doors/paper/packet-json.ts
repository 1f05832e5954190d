// Why: another program must be able to read a packet without knowing this software; the shape is written down in the guide.
import { aspectOf } from '../../catalogue/index.ts';
import type { AppliedLimit } from '../../judged/finding.ts';
import type { Fact } from '../../known/facts.ts';
import { basisOf } from '../../published/basis.ts';
import type { Claim, Packet } from '../../published/document.ts';
import { plainValue } from '../../published/plain-value.ts';
import type { Citation } from '../../standards/standard.ts';

/** Raised when a field changes its meaning or goes; a new field does not raise it. */
const version = 1;

const cite = (c: Citation) => ({
  source: c.source.title,
  publisher: c.source.publisher,
  edition: c.source.edition,
  standing: c.source.standing,
  clause: c.clause,
  says: c.says,
  read: c.read,
});
const limit = (l: AppliedLimit) => ({
  must: l.must,
  value: l.value,
  unit: l.unit,
  plusOrMinus: l.plusOrMinus,
  standing: l.standing,
  source: l.source,
  clause: l.clause,
});
const fact = (f: Fact) => ({
  part: f.part,
  place: f.place,
  aspect: f.aspect,
  standing: f.standing,
  value: f.value,
  sides: f.standing === 'conflict' ? f.sides.map((s) => s.value) : undefined,
  words: plainValue(f.value, aspectOf(f.part, f.aspect)),
  basis: basisOf(f),
  doubts: f.doubts,
  figure: f.figure,
  observations: f.evidence.map((o) => o.id),
});
const claim = (c: Claim) => ({
  id: c.id,
  section: c.section,
  text: c.text,
  standing: c.standing,
  basis: c.basis,
  published: c.published,
  rewording: c.rewording,
  facts: c.facts.map((f) => ({ part: f.part, place: f.place, aspect: f.aspect })),
  figures: c.figures,
  findings: c.findings,
  paper: c.paper,
  station: c.station,
  observations: c.evidence.map((o) => o.id),
});

/** Every claim, published or not, with what stands behind it. */
export const claimsJson = (p: Packet) => ({
  format: 'walkwright-claims',
  version,
  on: p.on,
  unit: p.record.unit.id,
  invented: p.record.unit.invented,
  claims: p.claims.map(claim),
});

/** The packet: unit, observations, facts, findings, figures, claims, jobs, price, coverage, chapters. Units are UCUM codes, money is in cents. */
export function packetJson(p: Packet) {
  const { record } = p;
  return {
    format: 'walkwright-packet',
    version,
    on: p.on,
    unit: record.unit,
    observations: [...record.standing.values()],
    facts: p.facts.every().map(fact),
    findings: p.findings.map((f) => ({
      id: f.id,
      rule: f.rule,
      part: f.part,
      place: f.place,
      aspect: f.aspect,
      verdict: f.verdict,
      outcome: f.outcome,
      weight: f.weight,
      asks: f.asks,
      reason: f.reason,
      limit: f.limit === undefined ? undefined : limit(f.limit),
      limits: f.limits.map(limit),
      margin: f.margin,
      next: f.next,
      who: f.who,
      caution: f.caution,
      cites: [...(f.limit?.cites ?? []), ...f.cites].map(cite),
      observations: f.fact?.evidence.map((o) => o.id) ?? [],
    })),
    figures: p.figures.map((f) => ({
      id: f.id,
      place: f.place,
      asks: f.card.asks,
      result:
        f.result.is === 'worked'
          ? f.result
          : { is: 'gap', missing: f.result.missing.map((n) => n.what), refused: f.result.refused },
      inputs: f.inputs.map(({ need, given }) => ({
        name: need.name,
        what: need.what,
        value: given.value,
        from: given.from,
      })),
      formula: f.card.formula,
      neglects: f.card.neglects,
      drivenBy: f.drivenBy,
      cites: f.card.cites.map(cite),
    })),
    claims: p.claims.map(claim),
    jobs: p.jobs,
    price: p.price,
    coverage: record.coverage,
    chapters: p.chapters,
  };
}

/** Indented JSON with a line feed at its end. */
export const jsonText = (value: unknown): string => `${JSON.stringify(value, undefined, 2)}\n`;
