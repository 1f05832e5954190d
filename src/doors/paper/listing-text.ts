// Why: a listing must also fit where only plain text goes.
import type { Claim, Packet } from '../../published/document.ts';
import { sayDay } from '../words/say-value.ts';
import { withoutControls } from './escape-html.ts';
import { listingSections } from './listing-html.ts';

/** One line of a text: what was said may hold line breaks, a listing's line may not. */
const flat = (text: string): string => withoutControls(text).replace(/\s+/g, ' ').trim();

/** The listing as plain text, UTF-8, lines ended by a line feed. */
export function listingText({ listing, record, on }: Packet): string {
  const of = (section: Claim['section']): readonly string[] =>
    listing.claims.filter((c) => c.section === section).map((c) => flat(c.text));
  const sections = listingSections.flatMap(([id, title]) =>
    of(id).length === 0 ? [] : ['', title.toUpperCase(), ...of(id).map((t) => `- ${t}`)],
  );
  const { stock, invented } = record.unit;
  return [
    ...(invented ? ['INVENTED UNIT: this vehicle does not exist and is not for sale.', ''] : []),
    flat(listing.title),
    ...of('headline'),
    ...of('money'),
    `${stock === undefined ? '' : `Stock ${flat(stock)}. `}Text of ${sayDay(on)}.`,
    ...sections,
    '',
  ].join('\n');
}
