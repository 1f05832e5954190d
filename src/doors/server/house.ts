// Why: what every route of the server stands on, made once by the app and handed to each.
import type { OpenAPIHono } from '@hono/zod-openapi';
import type { Keeper } from '../../keep/open-keeper.ts';
import type { Day } from '../../units/day.ts';
import type { Jobs } from './jobs.ts';
import type { Yard } from './yard.ts';

/** What the server is given. */
export interface AppOptions {
  readonly keeper: Pick<Keeper, 'log' | 'media'>;
  readonly clock: () => Date;
  readonly dealership: string;
  readonly version: string;
  /** The calendar day; the clock's local day when not given. */
  readonly today?: () => Day;
  /** The built app; without it only the API is served. */
  readonly staticFolder?: string;
  /** The invented unit that came with the software. */
  readonly demoUnit?: string;
  /** Names under which the server may be asked. */
  readonly hosts?: readonly string[];
  /** Most bytes of one uploaded file; 4 GB when not given. */
  readonly mostFileBytes?: number;
  /** Most bytes of a request with JSON; 16 MB when not given. */
  readonly mostJsonBytes?: number;
  /** Told of what nobody foresaw. */
  readonly complain?: (error: unknown) => void;
}

export interface House
  extends Required<
    Pick<
      AppOptions,
      'keeper' | 'clock' | 'dealership' | 'version' | 'today' | 'mostFileBytes' | 'mostJsonBytes' | 'complain'
    >
  > {
  readonly demoUnit?: string;
  readonly yard: Yard;
  readonly jobs: Jobs;
}

export type Router = OpenAPIHono;
