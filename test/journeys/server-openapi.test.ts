// Why: the server's own description is what others build against: it must hold together, and every route must answer as it says.
import { afterAll, beforeAll, expect, test } from 'vitest';
import { z } from 'zod';
import { envelope, nextId, openHouse, post, type ServerHouse } from './server-house.ts';

interface Operation {
  readonly responses: Readonly<
    Record<string, { readonly content?: Readonly<Record<string, { readonly schema?: object }>> }>
  >;
  readonly parameters?: readonly { readonly name: string; readonly in: string }[];
}
interface Described {
  readonly openapi: string;
  readonly paths: Readonly<Record<string, Readonly<Record<string, Operation>>>>;
  readonly components: { readonly schemas: Readonly<Record<string, object>> };
}

let house: ServerHouse;
let api: Described;
beforeAll(async () => {
  house = await openHouse();
  api = await house.json<Described>('/api/openapi.json');
});
afterAll(() => house.close());

/** Every value under every "$ref" of a document. */
const refsIn = (node: unknown): readonly string[] =>
  typeof node !== 'object' || node === null
    ? []
    : Object.entries(node).flatMap(([key, value]) =>
        key === '$ref' && typeof value === 'string' ? [value] : refsIn(value),
      );

test('every reference leads somewhere, and every variable of a path is described', () => {
  expect(api.openapi).toBe('3.1.0');
  expect(Object.keys(api.paths).length).toBeGreaterThan(9);
  for (const ref of refsIn(api)) {
    const steps = ref.replace(/^#\//, '').split('/');
    expect(
      steps.reduce<unknown>((at, step) => (at as Record<string, unknown> | undefined)?.[step], api),
      ref,
    ).toBeTypeOf('object');
  }
  for (const [path, operations] of Object.entries(api.paths))
    for (const [method, { parameters = [] }] of Object.entries(operations))
      for (const [, name] of path.matchAll(/\{(\w+)\}/g))
        expect(
          parameters.some((p) => p.in === 'path' && p.name === name),
          `${method} ${path} ${name}`,
        ).toBe(true);
});

/** A schema of the description as a check: references put in place first. */
function checkFor(schema: object): z.ZodType {
  const put = (node: unknown): unknown => {
    if (Array.isArray(node)) return node.map(put);
    if (typeof node !== 'object' || node === null) return node;
    if ('$ref' in node) return put(api.components.schemas[String(node.$ref).split('/').at(-1)!]);
    return Object.fromEntries(Object.entries(node).map(([k, v]) => [k, put(v)]));
  };
  return z.fromJSONSchema(put(schema) as Parameters<typeof z.fromJSONSchema>[0]);
}

test('every route answers with a status and a type that it declares, and JSON of the declared shape', async () => {
  const unit = nextId();
  const batch = nextId();
  const media = nextId();
  const put = await house.ask(`/api/units/${unit}/batches/${batch}/files/a.txt`, {
    method: 'PUT',
    body: 'x',
  });
  const { sha256 } = (await put.clone().json()) as { sha256: string };
  const file = { kind: 'media', media, role: 'other', name: 'a.txt', type: 'text/plain', bytes: 1, sha256 };
  const entries = [
    { ...envelope(unit), ...file },
    { ...envelope(unit), kind: 'unit', stock: 'A-1' },
  ];
  const job = (
    (await (
      await house.ask(`/api/units/${unit}/batches/${batch}/understand`, { method: 'POST' })
    ).json()) as { job: string }
  ).job;
  const none = nextId();
  const u = `/api/units/${unit}`;
  const asked: readonly (readonly [method: string, described: string, path: string, body?: unknown])[] = [
    ['get', '/api/about', '/api/about'],
    ['post', '/api/entries', '/api/entries', { entries }],
    ['post', '/api/entries', '/api/entries', { entries: [{}] }],
    [
      'post',
      '/api/entries',
      '/api/entries',
      { entries: [{ ...entries[1], id: nextId(), dealership: 'another' }] },
    ],
    ['get', '/api/units', '/api/units'],
    ['get', '/api/units/{unit}/entries', `${u}/entries`],
    ['get', '/api/units/{unit}/entries', `${u}/entries?after=x`],
    ['put', '/api/units/{unit}/batches/{batch}/files/{name}', `${u}/batches/${batch}/files/b.txt`],
    ['put', '/api/units/{unit}/batches/{batch}/files/{name}', `${u}/batches/${batch}/files/..%2fb.txt`],
    ['post', '/api/units/{unit}/batches/{batch}/understand', `${u}/batches/${batch}/understand`, {}],
    ['post', '/api/units/{unit}/batches/{batch}/understand', `${u}/batches/none/understand`, {}],
    ['post', '/api/units/{unit}/batches/{batch}/understand', `${u}/batches/${batch}/understand`, { walk: 5 }],
    ['get', '/api/jobs/{job}', `/api/jobs/${job}`],
    ['get', '/api/jobs/{job}', '/api/jobs/none'],
    ['delete', '/api/jobs/{job}', `/api/jobs/${job}`],
    ['delete', '/api/jobs/{job}', '/api/jobs/none'],
    ['get', '/api/units/{unit}/media/{media}', `${u}/media/${media}`],
    ['get', '/api/units/{unit}/media/{media}', `${u}/media/none`],
    ['get', '/api/units/{unit}/documents/{name}', `${u}/documents/listing.txt`],
    ['get', '/api/units/{unit}/documents/{name}', `/api/units/${none}/documents/listing.txt`],
    ['get', '/api/units/{unit}/documents/{name}', `${u}/documents/none`],
    ['get', '/api/units/{unit}/packet.zip', `${u}/packet.zip`],
    ['get', '/api/units/{unit}/packet.zip', `/api/units/${none}/packet.zip`],
    ['post', '/api/units/{unit}/publish', `${u}/publish`, {}],
    ['post', '/api/units/{unit}/publish', `/api/units/${none}/publish`, {}],
    ['get', '/api/units', '/api/units'],
    ['get', '/api/units/{unit}/packet.zip', '/api/units/none/packet.zip'],
    ['post', '/api/units/{unit}/publish', '/api/units/none/publish', {}],
    ['get', '/api/units/{unit}/media/{media}', `/api/units/none/media/${media}`],
    ['get', '/api/units/{unit}/entries', '/api/units/none/entries'],
    ['get', '/api/live', '/api/live'],
  ];
  const told: string[] = [];
  for (const [method, described, path, body] of asked) {
    const init =
      body === undefined ? { method: method.toUpperCase() } : { ...post(body), method: method.toUpperCase() };
    const reply = await house.ask(path, init);
    const what = `${method} ${path} ${reply.status}`;
    const declared = api.paths[described]?.[method]?.responses[String(reply.status)];
    const type = reply.headers.get('content-type')?.split(';')[0] ?? '';
    if (!declared) told.push(`${what} is not declared`);
    const schema = declared?.content?.[type]?.schema;
    if (declared && !schema && !declared.content?.['application/octet-stream'])
      told.push(`${what} ${type} is not declared`);
    if (schema && type.endsWith('json')) {
      const checked = checkFor(schema).safeParse(await reply.json());
      if (!checked.success) told.push(`${what}: ${JSON.stringify(checked.error.issues).slice(0, 300)}`);
    } else await reply.body?.cancel();
    for (const header of [
      'content-security-policy',
      'x-content-type-options',
      'referrer-policy',
      'x-frame-options',
    ])
      if (!reply.headers.has(header)) told.push(`${what} lacks ${header}`);
  }
  expect(told).toEqual([]);
  const asks = new Set(asked.map(([method, described]) => `${method} ${described}`));
  const all = Object.entries(api.paths).flatMap(([path, of]) =>
    Object.keys(of).map((method) => `${method} ${path}`),
  );
  expect(all.filter((one) => !asks.has(one))).toEqual([]);
}, 30_000);
