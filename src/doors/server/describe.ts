// Why: every answer of the API is described alike: what comes back, and the one shape of a refusal.
import { z } from '@hono/zod-openapi';
import { problemSchema } from './schemas.ts';

/** The description of a JSON answer. */
export const json = <S extends z.ZodType>(schema: S, description: string) => ({
  description,
  content: { 'application/json': { schema } },
});

/** The description of bytes. */
export const bytes = (type: string, description: string) => ({
  description,
  content: { [type]: { schema: { type: 'string' as const, format: 'binary' } } },
});

/** Every refusal: problem JSON. */
export const refused = (description: string) => ({
  description,
  content: { 'application/problem+json': { schema: problemSchema } },
});

export const unitParam = z.object({
  unit: z
    .string()
    .regex(/^[0-9a-f-]{36}$/)
    .openapi({ description: 'id of the unit' }),
});
