// Why: an entry made in the browser gets its id, its instant and its writer here, and nowhere else.
import type { EntryKind, EntryOf } from '../../../said/entry.ts';
import { uuidV7 } from '../../../said/uuid.ts';
import { writer } from './writer.ts';

type Envelope = 'v' | 'id' | 'dealership' | 'unit' | 'at' | 'by' | 'device';
/** What a screen says of an entry; the rest is filled in. */
export type Draft<K extends EntryKind> = Omit<EntryOf<K>, Envelope>;

export const newId = (): string => uuidV7(Date.now(), crypto.getRandomValues(new Uint8Array(10)));

/** An entry of the log, ready to be put into the outbox. */
export function newEntry<K extends EntryKind>(dealership: string, unit: string, draft: Draft<K>): EntryOf<K> {
  const at = new Date().toISOString();
  return {
    v: 1,
    id: newId(),
    dealership,
    unit,
    at,
    by: writer(),
    device: 'web',
    ...draft,
  } as unknown as EntryOf<K>;
}
