// Why: a picture belongs beside what it shows; which picture that is, the walker said when he took it.
import type { Packet } from '../../published/document.ts';
import { plainDay } from '../../published/plain-day.ts';
import type { EntryOf } from '../../said/entry.ts';
import { dayOf } from '../../units/day.ts';
import { subjectTitle } from '../words/say-value.ts';
import { stripPhoto } from './strip-photo.ts';

/** A picture as it leaves the building: stripped, under the name that it has in the packet. */
export interface PacketPhoto {
  readonly media: EntryOf<'media'>;
  /** "photos/....jpg", beside the report. */
  readonly name: string;
  readonly bytes: Uint8Array;
}

/** A picture as a document shows it. */
export interface ReportPhoto {
  readonly name: string;
  readonly says: string;
}

/** Reads every photo of the unit and strips it. One that is not to be had, or is no picture, is left out. */
export async function packetPhotos(
  packet: Packet,
  read: (media: EntryOf<'media'>) => Promise<Uint8Array | undefined>,
): Promise<readonly PacketPhoto[]> {
  const photos: PacketPhoto[] = [];
  for (const media of packet.record.media.filter((m) => m.role === 'photo')) {
    const raw = await read(media);
    const bytes = raw === undefined ? undefined : await stripPhoto(raw);
    if (bytes !== undefined) photos.push({ media, name: `photos/${media.media}.jpg`, bytes });
  }
  return photos;
}

/** "Left front tire, date code, 24 Nov 2026": the caption, else what it is of; and the day it was taken, where that is known. */
export function reportPhoto({ media, name }: PacketPhoto): ReportPhoto {
  const of = media.part === undefined ? 'Photo' : subjectTitle({ part: media.part, place: media.place });
  const caption = media.caption === undefined || media.caption === '' ? of : media.caption;
  return { name, says: media.taken === undefined ? caption : `${caption}, ${plainDay(dayOf(media.taken))}` };
}

/** Whether the picture shows that part at that place; a picture or a finding without a place shows the part anywhere. */
export const shows = (
  { media }: PacketPhoto,
  { part, place }: { readonly part: string; readonly place?: string | undefined },
): boolean =>
  media.part === part && (media.place === undefined || place === undefined || media.place === place);
