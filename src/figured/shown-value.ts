// Why: a figure is kept as it was worked out, and shown rounded to the careful side; this is the one place that rounds.
import type { Value } from '../said/entry.ts';
import { quantity } from '../units/quantity.ts';
import type { Figure } from './figure.ts';

/** A worked figure's value as it is shown: rounded by its card. Undefined for a gap. */
export function shownValue(figure: Figure): Value | undefined {
  if (figure.result.is !== 'worked') return undefined;
  const { value } = figure.result;
  if (value.is !== 'quantity' || !figure.card.round) return value;
  const { plusOrMinus } = value;
  const q = quantity(value.value, value.unit, plusOrMinus);
  return { is: 'quantity', ...figure.card.round(q) };
}
