// Why: what there is to review, in the order in which it deserves a reviewer's eyes.
import type { Packet } from '../../../published/document.ts';
import type { Entry, Observation, Ruling } from '../../../said/entry.ts';
import { callsOn } from '../margin/how-sure.ts';
import { breathsOf } from './breaths.ts';

export interface Proposed {
  readonly of: Observation;
  readonly state: 'waits' | 'accepted' | 'rejected';
  /** What should make a reviewer stop, most serious first. */
  readonly calls: readonly string[];
  /** What else was observed of the same thing and does not agree with it. */
  readonly against: readonly Observation[];
  /** What it takes the place of, when the speaker corrected himself or somebody fixed it. */
  readonly instead: readonly Observation[];
  /** Names the stretch of words it was heard in; what was heard in one breath is reviewed in one look. */
  readonly breath: string;
}

export const orders = ['doubtful first', 'in order', 'only what waits'] as const;
export type Order = (typeof orders)[number];

/**
 * At and above this the hearing is taken to be sure of itself: its "sure" is a probability that holds for strangers
 * (docs/generated/hearing.md), so about nine of ten such observations are right. Not all: accepting them unread is a
 * choice, and says so where it is made.
 */
const surely = 0.8;
const fairly = 0.7;

const isSpoken = (e: Entry): e is Observation => e.kind === 'observation' && e.source.from === 'speech';
const startOf = (o: Observation): number => (o.source.from === 'speech' ? o.source.start : 0);

/** Observation -> what disagrees with it: the other sides of a conflict in the record. */
function disputesIn(packet: Packet): ReadonlyMap<string, readonly Observation[]> {
  const found = new Map<string, readonly Observation[]>();
  for (const known of packet.record.known) {
    if (known.standing !== 'conflict') continue;
    for (const side of known.sides) {
      const others = known.sides.filter((s) => s !== side).flatMap((s) => s.evidence);
      for (const o of side.evidence) found.set(o.id, others);
    }
  }
  return found;
}

/** What a verdict of "stop" rests on: nobody should accept that unread. */
const stopsIn = (packet: Packet): ReadonlySet<string> =>
  new Set(
    packet.findings
      .filter((f) => f.verdict === 'stop')
      .flatMap((f) => f.fact?.evidence.map((o) => o.id) ?? []),
  );

/** Every observation heard in speech, with its state and what calls for attention. In the order in which they were said. */
export function proposedOf(
  entries: readonly Entry[],
  packet: Packet,
  rulings: ReadonlyMap<string, Ruling>,
): readonly Proposed[] {
  const disputes = disputesIn(packet);
  const stops = stopsIn(packet);
  const byId = new Map(entries.flatMap((e) => (e.kind === 'observation' ? [[e.id, e] as const] : [])));
  const replaced = new Set(
    [...byId.values()].flatMap((o) =>
      rulings.get(o.id)?.ruling === 'reject' ? [] : (o.replaces ?? []).filter((id) => id !== o.id),
    ),
  );
  const spoken = entries
    .filter(isSpoken)
    .filter((o) => !replaced.has(o.id))
    .sort((a, b) => startOf(a) - startOf(b) || (a.id < b.id ? -1 : 1));
  const breaths = breathsOf(spoken);
  return spoken.map((o) => {
    const ruling = rulings.get(o.id)?.ruling;
    const instead = [...new Set(o.replaces)].flatMap((id) => byId.get(id) ?? []);
    const against = disputes.get(o.id) ?? [];
    const calls = callsOn(o, against.length > 0);
    return {
      of: o,
      state: ruling === 'accept' ? 'accepted' : ruling === 'reject' ? 'rejected' : 'waits',
      calls: [
        ...(instead.length > 0 ? ['corrected'] : []),
        ...calls,
        ...(stops.has(o.id) ? ['a stop rests on it'] : []),
      ],
      against,
      instead,
      breath: breaths.get(o.id) ?? o.id,
    };
  });
}

const isDisputed = (p: Proposed): boolean => p.against.length > 0 || p.instead.length > 0;

/** 0 contradicted, 1 doubtful in itself, 2 in a breath with something hardly sure, 3 the rest, 4 done. */
function rankOf(p: Proposed, hardly: ReadonlySet<string>): number {
  if (p.state !== 'waits') return 4;
  if (isDisputed(p)) return 0;
  if (p.calls.length > 0) return 1;
  return hardly.has(p.breath) ? 2 : 3;
}

export function orderProposed(all: readonly Proposed[], order: Order): readonly Proposed[] {
  if (order === 'in order') return all;
  if (order === 'only what waits') return all.filter((p) => p.state === 'waits');
  const hardly = new Set(all.filter((p) => isCalm(p) && p.of.sure < fairly).map((p) => p.breath));
  return [...all].sort((a, b) => rankOf(a, hardly) - rankOf(b, hardly));
}

/** Waits, and nothing in it calls for a look of its own: it may be accepted with the others of its breath. */
export const isCalm = (p: Proposed): boolean => p.state === 'waits' && p.calls.length === 0;

/** What may be accepted in one go: nothing calls for attention and it was heard surely. */
export const plainlySure = (p: Proposed): boolean => isCalm(p) && p.of.sure >= surely;

/** Neighbours of a list that are shown and ruled on as one: calm, and of one breath. */
export function together(shown: readonly Proposed[]): readonly (readonly Proposed[])[] {
  const groups: Proposed[][] = [];
  for (const p of shown) {
    const before = groups.at(-1);
    const last = before?.at(-1);
    if (before && last && last.breath === p.breath && last.calls.length === 0 && p.calls.length === 0)
      before.push(p);
    else groups.push([p]);
  }
  return groups;
}
