// Why: a journey through the server needs a real keeper in a folder of its own, and nothing else.
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type App, makeApp } from '../../src/doors/server/app.ts';
import type { AppOptions } from '../../src/doors/server/house.ts';
import type { JobReply } from '../../src/doors/wire/api.ts';
import { type Keeper, openKeeper } from '../../src/keep/open-keeper.ts';
import { uuidV7 } from '../../src/said/uuid.ts';
import { day } from '../../src/units/day.ts';

export interface ServerHouse {
  readonly app: App;
  readonly keeper: Keeper;
  readonly unexpected: unknown[];
  ask(path: string, init?: RequestInit): Promise<Response>;
  json<T>(path: string, init?: RequestInit): Promise<T>;
  close(): Promise<void>;
}

/** Opens a server without a port over an embedded keeper in a temporary folder. */
export async function openHouse(options: Partial<AppOptions> = {}): Promise<ServerHouse> {
  const folder = await mkdtemp(join(tmpdir(), 'walkwright-server-'));
  const keeper = await openKeeper({ folder });
  const unexpected: unknown[] = [];
  const app = makeApp({
    keeper,
    clock: () => new Date('2026-11-24T18:00:00Z'),
    today: () => day('2026-11-24'),
    dealership: 'test-lot',
    version: '0.0.0',
    complain: (e) => unexpected.push(e),
    ...options,
  });
  const ask = async (path: string, init?: RequestInit): Promise<Response> =>
    app.fetch(new Request(`http://localhost${path}`, init));
  return {
    app,
    keeper,
    unexpected,
    ask,
    json: async <T>(path: string, init?: RequestInit) => (await (await ask(path, init)).json()) as T,
    async close() {
      await app.close();
      await keeper.close();
      await rm(folder, { recursive: true, force: true });
    },
  };
}

let made = 0;
/** Another id, the same in each run. */
export const nextId = (): string =>
  uuidV7(Date.parse('2026-11-24T17:00:00Z') + made++, [1, 2, 3, 4, 5, 6, 7, 8, 9, made % 256]);

export const post = (body: unknown): RequestInit => ({
  method: 'POST',
  headers: { 'content-type': 'application/json' },
  body: JSON.stringify(body),
});

/** What every entry of these journeys carries. */
export const envelope = (unit: string) => ({
  v: 1 as const,
  id: nextId(),
  dealership: 'test-lot',
  unit,
  at: '2026-11-24T17:00:00Z',
  by: 'R. Example',
  device: 'test',
});

/** Waits for a job to be over. */
export async function finished(house: ServerHouse, job: string): Promise<JobReply> {
  for (;;) {
    const reply = await house.json<JobReply>(`/api/jobs/${job}`);
    if (reply.state !== 'running' && reply.state !== 'waiting') return reply;
    await new Promise((resolve) => setTimeout(resolve, 20));
  }
}
