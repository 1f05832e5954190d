// Why: a person drops a walk's files; they are kept as they come, then understood as a job that can be watched and stopped.
import { createRoute, z } from '@hono/zod-openapi';
import type { VehicleKind } from '../../catalogue/vehicle-kind.ts';
import { idFrom } from '../files/make-entries.ts';
import { readWalkFacts } from '../files/read-unit.ts';
import { understand } from '../files/understand.ts';
import type { WalkFile } from '../files/walk-file.ts';
import { fileName, makeBatches } from './batches.ts';
import { json, refused, unitParam } from './describe.ts';
import type { House, Router } from './house.ts';
import { readJsonBody } from './read-json-body.ts';
import { Refusal } from './refusal.ts';
import { jobSchema, putFileSchema, understandSchema } from './schemas.ts';

const batchParam = unitParam.extend({ batch: z.string().regex(/^[A-Za-z0-9_-]{1,64}$/) });
const isId = (text: string | undefined): text is string =>
  text !== undefined && /^[0-9a-f]{8}-[0-9a-f]{4}-7[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/.test(text);
/** Entries kept at once: a stop in between leaves whole entries, and the same batch again brings the rest. */
const piece = 2000;

export function batchRoutes(app: Router, house: House): void {
  const batches = makeBatches(house.keeper.media, house.clock);

  app.openapi(
    createRoute({
      method: 'put',
      path: '/api/units/{unit}/batches/{batch}/files/{name}',
      summary: 'Streams one file of a walk in',
      request: { params: batchParam.extend({ name: z.string() }) },
      responses: {
        200: json(putFileSchema, 'its name, hash and size'),
        400: refused('the name leads out of the folder'),
        413: refused('larger than is taken'),
      },
    }),
    async (c) => {
      const { unit, batch } = c.req.valid('param');
      // As it was sent: a name with "%2F" in it must not be taken apart before it has been looked at.
      const name = fileName(new URL(c.req.url).pathname.split('/files/').slice(1).join('/files/'));
      if (Number(c.req.header('content-length') ?? 0) > house.mostFileBytes)
        throw new Refusal(413, 'too-big', { where: name });
      return c.json(await batches.put(unit, batch, name, bodyOf(c.req.raw), house.mostFileBytes), 200);
    },
  );

  app.openapi(
    createRoute({
      method: 'post',
      path: '/api/units/{unit}/batches/{batch}/understand',
      summary: 'Starts the reading of a batch',
      request: { params: batchParam },
      requestBody: {
        content: { 'application/json': { schema: { $ref: '#/components/schemas/UnderstandRequest' } } },
      },
      responses: {
        200: json(jobSchema, 'the job'),
        400: refused('the body cannot be read'),
        404: refused('nothing was handed in under this batch'),
      },
    }),
    async (c) => {
      const { unit, batch: id } = c.req.valid('param');
      const body = understandSchema.safeParse(await readJsonBody(c, 100_000, {}));
      if (!body.success)
        throw new Refusal(400, 'bad-request', {
          faults: body.error.issues.map((i) => ({ path: i.path.join('.'), message: i.message })),
        });
      const batch = batches.get(unit, id);
      if (!batch) throw new Refusal(404, 'no-batch', { where: id });
      const files = batches.walkFiles(unit, id, batch);
      const asked = body.data;
      return c.json(
        house.jobs.start(`${unit}/${id}`, async (progress, signal) => {
          const paper = files.find((f) => /(^|\/)unit\.json$/i.test(f.name));
          const facts = paper ? readWalkFacts(await paper.text().catch(() => '{}')) : {};
          const at = facts.walked ?? batch.at;
          const walk = isId(asked.walk) ? asked.walk : isId(id) ? id : idFrom(at, unit, id, 'walk');
          const about = {
            dealership: house.dealership,
            unit,
            walk,
            at,
            seed: id,
            by: facts.by ?? (asked.by || 'somebody'),
            device: facts.device ?? (asked.device || 'not named'),
            title: (asked.title || facts.title) ?? `Walk of ${at.slice(0, 10)}`,
          };
          const { entries, account } = await understand(
            files as readonly WalkFile[],
            about,
            (share, doing) => progress(share * 0.8, doing),
            signal,
            await kindOf(unit),
          );
          for (let from = 0; from < entries.length; from += piece) {
            signal.throwIfAborted();
            await house.keeper.log.append(entries.slice(from, from + piece));
            progress(0.8 + (0.2 * from) / entries.length, 'Keeping what was understood');
          }
          return account;
        }) as z.infer<typeof jobSchema>,
        200,
      );
    },
  );

  app.openapi(
    createRoute({
      method: 'get',
      path: '/api/jobs/{job}',
      summary: 'How far a job is',
      request: { params: z.object({ job: z.string() }) },
      responses: { 200: json(jobSchema, 'the job'), 404: refused('there is no such job') },
    }),
    (c) => {
      const job = house.jobs.get(c.req.valid('param').job);
      if (!job) throw new Refusal(404, 'not-found', { where: 'job' });
      return c.json(job as z.infer<typeof jobSchema>, 200);
    },
  );

  app.openapi(
    createRoute({
      method: 'delete',
      path: '/api/jobs/{job}',
      summary: 'Stops a job',
      request: { params: z.object({ job: z.string() }) },
      responses: { 200: json(jobSchema, 'the job, stopping'), 404: refused('there is no such job') },
    }),
    (c) => {
      const job = house.jobs.stop(c.req.valid('param').job);
      if (!job) throw new Refusal(404, 'not-found', { where: 'job' });
      return c.json(job as z.infer<typeof jobSchema>, 200);
    },
  );

  /** The kind of vehicle that the log has, if any: parts it cannot have are not heard. */
  async function kindOf(unit: string): Promise<VehicleKind | undefined> {
    let kind: VehicleKind | undefined;
    for (const { entry } of await house.keeper.log.read({ dealership: house.dealership, unit })) {
      if (entry.kind === 'unit' && entry.vehicle !== undefined) kind = entry.vehicle;
    }
    return kind;
  }
}

async function* bodyOf(request: Request): AsyncGenerator<Uint8Array> {
  if (!request.body) return;
  try {
    yield* request.body as unknown as AsyncIterable<Uint8Array>;
  } catch {
    throw new Refusal(400, 'upload-broken');
  }
}
