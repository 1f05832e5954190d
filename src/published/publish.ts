// Why: the last stage of the story: all that is known and judged becomes documents for people. Pure and without layout.
import { unitName } from '../known/unit-name.ts';
import { chapters } from './chapters.ts';
import { claims } from './claims.ts';
import type { Packet, Unpublished } from './document.ts';
import { jsonLd } from './json-ld.ts';
import { report } from './report.ts';
import { withShownFigures } from './shown-figures.ts';

/** Makes the packet: the same input gives the same documents, to the letter. They are worded with figures as they are shown. */
export function publish(u: Unpublished): Packet {
  const shown = withShownFigures(u);
  const all = claims(shown);
  return {
    ...u,
    claims: all,
    listing: { title: unitName(u.facts), claims: all.filter((c) => c.published), jsonLd: jsonLd(shown, all) },
    report: report(shown),
    chapters: chapters(shown),
  };
}
