// Why: a plus-or-minus is surer understood as "between this and that".
import type { Value } from '../../../said/entry.ts';
import { sayQuantity } from '../../words/say-value.ts';

/** "Between 11.9 h and 14.1 h", as fine as the doubt's own first digit; nothing where no doubt is carried. */
export function sayRange(v: Value): string | undefined {
  if (v.is !== 'quantity' || !v.plusOrMinus) return undefined;
  const step = 10 ** Math.floor(Math.log10(v.plusOrMinus));
  const round = (n: number): number => Number((Math.round(n / step) * step).toPrecision(12));
  const lowest = v.value - v.plusOrMinus;
  const low = v.value >= 0 && lowest < 0 ? 0 : lowest;
  return `Between ${sayQuantity(round(low), v.unit)} and ${sayQuantity(round(v.value + v.plusOrMinus), v.unit)}`;
}
