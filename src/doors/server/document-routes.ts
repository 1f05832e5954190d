// Why: documents are made new from the log at each request, so that none is ever older than what is known.
import { createHash, randomBytes } from 'node:crypto';
import { createRoute, z } from '@hono/zod-openapi';
import type { EntryOf } from '../../said/entry.ts';
import { uuidV7 } from '../../said/uuid.ts';
import { documentOf, packetFiles } from '../paper/packet-files.ts';
import { zip } from '../paper/zip.ts';
import { documentNames, type PublishReply } from '../wire/api.ts';
import { bytes, json, refused, unitParam } from './describe.ts';
import { sandboxPolicy } from './guard.ts';
import type { House, Router } from './house.ts';
import { readJsonBody } from './read-json-body.ts';
import { Refusal } from './refusal.ts';
import { publishSchema } from './schemas.ts';

const types: Readonly<Record<string, string>> = {
  pdf: 'application/pdf',
  html: 'text/html; charset=utf-8',
  txt: 'text/plain; charset=utf-8',
  vtt: 'text/vtt; charset=utf-8',
  json: 'application/json',
};
const typeOf = (name: string): string => types[name.split('.').pop() ?? ''] ?? 'application/octet-stream';

/** Larger pictures stay out of the packet. */
const mostPhotoBytes = 50_000_000;

export function documentRoutes(app: Router, house: House): void {
  const find = async (unit: string) => {
    const made = await house.yard.packet(unit);
    if (!made) throw new Refusal(404, 'not-found', { where: unit });
    return made;
  };
  const photos = async ({ sha256, bytes }: EntryOf<'media'>): Promise<Uint8Array | undefined> => {
    const found = bytes > mostPhotoBytes ? undefined : await house.keeper.media.open(sha256);
    if (!found) return undefined;
    const pieces: Uint8Array[] = [];
    for await (const piece of found) pieces.push(piece);
    return Buffer.concat(pieces);
  };
  /** A plain name for the download: stock number and day, nothing that a header or a disk could stumble over. */
  const title = (stock: string | undefined, on: string): string =>
    `${(stock ?? 'unit').replace(/[^A-Za-z0-9-]+/g, '-').slice(0, 40) || 'unit'}-${on}`;

  app.openapi(
    createRoute({
      method: 'get',
      path: '/api/units/{unit}/packet.zip',
      summary: 'All documents in one file',
      request: { params: unitParam },
      responses: {
        200: bytes('application/zip', 'the packet'),
        400: refused('the id of the unit is not one'),
        404: refused('the log has nothing of this unit'),
      },
    }),
    async (c) => {
      const { packet } = await find(c.req.valid('param').unit);
      return new Response(zip(await packetFiles(packet, { photos })) as Uint8Array<ArrayBuffer>, {
        headers: {
          'content-type': 'application/zip',
          'content-disposition': `attachment; filename="${title(packet.record.unit.stock, packet.on)}.zip"`,
        },
      });
    },
  );

  app.openapi(
    createRoute({
      method: 'get',
      path: '/api/units/{unit}/documents/{name}',
      summary: 'One document',
      request: { params: unitParam.extend({ name: z.enum(documentNames) }) },
      responses: {
        200: bytes('application/octet-stream', 'the document, in its own type'),
        400: refused('the id of the unit or the name of the document is not one'),
        404: refused('no such unit or document'),
      },
    }),
    async (c) => {
      const { unit, name } = c.req.valid('param');
      const { packet } = await find(unit);
      const file = await documentOf(packet, name);
      if (!file) throw new Refusal(404, 'not-found', { where: name });
      return new Response(file.bytes as Uint8Array<ArrayBuffer>, {
        headers: {
          'content-type': typeOf(name),
          'content-security-policy': sandboxPolicy,
          'content-disposition': `inline; filename="${title(packet.record.unit.stock, packet.on)}-${name}"`,
        },
      });
    },
  );

  app.openapi(
    createRoute({
      method: 'post',
      path: '/api/units/{unit}/publish',
      summary: 'Makes the packet and writes into the log that it was given out',
      request: { params: unitParam },
      responses: {
        200: json(publishSchema, 'the publication'),
        400: refused('the id of the unit is not one'),
        404: refused('the log has nothing of this unit'),
      },
    }),
    async (c) => {
      const { unit } = c.req.valid('param');
      const asked = (await readJsonBody(c, 100_000, {})) as { readonly by?: unknown };
      const by = typeof asked?.by === 'string' && asked.by !== '' ? asked.by.slice(0, 400) : 'somebody';
      const { packet, upTo } = await find(unit);
      const files = await packetFiles(packet, { photos });
      const documents = files.map((f) => ({
        name: f.name,
        sha256: createHash('sha256').update(f.bytes).digest('hex'),
      }));
      const now = house.clock();
      const id = uuidV7(now.getTime(), randomBytes(10));
      await house.keeper.log.append([
        {
          v: 1,
          kind: 'publication',
          id,
          dealership: house.dealership,
          unit,
          at: now.toISOString(),
          by,
          device: 'server',
          documents,
          upTo,
        },
      ]);
      const reply: PublishReply = { publication: id, documents };
      return c.json({ ...reply, documents: [...reply.documents] }, 200);
    },
  );
}
