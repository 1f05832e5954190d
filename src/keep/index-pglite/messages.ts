// Why: what the keeper and its index worker say to each other.

/** Handed to the worker when it starts. */
export interface WorkerSettings {
  readonly folder: string;
}

export type ToWorker =
  | {
      readonly ask: 'query';
      readonly number: number;
      readonly sql: string;
      readonly parameters: readonly unknown[];
    }
  | { readonly ask: 'close'; readonly number: number };

export type FromWorker =
  | { readonly is: 'open' }
  | { readonly is: 'not open'; readonly reason: string }
  | {
      readonly is: 'rows';
      readonly number: number;
      readonly rows: readonly unknown[];
      readonly affected: number;
    }
  | { readonly is: 'failed'; readonly number: number; readonly message: string; readonly sqlState: string }
  | { readonly is: 'closed'; readonly number: number };
