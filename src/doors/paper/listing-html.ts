// Why: the listing as one static page: what it is, what is wrong, what nobody checked, then the rest, each sentence with how it is known.

import type { Verdict } from '../../judged/rule.ts';
import { opensGroup } from '../../published/disclosures.ts';
import type { Claim, Packet } from '../../published/document.ts';
import { drawingOf } from '../../published/drawing/drawing.ts';
import { byWorst, isFault } from '../../published/fault.ts';
import { sayBasis } from '../words/say-evidence.ts';
import { sayDay } from '../words/say-value.ts';
import { drawingSvg } from './drawing-svg.ts';
import { escapeHtml as e, jsonForScript } from './escape-html.ts';
import { glyphSvg } from './glyph-svg.ts';
import { firstLines, listingSections } from './listing-sections.ts';
import { numberRuns } from './number-runs.ts';
import { inventedMark, page } from './page.ts';

const item = (c: Claim): string =>
  `<li>${e(c.text)}${c.section === 'praise' ? ` <span class="tag">${sayBasis(c.basis)}</span>` : ''}</li>`;

/** A fault with its glyph and its numbers on the drawing. */
function fault(
  c: Claim,
  verdicts: ReadonlyMap<string, Verdict>,
  numbers: ReadonlyMap<string, number>,
): string {
  const verdict = verdicts.get(c.findings[0] ?? '') ?? 'watch';
  const pins = numberRuns(c.findings.flatMap((id) => numbers.get(id) ?? []));
  return `<li><span class="${verdict}">${glyphSvg(verdict)}</span><span><b class="${verdict}">${verdict}</b> ${pins === '' ? '' : `${pins}. `}${e(c.text)}</span></li>`;
}

/** Faults as lists, each under the sentence that says what was done about all of them. */
function faults(
  claims: readonly Claim[],
  verdicts: ReadonlyMap<string, Verdict>,
  numbers: ReadonlyMap<string, number>,
): string {
  const lists: { readonly opening: Claim | undefined; readonly items: Claim[] }[] = [];
  for (const c of claims) {
    if (opensGroup(c)) lists.push({ opening: c, items: [] });
    else if (lists.length === 0) lists.push({ opening: undefined, items: [c] });
    else lists.at(-1)?.items.push(c);
  }
  return lists
    .map(
      ({ opening, items }) =>
        `${opening === undefined ? '' : `<p class="opening">${e(opening.text)}</p>`}<ul class="lines faults">${items.map((c) => fault(c, verdicts, numbers)).join('')}</ul>`,
    )
    .join('');
}

/** The page of a packet's listing, with schema.org data for machines. Only what is published stands in it. */
export function listingHtml(packet: Packet): string {
  const { listing, record, on, facts, findings } = packet;
  const verdicts = new Map(findings.map((f) => [f.id, f.verdict]));
  const numbers = new Map(
    findings
      .filter(isFault)
      .toSorted(byWorst)
      .map((f, i) => [f.id, i + 1]),
  );
  const sections = listingSections(listing).map(({ title, claims }) =>
    claims.some((c) => c.section === 'disclosure')
      ? `<section><h2>${title}</h2><p class="soft">The numbers are those on the drawings. Estimates are our shop's, for labor and parts.</p>${faults(claims, verdicts, numbers)}</section>`
      : `<section><h2>${title}</h2><ul class="lines">${claims.map(item).join('')}</ul></section>`,
  );
  const [first, ...more] = firstLines(listing);
  const { stock, invented } = record.unit;
  const drawings = (['road side', 'curb side'] as const)
    .map((view) => drawingSvg(drawingOf(facts, findings, view)))
    .join('');
  return page(
    listing.title,
    `${invented ? inventedMark : ''}<header><h1>${e(listing.title)}</h1>${first === undefined ? '' : `<p><b>${e(first.text)}</b></p>`}${more.map((c) => `<p>${e(c.text)}</p>`).join('')}` +
      `<p class="soft">${stock === undefined ? '' : `Stock ${e(stock)}. `}Text of ${e(sayDay(on))}.</p></header>${drawings}<main>${sections.join('')}</main>` +
      `<footer>Each sentence says how the thing is known: measured, seen, off a label or paper, worked out, or only said. The condition report has the evidence.${invented ? ' Invented unit.' : ''}</footer>`,
    `<script type="application/ld+json">${jsonForScript(listing.jsonLd)}</script>`,
  );
}
