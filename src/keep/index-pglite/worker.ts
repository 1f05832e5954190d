// Why: PGlite blocks the thread it runs on, so it runs on its own; this is all that thread does.
import { parentPort, workerData } from 'node:worker_threads';
import { PGlite } from '@electric-sql/pglite';
import type { FromWorker, ToWorker, WorkerSettings } from './messages.ts';

const json = 114;
const int8 = 20;

const port = parentPort;
if (!port) throw new Error('the index worker runs in a worker thread only');
const say = (message: FromWorker): void => port.postMessage(message);

async function openDatabase(): Promise<PGlite | undefined> {
  try {
    const { folder } = workerData as WorkerSettings;
    return await PGlite.create({
      dataDir: folder,
      parsers: { [json]: (text: string) => text, [int8]: Number },
    });
  } catch (error) {
    say({ is: 'not open', reason: String(error) });
    return undefined;
  }
}

async function answer(db: PGlite, message: ToWorker): Promise<void> {
  const { number } = message;
  try {
    if (message.ask === 'close') {
      await db.close();
      say({ is: 'closed', number });
      port?.close();
      return;
    }
    const result = await db.query(message.sql, [...message.parameters]);
    say({ is: 'rows', number, rows: result.rows, affected: result.affectedRows ?? 0 });
  } catch (error) {
    const sqlState = (error as { code?: unknown }).code;
    say({
      is: 'failed',
      number,
      message: String(error),
      sqlState: typeof sqlState === 'string' ? sqlState : '',
    });
  }
}

const db = await openDatabase();
if (db) {
  let last: Promise<void> = Promise.resolve();
  port.on('message', (message: ToWorker) => {
    last = last.then(() => answer(db, message));
  });
  say({ is: 'open' });
}
