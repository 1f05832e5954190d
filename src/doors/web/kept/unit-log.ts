// Why: the log of the unit on screen: what the server has kept, with what still waits on this device at its end.
import type { Kept } from '../../../keep/log.ts';
import type { Entry } from '../../../said/entry.ts';
import type { EntriesReply, Problem } from '../../wire/api.ts';
import { ask } from '../ask/ask.ts';
import { watchLive } from './live.ts';
import { outbox, watchOutbox } from './outbox.ts';

/** What is at hand of a unit's log. `entries` is the same array until something is added. */
export interface UnitLogView {
  readonly state: 'fetching' | 'here' | 'not here';
  readonly entries: readonly Entry[];
  readonly problem?: Problem;
}

export interface UnitLog {
  readonly view: () => UnitLogView;
  readonly watch: (listener: () => void) => () => void;
  readonly fetchNew: () => void;
}

/** Opens the log of a unit: fetches it, and then whatever is added to it while somebody watches. */
export function openUnitLog(unit: string): UnitLog {
  const kept = new Map<string, Kept>();
  /** Written here: shown until the server's own copy has come back, so that nothing flickers out between the two. */
  const mine = new Map<string, Entry>();
  const listeners = new Set<() => void>();
  let last = 0;
  let view: UnitLogView = { state: 'fetching', entries: [] };
  let fetching = false;
  let more = false;

  const show = (next: Omit<UnitLogView, 'entries'>): void => {
    const box = outbox();
    for (const e of box.waiting) if (e.unit === unit) mine.set(e.id, e);
    for (const r of box.refused) mine.delete(r.entry.id);
    for (const id of mine.keys()) if (kept.has(id)) mine.delete(id);
    const entries = [...[...kept.values()].map((k) => k.entry), ...mine.values()];
    const same =
      entries.length === view.entries.length && entries.every((e, i) => e.id === view.entries[i]?.id);
    view = { ...next, entries: same ? view.entries : entries };
    for (const l of listeners) l();
  };

  const fetchNew = async (): Promise<void> => {
    if (fetching) {
      more = true;
      return;
    }
    fetching = true;
    const reply = await ask<EntriesReply>(`/api/units/${unit}/entries?after=${last}`);
    fetching = false;
    if (reply.ok) {
      for (const k of reply.value.entries) kept.set(k.entry.id, k);
      const before = last;
      last = Math.max(last, reply.value.entries.at(-1)?.position ?? 0);
      show({ state: 'here' });
      // The server may answer in portions: ask until it has nothing newer.
      if (more || (last > before && last < reply.value.last)) {
        more = false;
        void fetchNew();
      }
    } else if (kept.size === 0)
      show({
        state: outbox().waiting.some((e) => e.unit === unit) ? 'here' : 'not here',
        problem: reply.problem,
      });
  };

  return {
    view: () => view,
    fetchNew: () => void fetchNew(),
    watch: (listener) => {
      listeners.add(listener);
      void fetchNew();
      const stops = [
        watchLive((event) => {
          if (!event || event.unit === unit) void fetchNew();
        }),
        watchOutbox(() =>
          show(view.problem ? { state: view.state, problem: view.problem } : { state: view.state }),
        ),
      ];
      return () => {
        listeners.delete(listener);
        for (const stop of stops) stop();
      };
    },
  };
}
