// Why: every figure with its inputs, its formula, its source and what it leaves out.
import type { FigureCard, Need } from '../../src/figured/figure.ts';
import { unitFact } from '../../src/units/unit.ts';
import { page } from './page.ts';

/** Every figure in the order of the list. */
export const figuresPage = (cards: readonly FigureCard[]): string =>
  page(
    'Figures',
    `${cards.length} figures. Each carries the doubt of its inputs; one that lacks an input says which.`,
    cards.flatMap(cardText),
  );

const cardText = (card: FigureCard): readonly string[] => [
  `## ${card.id}`,
  '',
  `**${card.asks}** Gives \`${card.gives.part}/${card.gives.aspect}\`${card.gives.unit ? ` in ${unitFact(card.gives.unit).symbol || 'plain numbers'}` : ''}${card.each ? `, at each ${card.each}` : ''}.`,
  '',
  `- From: ${card.needs.map(needText).join('; ')}`,
  `- Formula: \`${card.formula.replaceAll('`', "'")}\``,
  `- Who says so: ${card.cites.map((c) => `${c.source.title}, ${c.clause}: ${c.says} (${c.read === 'from memory' || c.read === 'common practice' ? c.read : `read ${c.read}`})`).join('; ')}`,
  `- Leaves out: ${card.neglects}`,
  `- Checked against: ${card.checkedAgainst}`,
  '',
];

const needText = (n: Need): string =>
  `${n.what}${n.unit && unitFact(n.unit).symbol ? ` (${unitFact(n.unit).symbol})` : ''}${n.optional ? ', if known' : ''}`;
