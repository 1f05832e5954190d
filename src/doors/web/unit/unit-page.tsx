// Why: the frame round every sheet of a unit: its head, the sheets, and the walk along the foot.
import { useCallback, useDeferredValue, useMemo, useState } from 'react';
import { flow } from '../../../flow.ts';
import type { EntryKind, EntryOf, Observation, Ruling } from '../../../said/entry.ts';
import { useAbout, useToday } from '../ask/about.tsx';
import { Mishap } from '../ask/mishap.tsx';
import { Trouble } from '../ask/trouble.tsx';
import { type Draft, newEntry } from '../kept/new-entry.ts';
import { put } from '../kept/outbox.ts';
import { useUnitLog } from '../kept/use-unit-log.ts';
import { PlayerProvider } from '../play/player.tsx';
import { Screen } from '../play/screen.tsx';
import { WalkFoot } from '../strip/walk-foot.tsx';
import { Rejected } from './rejected.tsx';
import { rulingsOf } from './rulings-of.ts';
import { Scrolled } from './scrolled.tsx';
import { sheetOf } from './sheets.ts';
import { UnitContext, type UnitOnScreen } from './unit-context.ts';
import { UnitHead } from './unit-head.tsx';
import { UnitSheets } from './unit-sheets.tsx';

export function UnitPage({ unit, sheet }: { unit: string; sheet: string | undefined }) {
  const { dealership } = useAbout();
  const on = useToday();
  const log = useUnitLog(unit);
  const entries = useDeferredValue(log.entries);
  const packet = useMemo(() => (entries.length > 0 ? flow(entries, on) : undefined), [entries, on]);
  // Not deferred: whoever rules from the keyboard must see each ruling before the next key.
  const rulings = useMemo(() => rulingsOf(log.entries), [log.entries]);
  const write = useCallback(
    <K extends EntryKind>(...drafts: readonly Draft<K>[]): readonly EntryOf<K>[] => {
      const made = drafts.map((d) => newEntry(dealership, unit, d));
      put(made);
      return made;
    },
    [dealership, unit],
  );
  const [rejected, setRejected] = useState<{ readonly of: Observation; readonly before: Ruling['ruling'] }>();
  const rule = useCallback<UnitOnScreen['rule']>(
    (on, ruling) => {
      const before = rulings.get(on.id)?.ruling ?? 'open';
      write<'ruling'>({ kind: 'ruling', on: on.id, ruling });
      setRejected(ruling === 'reject' ? { of: on, before } : undefined);
    },
    [rulings, write],
  );
  const onScreen = useMemo(
    () => packet && { unit, entries: log.entries, packet, rulings, write, rule },
    [unit, log.entries, packet, rulings, write, rule],
  );

  if (!onScreen) {
    return (
      <main className="lead" id="sheet">
        <p>
          <a href="/">The yard</a>
        </p>
        {log.problem ? (
          <Trouble problem={log.problem} again={log.fetchNew} />
        ) : (
          <p className="soft">
            {log.state === 'fetching'
              ? 'Fetching what is known of this unit.'
              : 'Nothing is known of a unit at this address.'}
          </p>
        )}
      </main>
    );
  }
  const shown = sheetOf(sheet, onScreen.entries);
  const Content = shown.content;
  return (
    <UnitContext value={onScreen}>
      <PlayerProvider>
        <div className="unit-page" data-sheet={shown.id}>
          <Scrolled to={shown.id}>
            <UnitHead />
            <UnitSheets shown={shown.id} />
            <main id="sheet">
              {rejected && (
                <Rejected
                  of={rejected.of}
                  onTakeBack={() => rule(rejected.of, rejected.before)}
                  onLeave={() => setRejected(undefined)}
                />
              )}
              {log.problem && <Trouble problem={log.problem} again={log.fetchNew} />}
              <Mishap key={shown.id}>
                <Content />
              </Mishap>
            </main>
          </Scrolled>
          <WalkFoot />
          <Screen />
        </div>
      </PlayerProvider>
    </UnitContext>
  );
}
