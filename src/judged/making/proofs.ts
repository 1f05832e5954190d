// Why: every rule proves the same cases besides its own: nobody looked, nobody could, and a reading of the wrong kind.
import type { Value } from '../../said/entry.ts';
import type { Unit } from '../../units/unit.ts';
import { unitFact } from '../../units/unit.ts';
import type { Outcome, Proof, ProofFact, Verdict } from '../rule.ts';

/** A number, its plus-or-minus where it has one, and what must come of it. */
export type NumberCase = readonly [value: number, outcome: Outcome, verdict: Verdict, plusOrMinus?: number];

/** A word ("works", or a text in quotes of the rule), and what must come of it. */
export type WordCase = readonly [word: string, outcome: Outcome, verdict: Verdict];

const nobodyLooked: Proof = { given: undefined, outcome: 'cannot tell', verdict: 'not seen' };
const nobodyCould: Proof = {
  given: { is: 'unknown', why: 'could not be reached' },
  outcome: 'cannot tell',
  verdict: 'not seen',
};

/** Proofs of a rule with numbers, in `unit` ("1" for a count), and the three that every rule has. */
export function numberProofs(
  unit: Unit,
  cases: readonly NumberCase[],
  beside: readonly ProofFact[] = [],
): [Proof, ...Proof[]] {
  const other: Unit = unitFact(unit).dimension === 'current' ? 'V' : 'A';
  return [
    nobodyLooked,
    nobodyCould,
    withBeside(
      { given: { is: 'quantity', value: 5, unit: other }, outcome: 'cannot tell', verdict: 'not seen' },
      beside,
    ),
    ...cases.map(([value, outcome, verdict, plusOrMinus]) =>
      withBeside({ given: numberValue(value, unit, plusOrMinus), outcome, verdict }, beside),
    ),
  ];
}

/** Proofs of a rule with words; `asText` for aspects that take a phrase, not a state. */
export function wordProofs(cases: readonly WordCase[], asText = false): [Proof, ...Proof[]] {
  return [
    nobodyLooked,
    nobodyCould,
    { given: { is: 'text', text: 'a word of no list' }, outcome: 'cannot tell', verdict: 'not seen' },
    { given: { is: 'state', state: 'noted' }, outcome: 'cannot tell', verdict: 'not seen' },
    ...cases.map(
      ([word, outcome, verdict]): Proof => ({
        given: asText ? { is: 'text', text: word } : { is: 'state', state: word as 'yes' },
        outcome,
        verdict,
      }),
    ),
  ];
}

function numberValue(value: number, unit: Unit, plusOrMinus: number | undefined): Value {
  if (unit === '1' && plusOrMinus === undefined) return { is: 'count', count: value };
  return plusOrMinus === undefined
    ? { is: 'quantity', value, unit }
    : { is: 'quantity', value, unit, plusOrMinus };
}

const withBeside = (proof: Proof, beside: readonly ProofFact[]): Proof =>
  beside.length > 0 ? { ...proof, beside } : proof;

/** A date as it stands on a case ("2019", "2019-11", "2019-11-24"), and what must come of it on 2026-11-24. */
export const dateProofs = (cases: readonly WordCase[]): Proof[] =>
  cases.map(([text, outcome, verdict]) => ({ given: { is: 'text', text }, outcome, verdict }));
