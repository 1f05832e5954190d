// Why: a value is shown with what is wrong with its evidence, and one good witness is enough to lift a doubt.
import type { Observation } from '../said/entry.ts';
import type { Doubt } from './record.ts';

/** Below this the reader of speech is not very sure of its own proposal. House default: more likely right than wrong. */
const sureEnough = 0.5;

/** The doubts that every observation of a side shares. */
export function doubtsOf(
  side: readonly Observation[],
  isAccepted: (o: Observation) => boolean,
): readonly Doubt[] {
  const all: readonly (readonly [Doubt, (o: Observation) => boolean])[] = [
    ['hedged', (o) => o.hedged],
    ['hearsay', (o) => o.saidBy !== undefined],
    ['not reviewed', (o) => o.source.from === 'speech' && !isAccepted(o)],
    ['on paper only', (o) => o.source.from === 'document'],
    ['unsure', (o) => o.sure < sureEnough && !isAccepted(o)],
  ];
  return all.filter(([, holds]) => side.every(holds)).map(([doubt]) => doubt);
}
