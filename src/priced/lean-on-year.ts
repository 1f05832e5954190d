// Why: when adjusted prices still rise or fall with the model year, the year was priced wrongly; say so, do not average it away.
import { weighing } from './adjustment.ts';
import type { AdjustedComparable } from './price.ts';

/**
 * By how many percent the adjusted prices still move per model year (weighted least squares on the logarithm), where that is
 * strong: at least four units of two or more years, and steep and straight enough. Undefined where it is not.
 */
export function leanOnYear(used: readonly AdjustedComparable[]): number | undefined {
  if (used.length < weighing.few || used.some((u) => u.adjusted <= 0)) return undefined;
  const total = used.reduce((sum, u) => sum + u.weight, 0);
  const mean = (of: (u: AdjustedComparable) => number): number =>
    used.reduce((sum, u) => sum + u.weight * of(u), 0) / total;
  const year = (u: AdjustedComparable): number => u.comparable.year;
  const price = (u: AdjustedComparable): number => Math.log(u.adjusted);
  const [meanYear, meanPrice] = [mean(year), mean(price)];
  const spreadYear = mean((u) => (year(u) - meanYear) ** 2);
  const spreadPrice = mean((u) => (price(u) - meanPrice) ** 2);
  if (spreadYear === 0 || spreadPrice === 0) return undefined;
  const together = mean((u) => (year(u) - meanYear) * (price(u) - meanPrice));
  const percent = Math.expm1(together / spreadYear) * 100;
  const correlation = together / Math.sqrt(spreadYear * spreadPrice);
  const isStrong =
    Math.abs(percent) >= weighing.leanPercent && Math.abs(correlation) >= weighing.leanCorrelation;
  return isStrong ? percent : undefined;
}
