// Why: a figure may need another figure's answer, so the cards are worked in the order of who feeds whom.
import type { FigureCard } from './figure.ts';

const giveKey = (card: FigureCard): string => `${card.gives.part}/${card.gives.aspect}`;

/** The cards with every card after those whose answers it needs. Throws on a circle: that is a mistake in the cards. */
export function inOrder(cards: readonly FigureCard[]): readonly FigureCard[] {
  const givers = new Map<string, FigureCard>(cards.map((c) => [giveKey(c), c]));
  const done = new Set<string>();
  const under = new Set<string>();
  const ordered: FigureCard[] = [];
  const visit = (card: FigureCard): void => {
    if (done.has(card.id)) return;
    if (under.has(card.id)) throw new Error(`figures: "${card.id}" needs its own answer`);
    under.add(card.id);
    for (const need of card.needs) {
      const giver = givers.get(`${need.part}/${need.aspect}`);
      if (giver && giver !== card) visit(giver);
    }
    under.delete(card.id);
    done.add(card.id);
    ordered.push(card);
  };
  for (const card of cards) visit(card);
  return ordered;
}
