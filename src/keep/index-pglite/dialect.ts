// Why: lets kysely speak to the one connection that lives in the index's worker thread.
import {
  type CompiledQuery,
  type DatabaseConnection,
  type Dialect,
  type Driver,
  PostgresAdapter,
  PostgresIntrospector,
  PostgresQueryCompiler,
  type QueryResult,
} from 'kysely';
import type { IndexWorker } from './start-worker.ts';

/** A dialect over a worker. There is one connection: inside a transaction, ask `trx` only, or wait for ever. */
export function workerDialect(worker: IndexWorker): Dialect {
  return {
    createAdapter: () => new PostgresAdapter(),
    createDriver: () => new WorkerDriver(worker),
    createIntrospector: (db) => new PostgresIntrospector(db),
    createQueryCompiler: () => new PostgresQueryCompiler(),
  };
}

class WorkerConnection implements DatabaseConnection {
  readonly #worker: IndexWorker;
  constructor(worker: IndexWorker) {
    this.#worker = worker;
  }

  async executeQuery<R>(query: CompiledQuery): Promise<QueryResult<R>> {
    const { rows, affected } = await this.#worker.query(query.sql, query.parameters);
    return { rows: rows as R[], numAffectedRows: BigInt(affected) };
  }

  // biome-ignore lint/correctness/useYield: kysely asks for a generator; nothing here streams.
  async *streamQuery<R>(): AsyncGenerator<QueryResult<R>> {
    throw new Error('the index does not stream; read with a limit');
  }
}

class WorkerDriver implements Driver {
  readonly #worker: IndexWorker;
  readonly #connection: WorkerConnection;
  #free: Promise<void> = Promise.resolve();
  #release: () => void = () => undefined;

  constructor(worker: IndexWorker) {
    this.#worker = worker;
    this.#connection = new WorkerConnection(worker);
  }

  async init(): Promise<void> {}

  async acquireConnection(): Promise<DatabaseConnection> {
    const before = this.#free;
    let release = (): void => undefined;
    this.#free = new Promise((resolve) => {
      release = resolve;
    });
    await before;
    this.#release = release;
    return this.#connection;
  }

  async beginTransaction(): Promise<void> {
    await this.#worker.query('begin', []);
  }

  async commitTransaction(): Promise<void> {
    await this.#worker.query('commit', []);
  }

  async rollbackTransaction(): Promise<void> {
    await this.#worker.query('rollback', []);
  }

  async releaseConnection(): Promise<void> {
    this.#release();
  }

  async destroy(): Promise<void> {
    await this.#worker.close();
  }
}
