// Why: whatever goes wrong outside is a code with data; the doors make the sentences.

export type KeepCode =
  /** Another live process has the folder open. Data: pid, host, since. */
  | 'locked'
  /** The keeper was closed. */
  | 'closed'
  /** No room left; nothing of this call was kept. Data: errno. */
  | 'disk-full'
  /** The journal could not be written; nothing of this call was kept. Data: errno. */
  | 'write-failed'
  /** Syncing the journal failed, so what the disk holds is not known: open it again. Data: errno. */
  | 'journal-failed'
  /** A line that was sound is no longer. Data: file. */
  | 'journal-damaged'
  /** The index could not be opened or built. Data: reason. */
  | 'index-failed'
  /** Data: errno or SQLSTATE. */
  | 'database-unreachable'
  /** The database server is set up to forget on a power cut. Data: setting. */
  | 'database-not-durable'
  /** The database was made by a newer edition of this software. Data: migration. */
  | 'database-newer'
  /** More bytes than allowed. Data: limit. */
  | 'too-large';

/** A coded problem of the keeper: `code` and plain data, no sentence. */
export class KeepProblem extends Error {
  override readonly name = 'KeepProblem';
  readonly code: KeepCode;
  readonly data: Readonly<Record<string, string | number>>;

  constructor(code: KeepCode, data: Readonly<Record<string, string | number>> = {}, cause?: unknown) {
    super(`${code} ${JSON.stringify(data)}`, cause === undefined ? {} : { cause });
    this.code = code;
    this.data = data;
  }
}

/** The system's own code of an error (ENOSPC, EIO, a SQLSTATE), or its name. */
export function errorCode(error: unknown): string {
  if (error instanceof Error) return (error as { code?: unknown }).code?.toString() ?? error.name;
  return String(error);
}
