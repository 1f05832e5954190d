// Why: two windows on one unit show the same: each is told that something was kept, and fetches what it lacks.
import { createRoute } from '@hono/zod-openapi';
import type { LiveEvent } from '../wire/api.ts';
import { bytes } from './describe.ts';
import type { House, Router } from './house.ts';

/** A quiet line now and then, so that nobody in between takes the connection for dead. */
const heartbeat = 25_000;
const mostListeners = 200;

export function liveRoute(app: Router, house: House): () => void {
  const open = new Set<() => void>();
  const route = createRoute({
    method: 'get',
    path: '/api/live',
    summary: 'Server-sent events: "kept", with the unit and the position',
    responses: { 200: bytes('text/event-stream', 'one event for each unit in which something was kept') },
  });
  const headers = {
    'content-type': 'text/event-stream',
    'cache-control': 'no-store',
    'x-accel-buffering': 'no',
  };
  app.openapi(route, (c) => {
    if (c.req.method === 'HEAD') return new Response(null, { headers });
    for (const close of open) {
      if (open.size < mostListeners) break;
      close();
    }
    const text = new TextEncoder();
    let end = (): void => {};
    const stream = new ReadableStream<Uint8Array>({
      start(controller) {
        const send = (line: string): void => {
          try {
            controller.enqueue(text.encode(line));
          } catch {
            end();
          }
        };
        const stopWatching = house.keeper.log.watch((kept) => {
          const last = new Map<string, number>();
          for (const { entry, position } of kept)
            if (entry.dealership === house.dealership) last.set(entry.unit, position);
          for (const [unit, position] of last)
            send(`event: kept\ndata: ${JSON.stringify({ unit, position } satisfies LiveEvent)}\n\n`);
        });
        const beat = setInterval(() => send(': here\n\n'), heartbeat);
        beat.unref();
        end = () => {
          if (!open.delete(end)) return;
          clearInterval(beat);
          stopWatching();
          try {
            controller.close();
          } catch {
            // The listener went first: there is nothing left to close.
          }
        };
        open.add(end);
        send('retry: 2000\n\n');
      },
      cancel: () => end(),
    });
    c.req.raw.signal.addEventListener('abort', () => end(), { once: true });
    return new Response(stream, { headers });
  });
  return () => {
    for (const close of [...open]) close();
  };
}
