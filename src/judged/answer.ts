// Why: "works", "holds" and "yes" are one answer; a rule that asks for a word must not care which of them was said.
import { aspectOf } from '../catalogue/index.ts';
import { isState, type Polarity, type State, states } from '../catalogue/state.ts';
import type { Value } from '../said/entry.ts';

/** States that say a thing does not do what it is for. */
const failing: readonly State[] = [
  'fails',
  'broken',
  'stuck',
  'missing',
  'out',
  'tripped',
  'burnt',
  'absent',
  'expired',
  'discharged',
  'separated',
  'rotted',
];

/** What a value answers: every word it may be taken for, and whether it is good news. */
export interface Answer {
  readonly words: readonly string[];
  readonly polarity: Polarity;
}

/** The words a value stands for, said of this part's aspect; undefined for a number or an unknown. */
export function answerOf(part: string, aspect: string, value: Value): Answer | undefined {
  if (value.is === 'text') return { words: [value.text.trim().toLowerCase()], polarity: 'neutral' };
  if (value.is !== 'state' || !isState(value.state)) return undefined;
  const good = aspectOf(part, aspect)?.good;
  const state = value.state;
  if (state === 'yes' || state === 'no') {
    return { words: [state], polarity: good === undefined ? 'neutral' : state === good ? 'good' : 'bad' };
  }
  if (state === 'present' || state === 'absent') {
    const yesNo = state === 'present' ? 'yes' : 'no';
    return {
      words: [state, yesNo],
      polarity: good === undefined ? 'neutral' : yesNo === good ? 'good' : 'bad',
    };
  }
  const polarity = states[state];
  if (good === undefined) return { words: [state], polarity };
  const bad = good === 'yes' ? 'no' : 'yes';
  if (polarity === 'good') return { words: [state, good], polarity };
  // What is slow or noisy still works; what leaks surely has a leak.
  if (polarity === 'bad' && (good === 'no' || failing.includes(state)))
    return { words: [state, bad], polarity };
  return { words: [state], polarity };
}
