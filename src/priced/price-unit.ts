// Why: what units like this one say it is worth, as a range with every step in the open, or plainly nothing.
import type { Facts } from '../known/facts.ts';
import type { Job } from '../planned/job.ts';
import type { Comparable } from '../said/entry.ts';
import { type Cents, cents } from '../units/money.ts';
import { adjustComparable, baseOf } from './adjust-comparable.ts';
import { type Rates, ratesFor, weighing } from './adjustment.ts';
import { dropRepeats } from './drop-repeats.ts';
import { leanOnYear } from './lean-on-year.ts';
import { ownFigures } from './own-figures.ts';
import type { AdjustedComparable, PriceView, WorkBeside } from './price.ts';
import { weightedQuantile } from './weighted-quantile.ts';

/** What a person may set: rates instead of the usual ones, and by how much a comparable (by ref) is worse (+) in condition. */
export interface PriceSettings {
  readonly rates?: Partial<Rates>;
  readonly condition?: Readonly<Record<string, Cents>>;
}

/**
 * The middle half (weighted, interpolated quartiles) of the comparables brought to this unit, rounded outward to $500. A gap
 * when the kind of vehicle is not known or fewer than two comparables can be used. The unit's own work is not taken off.
 */
export function price(
  comparables: readonly Comparable[],
  facts: Facts,
  jobs: readonly Job[],
  settings: PriceSettings = {},
): PriceView {
  const kind = facts.kind;
  if (kind === undefined) return { is: 'gap', missing: ['vehicle-kind'], leftOut: [] };
  const rates = { ...ratesFor(kind), ...settings.rates };
  const { own, cautions } = ownFigures(facts);
  const { kept, repeats } = dropRepeats(comparables);
  const used: AdjustedComparable[] = [];
  const leftOut: AdjustedComparable[] = repeats.map((r) => bare(r.comparable, rates, `same-unit:${r.of}`));
  for (const c of kept) {
    const base = baseOf(c, rates);
    if (c.vehicle !== kind) leftOut.push(bare(c, rates, 'other-kind'));
    else if (base === undefined || base === 0) leftOut.push(bare(c, rates, 'no-price'));
    else if (c.on > facts.on) leftOut.push(bare(c, rates, 'later-day'));
    else {
      const adjusted = adjustComparable(c, base, own, rates, facts.on, settings.condition?.[c.ref]);
      if (adjusted.grossPercent > weighing.dropPercent)
        leftOut.push({ ...adjusted, weight: 0, leftOut: 'gross-over-40' });
      else used.push(adjusted);
    }
  }
  if (used.length < 2) return { is: 'gap', missing: ['comparables'], leftOut };
  const weighted = used.map((u) => ({ value: u.adjusted, weight: u.weight }));
  const at = (p: number): number => weightedQuantile(weighted, p) / (weighing.roundTo * 100);
  const step = (n: number): Cents => cents(n * weighing.roundTo * 100);
  return {
    is: 'priced',
    low: step(Math.floor(at(0.25))),
    middle: step(Math.round(at(0.5))),
    high: step(Math.ceil(at(0.75))),
    used: used.toSorted((a, b) => b.weight - a.weight || (a.comparable.ref < b.comparable.ref ? -1 : 1)),
    leftOut,
    cautions: [...cautionsOf(used, facts), ...cautions],
    work: workBeside(jobs),
  };
}

const bare = (comparable: Comparable, rates: Rates, leftOut: string): AdjustedComparable => {
  const base = baseOf(comparable, rates) ?? cents(0);
  return { comparable, base, adjustments: [], adjusted: base, grossPercent: 0, weight: 0, leftOut };
};

function cautionsOf(used: readonly AdjustedComparable[], facts: Facts): readonly string[] {
  const lean = leanOnYear(used);
  return [
    ...(used.length < weighing.few ? ['few'] : []),
    ...(used.every((u) => u.comparable.soldCents === undefined) ? ['asks-only'] : []),
    ...(lean === undefined ? [] : [`year-lean:${lean.toFixed(1)}`]),
    ...(areTwoGroups(used) ? ['two-groups'] : []),
    ...(used.some((u) => u.comparable.year >= Number(facts.on.slice(0, 4))) ? ['new-among-used'] : []),
    ...used.filter((u) => u.grossPercent > weighing.weakPercent).map((u) => `weak:${u.comparable.ref}`),
  ];
}

/** Two or more on each side of a gap that is over half of the whole spread and over 5 % of the price. House default. */
function areTwoGroups(used: readonly AdjustedComparable[]): boolean {
  const prices = used.map((u) => u.adjusted).toSorted((a, b) => a - b);
  const spread = prices.at(-1)! - prices[0]!;
  return prices.some((p, i) => {
    if (i < 2 || i > prices.length - 2) return false;
    const gap = p - prices[i - 1]!;
    return gap > spread / 2 && gap > 0.05 * p;
  });
}

function workBeside(jobs: readonly Job[]): WorkBeside {
  const total = (of: readonly Job[], end: 0 | 1): Cents =>
    cents(of.reduce((sum, j) => sum + (j.cost?.[end] ?? 0), 0));
  const before = jobs.filter((j) => j.policy === 'before sale');
  const left = jobs.filter((j) => j.policy !== 'before sale');
  return {
    before: [total(before, 0), total(before, 1)],
    left: [total(left, 0), total(left, 1)],
    unpriced: jobs.filter((j) => j.cost === undefined).length,
  };
}
