// Why: the condition report as one static page: no script, every text escaped, printable.
import type { Packet } from '../../published/document.ts';
import { escapeHtml as e } from './escape-html.ts';
import type { FaultLine, FaultRow } from './fault-line.ts';
import type { FigureLine } from './figure-line.ts';
import { glyphSvg } from './glyph-svg.ts';
import { inventedMark, page } from './page.ts';
import type { ReadingLine } from './reading-lines.ts';
import type { PacketPhoto, ReportPhoto } from './report-photos.ts';
import { type ReportSheet, reportSheet, type StationSheet } from './report-sheet.ts';

const maybe = (text: string, wrap: (text: string) => string): string => (text === '' ? '' : wrap(e(text)));
const verdict = (word: FaultLine['verdict']): string =>
  `<span class="v ${word.replace(' ', '-')}">${glyphSvg(word)}${word}</span>`;

const pictures = (all: readonly ReportPhoto[]): string =>
  all.length === 0
    ? ''
    : `<div class="photos">${all.map((p) => `<figure><img src="${e(p.name)}" alt="${e(p.says)}" loading="lazy"><figcaption>${e(p.says)}</figcaption></figure>`).join('')}</div>`;

/** "“just a drip.” said at 5:06; unconfirmed". */
const words = (r: FaultRow): string =>
  [maybe(r.quote, (t) => `<q>${t}</q>`), e(r.evidence)].filter((t) => t !== '').join(' ');

/** One finding, or a table of the places where the same was found. */
function rows(f: FaultLine): string {
  const [only, ...others] = f.rows;
  if (only === undefined) return '';
  if (others.length === 0) {
    const near = [only.near, f.limit].filter((t) => t !== '').join('; ');
    const said = words(only);
    return (
      maybe(
        only.reading,
        (t) => `<p class="more">Read: <b>${t}</b>${near === '' ? '' : `; ${e(near)}`}</p>`,
      ) + (said === '' ? '' : `<p class="more">${said}</p>`)
    );
  }
  const head = f.rows.some((r) => r.reading !== '')
    ? '<th scope="col">Read</th><th scope="col">How near</th>'
    : '';
  return (
    maybe(f.limit, (t) => `<p class="more">Each ${t}</p>`) +
    `<table><thead><tr><th scope="col">Where</th>${head}<th scope="col">Said or written</th></tr></thead><tbody>${f.rows
      .map(
        (r) =>
          `<tr><td>${r.number > 0 ? `${r.number}. ` : ''}${e(r.place)}</td>${head === '' ? '' : `<td>${e(r.reading)}</td><td>${e(r.near)}</td>`}<td class="soft">${words(r)}</td></tr>`,
      )
      .join('')}</tbody></table>`
  );
}

/** Every finding has its own anchor: the first page, and whoever is told of it, can point at it. */
function fault(f: FaultLine): string {
  const anchors = f.rows.map((r) => (r.number > 0 ? `<a id="finding-${r.number}"></a>` : '')).join('');
  const next = [
    maybe(f.next, (t) => `${f.who === '' ? 'How to look' : 'What to do'}: ${t}`),
    maybe(f.who, (t) => (f.next === '' ? `For ${t}.` : `(${t})`)),
  ].filter((t) => t !== '');
  return (
    `<li${f.strip === '' ? ' class="wide"' : ''}>${verdict(f.verdict)}<div>${anchors}<span class="what">${f.numbers === '' ? '' : `${f.numbers}. `}${e(f.subject)}</span><br>${e(f.reason)}` +
    rows(f) +
    (next.length === 0 ? '' : `<p class="more">${next.join(' ')}</p>`) +
    maybe(f.cost, (t) => `<p class="more">Estimate: ${t}</p>`) +
    maybe(f.asked, (t) => `<p class="more">Asked for on the walk, ${t}</p>`) +
    maybe(f.caution, (t) => `<p class="care">${t}</p>`) +
    `${pictures(f.photos)}</div>${f.strip}</li>`
  );
}

const faults = (all: readonly FaultLine[]): string =>
  all.length === 0 ? '' : `<ol class="findings">${all.map(fault).join('')}</ol>`;

/** The first page in words: what stops it, what is to repair, what costs most. */
function minute(s: ReportSheet): string {
  const short = (f: FaultLine): string => {
    const first = f.rows.find((r) => r.number > 0)?.number;
    const name = `${f.numbers === '' ? '' : `${f.numbers}. `}${e(f.subject)}`;
    return `<li><span class="${f.verdict}">${glyphSvg(f.verdict)}</span><span>${first === undefined ? name : `<a href="#finding-${first}">${name}</a>`}: ${e(f.short)}</span></li>`;
  };
  const costs = s.costs.map(
    (c) =>
      `<tr><td>${e(c.what)}${c.numbers === '' ? '' : ` <span class="soft">(${c.numbers})</span>`}</td><td><b>${e(c.cost)}</b></td></tr>`,
  );
  return (
    '<div class="minute">' +
    (s.first.length === 0
      ? ''
      : `<section><h2>Stops and repairs</h2><ul class="lines faults">${s.first.map(short).join('')}</ul></section>`) +
    (costs.length === 0
      ? ''
      : `<section><h2>Costliest repairs</h2><p class="soft">The shop's estimates, labor and parts; in brackets the faults they mend.</p><table><thead><tr><th scope="col">Repair</th><th scope="col">Estimate</th></tr></thead><tbody>${costs.join('')}</tbody></table></section>`) +
    '</div>'
  );
}

function readings(all: readonly ReadingLine[], caption: string): string {
  if (all.length === 0) return '';
  const rows = all.map(
    (r) =>
      `<tr><td>${e(r.what)}</td><td>${e(r.says)}</td><td>${e(r.how)}</td><td class="soft">${e(r.evidence)}</td></tr>`,
  );
  return `<table><caption class="soft" style="text-align:left">${e(caption)}</caption><thead><tr><th scope="col">What</th><th scope="col">Reading</th><th scope="col">How known</th><th scope="col">Where from</th></tr></thead><tbody>${rows.join('')}</tbody></table>`;
}

function station(s: StationSheet): string {
  const { length } = s.faults;
  if (length + s.sound.length + s.open.length + s.readings.length + s.notSeen.length === 0) return '';
  const told = s.faults
    .map(
      (f) =>
        `<span class="${f.verdict}">${glyphSvg(f.verdict)}</span> ${f.numbers === '' ? '' : `${f.numbers}. `}${e(f.subject)}`,
    )
    .join('; ');
  return (
    `<h3>${e(s.name)}${maybe(s.coverage, (t) => ` <span class="soft">${t}</span>`)}</h3>` +
    (told === '' ? '' : `<p class="inline">Faults: ${told}</p>`) +
    (s.sound.length === 0 ? '' : `<p class="more inline">${verdict('sound')} ${e(s.sound.join('; '))}.</p>`) +
    (s.open.length === 0
      ? ''
      : `<p class="more inline">${verdict('not seen')} ${e(s.open.join('; '))}.</p>`) +
    (s.notSeen.length === 0 ? '' : `<p class="more">Also not seen: ${e(s.notSeen.join(', '))}.</p>`) +
    readings(s.readings, 'Readings and remarks') +
    pictures(s.photos)
  );
}

function figure(f: FigureLine): string {
  const inputs = f.inputs
    .map((i) => `<tr><td>${e(i.what)}</td><td>${e(i.value)}</td><td class="soft">${e(i.from)}</td></tr>`)
    .join('');
  return (
    `<h3>${e(f.asks)}${maybe(f.place, (t) => ` <span class="soft">${t}</span>`)} ${e(f.answer)}</h3>` +
    (f.places.length === 0
      ? ''
      : `<table><thead><tr><th scope="col">Where</th><th scope="col">Answer</th><th scope="col">From</th></tr></thead><tbody>${f.places.map((p) => `<tr><td>${e(p.place)}</td><td><b>${e(p.answer)}</b></td><td class="soft">${e(p.from)}</td></tr>`).join('')}</tbody></table><p class="more">Worked out for the first of them:</p>`) +
    `<table><thead><tr><th scope="col">From</th><th scope="col">Value</th><th scope="col">How known</th></tr></thead><tbody>${inputs}</tbody></table>` +
    `<p class="more">Formula: ${e(f.formula)}. Working: ${e(f.working.join('; '))}.</p>` +
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

/** The page of a packet's condition report. Pictures are links to files beside it. */
export function reportHtml(packet: Packet, photos: readonly PacketPhoto[] = []): string {
  const s = reportSheet(packet, photos);
  const tally = s.tally
    .map(
      (t) =>
        `<li class="${t.verdict.replace(' ', '-')}" title="${e(t.means)}">${glyphSvg(t.verdict)}<b>${t.count}</b> ${t.verdict}</li>`,
    )
    .join('');
  const gaps = s.gaps
    .map((g) => `<li>${e(g.asks)}${maybe(g.place, (t) => ` (${t})`)} ${e(g.gap)}</li>`)
    .join('');
  const howTo = s.howTo.map((t) => `<p class="soft">${e(t)}</p>`).join('');
  return page(
    s.title,
    `${s.invented ? inventedMark : ''}<header><h1>${e(s.name)}</h1><p class="soft">Condition report · ${e(s.under)}</p><ul class="tally">${tally}</ul>${s.summary.map((t) => `<p>${e(t)}</p>`).join('')}</header>` +
      `<main>${minute(s)}${s.drawings.map((d) => d.svg).join('')}` +
      `${section('What must be settled first', s.first.length === 0 ? '' : howTo + faults(s.first))}${section('What to watch', faults(s.watch))}${section('Not settled: sources disagree', readings(s.conflicts, 'Each side as it was given'))}` +
      `${section('Station by station', s.stations.map(station).join(''))}${section('Asked for and not known', readings(s.unknowns, 'With the reason given at the time'))}${section('Figures', s.figures.map(figure).join(''))}` +
      `${section('Figures that cannot be worked out yet', gaps === '' ? '' : `<ul class="lines">${gaps}</ul>`)}${section('Sources, by how binding they are', sources(s))}${section('How this was made', s.method.map((t) => `<p>${e(t)}</p>`).join(''))}</main>` +
      `<footer>${e(s.name)}, condition report as of ${e(s.on)}.${s.invented ? ' Invented unit.' : ''}</footer>`,
  );
}
