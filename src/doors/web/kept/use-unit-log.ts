// Why: a screen shows the log of one unit and is drawn again when something is added to it.
import { useMemo, useSyncExternalStore } from 'react';
import { openUnitLog, type UnitLog, type UnitLogView } from './unit-log.ts';

export function useUnitLog(unit: string): UnitLogView & Pick<UnitLog, 'fetchNew'> {
  const log = useMemo(() => openUnitLog(unit), [unit]);
  const view = useSyncExternalStore(log.watch, log.view);
  return { ...view, fetchNew: log.fetchNew };
}
