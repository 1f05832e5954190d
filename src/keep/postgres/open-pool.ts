// Why: one way to connect, so that both the queries and the listener see the same types and the same problems.
import pg from 'pg';
import { errorCode, KeepProblem } from '../problem.ts';

const json = 114;
const int8 = 20;

/** JSON stays the text it was kept as; counts are numbers. */
const types: pg.CustomTypesConfig = {
  getTypeParser: ((oid: number, format?: 'text' | 'binary') => {
    if (oid === json) return (text: string) => text;
    if (oid === int8) return Number;
    return pg.types.getTypeParser(oid, format as 'text');
  }) as pg.CustomTypesConfig['getTypeParser'],
};

const settings = { application_name: 'walkwright', types, connectionTimeoutMillis: 10_000, keepAlive: true };

export function makeClient(url: string): pg.Client {
  return new pg.Client({ ...settings, connectionString: url });
}

/**
 * Connects and looks whether what is acknowledged would survive a power cut. Throws `database-unreachable` and
 * `database-not-durable`.
 */
export async function openPool(url: string): Promise<pg.Pool> {
  const pool = new pg.Pool({ ...settings, connectionString: url, max: 8 });
  // An idle connection that breaks is replaced by the pool at the next query, which tells whoever asked.
  pool.on('error', () => undefined);
  try {
    const found = await pool.query<{ name: string; setting: string }>(
      `select name, setting from pg_settings where name in ('fsync', 'synchronous_commit') and setting = 'off'`,
    );
    const setting = found.rows[0]?.name;
    if (setting) throw new KeepProblem('database-not-durable', { setting });
    return pool;
  } catch (error) {
    await pool.end();
    throw error instanceof KeepProblem
      ? error
      : new KeepProblem('database-unreachable', { errno: errorCode(error) }, error);
  }
}
