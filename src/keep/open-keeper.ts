// Why: the one thing the doors call to have a log and its media kept, in a folder or in PostgreSQL.
import { join } from 'node:path';
import { EmbeddedLog } from './index-pglite/embedded-log.ts';
import type { Progress } from './index-pglite/follow-journal.ts';
import { makeFolder } from './journal/segments.ts';
import { takeLock } from './lock.ts';
import type { Damage, Log, MediaStore } from './log.ts';
import { openMediaFolder } from './media-folder.ts';
import { PostgresLog } from './postgres/postgres-log.ts';

export interface KeeperOptions {
  /** Where everything is kept; made when it is not there. With a `databaseUrl`, only the media are kept in it. */
  readonly folder: string;
  /** A PostgreSQL address: the log is kept there. */
  readonly databaseUrl?: string;
  /** Where the index's worker is, when not beside the code: a bundle's `keep-worker.mjs`. */
  readonly workerUrl?: URL;
  /** Told while the index is being built or caught up. */
  readonly progress?: Progress;
}

export interface Keeper {
  readonly log: Log;
  readonly media: MediaStore;
  /** What was found damaged on opening; everything sound is kept and served. */
  readonly damage: readonly Damage[];
  close(): Promise<void>;
}

/**
 * Opens what is kept. Throws KeepProblem: `locked` when another process has the folder, `database-...` when PostgreSQL will
 * not do. Resolves as soon as entries can be kept: the index goes on opening, and whatever reads waits for it.
 */
export async function openKeeper(options: KeeperOptions): Promise<Keeper> {
  const { folder, databaseUrl, workerUrl, progress } = options;
  await makeFolder(folder);
  if (databaseUrl !== undefined) {
    const media = await openMediaFolder(join(folder, 'media'));
    const log = await PostgresLog.open(databaseUrl);
    return { log, media, damage: [], close: () => log.close() };
  }
  const lock = await takeLock(folder);
  try {
    const media = await openMediaFolder(join(folder, 'media'));
    const log = await EmbeddedLog.open(folder, {
      ...(workerUrl ? { workerUrl } : {}),
      ...(progress ? { progress } : {}),
    });
    const close = async (): Promise<void> => {
      await log.close();
      await lock.release();
    };
    return { log, media, damage: log.damage, close };
  } catch (error) {
    await lock.release();
    throw error;
  }
}
