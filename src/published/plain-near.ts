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

/** "at its limit", "below its limit by 1/32 in", "within the reading's own doubt of its limit". Empty where no number was compared. */
export function plainNear(f: Finding): string {
  const r = readingOf(f);
  if (r === undefined || f.limit === undefined) return '';
  const away = r.value - f.limit.value;
  const doubt = r.plusOrMinus + (f.limit.plusOrMinus ?? 0);
  if (away === 0) return 'at its limit';
  if (Math.abs(away) < doubt) return "nearer its limit than the reading's own doubt";
  const side = away < 0 ? 'below' : 'above';
  const good = lower.has(f.limit.must) ? away > 0 : away < 0;
  const by = plainQuantity(Math.abs(away), f.limit.unit);
  return good ? `${by} ${side} its limit, on the good side` : `${by} ${side} its limit`;
}
