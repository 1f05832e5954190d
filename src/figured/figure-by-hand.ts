// Why: anybody may ask a figure with numbers of their own; what does not fit is told by name, never guessed.
import type { Fact } from '../known/facts.ts';
import type { Value } from '../said/entry.ts';
import type { Day } from '../units/day.ts';
import { isUnit, type Unit, unitFact } from '../units/unit.ts';
import type { Figure, FigureCard, Given, Need } from './figure.ts';
import { admit, findNeed } from './find-need.ts';
import { listedFacts } from './listed-facts.ts';
import { workWith } from './work-figure.ts';

/** An input by hand: a quantity, a plain number in the need's own unit, or a word. */
export type ByHand =
  | { readonly value: number; readonly unit: string; readonly plus_or_minus?: number }
  | number
  | string;

/** What is wrong with one input. `expects`: the need's unit, or the names there are. */
export interface HandProblem {
  readonly code:
    | 'unknown-input'
    | 'missing-input'
    | 'unknown-unit'
    | 'wrong-dimension'
    | 'not-a-number'
    | 'not-a-word';
  readonly name: string;
  readonly expects: string;
}

const expected = (need: Need): string => need.unit ?? 'a word';

function readByHand(need: Need, raw: ByHand): Value | HandProblem {
  const problem = (code: HandProblem['code']): HandProblem => ({
    code,
    name: need.name,
    expects: expected(need),
  });
  if (typeof raw === 'string') {
    if (need.unit !== undefined || raw.trim() === '')
      return problem(need.unit ? 'not-a-number' : 'not-a-word');
    return { is: 'text', text: raw };
  }
  if (typeof raw === 'number') {
    if (!Number.isFinite(raw)) return problem('not-a-number');
    if (need.unit === undefined) return { is: 'text', text: String(raw) };
    return { is: 'quantity', value: raw, unit: need.unit };
  }
  if (typeof raw !== 'object' || raw === null || !Number.isFinite(raw.value)) return problem('not-a-number');
  if (need.unit === undefined) return problem('not-a-word');
  if (!isUnit(raw.unit)) return problem('unknown-unit');
  if (unitFact(raw.unit).dimension !== unitFact(need.unit).dimension) return problem('wrong-dimension');
  const half = raw.plus_or_minus;
  if (half !== undefined && !(Number.isFinite(half) && half >= 0)) return problem('not-a-number');
  const unit: Unit = raw.unit;
  return { is: 'quantity', value: raw.value, unit, ...(half === undefined ? {} : { plusOrMinus: half }) };
}

const isProblem = (v: Value | HandProblem): v is HandProblem => 'code' in v;

/** A given value as a fact, so that a supposed value that hangs on it (by chemistry, by fuel) finds it. */
const factOf = (need: Need, value: Value): Fact => ({
  part: need.part,
  aspect: need.aspect,
  standing: 'known',
  value,
  sides: [],
  doubts: [],
  evidence: [],
});

/** Works one card from inputs by name. What is not given is supposed where the card supposes it, else it is a problem. */
export function figureByHand(
  card: FigureCard,
  given: Readonly<Record<string, ByHand>>,
  on: Day,
): Figure | { readonly problems: readonly HandProblem[] } {
  const problems: HandProblem[] = [];
  const values = new Map<string, Value>();
  for (const [name, raw] of Object.entries(given)) {
    const need = card.needs.find((n) => n.name === name);
    if (!need) {
      problems.push({ code: 'unknown-input', name, expects: card.needs.map((n) => n.name).join(', ') });
      continue;
    }
    const value = readByHand(need, raw);
    if (isProblem(value)) problems.push(value);
    else values.set(name, value);
  }
  const around = {
    on,
    unit: { id: '', equipment: {}, invented: false, putAway: false },
    kind: undefined,
    mayHave: () => true,
  };
  const facts = listedFacts(
    card.needs.flatMap((n) => {
      const value = values.get(n.name);
      return value && n.part !== 'supposed' ? [factOf(n, value)] : [];
    }),
    around,
  );
  const worked = workWith(card, undefined, on, (need) => {
    const value = values.get(need.name);
    if (value) return admit(need, { value, from: 'given' } satisfies Given, on, () => undefined);
    return need.find ? findNeed(card, need, facts, undefined, () => undefined) : 'not said';
  });
  if (worked.figure.result.is === 'gap') {
    for (const need of worked.figure.result.missing) {
      if (!problems.some((p) => p.name === need.name))
        problems.push({ code: 'missing-input', name: need.name, expects: expected(need) });
    }
  }
  return problems.length > 0 ? { problems } : worked.figure;
}
