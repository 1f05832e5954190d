// Why: the one way in for entries: all of them are sound, or none is kept and every fault is named.
import { createRoute, z } from '@hono/zod-openapi';
import { type Entry, entrySchema, readEntry } from '../../said/entry.ts';
import type { AppendReply } from '../wire/api.ts';
import { json, refused } from './describe.ts';
import type { House, Router } from './house.ts';
import { readJsonBody } from './read-json-body.ts';
import { Refusal } from './refusal.ts';
import { appendReplySchema } from './schemas.ts';

const mostEntries = 20_000;
const mostFaults = 100;
type SchemaObject = Record<string, unknown>;
const { $schema: _, ...entryJsonSchema } = z.toJSONSchema(entrySchema, {
  io: 'input',
  unrepresentable: 'any',
}) as SchemaObject;

export function appendRoute(app: Router, house: House): void {
  app.openapi(
    createRoute({
      method: 'post',
      path: '/api/entries',
      summary: 'Appends entries to the log; sending one again is harmless',
      // Read by hand below: every fault of every entry is told, not the first.
      requestBody: {
        required: true,
        content: {
          'application/json': {
            schema: {
              type: 'object',
              required: ['entries'],
              properties: { entries: { type: 'array', items: entryJsonSchema } },
            },
          },
        },
      },
      responses: {
        200: json(
          appendReplySchema,
          'what happened to each, in order; resolves when all that is kept is on disk',
        ),
        400: refused('something is not an entry; nothing was kept'),
        403: refused('an entry of another dealership; nothing was kept'),
        413: refused('more than is taken at once'),
      },
    }),
    async (c) => {
      const raw = await readJsonBody(c, house.mostJsonBytes);
      const list = typeof raw === 'object' && raw !== null && 'entries' in raw ? raw.entries : undefined;
      if (!Array.isArray(list))
        throw new Refusal(400, 'bad-entry', {
          where: 'entries',
          faults: [{ path: 'entries', message: 'must be a list' }],
        });
      if (list.length > mostEntries) throw new Refusal(413, 'too-big', { where: 'entries' });
      const entries: Entry[] = [];
      const faults: { path: string; message: string }[] = [];
      for (const [i, one] of list.entries()) {
        const read = readEntry(one);
        if ('entry' in read) entries.push(read.entry);
        else
          for (const f of read.faults)
            faults.push({
              path: ['entries', i, f.path].filter((s) => s !== '').join('.'),
              message: f.message,
            });
      }
      if (faults.length > 0)
        throw new Refusal(400, 'bad-entry', { where: faults[0]!.path, faults: faults.slice(0, mostFaults) });
      const stranger = entries.findIndex((e) => e.dealership !== house.dealership);
      if (stranger >= 0)
        throw new Refusal(403, 'other-dealership', { where: `entries.${stranger}.dealership` });
      const reply: AppendReply = { appended: await house.keeper.log.append(entries) };
      return c.json({ appended: [...reply.appended] }, 200);
    },
  );
}
