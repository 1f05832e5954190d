// Why: figures are looked up by the question somebody buying has, not by the name of a formula.
import type { Figure } from '../../../figured/figure.ts';

/** In the order in which they are asked. */
const papers = 'Is it what the papers say it is?';
const tires = 'How are its tires?';
const carry = 'What may it carry and tow?';
const drive = 'How does it drive?';
const stay = 'How long can one stay in it?';
const rest = 'What else follows';
const order = [papers, tires, carry, drive, stay, rest];

/** The first that a figure's name is about; one that is about none stands under the last question, never nowhere. */
const about: readonly (readonly [question: string, name: RegExp])[] = [
  [papers, /vin|year|recall|title|odometer/],
  [tires, /tire|wheel/],
  [stay, /battery|generator|lp-|water|solar|shore|ac-|heat|cool|fridge|inverter|tank/],
  [carry, /cargo|axle|load|weight|tow|hitch|tongue|pin-/],
  [drive, /engine|power|brak|stopping|grade|climb|turn|swing|speed|fuel|range|road|noise|vibrat|track/],
];

export interface Question {
  readonly asks: string;
  readonly figures: readonly Figure[];
}

const questionOf = (f: Figure): string => about.find(([, name]) => name.test(f.id))?.[0] ?? rest;
const gap = (f: Figure): number => (f.result.is === 'gap' ? 1 : 0);

/** Figures under the question they are about, those with an answer first; questions without a figure are left out. */
export function byQuestion(figures: readonly Figure[]): readonly Question[] {
  return order
    .map((asks) => ({
      asks,
      figures: figures.filter((f) => questionOf(f) === asks).sort((a, b) => gap(a) - gap(b)),
    }))
    .filter((q) => q.figures.length > 0);
}
