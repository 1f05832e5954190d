// Why: praise spoken on the walk is held against the record: what is contradicted or unbacked never reaches a buyer.

import { aspectOf } from '../catalogue/index.ts';
import { states } from '../catalogue/state.ts';
import type { Finding } from '../judged/finding.ts';
import type { Fact } from '../known/facts.ts';
import type { Observation } from '../said/entry.ts';
import { basisOf, weakest } from './basis.ts';
import type { Claim, Unpublished } from './document.ts';
import { isFault } from './fault.ts';
import { evidenceOf, factLine } from './line-claims.ts';
import { subjectWords } from './plain-subject.ts';
import { type PraiseRow, praiseTable } from './praise-table.ts';

const flat = (text: string): string => text.toLowerCase().replaceAll('’', "'").replace(/\s+/g, ' ').trim();

/** What was said, as lower-case words: the clause it was said in, else the claim's own words. */
const praiseWords = (o: Observation): string =>
  flat(
    o.source.from === 'speech' && o.source.words !== '' && o.source.words.length < 200
      ? o.source.words
      : o.value.is === 'text'
        ? o.value.text
        : '',
  );

/** The row of the table that the claim falls under: by the whole clause, the table's order deciding. */
const rowOf = (o: Observation): PraiseRow | undefined =>
  praiseTable.find((r) => r.says.test(praiseWords(o))) ??
  praiseTable.find((r) => o.value.is === 'text' && r.says.test(flat(o.value.text)));

const plainly = (f: Fact): boolean => ['measured', 'seen', 'label', 'figured'].includes(basisOf(f));

/** A fact that is bad news by its own words. Numbers are judged by rules, not here. */
function isBad(f: Fact): boolean {
  if (f.value.is !== 'state') return false;
  const good = aspectOf(f.part, f.aspect)?.good;
  if (good !== undefined) return f.value.state === (good === 'yes' ? 'no' : 'yes');
  return (states as Readonly<Record<string, string>>)[f.value.state] === 'bad';
}

/** The parts a piece of praise speaks of: those of its row and, unless it is the whole coach, the one it was said of. */
const partsOf = (row: PraiseRow | undefined, o: Observation): readonly string[] => [
  ...(row?.about ?? []),
  ...(o.part === 'coach' ? [] : [o.part]),
];

function against(
  parts: readonly string[],
  u: Unpublished,
): { readonly faults: readonly Finding[]; readonly bad: readonly Fact[] } {
  const all = parts.includes('*');
  return {
    faults: u.findings.filter((f) => isFault(f) && (all || parts.includes(f.part))),
    bad: u.facts
      .every()
      .filter((f) => f.standing !== 'unknown' && isBad(f) && (all || parts.includes(f.part))),
  };
}

/** Facts that would have to be known for it, or undefined when one is missing, doubtful or not settled by its rule. */
function support(row: PraiseRow | undefined, u: Unpublished): readonly Fact[] | undefined {
  if (row === undefined || row.needs.length === 0) return undefined;
  const found = row.needs.map((need) => u.facts.all(need.part, need.aspect));
  if (found.some((all) => all.length === 0 || !all.every(plainly))) return undefined;
  const facts = found.flat();
  const open = u.findings.some(
    (g) =>
      g.outcome === 'cannot tell' &&
      facts.some((f) => f.part === g.part && f.aspect === g.aspect && f.place === g.place),
  );
  return open ? undefined : facts;
}

/** What can be said instead, from what is on record about the same parts; otherwise the table's advice. */
function rewordingOf(row: PraiseRow | undefined, parts: readonly string[], u: Unpublished): string {
  const named = row?.needs.flatMap((need) => u.facts.all(need.part, need.aspect)) ?? [];
  const facts = (named.length > 0 ? named : parts.flatMap((p) => (p === '*' ? [] : u.facts.of(p))))
    .filter(plainly)
    .slice(0, 4);
  if (facts.length > 0) return `Say instead: ${facts.map(factLine).join('; ')}.`;
  return row?.instead ?? 'Leave it out, or say what was measured.';
}

const head = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1).replace(/[.!\s]+$/, '');

const unbackedWords = (row: PraiseRow | undefined): string =>
  row === undefined
    ? 'Nothing on record backs this.'
    : row.evidence.startsWith('nothing')
      ? 'No reading can back this.'
      : `Nothing on record backs this; it would take ${row.evidence}.`;

function judged(o: Observation, u: Unpublished): Claim {
  const words = praiseWords(o);
  const row = rowOf(o);
  const parts = partsOf(row, o);
  const { faults, bad } = against(parts, u);
  const base = { id: `praise/${o.id}`, section: 'praise', figures: [], evidence: [o] } as const;
  if (faults.length > 0 || bad.length > 0) {
    const names = [...new Set([...faults.map(subjectWords), ...bad.map(subjectWords)])].slice(0, 4);
    return {
      ...base,
      text: head(words),
      standing: 'contradicted',
      basis: 'none',
      facts: bad,
      findings: faults.map((f) => f.id),
      published: false,
      rewording: `The record says otherwise: ${names.join('; ')}. ${rewordingOf(row, parts, u)}`,
    };
  }
  const facts = support(row, u);
  if (facts !== undefined) {
    return {
      ...base,
      text: `${facts.map(factLine).join('; ')}.`,
      standing: 'backed',
      basis: weakest(facts.map(basisOf)),
      evidence: [o, ...evidenceOf(facts)],
      facts,
      findings: [],
      published: true,
    };
  }
  if (row?.history && o.saidBy !== undefined) {
    return {
      ...base,
      text: `As told by ${o.saidBy}: ${(o.value.is === 'text' ? flat(o.value.text) : words).replace(/[.!\s]+$/, '')}. We have no paper for it.`,
      standing: 'backed',
      basis: 'told',
      facts: [],
      findings: [],
      published: true,
    };
  }
  return {
    ...base,
    text: head(words),
    standing: 'unbacked',
    basis: 'none',
    facts: [],
    findings: [],
    published: false,
    rewording: `${unbackedWords(row)} ${rewordingOf(row, parts, u)}`,
  };
}

/** Every piece of praise on record, judged. Only what is backed, or told as somebody's words, is published. */
export const praise = (u: Unpublished): readonly Claim[] => u.record.claims.map((o) => judged(o, u));
