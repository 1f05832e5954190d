// Why: how near a reading lies to its limit, in words that a buyer needs no number for.
import type { Finding } from '../judged/finding.ts';
import type { Must } from '../judged/rule.ts';
import { inUnit } from '../units/quantity.ts';
import { plainQuantity } from './plain-value.ts';

const lower: ReadonlySet<Must> = new Set<Must>(['at least', 'more than']);

/** The reading of a finding in its limit's unit, where there is one. */
export function readingOf(
  f: Finding,
): { readonly value: number; readonly plusOrMinus: number; readonly upTo?: number } | undefined {
  const v = f.fact?.value;
  if (f.limit === undefined || v?.is !== 'quantity') return undefined;
  const q = inUnit(
    { value: v.value, unit: v.unit, ...(v.plusOrMinus === undefined ? {} : { plusOrMinus: v.plusOrMinus }) },
    f.limit.unit,
  );
  const upTo = v.upTo === undefined ? undefined : inUnit({ value: v.upTo, unit: v.unit }, f.limit.unit).value;
  return { value: q.value, plusOrMinus: q.plusOrMinus ?? 0, ...(upTo === undefined ? {} : { upTo }) };
}

/** A distance is told as finely as it matters: "0.05 in", "3.7 years", "1,130 lb". */
const roughly = (n: number): number => Number(n.toPrecision(n < 1 ? 2 : 3));

/** "at its limit", "1/32 in below its limit", "4/32 in to spare", or that its doubt is wider than that. Empty where no number was compared. */
export function plainNear(f: Finding): string {
  const r = readingOf(f);
  if (r === undefined || f.limit === undefined) return '';
  const away = r.value - f.limit.value;
  const doubt = r.plusOrMinus + (f.limit.plusOrMinus ?? 0);
  if (away === 0) return 'at its limit';
  if (Math.abs(away) < doubt) return "nearer its limit than the reading's own doubt";
  const good = lower.has(f.limit.must) ? away > 0 : away < 0;
  const by = plainQuantity(roughly(Math.abs(away)), f.limit.unit);
  return good ? `${by} to spare` : `${by} ${away < 0 ? 'below' : 'above'} its limit`;
}
