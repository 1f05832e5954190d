// Why: documents leave the building: nothing said may become markup, nothing found may be missing, and the same packet is the same bytes.
import { createHash } from 'node:crypto';
import { unzipSync } from 'fflate';
import sharp from 'sharp';
import { describe, expect, test } from 'vitest';
import {
  factOf,
  findingOf,
  mediaId,
  quantityOf,
  spokenAt,
  textOf,
  treadLimit,
  unpublishedOf,
} from '../../../test/invented-unit.ts';
import { publish } from '../../published/publish.ts';
import { chaptersVtt, vttTime } from './chapters-vtt.ts';
import { jsonForScript } from './escape-html.ts';
import { listingHtml } from './listing-html.ts';
import { listingText } from './listing-text.ts';
import { packetFiles } from './packet-files.ts';
import { reportHtml } from './report-html.ts';
import { reportData, reportPdf } from './report-pdf.ts';
import { reportTypst } from './report-typ.ts';
import { zip } from './zip.ts';

const evil =
  '<img src=x onerror=alert(1)></script><script>alert(2)</script> #eval("1+1") --> & "quoted" \u0007';
const said = spokenAt(582, 'tire', 'tread_mid', quantityOf(2, '[in_i]/32', 0.5), evil, {
  place: 'left-rear-inner',
  by: evil,
});
const note = spokenAt(590, 'coach', 'color', textOf(evil), evil);
const owner = spokenAt(600, 'coach', 'claim', textOf(`one owner ${evil}`), evil, {
  sense: 'claim',
  saidBy: evil,
});
const packet = publish(
  unpublishedOf({
    unit: { name: evil, maker: evil, model: evil, stock: evil },
    facts: [factOf(said), factOf(note)],
    findings: [
      findingOf({
        fact: factOf(said),
        limit: treadLimit,
        reason: evil,
        next: evil,
        who: evil,
        caution: 'tires',
      }),
    ],
    record: {
      claims: [owner],
      transcripts: [
        {
          v: 1,
          kind: 'transcript',
          id: owner.id,
          dealership: 'demo',
          unit: owner.unit,
          at: owner.at,
          by: 'R. Ames',
          device: 'phone',
          walk: owner.id,
          media: mediaId,
          cues: [{ start: 580, end: 605, text: evil }],
        },
      ],
    },
  }),
);

/** Element names in a page, as a parser would see them: whatever follows a bare "<". */
const elements = (html: string): Set<string> =>
  new Set([...html.matchAll(/<([a-zA-Z][\w-]*)/g)].map((m) => m[1]!.toLowerCase()));

describe('nothing said becomes markup', () => {
  test.each([
    ['report', reportHtml(packet)],
    ['listing', listingHtml(packet)],
  ])('%s page', (_, html) => {
    expect(
      [...elements(html)].filter((n) => ['img', 'iframe', 'object', 'form', 'input'].includes(n)),
    ).toEqual([]);
    // The only links are the page's own, to a finding on it.
    for (const [link] of html.matchAll(/<a\b[^>]*>/g))
      expect(link).toMatch(/^<a (id="|href="#)finding-\d+">$/);
    expect(html).not.toMatch(/\son\w+\s*=\s*["']/);
    expect(html).toContain('&lt;img src=x onerror=alert(1)&gt;');
    const scripts = html.match(/<script[^>]*>/g) ?? [];
    expect(scripts.every((s) => s === '<script type="application/ld+json">')).toBe(true);
    expect(html.match(/<\/script>/g)?.length ?? 0).toBe(scripts.length);
    expect(html).not.toContain('\u0007');
  });
  test('data for machines survives and cannot end its element', () => {
    const json =
      /<script type="application\/ld\+json">([\s\S]*?)<\/script>/.exec(listingHtml(packet))?.[1] ?? '';
    expect(json).not.toContain('<');
    expect(JSON.parse(json)).toMatchObject({ '@type': 'Vehicle', name: evil });
    expect(jsonForScript({ a: '</script>\u2028' })).not.toMatch(/<|\u2028/);
  });
  test('chapters: one line of text, no markup, no arrow but the cue’s own', () => {
    const vtt = chaptersVtt(packet);
    expect(vtt.startsWith('WEBVTT\n\n1\n00:00:00.000 --> ')).toBe(true);
    expect(vtt.match(/-->/g)?.length).toBe(packet.chapters.length);
    expect(vtt).not.toMatch(/<\w/);
  });
  test('plain text keeps one line a sentence', () => {
    expect(listingText(publish(unpublishedOf({ unit: { name: 'Tern\n\nPRICE $1' } }))).split('\n')[2]).toBe(
      'Tern PRICE $1',
    );
  });
  test('the PDF layout holds no word of a unit; all of them come as data', async () => {
    expect(JSON.parse(reportData(packet))).toMatchObject({ name: evil.replace('\u0007', '\ufffd') });
    expect(reportTypst).not.toMatch(/Hollowell|onerror/);
    const bytes = Buffer.from(await reportPdf(packet)).toString('latin1');
    expect(bytes).not.toMatch(/\/(JavaScript|JS|Launch|OpenAction|EmbeddedFile)\b/);
  }, 30_000);
});

describe('documents', () => {
  test('the PDF is tagged, dated by the packet and the same each time', async () => {
    const [one, two] = [await reportPdf(packet), await reportPdf(packet)];
    expect(Buffer.compare(one, two)).toBe(0);
    const text = Buffer.from(one).toString('latin1');
    expect(text.slice(0, 8)).toBe('%PDF-1.7');
    expect(text).toMatch(/\/MarkInfo|\/StructTreeRoot/);
    expect(text).toContain('20261124');
  }, 30_000);
  test('an invented unit is marked in every document', async () => {
    for (const f of await packetFiles(packet))
      if (/html|txt/.test(f.name)) expect(new TextDecoder().decode(f.bytes), f.name).toMatch(/INVENTED UNIT/);
    expect(reportData(packet)).toContain('"invented":true');
    expect(reportHtml(publish(unpublishedOf({ unit: { invented: false } })))).not.toMatch(/INVENTED/);
  }, 30_000);
  test('no document calls anything safe or names a federal agency’s mark', async () => {
    for (const f of await packetFiles(packet))
      if (!f.name.endsWith('.pdf'))
        expect(new TextDecoder().decode(f.bytes), f.name).not.toMatch(/\bsafe\b|\bDOT\b/);
  }, 30_000);
  test('praise that was not published is in the dealership’s file only', async () => {
    const tires = spokenAt(40, 'tire', 'claim', textOf('wonderful rubber'), 'wonderful rubber', {
      sense: 'claim',
    });
    const files = await packetFiles(publish(unpublishedOf({ record: { claims: [tires] } })));
    const holding = files
      .filter((f) => /wonderful/i.test(new TextDecoder().decode(f.bytes)))
      .map((f) => f.name);
    expect(holding).toEqual(['claims.json', 'packet.json']);
  }, 30_000);
  test('times of a cue', () =>
    expect([vttTime(741.2), vttTime(3723.004), vttTime(59.9996)]).toEqual([
      '00:12:21.200',
      '01:02:03.004',
      '00:01:00.000',
    ]));
  test('nothing known at all still makes every document', async () => {
    const files = await packetFiles(publish(unpublishedOf()));
    expect(files.map((f) => f.name)).toEqual([
      'report.pdf',
      'report.html',
      'listing.html',
      'listing.txt',
      'chapters.vtt',
      'claims.json',
      'packet.json',
      'README.txt',
    ]);
    expect(new TextDecoder().decode(files[4]?.bytes)).toBe('WEBVTT\n');
    expect(files.every((f) => f.bytes.length > 0)).toBe(true);
  }, 30_000);
  const media = (n: number, more: object = {}) => ({
    v: 1 as const,
    kind: 'media' as const,
    id: note.id,
    dealership: 'demo',
    unit: note.unit,
    at: note.at,
    by: 'x',
    device: 'x',
    media: mediaId.replace(/a$/, String(n)),
    role: 'photo' as const,
    name: '../../etc/passwd',
    type: 'image/jpeg',
    bytes: 3,
    sha256: '0'.repeat(64),
    ...more,
  });
  const picture = sharp({ create: { width: 900, height: 600, channels: 3, background: '#804020' } })
    .withExif({ IFD0: { Make: 'InventedPhone' }, IFD3: { GPSLatitudeRef: 'N' } })
    .jpeg()
    .toBuffer();
  test('photos come stripped under their ids; one that is not to be had, or is no picture, is left out', async () => {
    const p = publish(unpublishedOf({ record: { media: [media(1), media(2), media(3)] } }));
    const files = await packetFiles(p, {
      photos: async (m) =>
        m.media.endsWith('1') ? picture : m.media.endsWith('2') ? new Uint8Array([1, 2, 3]) : undefined,
    });
    const photos = files.filter((f) => f.name.startsWith('photos/'));
    expect(photos.map((f) => f.name)).toEqual([`photos/${media(1).media}.jpg`]);
    expect((await picture).toString('latin1')).toMatch(/InventedPhone/);
    for (const f of files)
      expect(Buffer.from(f.bytes).toString('latin1'), f.name).not.toMatch(/InventedPhone/);
  }, 30_000);
  test('a picture stands beside the fault it shows, once, in page and print', async () => {
    const shown = { part: 'tire', place: 'left-rear-inner', caption: 'Inner dual <b>', taken: note.at };
    const photo = { media: media(1, shown), name: 'photos/x.jpg', bytes: new Uint8Array(await picture) };
    const html = reportHtml(packet, [photo]);
    expect(html.match(/<img src="photos\/x\.jpg" alt="Inner dual &lt;b&gt;, 24 Nov 2026"/g)?.length).toBe(1);
    expect(html.indexOf('<img ')).toBeLessThan(html.indexOf('Station by station'));
    const [bare, one, two] = [
      await reportPdf(packet),
      await reportPdf(packet, [photo]),
      await reportPdf(packet, [photo]),
    ];
    expect(Buffer.compare(one, two)).toBe(0);
    expect(Buffer.from(one).toString('latin1')).toMatch(/\/Subtype ?\/Image/);
    expect(one.length - bare.length).toBeLessThan(60_000);
  }, 60_000);
  test('every fault has its own anchor in the report, once', () => {
    const html = reportHtml(packet);
    const faults = packet.findings.filter((f) => f.verdict !== 'sound' && f.verdict !== 'not seen');
    for (const [i] of faults.entries())
      expect(html.match(new RegExp(`id="finding-${i + 1}"`, 'g'))?.length).toBe(1);
  });
});

describe('zip', () => {
  test('unpacks to what went in, and is the same to the byte wherever it is made', () => {
    const files = [
      { name: 'a.txt', bytes: new TextEncoder().encode('x'.repeat(500)) },
      { name: 'photos/b.jpg', bytes: new Uint8Array([255, 216, 1]) },
    ];
    const packed = zip(files);
    expect(unzipSync(packed)['photos/b.jpg']).toEqual(files[1]?.bytes);
    expect(packed.length).toBeLessThan(400);
    expect(createHash('sha256').update(packed).digest('hex')).toBe(
      createHash('sha256').update(zip(files)).digest('hex'),
    );
    expect(() => zip([files[0]!, files[0]!])).toThrow(RangeError);
  });
});
