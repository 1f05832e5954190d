// Why: what another process keeps must reach this one's listeners, in order, also after the connection was lost for a while.
import type { Kysely } from 'kysely';
import type pg from 'pg';
import type { Position } from '../log.ts';
import { lastPositions, readEntries } from '../tables/queries.ts';
import type { Tables } from '../tables/schema.ts';
import type { Watchers } from '../watchers.ts';
import { makeClient } from './open-pool.ts';

/** The payload is the dealership; what is new is read from the table, so a notice that got lost costs nothing. */
export const channel = 'walkwright_kept';

const entriesAtOnce = 500;
const tryAgainAfter = 500;

export class Listener {
  readonly #url: string;
  readonly #db: Kysely<Tables>;
  readonly #watchers: Watchers;
  readonly #told = new Map<string, Position>();
  #client: pg.Client | undefined;
  #telling: Promise<void> = Promise.resolve();
  #again: NodeJS.Timeout | undefined;
  #closed = false;

  private constructor(url: string, db: Kysely<Tables>, watchers: Watchers) {
    this.#url = url;
    this.#db = db;
    this.#watchers = watchers;
  }

  /** Resolves when everything kept from now on will be told. */
  static async open(url: string, db: Kysely<Tables>, watchers: Watchers): Promise<Listener> {
    const listener = new Listener(url, db, watchers);
    await listener.#connect();
    for (const [dealership, last] of await lastPositions(db)) listener.#told.set(dealership, last);
    return listener;
  }

  async close(): Promise<void> {
    this.#closed = true;
    clearTimeout(this.#again);
    await this.#client?.end().catch(() => undefined);
    await this.#telling;
  }

  async #connect(): Promise<void> {
    const client = makeClient(this.#url);
    client.on('error', () => this.#lost(client));
    client.on('end', () => this.#lost(client));
    client.on('notification', (notice) => this.#tell(notice.payload ?? ''));
    await client.connect();
    await client.query(`listen ${channel}`);
    if (this.#closed) await client.end();
    else this.#client = client;
  }

  #lost(client: pg.Client): void {
    if (this.#closed || this.#client !== client) return;
    this.#client = undefined;
    client.end().catch(() => undefined);
    this.#retry();
  }

  #retry(): void {
    this.#again = setTimeout(async () => {
      try {
        await this.#connect();
        for (const dealership of (await lastPositions(this.#db)).keys()) this.#tell(dealership);
      } catch {
        const client = this.#client;
        this.#client = undefined;
        await client?.end().catch(() => undefined);
        if (!this.#closed) this.#retry();
      }
    }, tryAgainAfter);
    this.#again.unref();
  }

  #tell(dealership: string): void {
    this.#telling = this.#telling.then(() => this.#tellNew(dealership)).catch(() => undefined);
  }

  async #tellNew(dealership: string): Promise<void> {
    while (!this.#closed) {
      const after = this.#told.get(dealership) ?? 0;
      const kept = await readEntries(this.#db, { dealership, after, limit: entriesAtOnce });
      const last = kept.at(-1);
      if (!last) return;
      this.#told.set(dealership, last.position);
      this.#watchers.tell(kept);
    }
  }
}
