// Why: the condition report as one static page: no script, every text escaped, printable.
import type { Packet } from '../../published/document.ts';
import { escapeHtml as e } from './escape-html.ts';
import type { FigureLine } from './figure-line.ts';
import type { FindingLine } from './finding-line.ts';
import { glyphSvg } from './glyph-svg.ts';
import { inventedMark, page } from './page.ts';
import { type ReadingLine, type ReportSheet, reportSheet, type StationSheet } from './report-sheet.ts';

const maybe = (text: string, wrap: (text: string) => string): string => (text === '' ? '' : wrap(e(text)));
const verdict = (word: FindingLine['verdict']): string =>
  `<span class="v ${word.replace(' ', '-')}">${glyphSvg(word)}${word}</span>`;

function finding(f: FindingLine): string {
  const nearLimit = [f.near, f.limit].filter((t) => t !== '').join('; ');
  return (
    `<li${f.strip === '' ? ' class="wide"' : ''}>${verdict(f.verdict)}<div><span class="what">${f.number > 0 ? `${f.number}. ` : ''}${e(f.subject)}</span><br>${e(f.reason)}` +
    maybe(
      f.reading,
      (t) =>
        `<p class="more">Read: <span class="num">${t}</span>${nearLimit === '' ? '' : `, ${e(nearLimit)}`}</p>`,
    ) +
    (f.quote === '' && f.evidence === ''
      ? ''
      : `<p class="more">${maybe(f.quote, (t) => `<q>${t}</q> `)}${e(f.evidence)}</p>`) +
    maybe(
      f.next,
      (t) =>
        `<p class="more">${f.who === '' ? 'How to look' : 'What to do'}: ${t}${f.who === '' ? '' : ` (${e(f.who)})`}</p>`,
    ) +
    maybe(f.caution, (t) => `<p class="care">${t}</p>`) +
    `</div>${f.strip}</li>`
  );
}

const findings = (all: readonly FindingLine[]): string =>
  all.length === 0 ? '' : `<ol class="findings">${all.map(finding).join('')}</ol>`;

function readings(all: readonly ReadingLine[], caption: string): string {
  if (all.length === 0) return '';
  const rows = all.map(
    (r) =>
      `<tr><td>${e(r.what)}</td><td class="num">${e(r.says)}</td><td>${e(r.how)}</td><td class="soft">${e(r.evidence)}</td></tr>`,
  );
  return `<table><caption class="soft" style="text-align:left">${e(caption)}</caption><thead><tr><th scope="col">What</th><th scope="col">Reading</th><th scope="col">How known</th><th scope="col">Where from</th></tr></thead><tbody>${rows.join('')}</tbody></table>`;
}

function station(s: StationSheet): string {
  const { length } = s.findings;
  if (length + s.open.length + s.readings.length + s.notSeen.length === 0) return '';
  return (
    `<h3>${e(s.name)}${maybe(s.coverage, (t) => ` <span class="soft">${t}</span>`)}</h3>` +
    findings(s.findings) +
    readings(s.readings, 'Readings and remarks') +
    (s.open.length === 0 ? '' : `<p class="more">${verdict('not seen')} ${e(s.open.join('; '))}</p>`) +
    (s.notSeen.length === 0 ? '' : `<p class="more">Also not seen: ${e(s.notSeen.join(', '))}.</p>`)
  );
}

function figure(f: FigureLine): string {
  const inputs = f.inputs
    .map(
      (i) =>
        `<tr><td>${e(i.what)}</td><td class="num">${e(i.value)}</td><td class="soft">${e(i.from)}</td></tr>`,
    )
    .join('');
  return (
    `<h3>${e(f.asks)}${maybe(f.place, (t) => ` <span class="soft">${t}</span>`)} <span class="num">${e(f.answer)}</span></h3>` +
    `<table><thead><tr><th scope="col">From</th><th scope="col">Value</th><th scope="col">How known</th></tr></thead><tbody>${inputs}</tbody></table>` +
    `<p class="more">Formula: ${e(f.formula)}. Working: <span class="num">${e(f.working.join('; '))}</span></p>` +
    `<p class="more">Left out: ${e(f.neglects)} ${e(f.surer)} ${e(f.note)}</p><p class="more">Source: ${e(f.cites.join(' '))}</p>`
  );
}

function sources(sheet: ReportSheet): string {
  return sheet.sources
    .map(
      (g) =>
        `<h3>${e(g.standing)}</h3><ul class="lines">${g.sources.map((s) => `<li>${e(s.title)}. <span class="soft">${e(s.scope)}</span>${maybe(s.address, (t) => ` <span class="num">${t}</span>`)}<p class="more">${e(s.says.join('; '))}.${maybe(s.read, (t) => ` (${t})`)}</p></li>`).join('')}</ul>`,
    )
    .join('');
}

const section = (title: string, body: string): string =>
  body === '' ? '' : `<section><h2>${e(title)}</h2>${body}</section>`;

/** The page of a packet's condition report. */
export function reportHtml(packet: Packet): string {
  const s = reportSheet(packet);
  const tally = s.tally
    .map(
      (t) =>
        `<li class="${t.verdict.replace(' ', '-')}" title="${e(t.means)}">${glyphSvg(t.verdict)}<b>${t.count}</b> ${t.verdict}</li>`,
    )
    .join('');
  const gaps = s.gaps
    .map((g) => `<li>${e(g.asks)}${maybe(g.place, (t) => ` (${t})`)} ${e(g.gap)}</li>`)
    .join('');
  return page(
    s.title,
    `${s.invented ? inventedMark : ''}<header><h1>${e(s.name)}</h1><p class="soft">Condition report · ${e(s.under)}</p><ul class="tally">${tally}</ul>${s.summary.map((t) => `<p>${e(t)}</p>`).join('')}</header>` +
      s.drawings.map((d) => d.svg).join('') +
      `<main>${section('What must be settled first', findings(s.first))}${section('What to watch', findings(s.watch))}${section('Not settled: sources disagree', readings(s.conflicts, 'Each side as it was given'))}` +
      `${section('Station by station', s.stations.map(station).join(''))}${section('Asked for and not known', readings(s.unknowns, 'With the reason given at the time'))}${section('Figures', s.figures.map(figure).join(''))}` +
      `${section('Figures that cannot be worked out yet', gaps === '' ? '' : `<ul class="lines">${gaps}</ul>`)}${section('Sources, by how binding they are', sources(s))}${section('How this was made', s.method.map((t) => `<p>${e(t)}</p>`).join(''))}</main>` +
      `<footer>${e(s.name)}, condition report as of ${e(s.on)}.${s.invented ? ' Invented unit.' : ''}</footer>`,
  );
}
