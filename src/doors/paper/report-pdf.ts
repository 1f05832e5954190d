// Why: a report that is handed over is a file that prints the same everywhere and can be read aloud: tagged PDF, the same bytes each time.
import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { NodeCompiler } from '@myriaddreamin/typst-ts-node-compiler';
import type { Packet } from '../../published/document.ts';
import { dayNumber } from '../../units/day.ts';
import { withoutControls } from './escape-html.ts';
import { glyphMarks } from './glyph-svg.ts';
import { reportSheet } from './report-sheet.ts';
import { reportTypst } from './report-typ.ts';
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
const onCover = 14;
const verdicts = ['stop', 'repair', 'watch', 'sound', 'not seen'] as const;

let made: Promise<NodeCompiler> | undefined;

async function makeCompiler(): Promise<NodeCompiler> {
  const { resolve } = createRequire(import.meta.url);
  const blobs = await Promise.all(
    fonts.map(async (name) => Buffer.from(unpackWoff(await readFile(resolve(name))))),
  );
  return NodeCompiler.create({ fontArgs: [{ fontBlobs: blobs }] });
}

/** What the layout reads: the sheet, the glyphs, the short list for the cover. Texts stay texts: the layout never reads them as markup. */
export function reportData(packet: Packet): string {
  const sheet = reportSheet(packet);
  const glyph = (v: (typeof verdicts)[number]): string =>
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 20 20">${glyphMarks(v, 10, 10, 8)}</svg>`;
  const data = {
    ...sheet,
    short: sheet.first.slice(0, onCover),
    shortMore: Math.max(0, sheet.first.length - onCover),
    glyphs: Object.fromEntries(verdicts.map((v) => [v, glyph(v)])),
    drawings: sheet.drawings.map((d) => ({ ...d, tall: sheet.first.length > 6 })),
  };
  return JSON.stringify(data, (_, value: unknown) =>
    typeof value === 'string' ? withoutControls(value) : value,
  );
}

/**
 * The condition report as a tagged PDF (PDF/UA-1). The same packet gives the same bytes: its date is the packet's day.
 * Throws Error when the layout cannot be compiled, which is a mistake of this software.
 */
export async function reportPdf(packet: Packet): Promise<Uint8Array> {
  made ??= makeCompiler();
  const compiler = await made;
  const result = compiler.compile({
    mainFileContent: reportTypst,
    inputs: { sheet: reportData(packet), on: packet.on },
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
  compiler.evictCache(10);
  return new Uint8Array(bytes);
}
