// Why: a figure is rounded to the careful side wherever a person reads it; documents are worded from facts and findings that carry it so.
import type { Figure } from '../figured/figure.ts';
import { shownValue } from '../figured/shown-value.ts';
import type { Fact, Facts } from '../known/facts.ts';
import type { Unpublished } from './document.ts';

/** The fact with its figure's value as it is shown; any other fact as it is. */
function shownFact(figures: ReadonlyMap<string, Figure>, fact: Fact): Fact {
  if (fact.figure === undefined) return fact;
  const figure = figures.get(`${fact.figure}/${fact.place ?? ''}`) ?? figures.get(`${fact.figure}/`);
  const value = figure === undefined ? undefined : shownValue(figure);
  return value === undefined || value.is !== fact.value.is ? fact : { ...fact, value };
}

/** The same unit with every figured value rounded as it is shown. Only for wording: verdicts were made with the value as worked out. */
export function withShownFigures(u: Unpublished): Unpublished {
  const figures = new Map(u.figures.map((f) => [`${f.id}/${f.place ?? ''}`, f]));
  const seen = new Map<Fact, Fact>();
  const show = (fact: Fact): Fact => {
    const made = seen.get(fact) ?? shownFact(figures, fact);
    seen.set(fact, made);
    return made;
  };
  const facts: Facts = {
    on: u.facts.on,
    unit: u.facts.unit,
    kind: u.facts.kind,
    get: (part, aspect, place) => {
      const found = u.facts.get(part, aspect, place);
      return found === undefined ? undefined : show(found);
    },
    all: (part, aspect) => u.facts.all(part, aspect).map(show),
    of: (part) => u.facts.of(part).map(show),
    every: () => u.facts.every().map(show),
    mayHave: (part) => u.facts.mayHave(part),
  };
  return {
    ...u,
    facts,
    findings: u.findings.map((f) => (f.fact === undefined ? f : { ...f, fact: show(f.fact) })),
  };
}
