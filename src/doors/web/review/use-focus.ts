// Why: the order stays put while things are ruled on, so that the line under the thumb does not jump away.
import { useCallback, useMemo, useRef, useState } from 'react';
import { useChosen } from '../margin/use-chosen.ts';
import { type Order, orderProposed, type Proposed } from './proposed.ts';

export interface Focus {
  readonly order: Order;
  /** Chooses an order, or the same one anew: what is done goes to the end. */
  readonly sort: (order: Order) => void;
  readonly shown: readonly Proposed[];
  readonly chosen: Proposed | undefined;
  readonly choose: (id: string) => void;
  /** The first after one of the shown that still waits, once these are ruled on; the way round when there is none behind it. */
  readonly waitsAfter: (at: Proposed | undefined, ruled: ReadonlySet<string>) => Proposed | undefined;
}

export function useFocus(all: readonly Proposed[]): Focus {
  const [asked, choose] = useChosen();
  const [sorted, setSorted] = useState<{ readonly order: Order; readonly time: number }>({
    order: 'doubtful first',
    time: 0,
  });
  const { order, time } = sorted;
  const held = useRef<{ order: Order; time: number; ids: readonly string[] }>({ order, time: -1, ids: [] });
  const shown = useMemo(() => {
    const before = held.current;
    const byId = new Map(all.map((p) => [p.of.id, p]));
    const isSame = before.order === order && before.time === time && order !== 'in order';
    const kept = isSame ? before.ids.flatMap((id) => byId.get(id) ?? []) : [];
    const keptIds = new Set(kept.map((p) => p.of.id));
    const next = [...kept, ...orderProposed(all, order).filter((p) => !keptIds.has(p.of.id))];
    held.current = { order, time, ids: next.map((p) => p.of.id) };
    return order === 'only what waits' ? next.filter((p) => p.state === 'waits' || p.of.id === asked) : next;
  }, [all, order, time, asked]);
  const chosen = useMemo(
    () => shown.find((p) => p.of.id === asked) ?? shown.find((p) => p.state === 'waits'),
    [shown, asked],
  );
  return {
    order,
    shown,
    chosen,
    sort: useCallback((to) => setSorted((had) => ({ order: to, time: had.time + 1 })), []),
    choose: useCallback((id) => asked !== id && choose(id), [asked, choose]),
    waitsAfter: useCallback(
      (at, ruled) => {
        const i = at ? shown.indexOf(at) : -1;
        return [...shown.slice(i + 1), ...shown.slice(0, Math.max(0, i))].find(
          (p) => p.state === 'waits' && !ruled.has(p.of.id),
        );
      },
      [shown],
    ),
  };
}
