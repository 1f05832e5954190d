// Why: what is known of a unit, put to every rule that applies; then what was seen broken and no rule has a number for.
import { partOf, stations } from '../catalogue/index.ts';
import type { Fact, Facts } from '../known/facts.ts';
import type { Finding } from './finding.ts';
import { judgeOne } from './judge-one.ts';
import type { Rule } from './rule.ts';
import { rules } from './rules/index.ts';
import { sighted } from './sighted.ts';
import { badness } from './verdict.ts';

const stationOrder = new Map(stations.map((s, i) => [s.id, i]));

/**
 * Every rule's finding on a unit, and everything else that was seen to be wrong; worst first, then in the order of the
 * walk. What nobody looked at is a finding too.
 */
export function judge(facts: Facts): readonly Finding[] {
  const judged = rules.flatMap((rule) => judgeRule(rule, facts));
  return [...judged, ...sighted(facts, judged)].sort(byVerdictThenStation);
}

/** One rule's findings: at each place that something was said of, and at each where something ought to have been. */
export function judgeRule(rule: Rule, facts: Facts): readonly Finding[] {
  if (!facts.mayHave(rule.part)) return [];
  const applies = (place: string | undefined): boolean => rule.appliesTo?.(facts, place) ?? true;
  const said = saidOf(rule, facts);
  const found = said.filter((f) => applies(f.place)).map((f) => judgeOne(rule, f, facts));
  // Said of no particular place and of none in particular besides: it was said of all of them.
  if (said.length > 0 && said.every((f) => f.place === undefined)) return found;
  const expected: readonly (string | undefined)[] = rule.expectedAt
    ? rule.expectedAt(facts)
    : said.length > 0
      ? []
      : [undefined];
  const missing = expected.filter((place) => !said.some((f) => f.place === place) && applies(place));
  return [...found, ...missing.map((place) => judgeOne(rule, undefined, facts, place))];
}

/** What was said to the rule's question: under its own aspect, or where that is silent under another one. */
function saidOf(rule: Rule, facts: Facts): readonly Fact[] {
  const said = facts.all(rule.part, rule.aspect);
  if (!rule.also) return said;
  const all = [...said];
  for (const f of rule.also.flatMap((aspect) => facts.all(rule.part, aspect))) {
    if (!all.some((g) => g.place === f.place)) all.push(f);
  }
  return all;
}

function byVerdictThenStation(a: Finding, b: Finding): number {
  const station = (f: Finding): number => stationOrder.get(partOf(f.part)?.station ?? '') ?? stations.length;
  return badness(b.verdict) - badness(a.verdict) || station(a) - station(b);
}
