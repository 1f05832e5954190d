// Why: a body is read up to a limit and no further, whatever its headers say of its length.
import type { Context } from 'hono';
import { Refusal } from './refusal.ts';

/** The body's bytes. Throws Refusal too-big. */
export async function readBody(c: Context, most: number): Promise<Uint8Array> {
  if (Number(c.req.header('content-length') ?? 0) > most) throw new Refusal(413, 'too-big');
  const pieces: Uint8Array[] = [];
  let size = 0;
  for await (const piece of c.req.raw.body ?? []) {
    size += piece.length;
    if (size > most) throw new Refusal(413, 'too-big');
    pieces.push(piece);
  }
  return Buffer.concat(pieces);
}

/** The JSON in a body; `empty` for none. Throws Refusal: too-big, bad-content-type, bad-request. */
export async function readJsonBody(c: Context, most: number, empty?: unknown): Promise<unknown> {
  const body = await readBody(c, most);
  if (body.length === 0 && empty !== undefined) return empty;
  if (!/^application\/json\b/i.test(c.req.header('content-type') ?? ''))
    throw new Refusal(415, 'bad-content-type');
  try {
    return JSON.parse(new TextDecoder('utf-8', { fatal: true }).decode(body));
  } catch {
    throw new Refusal(400, 'bad-request');
  }
}
