// Why: the yard answers this machine's own browser; other sites in that browser may neither read nor write through it.
import type { MiddlewareHandler } from 'hono';
import { Refusal } from './refusal.ts';

/** Scripts only from here; nothing is framed by others; uploaded things never run. */
export const appPolicy = [
  "default-src 'self'",
  "script-src 'self'",
  "style-src 'self'",
  "img-src 'self' data: blob:",
  "media-src 'self' blob:",
  "font-src 'self'",
  "connect-src 'self'",
  "worker-src 'self'",
  "frame-src 'self'",
  "object-src 'none'",
  "base-uri 'none'",
  "form-action 'self'",
  "frame-ancestors 'self'",
].join('; ');

/** For documents and media that came from outside or hold what people typed: shown, never run. */
export const sandboxPolicy =
  "sandbox; default-src 'none'; style-src 'unsafe-inline'; img-src data:; font-src data:; media-src 'self'; frame-ancestors 'self'";

const safeMethods = new Set(['GET', 'HEAD', 'OPTIONS']);

/** Refuses requests that came under another host's name (a name pointed at this machine) or that another site's page sent. */
export function guard(hosts: readonly string[]): MiddlewareHandler {
  return async (c, next) => {
    const url = new URL(c.req.url);
    if (!hosts.includes(url.hostname)) throw new Refusal(421, 'other-host', { where: url.hostname });
    if (!safeMethods.has(c.req.method)) {
      const origin = c.req.header('origin');
      const site = c.req.header('sec-fetch-site');
      if ((origin !== undefined && origin !== url.origin) || site === 'cross-site' || site === 'same-site')
        throw new Refusal(403, 'other-origin');
    }
    await next();
  };
}

/** Headers of every answer; a route's own policy stands. */
export const secureHeaders: MiddlewareHandler = async (c, next) => {
  await next();
  const h = c.res.headers;
  const set = (name: string, value: string): void => {
    if (!h.has(name)) h.set(name, value);
  };
  set('content-security-policy', appPolicy);
  set('x-content-type-options', 'nosniff');
  set('referrer-policy', 'no-referrer');
  set('x-frame-options', 'SAMEORIGIN');
  set('cross-origin-opener-policy', 'same-origin');
  set('cross-origin-resource-policy', 'same-origin');
  set('permissions-policy', 'camera=(self), microphone=(self), geolocation=(self)');
  if (c.req.path.startsWith('/api/')) set('cache-control', 'no-store');
};
