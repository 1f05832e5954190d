// Why: every sheet of a unit works on the same log and the same packet, and writes through the same door.
import { createContext, useContext } from 'react';
import type { Packet } from '../../../published/document.ts';
import type { Entry, EntryKind, EntryOf, Observation, Ruling } from '../../../said/entry.ts';
import type { Draft } from '../kept/new-entry.ts';

export interface UnitOnScreen {
  readonly unit: string;
  readonly entries: readonly Entry[];
  readonly packet: Packet;
  /** The newest ruling on each entry, by the id it rules on. */
  readonly rulings: ReadonlyMap<string, Ruling>;
  /** Writes entries of this unit and gives them back with their ids; what follows from them is on screen at once. */
  readonly write: <K extends EntryKind>(...drafts: readonly Draft<K>[]) => readonly EntryOf<K>[];
  /** Accepts or rejects an observation, and offers to take a rejection back. */
  readonly rule: (on: Observation, ruling: Ruling['ruling']) => void;
}

export const UnitContext = createContext<UnitOnScreen | undefined>(undefined);

export function useUnit(): UnitOnScreen {
  const unit = useContext(UnitContext);
  if (!unit) throw new Error('useUnit: outside a unit page');
  return unit;
}
