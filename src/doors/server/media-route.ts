// Why: recordings and pictures, a stretch at a time for a player that seeks; what could run in a browser only ever comes as a download.
import { createRoute, z } from '@hono/zod-openapi';
import type { EntryOf } from '../../said/entry.ts';
import { bytes, refused, unitParam } from './describe.ts';
import { sandboxPolicy } from './guard.ts';
import type { House, Router } from './house.ts';
import { problemResponse, Refusal } from './refusal.ts';

/** Types that a browser shows without running anything. Everything else is a download of plain bytes. */
const shown =
  /^(video\/(mp4|webm|quicktime|x-matroska|3gpp)|audio\/(mpeg|mp4|aac|ogg|wav|flac|webm)|image\/(jpeg|png|webp|avif|gif|heic|heif|tiff)|text\/(plain|vtt|csv))$/;

export function mediaRoute(app: Router, house: House): void {
  app.openapi(
    createRoute({
      method: 'get',
      path: '/api/units/{unit}/media/{media}',
      summary: 'The bytes of a file of the unit',
      request: { params: unitParam.extend({ media: z.string() }) },
      responses: {
        200: bytes('application/octet-stream', 'all of it'),
        206: bytes('application/octet-stream', 'the stretch that was asked for'),
        400: refused('the id of the unit is not one'),
        404: refused('the unit has no such file'),
        416: refused('the stretch lies outside the file'),
      },
    }),
    async (c) => {
      const { unit, media: id } = c.req.valid('param');
      const entry = await find(unit, id);
      if (!entry) throw new Refusal(404, 'not-found', { where: id });
      const size = await house.keeper.media.size(entry.sha256);
      if (size === undefined) throw new Refusal(404, 'not-found', { where: entry.name });
      const isShown = shown.test(entry.type);
      const headers = new Headers({
        'content-type': isShown ? entry.type : 'application/octet-stream',
        'content-security-policy': sandboxPolicy,
        'accept-ranges': 'bytes',
        etag: `"${entry.sha256}"`,
        'cache-control': 'private, max-age=31536000, immutable',
        'content-disposition': `${isShown ? 'inline' : 'attachment'}; filename*=UTF-8''${encodeURIComponent(entry.name.split('/').pop() ?? 'file').replace(/['()*]/g, (x) => `%${x.charCodeAt(0).toString(16)}`)}`,
      });
      if (c.req.header('if-none-match') === `"${entry.sha256}"`)
        return new Response(null, { status: 304, headers });
      const range = readRange(c.req.header('range'), size);
      if (range === 'outside') {
        const refusal = problemResponse(new Refusal(416, 'bad-range', { where: `bytes */${size}` }));
        refusal.headers.set('content-range', `bytes */${size}`);
        return refusal;
      }
      headers.set('content-length', String(range ? range.end - range.start + 1 : size));
      if (range) headers.set('content-range', `bytes ${range.start}-${range.end}/${size}`);
      // Nobody would read the bytes, and so nobody would close the file.
      if (c.req.method === 'HEAD') return new Response(null, { status: range ? 206 : 200, headers });
      const found = size === 0 ? [] : await house.keeper.media.open(entry.sha256, range);
      if (!found) throw new Refusal(404, 'not-found', { where: entry.name });
      return new Response(streamOf(found), { status: range ? 206 : 200, headers });
    },
  );

  /** Where each unit's media entries were last found; asked again when one is not among them. */
  const known = new Map<string, Map<string, EntryOf<'media'>>>();
  async function find(unit: string, id: string): Promise<EntryOf<'media'> | undefined> {
    const had = known.get(unit)?.get(id);
    if (had) return had;
    const found = new Map<string, EntryOf<'media'>>();
    for (const { entry } of await house.keeper.log.read({ dealership: house.dealership, unit }))
      if (entry.kind === 'media') found.set(entry.media, entry);
    if (known.size > 100) known.clear();
    known.set(unit, found);
    return found.get(id);
  }
}

/** A Range header of one stretch (RFC 9110, section 14); undefined when all is wanted or the header is of another kind. */
export function readRange(
  header: string | undefined,
  size: number,
): { readonly start: number; readonly end: number } | 'outside' | undefined {
  const m = /^bytes=(\d*)-(\d*)$/.exec(header?.trim() ?? '');
  if (!m || (m[1] === '' && m[2] === '')) return undefined;
  const start = m[1] === '' ? Math.max(0, size - Number(m[2])) : Number(m[1]);
  const end = m[1] === '' || m[2] === '' ? size - 1 : Math.min(size - 1, Number(m[2]));
  if (start >= size || (m[1] === '' && Number(m[2]) === 0)) return 'outside';
  return end < start ? undefined : { start, end };
}

function streamOf(pieces: AsyncIterable<Uint8Array> | Iterable<Uint8Array>): ReadableStream<Uint8Array> {
  const all = (async function* () {
    yield* pieces;
  })();
  return new ReadableStream({
    async pull(controller) {
      const { value, done } = await all.next();
      if (done) controller.close();
      else controller.enqueue(value);
    },
    async cancel() {
      await all.return(undefined);
    },
  });
}
