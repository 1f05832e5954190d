// Why: what there is to review, in the order in which it deserves a reviewer's eyes.
import type { Packet } from '../../../published/document.ts';
import type { Entry, Observation, Ruling } from '../../../said/entry.ts';
import { callsOn } from '../margin/how-sure.ts';

export interface Proposed {
  readonly of: Observation;
  readonly state: 'waits' | 'accepted' | 'rejected' | 'replaced';
  /** What should make a reviewer stop, most serious first. */
  readonly calls: readonly string[];
}

export const orders = ['doubtful first', 'in order', 'only what waits'] as const;
export type Order = (typeof orders)[number];

/** Every observation heard in speech, with its state and what calls for attention. In the order in which they were said. */
export function proposedOf(
  entries: readonly Entry[],
  packet: Packet,
  rulings: ReadonlyMap<string, Ruling>,
): readonly Proposed[] {
  const disputed = new Set(
    packet.record.known
      .filter((k) => k.standing === 'conflict')
      .flatMap((k) => k.sides.flatMap((s) => s.evidence.map((o) => o.id))),
  );
  const replaced = new Set(entries.flatMap((e) => (e.kind === 'observation' ? (e.replaces ?? []) : [])));
  const stateOf = (o: Observation): Proposed['state'] => {
    if (replaced.has(o.id)) return 'replaced';
    const ruling = rulings.get(o.id)?.ruling;
    return ruling === undefined
      ? o.replaces
        ? 'accepted'
        : 'waits'
      : ruling === 'accept'
        ? 'accepted'
        : 'rejected';
  };
  const at = (o: Observation): number => (o.source.from === 'speech' ? o.source.start : 0);
  return entries
    .filter((e): e is Observation => e.kind === 'observation' && e.source.from === 'speech')
    .map((o) => ({ of: o, state: stateOf(o), calls: callsOn(o, disputed.has(o.id)) }))
    .filter((p) => p.state !== 'replaced')
    .sort((a, b) => at(a.of) - at(b.of) || (a.of.id < b.of.id ? -1 : 1));
}

const rank = (p: Proposed): number => {
  if (p.state !== 'waits') return 4;
  if (p.calls.includes('contradicted')) return 0;
  if (p.calls.length > 0) return 1;
  return p.of.sure < 0.75 ? 2 : 3;
};

export function orderProposed(all: readonly Proposed[], order: Order): readonly Proposed[] {
  if (order === 'in order') return all;
  if (order === 'only what waits') return all.filter((p) => p.state === 'waits');
  return [...all].sort((a, b) => rank(a) - rank(b));
}

/** What may be accepted in one go: nothing calls for attention and it was heard surely. */
export const plainlySure = (p: Proposed): boolean =>
  p.state === 'waits' && p.calls.length === 0 && p.of.sure >= 0.9;
