// Why: a figure is kept as it was worked out, and shown rounded to the careful side; this is the one place that rounds.
import type { Value } from '../said/entry.ts';
import { quantity } from '../units/quantity.ts';
import type { Figure } from './figure.ts';

/** A doubt to two figures, upward: 1,679 becomes 1,700, never less than it is. */
function shownDoubt(doubt: number): number {
  if (doubt === 0) return 0;
  const step = 10 ** (Math.floor(Math.log10(doubt)) - 1);
  return Number((Math.ceil(doubt / step - 1e-9) * step).toPrecision(2));
}

/** A worked figure's value as it is shown: rounded by its card, its doubt to two figures upward. Undefined for a gap. */
export function shownValue(figure: Figure): Value | undefined {
  if (figure.result.is !== 'worked') return undefined;
  const { value } = figure.result;
  if (value.is !== 'quantity') return value;
  const q = quantity(value.value, value.unit, value.plusOrMinus);
  const shown = figure.card.round?.(q) ?? q;
  if (shown.plusOrMinus === undefined) return { is: 'quantity', ...shown };
  return { is: 'quantity', ...shown, plusOrMinus: shownDoubt(shown.plusOrMinus) };
}
