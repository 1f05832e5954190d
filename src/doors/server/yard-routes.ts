// Why: who this is, what stands in the yard, and the log of one unit from a position on.
import { createRoute, z } from '@hono/zod-openapi';
import type { About, EntriesReply } from '../wire/api.ts';
import { json, refused, unitParam } from './describe.ts';
import type { House, Router } from './house.ts';
import { aboutSchema, yardSchema } from './schemas.ts';

export function yardRoutes(app: Router, house: House): void {
  app.openapi(
    createRoute({
      method: 'get',
      path: '/api/about',
      summary: 'Whose yard this is',
      responses: { 200: json(aboutSchema, 'dealership, version, day') },
    }),
    (c) => {
      const about: About = {
        dealership: house.dealership,
        version: house.version,
        today: house.today(),
        ...(house.demoUnit === undefined ? {} : { demoUnit: house.demoUnit }),
      };
      return c.json(about, 200);
    },
  );

  app.openapi(
    createRoute({
      method: 'get',
      path: '/api/units',
      summary: 'The rows of the yard',
      responses: { 200: json(yardSchema, 'a row for each unit, put away ones too') },
    }),
    async (c) => c.json([...(await house.yard.rows())] as unknown as z.infer<typeof yardSchema>, 200),
  );

  app.openapi(
    createRoute({
      method: 'get',
      path: '/api/units/{unit}/entries',
      summary: "A unit's log, from a position on",
      request: { params: unitParam, query: z.object({ after: z.coerce.number().int().min(0).default(0) }) },
      responses: {
        200: json(
          z
            .object({ entries: z.array(z.object({ position: z.int(), entry: z.unknown() })), last: z.int() })
            .openapi('EntriesReply'),
          'what was kept after that position, in order',
        ),
        400: refused('the position is not a number'),
      },
    }),
    async (c) => {
      const { unit } = c.req.valid('param');
      const { after } = c.req.valid('query');
      const entries = await house.keeper.log.read({ dealership: house.dealership, unit, after });
      const reply: EntriesReply = { entries, last: entries.at(-1)?.position ?? after };
      return c.json({ ...reply, entries: [...reply.entries] }, 200);
    },
  );
}
