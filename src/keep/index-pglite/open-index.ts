// Why: opens the index, and when it is missing, broken or not of this journal, sets it aside and begins a new one.
import { access, mkdir, rename, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { Kysely } from 'kysely';
import type { Journal } from '../journal/journal.ts';
import { migrate } from '../tables/migrate.ts';
import type { Tables } from '../tables/schema.ts';
import { workerDialect } from './dialect.ts';
import { fits, type IndexState, readState } from './index-state.ts';
import { startWorker } from './start-worker.ts';

export interface OpenIndex {
  readonly db: Kysely<Tables>;
  readonly state: IndexState;
}

const exists = (path: string): Promise<boolean> =>
  access(path).then(
    () => true,
    () => false,
  );

/**
 * Opens `folder`, whatever state it is in. An index that is not of this journal is moved to `<folder>.set-aside`, never
 * deleted: what it holds may be the only copy. One that does not open is moved to `<folder>.broken`, in place of an earlier
 * one. Throws `index-failed` when not even a new one opens.
 */
export async function openIndex(folder: string, journal: Journal, workerUrl?: URL): Promise<OpenIndex> {
  const ready = join(folder, 'ready');
  if (!(await exists(ready))) await rm(folder, { recursive: true, force: true });
  const begin = async (): Promise<OpenIndex> => {
    await mkdir(folder, { recursive: true });
    const db = new Kysely<Tables>({
      dialect: workerDialect(await startWorker(join(folder, 'pglite'), workerUrl)),
    });
    try {
      await migrate(db);
      const state = await readState(db);
      await writeFile(ready, '');
      return { db, state };
    } catch (error) {
      await db.destroy();
      throw error;
    }
  };
  const there = await exists(ready);
  const index = await begin().catch((error) => (there ? undefined : Promise.reject(error)));
  if (index && (await fits(index.db, index.state, journal).catch(() => false))) return index;
  await index?.db.destroy();
  await (index ? setAside(folder) : setBroken(folder));
  return begin();
}

async function setAside(folder: string): Promise<void> {
  let name = `${folder}.set-aside`;
  for (let again = 2; await exists(name); again++) name = `${folder}.set-aside-${again}`;
  await rename(folder, name);
}

async function setBroken(folder: string): Promise<void> {
  await rm(`${folder}.broken`, { recursive: true, force: true });
  await rename(folder, `${folder}.broken`);
}
