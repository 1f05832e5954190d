// Why: a report that is handed over is a file that prints the same everywhere and can be read aloud: tagged PDF, the same bytes each time.
import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { resolve } from 'node:path';
import { NodeCompiler } from '@myriaddreamin/typst-ts-node-compiler';
import type { Packet } from '../../published/document.ts';
import { dayNumber } from '../../units/day.ts';
import { withoutControls } from './escape-html.ts';
import { glyphMarks } from './glyph-svg.ts';
import type { PacketPhoto } from './report-photos.ts';
import { reportSheet } from './report-sheet.ts';
import { reportTypst } from './report-typ.ts';
import { stripPhoto } from './strip-photo.ts';
import { unpackWoff } from './unpack-woff.ts';

/** The typefaces of the house, from the registry, in the weights that the report uses. */
const fonts = [
  '@fontsource/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-400-normal.woff',
  '@fontsource/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-700-normal.woff',
  '@fontsource/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-400-italic.woff',
  '@fontsource/b612-mono/files/b612-mono-latin-400-normal.woff',
  '@fontsource/b612-mono/files/b612-mono-latin-700-normal.woff',
] as const;

/** Stops and repairs named on the first page; the rest follows inside. */
const onCover = 13;
const verdicts = ['stop', 'repair', 'watch', 'sound', 'not seen'] as const;

let made: Promise<NodeCompiler> | undefined;

async function makeCompiler(): Promise<NodeCompiler> {
  const find = createRequire(import.meta.url);
  const blobs = await Promise.all(
    fonts.map(async (name) => Buffer.from(unpackWoff(await readFile(find.resolve(name))))),
  );
  return NodeCompiler.create({ fontArgs: [{ fontBlobs: blobs }] });
}

/** What the layout reads: the sheet, the glyphs, the short list for the cover. Texts stay texts: the layout never reads them as markup. */
export function reportData(packet: Packet, photos: readonly PacketPhoto[] = []): string {
  const sheet = reportSheet(packet, photos);
  const glyph = (v: (typeof verdicts)[number]): string =>
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 20 20">${glyphMarks(v, 10, 10, 8)}</svg>`;
  const data = {
    ...sheet,
    short: sheet.first.slice(0, onCover),
    shortMore: Math.max(0, sheet.first.length - onCover),
    glyphs: Object.fromEntries(verdicts.map((v) => [v, glyph(v)])),
  };
  return JSON.stringify(data, (_, value: unknown) =>
    typeof value === 'string' ? withoutControls(value) : value,
  );
}

/** Small pictures, so that a report with forty of them can still be mailed: some 20 kB each. */
const inPrint = { side: 420, quality: 62 } as const;

/** Pictures where the layout finds them; they are taken away again after the report has been made. */
async function layOut(compiler: NodeCompiler, photos: readonly PacketPhoto[]): Promise<readonly string[]> {
  const paths: string[] = [];
  for (const { name, bytes } of photos) {
    const small = await stripPhoto(bytes, inPrint);
    // The packet's photos have been through the same gate, so this one is a picture.
    if (small === undefined) throw new Error(`reportPdf: "${name}" is no picture`);
    const path = resolve(name);
    compiler.mapShadow(path, Buffer.from(small));
    paths.push(path);
  }
  return paths;
}

/**
 * The condition report as a tagged PDF (PDF/UA-1). The same packet and photos give the same bytes: its date is the packet's day.
 * Throws Error when the layout cannot be compiled, which is a mistake of this software.
 */
export async function reportPdf(packet: Packet, photos: readonly PacketPhoto[] = []): Promise<Uint8Array> {
  made ??= makeCompiler();
  const compiler = await made;
  const paths = await layOut(compiler, photos);
  try {
    const result = compiler.compile({
      mainFileContent: reportTypst,
      inputs: { sheet: reportData(packet, photos), on: packet.on },
    });
    const document = result.result;
    if (document === null) {
      const error = result.takeError();
      throw new Error(`reportPdf: ${JSON.stringify(error?.shortDiagnostics ?? 'no document')}`);
    }
    const bytes = compiler.pdf(document, {
      pdfStandard: 'ua-1',
      creationTimestamp: dayNumber(packet.on) * 86_400,
    });
    return new Uint8Array(bytes);
  } finally {
    for (const path of paths) compiler.unmapShadow(path);
    compiler.evictCache(10);
  }
}
