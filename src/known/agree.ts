// Why: two people who say the same thing differently agree; only a real contradiction may be called a conflict.
import type { Aspect } from '../catalogue/part.ts';
import { type State, states } from '../catalogue/state.ts';
import type { Value } from '../said/entry.ts';
import { isSameDimension } from '../units/quantity.ts';
import { unitFact } from '../units/unit.ts';
import { digitDoubt } from './digit-doubt.ts';
import { yesOrNo } from './yes-or-no.ts';

type Quantity = Extract<Value, { is: 'quantity' }>;

/**
 * True unless the two values contradict each other. Quantities: farther apart than both their plus-or-minus together, or of
 * different dimensions. Yes and no, in whatever words. States: one good news and the other bad, or a pair of opposites.
 * Texts: other words, where the aspect takes one answer. Values that cannot be compared ("low" beside 95 psi) do not.
 */
export function agree(a: Value, b: Value, aspect: Aspect | undefined): boolean {
  if (a.is === 'unknown' || b.is === 'unknown') return true;
  const yesA = yesOrNo(a, aspect);
  const yesB = yesOrNo(b, aspect);
  if (yesA !== undefined && yesB !== undefined) return yesA === yesB;
  if (a.is === 'quantity' && b.is === 'quantity') return overlap(a, b, aspect);
  if (a.is === 'count' && b.is === 'count')
    return a.count === b.count && (a.of === undefined || b.of === undefined || a.of === b.of);
  if (a.is === 'state' && b.is === 'state') return !isOpposite(a.state, b.state);
  const numberA = plainNumber(a);
  const numberB = plainNumber(b);
  if (numberA !== undefined && numberB !== undefined) return numberA === numberB;
  if (a.is === 'text' && b.is === 'text') return takesMany(aspect) || sameWords(a.text, b.text, aspect);
  return true;
}

function overlap(a: Quantity, b: Quantity, aspect: Aspect | undefined): boolean {
  if (!isSameDimension(a.unit, b.unit)) return false;
  const [lowA, highA] = spanOf(a, aspect);
  const [lowB, highB] = spanOf(b, aspect);
  const slack = 1e-9 * Math.max(Math.abs(highA), Math.abs(highB));
  return lowA <= highB + slack && lowB <= highA + slack;
}

/** The least and the most it may be, in the dimension's base unit. */
function spanOf(q: Quantity, aspect: Aspect | undefined): readonly [low: number, high: number] {
  const { factor, offset = 0 } = unitFact(q.unit);
  const doubt = q.plusOrMinus ?? (aspect?.kind === 'year' ? 0 : digitDoubt(q.value));
  const ends = [q.value, q.upTo ?? q.value];
  return [(Math.min(...ends) - doubt) * factor + offset, (Math.max(...ends) + doubt) * factor + offset];
}

const opposites: readonly (readonly [State, State])[] = [
  ['full', 'empty'],
  ['hot', 'cold'],
  ['new', 'worn'],
];

function isOpposite(a: State, b: State): boolean {
  if (opposites.some(([x, y]) => (a === x && b === y) || (a === y && b === x))) return true;
  return (states[a] === 'good' && states[b] === 'bad') || (states[a] === 'bad' && states[b] === 'good');
}

/** A number where the value is nothing but one: a count, a bare ratio or years, digits as text ("2016"). */
function plainNumber(v: Value): number | undefined {
  if (v.is === 'count') return v.count;
  if (v.is === 'quantity' && (v.unit === '1' || v.unit === 'a')) return v.value;
  if (v.is === 'text' && /^\d+(\.\d+)?$/.test(v.text.trim())) return Number(v.text);
  return undefined;
}

/** Descriptions and notes may be many and all true. */
const takesMany = (aspect: Aspect | undefined): boolean =>
  aspect?.kind === 'condition' || aspect?.kind === 'yes-no' || aspect?.id === 'note';

function sameWords(a: string, b: string, aspect: Aspect | undefined): boolean {
  const isCode = aspect?.kind === 'vin' || aspect?.kind === 'date-code';
  const plain = (text: string): string =>
    isCode ? text.toLowerCase().replace(/[^a-z0-9]/g, '') : text.toLowerCase().trim().replace(/\s+/g, ' ');
  return plain(a) === plain(b);
}
