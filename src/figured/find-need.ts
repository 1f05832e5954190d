// Why: an input goes through one door: its unit is converted there, and what may not be used is turned away with the reason.
import type { Fact, Facts } from '../known/facts.ts';
import type { Day } from '../units/day.ts';
import { convert } from '../units/quantity.ts';
import { type Unit, unitFact } from '../units/unit.ts';
import { doubtOf } from './doubt-of.ts';
import type { FigureCard, Given, Lack, Need } from './figure.ts';
import { factKey } from './listed-facts.ts';
import { givenBy, theOne } from './look-up.ts';

/**
 * How a number would move with each thing that is not sure: root -> signed move, in the number's own unit, when that root
 * is off by its half width. Two inputs with the same root move together.
 */
export type Moves = ReadonlyMap<string, number>;

/** An input as found: a number in the need's unit with its moves, or a word. */
export interface Found {
  readonly given: Given;
  readonly have: number | string;
  readonly moves: Moves;
}

const still: Moves = new Map();
const digits = /^\s*\d+(?:\.\d+)?\s*$/;

interface Plain {
  readonly value: number;
  readonly unit: Unit;
  readonly extra: number;
}

/** The number in a value. Of a range the middle, with half its width on top of the doubt. */
function numberIn(given: Given): Plain | undefined {
  const { value } = given;
  if (value.is === 'count') return { value: value.count, unit: '1', extra: 0 };
  if (value.is === 'text' && digits.test(value.text))
    return { value: Number(value.text), unit: '1', extra: 0 };
  if (value.is !== 'quantity') return undefined;
  if (value.upTo === undefined) return { value: value.value, unit: value.unit, extra: 0 };
  return {
    value: (value.value + value.upTo) / 2,
    unit: value.unit,
    extra: Math.abs(value.upTo - value.value) / 2,
  };
}

function wordIn(given: Given): string | undefined {
  const { value } = given;
  if (value.is === 'text') return value.text;
  if (value.is === 'state') return value.state;
  if (value.is === 'count') return String(value.count);
  if (value.is === 'quantity') return String(value.value);
  return undefined;
}

function standsInTheWay(fact: Fact | undefined): Lack | undefined {
  if (fact === undefined) return undefined;
  if (fact.standing !== 'known') return fact.standing;
  return fact.doubts.includes('hearsay') ? 'hearsay' : undefined;
}

/** Takes an input through the door. `movesOf` gives the moves of a figured fact, in the unit of its value. */
export function admit(
  need: Need,
  given: Given,
  on: Day,
  movesOf: (fact: Fact) => Moves | undefined,
): Found | Lack {
  const lack = standsInTheWay(given.fact);
  if (lack) return lack;
  if (given.value.is === 'unknown') return 'unknown';
  if (need.unit === undefined) {
    const word = wordIn(given);
    return word === undefined ? 'unknown' : { given, have: word, moves: still };
  }
  const number = numberIn(given);
  if (number === undefined) return 'not a number';
  const to = need.unit;
  if (unitFact(number.unit).dimension !== unitFact(to).dimension) return 'wrong unit';
  const scale = unitFact(number.unit).factor / unitFact(to).factor;
  const have = convert(number.value, number.unit, to);
  const figured = given.fact && movesOf(given.fact);
  if (figured) return { given, have, moves: new Map([...figured].map(([root, by]) => [root, by * scale])) };
  const half = Math.hypot(doubtOf(given.value, number.unit, given.fact, on), number.extra) * scale;
  if (half === 0) return { given, have, moves: still };
  const root = given.fact ? factKey(given.fact) : `${need.part}/${need.aspect}#${need.name}`;
  return { given, have, moves: new Map([[root, half]]) };
}

/** Finds an input of a card among the facts: the need's own way first, else by part and aspect. */
export function findNeed(
  card: FigureCard,
  need: Need,
  facts: Facts,
  place: string | undefined,
  movesOf: (fact: Fact) => Moves | undefined,
): Found | Lack {
  if (need.find) {
    const given = need.find(facts, place);
    return given ? admit(need, given, facts.on, movesOf) : 'not said';
  }
  const fact =
    card.each === need.part
      ? facts.get(need.part, need.aspect, place)
      : theOne(facts, need.part, need.aspect);
  if (fact === 'several') return 'several places';
  return fact ? admit(need, givenBy(fact), facts.on, movesOf) : 'not said';
}
