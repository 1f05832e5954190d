// Why: a plus-or-minus is surer understood as "between this and that".
import type { Value } from '../../../said/entry.ts';
import { sayQuantity } from '../../words/say-value.ts';

/** "Between 11.9 h and 14.1 h"; nothing where no doubt is carried. */
export function sayRange(v: Value): string | undefined {
  if (v.is !== 'quantity' || !v.plusOrMinus) return undefined;
  const digits = Math.max(
    1,
    Math.min(6, 1 + Math.ceil(Math.log10(Math.max(1e-9, Math.abs(v.value) / v.plusOrMinus))) + 1),
  );
  const round = (n: number): number => Number(n.toPrecision(digits));
  const lowest = v.value - v.plusOrMinus;
  const low = v.value >= 0 && lowest < 0 ? 0 : lowest;
  return `Between ${sayQuantity(round(low), v.unit)} and ${sayQuantity(round(v.value + v.plusOrMinus), v.unit)}`;
}
