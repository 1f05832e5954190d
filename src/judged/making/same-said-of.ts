// Why: one reading is sometimes said of another part ("the generator's volts" of the set, not of its run); the question stays the same.
import type { Rule } from '../rule.ts';

/** The same rule for an answer given under another part or aspect: judged where it was said, expected nowhere. */
export const sameSaidOf = (rule: Rule, under: Pick<Rule, 'id' | 'part' | 'aspect'>): Rule => ({
  ...rule,
  ...under,
  appliesTo: (facts, place) => facts.get(under.part, under.aspect, place) !== undefined,
  expectedAt: () => [],
});
