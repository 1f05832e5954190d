// Why: the yard is read in the order of what matters this morning.
import type { YardRow } from '../../wire/api.ts';

export const orders = [
  'what blocks it',
  'the most days here',
  'the most still to look at',
  'the highest price',
  'a name early in the alphabet',
] as const;
export type Order = (typeof orders)[number];

const unseen = (r: YardRow): number => (r.expected > 0 ? 1 - r.seen / r.expected : 1);

const by: Record<Order, (a: YardRow, b: YardRow) => number> = {
  'what blocks it': (a, b) => b.tally.stop - a.tally.stop || b.tally.repair - a.tally.repair,
  'the most days here': (a, b) => (b.daysHere ?? -1) - (a.daysHere ?? -1),
  'the most still to look at': (a, b) => unseen(b) - unseen(a),
  'the highest price': (a, b) => (b.askingCents ?? -1) - (a.askingCents ?? -1),
  'a name early in the alphabet': () => 0,
};

/** Sorted; equals by name, then by id, so that the order never jumps. */
export const sortYard = (rows: readonly YardRow[], order: Order): readonly YardRow[] =>
  [...rows].sort((a, b) => by[order](a, b) || a.name.localeCompare(b.name) || (a.unit < b.unit ? -1 : 1));
