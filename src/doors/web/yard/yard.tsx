// Why: all the units at once: which is waiting for what, and the way to each.
import { useEffect, useId, useState } from 'react';
import { vehicleKindNames } from '../../../catalogue/vehicle-kind.ts';
import type { YardRow } from '../../wire/api.ts';
import { Trouble } from '../ask/trouble.tsx';
import { useAsk } from '../ask/use-ask.ts';
import { watchLive } from '../kept/live.ts';
import { watchOutbox } from '../kept/outbox.ts';
import { EmptyYard } from './empty-yard.tsx';
import { type Order, orders, sortYard } from './sort-yard.ts';
import { TakeIn } from './take-in.tsx';
import { UnitRow } from './unit-row.tsx';
import { YardHead } from './yard-head.tsx';

const matches = (row: YardRow, wanted: string): boolean => {
  const kind = row.vehicle && vehicleKindNames[row.vehicle as keyof typeof vehicleKindNames];
  const words = [row.name, row.stock, kind, row.year, row.stage, ...row.blockedBy].join(' ').toLowerCase();
  return wanted
    .toLowerCase()
    .split(/\s+/)
    .every((w) => words.includes(w));
};

export function Yard() {
  const { answer, again } = useAsk<readonly YardRow[]>('/api/units');
  const [wanted, setWanted] = useState('');
  const [order, setOrder] = useState<Order>('what blocks it');
  const [taking, setTaking] = useState(false);
  const [away, setAway] = useState(false);
  const ids = { search: useId(), order: useId() };
  useEffect(() => {
    document.title = 'The yard · Walkwright';
    let timer: ReturnType<typeof setTimeout>;
    const soon = () => {
      clearTimeout(timer);
      timer = setTimeout(again, 300);
    };
    const stops = [watchLive(soon), watchOutbox(soon)];
    return () => {
      clearTimeout(timer);
      for (const stop of stops) stop();
    };
  }, [again]);

  const rows = answer?.ok ? answer.value : [];
  const putAway = rows.filter((r) => r.putAway);
  const standing = rows.filter((r) => !r.putAway);
  const shown = sortYard(
    (away ? rows : standing).filter((r) => matches(r, wanted)),
    order,
  );
  return (
    <>
      <YardHead units={answer?.ok ? standing.length : undefined} />
      <main className="lead" id="sheet">
        {answer && !answer.ok && <Trouble problem={answer.problem} again={again} />}
        {taking && <TakeIn onDone={() => setTaking(false)} />}
        {answer?.ok && standing.length === 0 && !taking && <EmptyYard onTakeIn={() => setTaking(true)} />}
        {standing.length > 0 && (
          <div className="yard-tools">
            <div className="field">
              <label htmlFor={ids.search}>
                <span className="ask">Find a unit</span>
              </label>
              <input
                id={ids.search}
                type="search"
                value={wanted}
                onChange={(e) => setWanted(e.target.value)}
                placeholder="name, stock number, kind"
              />
            </div>
            <div className="field">
              <label htmlFor={ids.order}>
                <span className="ask">First those with</span>
              </label>
              <select id={ids.order} value={order} onChange={(e) => setOrder(e.target.value as Order)}>
                {orders.map((o) => (
                  <option key={o}>{o}</option>
                ))}
              </select>
            </div>
            {!taking && (
              <div className="last">
                <button type="button" className="chief" onClick={() => setTaking(true)}>
                  Take in a unit
                </button>
              </div>
            )}
          </div>
        )}
        {!answer && <p className="soft">Looking round the yard.</p>}
        <ul className="lines">
          {shown.map((r) => (
            <UnitRow key={r.unit} row={r} />
          ))}
        </ul>
        {standing.length > 0 && shown.length === 0 && <p>No unit here matches those words.</p>}
        {putAway.length > 0 && (
          <p>
            <button type="button" className="text" aria-expanded={away} onClick={() => setAway(!away)}>
              {away
                ? 'Hide what was put away'
                : putAway.length === 1
                  ? 'Show the one put away'
                  : `Show the ${putAway.length} put away`}
            </button>
          </p>
        )}
      </main>
    </>
  );
}
