// Why: a listing must also fit where only plain text goes.
import { opensGroup } from '../../published/disclosures.ts';
import type { Packet } from '../../published/document.ts';
import { sayDay } from '../words/say-value.ts';
import { withoutControls } from './escape-html.ts';
import { firstLines, listingSections } from './listing-sections.ts';

/** One line of a text: what was said may hold line breaks, a listing's line may not. */
const flat = (text: string): string => withoutControls(text).replace(/\s+/g, ' ').trim();

/** The listing as plain text, UTF-8, lines ended by a line feed. */
export function listingText({ listing, record, on }: Packet): string {
  const sections = listingSections(listing).flatMap(({ title, claims }) => [
    '',
    title.toUpperCase(),
    ...claims.map((c) => (opensGroup(c) ? `${flat(c.text)}` : `- ${flat(c.text)}`)),
  ]);
  const { stock, invented } = record.unit;
  return [
    ...(invented ? ['INVENTED UNIT: this vehicle does not exist and is not for sale.', ''] : []),
    flat(listing.title),
    ...firstLines(listing).map((c) => flat(c.text)),
    `${stock === undefined ? '' : `Stock ${flat(stock)}. `}Text of ${sayDay(on)}.`,
    ...sections,
    '',
  ].join('\n');
}
