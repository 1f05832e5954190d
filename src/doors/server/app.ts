// Why: the server's door: one function from a request to an answer, without a port, a clock or a disk of its own.
import { OpenAPIHono } from '@hono/zod-openapi';
import { day } from '../../units/day.ts';
import { appendRoute } from './append-route.ts';
import { batchRoutes } from './batch-routes.ts';
import { documentRoutes } from './document-routes.ts';
import { guard, secureHeaders } from './guard.ts';
import type { AppOptions, House } from './house.ts';
import { makeJobs } from './jobs.ts';
import { liveRoute } from './live-route.ts';
import { mediaRoute } from './media-route.ts';
import { asRefusal, problemResponse, Refusal } from './refusal.ts';
import { understandSchema } from './schemas.ts';
import { staticFiles } from './static-files.ts';
import { makeYard } from './yard.ts';
import { yardRoutes } from './yard-routes.ts';

export interface App {
  fetch(request: Request): Response | Promise<Response>;
  /** Ends live connections and jobs; the keeper stays open. */
  close(): Promise<void>;
}

/** The local calendar day of a clock. */
const localDay = (now: Date) =>
  day(
    `${now.getFullYear()}-${String(now.getMonth() + 1).padStart(2, '0')}-${String(now.getDate()).padStart(2, '0')}`,
  );

/** The whole server. Every refusal is a Problem (doors/wire/api.ts). */
export function makeApp(options: AppOptions): App {
  const { keeper, clock, dealership, version, staticFolder, demoUnit } = options;
  const complain = options.complain ?? (() => {});
  const today = options.today ?? (() => localDay(clock()));
  const house: House = {
    keeper,
    clock,
    dealership,
    version,
    today,
    complain,
    mostFileBytes: options.mostFileBytes ?? 4 * 1024 ** 3,
    mostJsonBytes: options.mostJsonBytes ?? 16 * 1024 ** 2,
    yard: makeYard(keeper.log, dealership, today),
    jobs: makeJobs(complain),
    ...(demoUnit === undefined ? {} : { demoUnit }),
  };
  const app = new OpenAPIHono({
    defaultHook(result) {
      if (result.success) return;
      throw new Refusal(400, 'bad-request', {
        faults: result.error.issues.map((i) => ({ path: i.path.join('.'), message: i.message })),
      });
    },
  });
  app.onError((error) => {
    const refusal = asRefusal(error);
    if (refusal.problem.code === 'unexpected') complain(error);
    return problemResponse(refusal);
  });
  app.notFound((c) => problemResponse(new Refusal(404, 'not-found', { where: c.req.path.slice(0, 200) })));
  app.use(secureHeaders);
  app.use(guard(options.hosts ?? ['localhost', '127.0.0.1', '[::1]']));
  yardRoutes(app, house);
  appendRoute(app, house);
  const endLive = liveRoute(app, house);
  batchRoutes(app, house);
  documentRoutes(app, house);
  mediaRoute(app, house);
  app.openAPIRegistry.register('UnderstandRequest', understandSchema);
  app.doc31('/api/openapi.json', {
    openapi: '3.1.0',
    info: {
      title: 'Walkwright',
      version,
      description: 'One walk round a used motorhome in; report, figures, work and listing out.',
    },
  });
  app.all('/api/*', (c) =>
    problemResponse(new Refusal(404, 'not-found', { where: c.req.path.slice(0, 200) })),
  );
  if (staticFolder !== undefined) app.use(staticFiles(staticFolder));
  return {
    fetch: (request) => app.fetch(request),
    async close() {
      endLive();
      await house.jobs.close();
    },
  };
}
