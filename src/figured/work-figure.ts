// Why: one card at one place: find its inputs, work it, say how sure it is, or name what is missing.
import { aspectOf } from '../catalogue/index.ts';
import { isState } from '../catalogue/state.ts';
import type { Fact, Facts } from '../known/facts.ts';
import type { Value } from '../said/entry.ts';
import type { Figure, FigureCard, Have, Lack, Need, Refused, Worked } from './figure.ts';
import { type Found, findNeed, type Moves } from './find-need.ts';
import { halfWidth, propagate, type Spread, shares } from './propagate.ts';

/** A figure with how it would move, for the figures that are worked out from it. */
export interface WorkedFigure {
  readonly figure: Figure;
  readonly moves: Moves;
}

const none: Moves = new Map();

/** Long whole numbers of the working in groups of three: 12860 lb as 12,860 lb. */
const grouped = (line: string): string =>
  line.replace(/(?<![\d.,])\d{5,}(?![\d])/g, (n) => n.replace(/\B(?=(\d{3})+$)/g, ','));

function answerOf(card: FigureCard, worked: Worked, spread: Spread): Value {
  const { unit, part, aspect } = card.gives;
  if (typeof worked.value === 'number') {
    if (unit === undefined) throw new TypeError(`figure ${card.id}: a number needs a unit in "gives"`);
    const half = halfWidth(spread.moves, worked.ownDoubt ?? 0);
    return { is: 'quantity', value: worked.value, unit, ...(half > 0 ? { plusOrMinus: half } : {}) };
  }
  const kind = aspectOf(part, aspect)?.kind;
  const isStateful = kind === 'yes-no' || kind === 'condition';
  return isStateful && isState(worked.value)
    ? { is: 'state', state: worked.value }
    : { is: 'text', text: worked.value };
}

/** Inputs as found, in the card's order; and why the others are missing. */
function gather(
  card: FigureCard,
  find: (need: Need) => Found | Lack,
): { found: Map<string, Found>; why: Record<string, Lack> } {
  const found = new Map<string, Found>();
  const why: Record<string, Lack> = {};
  for (const need of card.needs) {
    const one = find(need);
    if (typeof one === 'string') why[need.name] = one;
    else found.set(need.name, one);
  }
  return { found, why };
}

/** What hangs on one fact (capacity and voltage on the kind of battery) is asked for once. */
const isFirstOfItsFact = (need: Need, at: number, all: readonly Need[]): boolean =>
  all.findIndex((n) => n.part === need.part && n.aspect === need.aspect) === at;

/** Works a card from inputs that `find` hands over. */
export function workWith(
  card: FigureCard,
  place: string | undefined,
  on: string,
  find: (need: Need) => Found | Lack,
): WorkedFigure {
  const { found, why } = gather(card, find);
  const inputs = card.needs.flatMap((need) => {
    const f = found.get(need.name);
    return f ? [{ need, given: f.given }] : [];
  });
  const base = { id: card.id, card, ...(place === undefined ? {} : { place }), inputs };
  const gap = (missing: readonly Need[], refused?: Refused): WorkedFigure => ({
    figure: { ...base, drivenBy: [], result: { is: 'gap', missing, ...(refused ? { refused } : {}), why } },
    moves: none,
  });

  const missing = card.needs.filter((n) => !n.optional && !found.has(n.name));
  if (missing.length > 0) return gap(missing.filter(isFirstOfItsFact));
  const have: Have = { on, ...Object.fromEntries([...found].map(([name, f]) => [name, f.have])) };
  const worked = card.work(have);
  if ('refused' in worked)
    return gap(
      card.needs.filter((n) => worked.lacks?.includes(n.name)),
      worked,
    );
  const spread = propagate(card, have, found, worked);
  if ('refused' in spread) return gap([], spread);

  const leftOut = Object.fromEntries(Object.entries(why).filter(([, lack]) => lack !== 'not said'));
  const own = worked.ownDoubt ?? 0;
  const moves = new Map(spread.moves);
  if (own !== 0) moves.set(`figure:${card.id}@${place ?? ''}`, own);
  return {
    figure: {
      ...base,
      drivenBy: shares(spread, own),
      result: {
        is: 'worked',
        value: answerOf(card, worked, spread),
        working: worked.working.map(grouped),
        ...(worked.binds === undefined ? {} : { binds: worked.binds }),
        ...(worked.note === undefined ? {} : { note: worked.note }),
        ...(Object.keys(leftOut).length === 0 ? {} : { leftOut }),
      },
    },
    moves,
  };
}

/** Works a card at a place from the facts. `movesOf` knows how facts that were figured before move. */
export const workFigure = (
  card: FigureCard,
  facts: Facts,
  place: string | undefined,
  movesOf: (fact: Fact) => Moves | undefined,
): WorkedFigure => workWith(card, place, facts.on, (need) => findNeed(card, need, facts, place, movesOf));
