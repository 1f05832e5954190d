// Why: the wire's types (doors/wire/api.ts) once more as schemas, for the OpenAPI description; the compiler holds the two together.

import { z } from '@hono/zod-openapi';
import { vehicleKinds } from '../../catalogue/vehicle-kind.ts';
import type {
  About,
  AppendReply,
  JobReply,
  Problem,
  PublishReply,
  PutFileReply,
  YardRow,
} from '../wire/api.ts';

const verdicts = z.object({
  sound: z.int(),
  watch: z.int(),
  repair: z.int(),
  stop: z.int(),
  'not seen': z.int(),
});

export const aboutSchema = z
  .object({
    dealership: z.string(),
    version: z.string(),
    today: z.iso.date(),
    demoUnit: z.string().optional(),
  })
  .openapi('About');
/** What a unit is drawn as: published/drawing/sizes.ts. */
const sizeSchema = z.object({
  feet: z.number(),
  from: z.enum(['measured', 'seen', 'label', 'figured', 'told', 'guessed', 'none', 'assumed']),
  plusOrMinus: z.number().optional(),
});
const sizesSchema = z.object({
  kind: z.enum(vehicleKinds),
  length: sizeSchema,
  height: sizeSchema,
  wheelbase: sizeSchema,
  frontOverhang: sizeSchema,
  tireRadius: z.number(),
  tag: z.boolean(),
  axles: z.int(),
});
export const yardSchema = z.array(
  z
    .object({
      unit: z.string(),
      name: z.string(),
      stock: z.string().optional(),
      vehicle: z.string().optional(),
      year: z.int().optional(),
      arrived: z.string().optional(),
      daysHere: z.int().optional(),
      invented: z.boolean(),
      putAway: z.boolean(),
      stage: z.enum(['nothing yet', 'walked', 'reviewed', 'published']),
      blockedBy: z.array(z.string()),
      tally: verdicts,
      seen: z.int(),
      expected: z.int(),
      askingCents: z.int().optional(),
      sizes: sizesSchema.optional(),
      last: z.int(),
    })
    .openapi('YardRow'),
);
const appended = z.union([
  z.object({ is: z.enum(['kept', 'already kept']), id: z.string(), position: z.int() }),
  z.object({ is: z.literal('refused'), id: z.string(), code: z.literal('id-taken') }),
]);
export const appendReplySchema = z.object({ appended: z.array(appended) }).openapi('AppendReply');
export const putFileSchema = z
  .object({ name: z.string(), sha256: z.string(), bytes: z.int() })
  .openapi('PutFileReply');
export const problemSchema = z
  .object({
    code: z.string(),
    says: z.string(),
    remedy: z.string(),
    where: z.string().optional(),
    faults: z.array(z.object({ path: z.string(), message: z.string() })).optional(),
  })
  .openapi('Problem');
const account = z.object({
  file: z.string(),
  did: z.enum(['understood', 'partly', 'kept', 'refused', 'missing']),
  says: z.string(),
  line: z.int().optional(),
});
export const jobSchema = z
  .object({
    job: z.string(),
    state: z.enum(['waiting', 'running', 'done', 'stopped', 'failed']),
    progress: z.number(),
    doing: z.string(),
    account: z.array(account),
    problem: problemSchema.optional(),
  })
  .openapi('Job');
export const publishSchema = z
  .object({ publication: z.string(), documents: z.array(z.object({ name: z.string(), sha256: z.string() })) })
  .openapi('PublishReply');
export const understandSchema = z
  .object({
    walk: z.string().optional(),
    title: z.string().max(400).optional(),
    by: z.string().max(400).optional(),
    device: z.string().max(400).optional(),
  })
  .openapi('UnderstandRequest');

type Loose<T> = T extends readonly (infer U)[]
  ? readonly Loose<U>[]
  : T extends object
    ? { readonly [K in keyof T]: Loose<T[K]> | (undefined extends T[K] ? undefined : never) }
    : T;
type Holds<A, B> = [A] extends [Loose<B>] ? true : never;
// A line here stops compiling when a schema and its type part ways.
void ([true, true, true, true, true, true, true] satisfies readonly [
  Holds<z.infer<typeof aboutSchema>, About>,
  Holds<z.infer<typeof yardSchema>, readonly YardRow[]>,
  Holds<z.infer<typeof appendReplySchema>, AppendReply>,
  Holds<z.infer<typeof putFileSchema>, PutFileReply>,
  Holds<z.infer<typeof problemSchema>, Problem>,
  Holds<z.infer<typeof jobSchema>, JobReply>,
  Holds<z.infer<typeof publishSchema>, PublishReply>,
]);
