// Why: a plus-or-minus is surer understood as "between this and that".
import type { Value } from '../../../said/entry.ts';
import { unitFact } from '../../../units/unit.ts';
import { sayNumber } from '../../words/say-value.ts';

/** "Between 11.9 and 14.1 h", as fine as the doubt's own first digit; nothing where no doubt is carried. */
export function sayRange(v: Value): string | undefined {
  if (v.is !== 'quantity' || !v.plusOrMinus) return undefined;
  const digit = Math.floor(Math.log10(v.plusOrMinus));
  const step = 10 ** digit;
  const words = (n: number): string => sayNumber(Math.round(n / step) * step, Math.max(0, -digit));
  const lowest = v.value - v.plusOrMinus;
  const low = v.value >= 0 && lowest < 0 ? 0 : lowest;
  return `Between ${words(low)} and ${words(v.value + v.plusOrMinus)} ${unitFact(v.unit).symbol}`.trimEnd();
}
