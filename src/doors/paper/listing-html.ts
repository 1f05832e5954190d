// Why: the listing as one static page: what it is, what is wrong, what nobody checked, then the rest, each sentence with how it is known.

import type { Verdict } from '../../judged/rule.ts';
import type { Claim, Packet } from '../../published/document.ts';
import { drawingOf } from '../../published/drawing/drawing.ts';
import { byWorst, isFault } from '../../published/fault.ts';
import { sayBasis } from '../words/say-evidence.ts';
import { sayDay } from '../words/say-value.ts';
import { drawingSvg } from './drawing-svg.ts';
import { escapeHtml as e, jsonForScript } from './escape-html.ts';
import { glyphSvg } from './glyph-svg.ts';
import { inventedMark, page } from './page.ts';

/** Headings of the listing's sections, in reading order. */
export const listingSections: readonly (readonly [Claim['section'], string])[] = [
  ['identity', 'What it is'],
  ['disclosure', 'What is wrong with it'],
  ['not checked', 'What was not checked'],
  ['chassis', 'Chassis'],
  ['house', 'House'],
  ['praise', 'Also noted on the walk'],
];

const item = (c: Claim): string =>
  `<li>${e(c.text)}${c.section === 'praise' ? ` <span class="tag">${sayBasis(c.basis)}</span>` : ''}</li>`;

/** A fault with its glyph and its numbers on the drawing. */
function fault(
  c: Claim,
  verdicts: ReadonlyMap<string, Verdict>,
  numbers: ReadonlyMap<string, number>,
): string {
  const verdict = verdicts.get(c.findings[0] ?? '') ?? 'watch';
  const pins = c.findings.flatMap((id) => numbers.get(id) ?? []).sort((a, b) => a - b);
  return `<li><span class="${verdict}">${glyphSvg(verdict)}</span><span><b class="${verdict}">${verdict}</b> <span class="num">${pins.join(', ')}</span> ${e(c.text)}</span></li>`;
}

/** The page of a packet's listing, with schema.org data for machines. Only what is published stands in it. */
export function listingHtml(packet: Packet): string {
  const { listing, record, on, facts, findings } = packet;
  const of = (section: Claim['section']): readonly Claim[] =>
    listing.claims.filter((c) => c.section === section);
  const verdicts = new Map(findings.map((f) => [f.id, f.verdict]));
  const numbers = new Map(
    findings
      .filter(isFault)
      .toSorted(byWorst)
      .map((f, i) => [f.id, i + 1]),
  );
  const sections = listingSections
    .map(([id, title]) => ({ id, title, claims: of(id) }))
    .filter(({ claims }) => claims.length > 0)
    .map(({ id, title, claims }) =>
      id === 'disclosure'
        ? `<section><h2>${title}</h2><p class="soft">Worst first; the numbers are those on the drawing.</p><ul class="lines faults">${claims.map((c) => fault(c, verdicts, numbers)).join('')}</ul></section>`
        : `<section><h2>${title}</h2><ul class="lines">${claims.map(item).join('')}</ul></section>`,
    );
  const { stock, invented } = record.unit;
  return page(
    listing.title,
    `${invented ? inventedMark : ''}<header><h1>${e(listing.title)}</h1>${of('headline')
      .map((c) => `<p><b>${e(c.text)}</b></p>`)
      .join('')}${of('money')
      .map((c) => `<p>${e(c.text)}</p>`)
      .join('')}` +
      `<p class="soft">${stock === undefined ? '' : `Stock ${e(stock)}. `}Text of ${e(sayDay(on))}.</p></header>${drawingSvg(drawingOf(facts, findings, 'road side'))}${drawingSvg(drawingOf(facts, findings, 'curb side'))}<main>${sections.join('')}</main>` +
      `<footer>Each sentence says how the thing is known: measured, seen, read off a label, worked out, or told. What nobody looked at is listed. The condition report has the evidence.${invented ? ' Invented unit.' : ''}</footer>`,
    `<script type="application/ld+json">${jsonForScript(listing.jsonLd)}</script>`,
  );
}
