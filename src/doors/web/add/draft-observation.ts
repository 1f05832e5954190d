// Why: what a form holds becomes an observation; one that replaces another keeps the words the other came from.
import type { Aspect } from '../../../catalogue/part.ts';
import { isState, states } from '../../../catalogue/state.ts';
import type { Observation, Value } from '../../../said/entry.ts';
import type { Draft } from '../kept/new-entry.ts';

export interface Manner {
  readonly doubtful: boolean;
  /** Who said so; empty when the writer saw it. */
  readonly saidBy: string;
  readonly note: string;
}

export interface Written {
  readonly part: string;
  /** Empty for no particular place. */
  readonly place: string;
  readonly aspect: Aspect;
  readonly value: Value;
  readonly manner: Manner;
  readonly replaces: Observation | undefined;
  /** The words it is made of, where somebody chose them in a transcript. */
  readonly spoken?: Spoken;
}

/** Words of a transcript: where they stand in the recording, and the walk they belong to. */
export interface Spoken {
  readonly source: Extract<Observation['source'], { readonly from: 'speech' }>;
  readonly walk: string;
}

/** What sort of thing is said, and whether it is good news. */
export function senseOf(aspect: Aspect, value: Value): Pick<Observation, 'sense' | 'polarity'> {
  if (value.is === 'unknown') return { sense: 'unknown', polarity: 'neutral' };
  if (value.is === 'quantity' || value.is === 'count') return { sense: 'quantity', polarity: 'neutral' };
  if (value.is === 'text')
    return { sense: aspect.id === 'claim' ? 'claim' : 'identity', polarity: 'neutral' };
  const { state } = value;
  if (state === 'yes' || state === 'no') {
    const polarity = aspect.good === undefined ? 'neutral' : aspect.good === state ? 'good' : 'bad';
    if (aspect.good === 'no') return { sense: state === 'no' ? 'absent' : 'defect', polarity };
    return { sense: aspect.id === 'present' && state === 'no' ? 'absent' : 'operates', polarity };
  }
  const polarity = isState(state) ? states[state] : 'neutral';
  if (state === 'absent' || state === 'missing') return { sense: 'absent', polarity };
  return { sense: polarity === 'bad' ? 'defect' : 'condition', polarity };
}

/** House default, no source: what one writes down oneself is right 19 times of 20; what one doubts, every other time. */
const sureOf = (manner: Manner): number => (manner.doubtful ? 0.5 : 0.95);

export function draftObservation(w: Written): Draft<'observation'> {
  const note = w.manner.note.trim();
  const saidBy = w.manner.saidBy.trim();
  const heard = w.spoken?.source ?? (w.replaces?.source.from === 'speech' ? w.replaces.source : undefined);
  const walk = w.spoken?.walk ?? w.replaces?.walk;
  return {
    kind: 'observation',
    part: w.part,
    aspect: w.aspect.id,
    value: w.value,
    ...senseOf(w.aspect, w.value),
    hedged: w.manner.doubtful,
    sure: sureOf(w.manner),
    source: heard ?? { from: 'typed', ...(note ? { note } : {}) },
    ...(heard && note ? { note } : {}),
    ...(w.place ? { place: w.place } : {}),
    ...(saidBy ? { saidBy } : {}),
    ...(w.replaces ? { replaces: [w.replaces.id] } : {}),
    ...(walk ? { walk } : {}),
  };
}
