// Why: every refusal of the server is one thing: a status, a code, a sentence, a remedy; made into JSON in one place.
import { KeepProblem } from '../../keep/problem.ts';
import { FileRefusal } from '../files/walk-file.ts';
import type { Problem } from '../wire/api.ts';
import { sayFileFault } from '../words/say-file-fault.ts';
import { sayProblem } from '../words/say-problem.ts';

/** Thrown by routes; becomes a Problem. */
export class Refusal extends Error {
  override readonly name = 'Refusal';
  readonly status: number;
  readonly problem: Problem;
  constructor(
    status: number,
    code: string,
    more: { readonly where?: string; readonly faults?: NonNullable<Problem['faults']> } = {},
  ) {
    super(code);
    this.status = status;
    this.problem = { code, ...sayProblem(code), ...more };
  }
}

const keepStatus: Readonly<Record<string, number>> = {
  'too-large': 413,
  'disk-full': 507,
  closed: 503,
  'database-unreachable': 503,
};

/** Whatever was thrown, as a refusal. What nobody foresaw is `unexpected`: its details stay on this side. */
export function asRefusal(error: unknown): Refusal {
  if (error instanceof Refusal) return error;
  if (error instanceof KeepProblem) {
    return new Refusal(keepStatus[error.code] ?? 500, error.code === 'too-large' ? 'too-big' : error.code);
  }
  if (error instanceof FileRefusal) {
    const refusal = new Refusal(400, error.fault.code, { where: error.fault.file });
    return Object.assign(refusal, { problem: { ...refusal.problem, ...sayFileFault(error.fault) } });
  }
  return new Refusal(500, 'unexpected');
}

/** The answer for a refusal. */
export const problemResponse = (refusal: Refusal): Response =>
  Response.json(refusal.problem, {
    status: refusal.status,
    headers: { 'content-type': 'application/problem+json', 'cache-control': 'no-store' },
  });
