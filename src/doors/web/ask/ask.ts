// Why: one way to ask the server, so that every trouble comes back as a sentence and nothing throws into a screen.
import type { Problem } from '../../wire/api.ts';

/** What came back: the value, or what went wrong and whether it was the network. */
export type Answer<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly problem: Problem; readonly offline: boolean };

const offline: Problem = {
  code: 'no-connection',
  says: 'The server cannot be reached.',
  remedy: 'What you write is kept on this device and sent when it can be reached again.',
};

const isProblem = (raw: unknown): raw is Problem =>
  typeof raw === 'object' && raw !== null && 'says' in raw && typeof raw.says === 'string';

async function problemOf(reply: Response): Promise<Problem> {
  const raw: unknown = await reply.json().catch(() => undefined);
  if (isProblem(raw)) return raw;
  if (typeof raw === 'object' && raw !== null && 'problem' in raw && isProblem(raw.problem))
    return raw.problem;
  return {
    code: `status-${reply.status}`,
    says: 'The server did not do what was asked.',
    remedy: 'Try again in a moment.',
  };
}

/** Asks the server. Never rejects. An empty body comes back as undefined. */
export async function ask<T>(path: string, init?: RequestInit): Promise<Answer<T>> {
  try {
    const reply = await fetch(path, { credentials: 'same-origin', ...init });
    if (reply.ok) {
      const body = await reply.text();
      return { ok: true, value: (body === '' ? undefined : JSON.parse(body)) as T };
    }
    const gateway = reply.status >= 502 && reply.status <= 504;
    return gateway
      ? { ok: false, problem: offline, offline: true }
      : { ok: false, problem: await problemOf(reply), offline: false };
  } catch {
    return { ok: false, problem: offline, offline: true };
  }
}

/** Sends something as JSON. */
export const tell = <T>(path: string, body: unknown): Promise<Answer<T>> =>
  ask<T>(path, {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify(body),
  });
