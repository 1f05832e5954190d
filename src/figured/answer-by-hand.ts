// Why: a proof asks a figure by its id with numbers by hand and looks at the answer; this is how all of them ask.
import { type Day, day } from '../units/day.ts';
import type { Unit } from '../units/unit.ts';
import { type ByHand, figureByHand, type HandProblem } from './figure-by-hand.ts';
import { figureCardOf } from './index.ts';

/** A figure's answer laid open: a number with its unit, or words; or why there is none. */
export interface Answer {
  readonly number?: number;
  readonly unit?: Unit;
  readonly half?: number;
  readonly words?: string;
  readonly binds?: string;
  readonly note?: string;
  readonly working?: readonly string[];
  readonly refused?: string;
  readonly problems?: readonly HandProblem[];
}

/** Asks a card. Throws when there is no such card. */
export function answerByHand(
  id: string,
  given: Readonly<Record<string, ByHand>>,
  on: Day = day('2026-11-24'),
): Answer {
  const card = figureCardOf(id);
  if (!card) throw new Error(`no figure "${id}"`);
  const figure = figureByHand(card, given, on);
  if ('problems' in figure) return { problems: figure.problems };
  const { result } = figure;
  if (result.is === 'gap') return { refused: result.refused?.refused ?? 'missing' };
  const more = {
    working: result.working,
    ...(result.binds === undefined ? {} : { binds: result.binds }),
    ...(result.note === undefined ? {} : { note: result.note }),
  };
  if (result.value.is === 'quantity')
    return {
      number: result.value.value,
      unit: result.value.unit,
      half: result.value.plusOrMinus ?? 0,
      ...more,
    };
  const words =
    result.value.is === 'text' ? result.value.text : result.value.is === 'state' ? result.value.state : '';
  return { words, ...more };
}
