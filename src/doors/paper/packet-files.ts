// Why: all that a walk yields, as files to hand over; every door gives out the same ones.
import type { Packet } from '../../published/document.ts';
import type { EntryOf } from '../../said/entry.ts';
import { documentNames } from '../wire/api.ts';
import { chaptersVtt } from './chapters-vtt.ts';
import { listingHtml } from './listing-html.ts';
import { listingText } from './listing-text.ts';
import { claimsJson, jsonText, packetJson } from './packet-json.ts';
import { packetReadme } from './packet-readme.ts';
import { reportHtml } from './report-html.ts';
import { reportPdf } from './report-pdf.ts';
import { type PacketPhoto, packetPhotos } from './report-photos.ts';
import type { NamedBytes } from './zip.ts';

export interface PacketOptions {
  /** Bytes of a photo, or undefined where they are not to be had; absent: no photos in the packet. */
  readonly photos?: (media: EntryOf<'media'>) => Promise<Uint8Array | undefined>;
}

const text = (name: string, content: string): NamedBytes => ({
  name,
  bytes: new TextEncoder().encode(content),
});
/** One document of the packet by its name; undefined for a name that is none. Pictures are shown where they are handed in: they lie beside it. */
export async function documentOf(
  packet: Packet,
  name: string,
  photos: readonly PacketPhoto[] = [],
): Promise<NamedBytes | undefined> {
  switch (name) {
    case 'report.pdf':
      return { name, bytes: await reportPdf(packet, photos) };
    case 'report.html':
      return text(name, reportHtml(packet, photos));
    case 'listing.html':
      return text(name, listingHtml(packet));
    case 'listing.txt':
      return text(name, listingText(packet));
    case 'chapters.vtt':
      return text(name, chaptersVtt(packet));
    case 'claims.json':
      return text(name, jsonText(claimsJson(packet)));
    case 'packet.json':
      return text(name, jsonText(packetJson(packet)));
    default:
      return undefined;
  }
}

/** Every file of a packet, documents first; photos are stripped of all but their pixels. The same packet and photos give the same bytes. */
export async function packetFiles(
  packet: Packet,
  { photos }: PacketOptions = {},
): Promise<readonly NamedBytes[]> {
  const pictures = photos === undefined ? [] : await packetPhotos(packet, photos);
  const documents: NamedBytes[] = [];
  for (const name of documentNames) {
    const made = await documentOf(packet, name, pictures);
    if (made !== undefined) documents.push(made);
  }
  return [
    ...documents,
    text('README.txt', packetReadme(packet, pictures.length)),
    ...pictures.map(({ name, bytes }) => ({ name, bytes })),
  ];
}
