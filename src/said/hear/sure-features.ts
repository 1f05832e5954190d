// Why: how sure an observation is follows from how it was come by; these are the circumstances that count, the same for every kind.
import { partOf } from '../../catalogue/index.ts';
import type { Clause, Draft } from './clause.ts';
import type { Marks } from './marks.ts';

/** What is looked at, in order; each is a number between 0 and about 2. */
export const sureFeatures = [
  'always',
  'weight',
  'quantity',
  'identity',
  'defect',
  'operates',
  'absent',
  'condition good',
  'condition other',
  'presence',
  'unknown',
  'hedged or hearsay',
  'part named in the clause',
  'part named weakly there',
  'part only said in passing',
  'another part named there',
  'part not named for long',
  'part never named',
  'station is another',
  'part is the whole coach',
  'unit said',
  'several numbers at once',
  'long clause',
  'clause without a stop',
  'general reading',
  'same said again',
  'other found in the clause',
] as const;

/** The features of each draft; drafts in order of their words. Linear in the length of the talk. */
export function featuresOf(
  marks: Marks,
  clauses: readonly Clause[],
  path: readonly string[],
  drafts: readonly Draft[],
): number[][] {
  const clauseAt = new Map(clauses.map((c) => [c.id, c]));
  const named = new Map<string, number>();
  let next = 0;
  const perClause = new Map<number, number>();
  for (const d of drafts) {
    const id = marks.clauseOf[d.at] ?? 0;
    perClause.set(id, (perClause.get(id) ?? 0) + 1);
  }
  return drafts.map((d, i) => {
    const clause = clauseAt.get(marks.clauseOf[d.at] ?? 0);
    for (; next < marks.mentions.length && (marks.mentions[next]?.from ?? 0) < (clause?.from ?? 0); next++) {
      const m = marks.mentions[next];
      if (m) for (const p of m.parts.slice(0, 2)) named.set(p, m.from);
    }
    const own = clause?.mentions ?? [];
    const here = own.filter((m) => m.parts.includes(d.part));
    const last = named.get(d.part);
    const far = last === undefined ? 0 : Math.min(1, Math.max(0, d.at - last - 12) / 60);
    const before = drafts.slice(Math.max(0, i - 5), i);
    const station = path[clause?.index ?? 0];
    const number = d.sense === 'quantity' ? marks.numberAt.from(d.at) : undefined;
    const is = (yes: boolean): number => (yes ? 1 : 0);
    const present = d.aspect === 'present';
    return [
      1,
      d.weight,
      is(d.sense === 'quantity'),
      is(d.sense === 'identity'),
      is(d.sense === 'defect'),
      is(d.sense === 'operates'),
      is(d.sense === 'absent' && !present),
      is(d.sense === 'condition' && d.polarity === 'good'),
      is(d.sense === 'condition' && d.polarity !== 'good' && !present),
      is(present),
      is(d.sense === 'unknown'),
      is(d.hedged || d.saidBy !== undefined),
      is(here.some((m) => !m.weak && !m.aside)),
      is(here.length > 0 && here.every((m) => m.weak)),
      is(here.length > 0 && here.every((m) => m.aside)),
      is(here.length === 0 && own.some((m) => !m.aside)),
      here.length > 0 ? 0 : far,
      is(here.length === 0 && last === undefined),
      is(station !== undefined && partOf(d.part)?.station !== station),
      is(d.part === 'coach'),
      is(number?.unit !== undefined),
      is(d.sense === 'quantity' && (clause?.numbers.length ?? 0) > 1),
      Math.min(2, ((clause?.to ?? 0) - (clause?.from ?? 0)) / 12),
      is(clause !== undefined && (marks.words[clause.to - 1]?.stop ?? 0) === 0),
      is(d.aspect.startsWith('measured_') || d.aspect === 'test_time'),
      is(before.some((o) => o.part === d.part && o.aspect === d.aspect && o.sense === d.sense)),
      is((perClause.get(marks.clauseOf[d.at] ?? 0) ?? 1) > 1),
    ];
  });
}
