// Why: what the server and the app say to each other, in one place, so that neither can drift. Types only, no logic.

import type { Verdict } from '../../judged/rule.ts';
import type { Appended, Kept } from '../../keep/log.ts';
import type { Sizes } from '../../published/drawing/sizes.ts';
import type { Entry } from '../../said/entry.ts';

/** GET /api/about */
export interface About {
  readonly dealership: string;
  readonly version: string;
  /** The server's calendar day, in the dealership's own time zone. */
  readonly today: string;
  /** The invented unit that comes with the software, when it is there. */
  readonly demoUnit?: string;
}

/** GET /api/units: a row of the yard. */
export interface YardRow {
  readonly unit: string;
  readonly name: string;
  readonly stock?: string;
  readonly vehicle?: string;
  readonly year?: number;
  readonly arrived?: string;
  readonly daysHere?: number;
  readonly invented: boolean;
  readonly putAway: boolean;
  /** "nothing yet", "walked", "reviewed", "published". */
  readonly stage: 'nothing yet' | 'walked' | 'reviewed' | 'published';
  /** Names of the findings with the verdict stop. */
  readonly blockedBy: readonly string[];
  readonly tally: Readonly<Record<Verdict, number>>;
  /** Parts looked at, of those expected. */
  readonly seen: number;
  readonly expected: number;
  readonly askingCents?: number;
  /** What it is drawn as, and how each size is known. */
  readonly sizes?: Sizes;
  readonly last: number;
}

/** GET /api/units/:unit/entries?after=N */
export interface EntriesReply {
  readonly entries: readonly Kept[];
  readonly last: number;
}

/** POST /api/entries. @public */
export interface AppendRequest {
  readonly entries: readonly Entry[];
}
export interface AppendReply {
  readonly appended: readonly Appended[];
}

/** GET /api/live (server-sent events), event "kept": something was kept; fetch what comes after the position you have. */
export interface LiveEvent {
  readonly unit: string;
  readonly position: number;
}

/**
 * A batch of files for a walk. PUT /api/units/:unit/batches/:batch/files/:name streams one file's bytes (batch is an id made
 * by the client, so that sending again is harmless); POST /api/units/:unit/batches/:batch/understand starts the reading of
 * them and answers with a job; GET /api/jobs/:job tells how far it is; DELETE /api/jobs/:job stops it.
 */
export interface PutFileReply {
  readonly name: string;
  readonly sha256: string;
  readonly bytes: number;
}

/** One line of the plain account of what was made of a file. */
export interface AccountLine {
  readonly file: string;
  /** `missing`: the walk has no such file, so what it would tell is unknown. */
  readonly did: 'understood' | 'partly' | 'kept' | 'refused' | 'missing';
  /** A sentence for a person. */
  readonly says: string;
  readonly line?: number;
}

export interface JobReply {
  readonly job: string;
  readonly state: 'waiting' | 'running' | 'done' | 'stopped' | 'failed';
  /** 0 to 1. */
  readonly progress: number;
  /** What it is doing, as a sentence. */
  readonly doing: string;
  readonly account: readonly AccountLine[];
  readonly problem?: Problem;
}

/** Every refusal: a code, a sentence that says what happened, and one that says what to do next. */
export interface Problem {
  readonly code: string;
  readonly says: string;
  readonly remedy: string;
  readonly where?: string;
  /** Every fault in what was sent: where in it ("entries.3.value.unit"), and the schema's own words. */
  readonly faults?: readonly { readonly path: string; readonly message: string }[];
}

/**
 * GET /api/units/:unit/media/:media: the bytes of a media entry of that unit, by its media id; answers range requests. What
 * could run in a browser (HTML, SVG) comes as a download.
 */

/** POST /api/units/:unit/batches/:batch/understand; every field may be left out. @public */
export interface UnderstandRequest {
  /** The walk the files belong to; the batch's own id when left out. */
  readonly walk?: string;
  readonly title?: string;
  readonly by?: string;
  readonly device?: string;
}

/**
 * Documents, made new from the log at each request: GET /api/units/:unit/packet.zip (all of it),
 * GET /api/units/:unit/documents/:name with name one of these.
 */
export const documentNames = [
  'report.pdf',
  'report.html',
  'listing.html',
  'listing.txt',
  'chapters.vtt',
  'claims.json',
  'packet.json',
] as const;
export type DocumentName = (typeof documentNames)[number];

/** POST /api/units/:unit/publish: makes the packet and writes a publication into the log. */
export interface PublishReply {
  readonly publication: string;
  readonly documents: readonly { readonly name: string; readonly sha256: string }[];
}
