// Why: every figure that a unit's facts allow, and for the others the gap that says what to measure.
import type { Fact, Facts } from '../known/facts.ts';
import type { Figure, FigureCard } from './figure.ts';
import type { Moves } from './find-need.ts';
import { growingFacts } from './growing-facts.ts';
import { inOrder } from './in-order.ts';
import { figureCards } from './index.ts';
import { figureFact } from './lay-figures.ts';
import { workFigure } from './work-figure.ts';

const ordered = inOrder(figureCards);
const rank = new Map(figureCards.map((c, i) => [c.id, i]));

/** False where the unit is known to have none of what the card is about. */
function applies(card: FigureCard, facts: Facts): boolean {
  if (card.appliesTo && !card.appliesTo(facts)) return false;
  if (!facts.mayHave(card.gives.part)) return false;
  return card.needs.every((n) => n.optional || n.find !== undefined || facts.mayHave(n.part));
}

/** The places at which a card is worked; `undefined` stands for no particular place. */
function placesFor(card: FigureCard, facts: Facts): readonly (string | undefined)[] {
  if (card.each === undefined) return [undefined];
  const own = card.needs.filter((n) => n.part === card.each).map((n) => n.aspect);
  const said = facts.of(card.each);
  const places = new Set(said.flatMap((f) => (f.place === undefined ? [] : [f.place])));
  const plain = said.some((f) => f.place === undefined && own.includes(f.aspect));
  if (plain || places.size === 0) return [...places, undefined];
  return [...places];
}

/**
 * Works every card at every place it has to do with, in the order of who needs whom. A card that cannot be worked gives a
 * gap that names what is missing; a card about something the unit does not have gives nothing. Sorted as figureCards is.
 */
export function figureAll(facts: Facts): readonly Figure[] {
  const moves = new Map<string, Moves>();
  const movesOf = (fact: Fact): Moves | undefined =>
    fact.figure === undefined ? undefined : moves.get(`${fact.figure}@${fact.place ?? ''}`);
  const figures: Figure[] = [];
  const growing = growingFacts(facts);
  for (const card of ordered) {
    if (!applies(card, facts)) continue;
    const worked = placesFor(card, growing).map((place) => workFigure(card, growing, place, movesOf));
    for (const w of worked) {
      figures.push(w.figure);
      const fact = figureFact(w.figure);
      if (!fact) continue;
      moves.set(`${card.id}@${fact.place ?? ''}`, w.moves);
      growing.add(fact);
    }
  }
  return figures.sort((a, b) => (rank.get(a.id) ?? 0) - (rank.get(b.id) ?? 0));
}
