// Why: figures are looked up by the question somebody buying has, not by the name of a formula.
import type { Figure } from '../../../figured/figure.ts';

const questions: readonly { readonly asks: string; readonly about: RegExp }[] = [
  { asks: 'Is it what the papers say it is?', about: /vin|year|recall|title|odometer|hours-per/ },
  { asks: 'How are its tires?', about: /tire|tyre|wheel/ },
  { asks: 'What may it carry and tow?', about: /cargo|axle|load|weight|tow|hitch|tongue|pin|payload/ },
  {
    asks: 'How does it drive?',
    about: /engine|power|brak|grade|climb|turn|speed|fuel|range|road|drive|noise|vibrat|track|accel/,
  },
  {
    asks: 'How long can one stay in it?',
    about: /batter|generator|gas|propane|lp|water|tank|solar|heat|cool|shore|fridge|days|inverter/,
  },
];
const rest = 'What else follows';

export interface Question {
  readonly asks: string;
  readonly figures: readonly Figure[];
}

const gap = (f: Figure): number => (f.result.is === 'gap' ? 1 : 0);

/** Figures under the first question they are about, those with an answer first; questions without a figure are left out. */
export function byQuestion(figures: readonly Figure[]): readonly Question[] {
  const askOf = (f: Figure): string => questions.find((q) => q.about.test(f.id))?.asks ?? rest;
  return [...questions.map((q) => q.asks), rest]
    .map((asks) => ({
      asks,
      figures: figures.filter((f) => askOf(f) === asks).sort((a, b) => gap(a) - gap(b)),
    }))
    .filter((q) => q.figures.length > 0);
}
