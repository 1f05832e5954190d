// Why: whoever unpacks a packet in a year must know what each file is and which of them are not for a buyer.
import type { Packet } from '../../published/document.ts';
import { sayDay } from '../words/say-value.ts';

/** README.txt of a packet. */
export function packetReadme({ listing, on, record }: Packet, photos: number): string {
  const name = listing.title.replace(/\s+/g, ' ');
  return [
    ...(record.unit.invented ? ['INVENTED UNIT: this vehicle does not exist and is not for sale.', ''] : []),
    `${name}: packet as of ${sayDay(on)}`,
    '',
    'For a buyer:',
    '  report.pdf    condition report, for print and for reading aloud',
    '  report.html   the same as a page',
    '  listing.html  the listing as a page, with schema.org data for machines',
    '  listing.txt   the listing as plain text',
    '  chapters.vtt  chapters of the recording (WebVTT): put it beside the film',
    ...(photos > 0
      ? [
          `  photos/       ${photos} ${photos === 1 ? 'picture' : 'pictures'}, named by their id in packet.json; no place or device in them`,
        ]
      : []),
    '',
    'For the dealership only (estimates, price, wording that was not published):',
    '  claims.json   every sentence of the listing and every piece of praise, with its evidence',
    '  packet.json   everything: observations, facts, findings, figures, jobs, price, coverage',
    '                units are UCUM codes, money is in whole cents, times of a recording are in seconds',
    '',
    'The report says what was looked at, by whom, on which day and against which limit.',
    'It is not a promise that the unit can be driven or used without danger.',
    'Local codes come first, and licensed work belongs to licensed people.',
    '',
  ].join('\n');
}
