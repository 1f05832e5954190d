// Why: the built app from its folder, and nothing from outside it; a path of the app itself gets the app's page.
import { createHash } from 'node:crypto';
import { readFile, realpath } from 'node:fs/promises';
import { join, sep } from 'node:path';
import type { MiddlewareHandler } from 'hono';

const types: Readonly<Record<string, string>> = {
  html: 'text/html; charset=utf-8',
  js: 'text/javascript; charset=utf-8',
  css: 'text/css; charset=utf-8',
  json: 'application/json',
  svg: 'image/svg+xml',
  png: 'image/png',
  ico: 'image/x-icon',
  woff2: 'font/woff2',
  woff: 'font/woff',
  webmanifest: 'application/manifest+json',
  map: 'application/json',
  txt: 'text/plain; charset=utf-8',
  wasm: 'application/wasm',
};

/** Serves GET and HEAD of files below the folder; paths without an ending get index.html. */
export function staticFiles(folder: string): MiddlewareHandler {
  return async (c, next) => {
    if (c.req.method !== 'GET' && c.req.method !== 'HEAD') return next();
    let path: string;
    try {
      path = decodeURIComponent(c.req.path);
    } catch {
      return next();
    }
    const ending = /\.([a-z0-9]+)$/i.exec(path)?.[1]?.toLowerCase();
    const body = path.includes('\0')
      ? undefined
      : await read(folder, ending === undefined ? 'index.html' : path);
    if (!body) return next();
    const etag = `"${createHash('sha256').update(body).digest('base64url').slice(0, 22)}"`;
    const headers = {
      'content-type': types[ending ?? 'html'] ?? 'application/octet-stream',
      etag,
      'cache-control': path.startsWith('/assets/') ? 'public, max-age=31536000, immutable' : 'no-cache',
    };
    if (c.req.header('if-none-match') === etag) return new Response(null, { status: 304, headers });
    return new Response(c.req.method === 'HEAD' ? null : (body as Uint8Array<ArrayBuffer>), { headers });
  };
}

async function read(folder: string, path: string): Promise<Uint8Array | undefined> {
  try {
    const root = await realpath(folder);
    const real = await realpath(join(root, path));
    return real.startsWith(root + sep) ? await readFile(real) : undefined;
  } catch {
    return undefined;
  }
}
