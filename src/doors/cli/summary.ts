// Why: one screen after a walk: the unit, what is wrong first, the figures, what nobody looked at, what was not understood.
import { stationOf } from '../../catalogue/index.ts';
import { placeName } from '../../catalogue/place.ts';
import type { Figure } from '../../figured/figure.ts';
import { shownValue } from '../../figured/shown-value.ts';
import type { Finding } from '../../judged/finding.ts';
import { unitName } from '../../known/unit-name.ts';
import { sayPriceCode } from '../../priced/price-words.ts';
import type { Packet } from '../../published/document.ts';
import { briefly, groupTitle, groupWords, together } from '../../published/fault-groups.ts';
import { isNameSaid, kindWords } from '../../published/headline.ts';
import { readDay } from '../../units/day.ts';
import type { AccountLine } from '../wire/api.ts';
import { sayEvidence } from '../words/say-evidence.ts';
import { sayDay, sayMoney, saySides, sayValue, subjectTitle } from '../words/say-value.ts';
import { sayTally } from '../words/say-verdict.ts';
import { colours, type Io, plain } from './io.ts';

const mostFirst = 12;
const mostFigures = 12;

/** The packet on one screen; of files only where there is an account of them. Lines are cut to the width of the terminal. */
export function summary(packet: Packet, account: readonly AccountLine[], io: Io): string {
  const paint = colours(io);
  const lines: string[] = [];
  const add = (line = ''): void => {
    lines.push(line);
  };
  const cut = (text: string, width = io.width): string => {
    const clean = plain(text).replace(/\s+/g, ' ');
    return clean.length > width ? `${clean.slice(0, Math.max(1, width - 1))}…` : clean;
  };
  const { unit } = packet.record;
  const kind = kindWords(unit) ?? 'kind not known';
  const name = isNameSaid(packet) ? `${unitName(packet.facts)}, as said` : unitName(packet.facts);
  add(paint('bold', cut(`${name} (${kind}, stock ${unit.stock ?? 'not known'})`)));
  if (unit.invented) add('Invented: this unit does not exist.');
  const { walkedBy, walkedOn } = packet.report;
  const walkers = walkedBy.filter((name) => name !== 'somebody');
  add(
    cut(
      `Walked ${walkedOn.map((d) => (readDay(d) ? sayDay(readDay(d)!) : d)).join(', ') || 'on no known day'}${walkers.length > 0 ? ` by ${walkers.join(', ')}` : ''}; judged as of ${sayDay(packet.on)}`,
    ),
  );

  add();
  add(`${paint('bold', 'Findings')}    ${sayTally(packet.report.tally)}`);
  const groups = together(packet.report.first);
  for (const group of groups.slice(0, mostFirst)) {
    const [f] = group;
    const word = f.verdict.toUpperCase().padEnd(7);
    const rest = cut(`${groupTitle(group)}: ${briefly(groupWords(group))}${said(f)}`, io.width - 10);
    add(`  ${f.verdict === 'stop' ? paint('red', word) : paint('orange', word)} ${rest}`);
  }
  if (groups.length > mostFirst) add(`  and ${groups.length - mostFirst} more in the report`);

  const worked = packet.figures.filter((f) => f.result.is === 'worked');
  add();
  add(
    `${paint('bold', 'Figures')}     ${worked.length} worked out, ${packet.figures.length - worked.length} lack something`,
  );
  const grouped = new Map<string, Figure[]>();
  for (const f of quantitiesFirst(worked)) grouped.set(f.id, [...(grouped.get(f.id) ?? []), f]);
  for (const of of [...grouped.values()].slice(0, mostFigures)) add(`  ${cut(figureLine(of), io.width - 2)}`);
  if (grouped.size > mostFigures) add(`  and ${grouped.size - mostFigures} more in the report`);
  const { price } = packet;
  add(
    `  ${price.is === 'priced' ? cut(`${sayMoney(price.low)} to ${sayMoney(price.high)}, middle ${sayMoney(price.middle)}, from ${price.used.length} comparable units`) : cut(`No price; not known: ${price.missing.map((code) => lowerFirst(sayPriceCode(code))).join(' ')}`, io.width - 2)}`,
  );

  const seen = packet.record.coverage.reduce((s, c) => s + c.seen.length, 0);
  const expected = packet.record.coverage.reduce((s, c) => s + c.expected.length, 0);
  add();
  add(`${paint('bold', 'Coverage')}    ${seen} of ${expected} parts looked at`);
  const least = packet.record.coverage.filter(
    (c) => c.expected.length > 0 && c.seen.length * 2 < c.expected.length,
  );
  if (least.length > 0)
    add(
      `  ${cut(`least at: ${least.map((c) => `${stationOf(c.station)?.name ?? c.station} (${c.seen.length} of ${c.expected.length})`).join(', ')}`, io.width - 2)}`,
    );
  for (const c of packet.report.conflicts.slice(0, 5))
    add(`  ${cut(`two sources disagree: ${subjectTitle(c)}, ${saySides(c)}`, io.width - 2)}`);
  if (packet.report.unknowns.length > 0)
    add(`  ${packet.report.unknowns.length} things were asked for and not to be had`);

  const claims = packet.claims.filter((c) => c.published);
  add();
  add(
    `${paint('bold', 'Listing')}     ${claims.length} sentences published, ${packet.claims.length - claims.length} held back as not backed or contradicted`,
  );

  if (account.length > 0) {
    const used = new Set(
      account
        .filter((a) => a.did === 'understood' || a.did === 'partly' || a.did === 'kept')
        .map((a) => a.file),
    );
    const missing = [...new Set(account.filter((a) => a.did === 'missing').map((a) => a.file))];
    const puzzled = account.filter((a) => a.line !== undefined || a.did === 'refused').length;
    add();
    add(
      `${paint('bold', 'Files')}       ${used.size} read or kept${missing.length > 0 ? `; not there, so unknown: ${missing.join(', ')}` : ''}`,
    );
    if (puzzled > 0)
      add(
        `  ${puzzled} ${puzzled === 1 ? 'place was' : 'places were'} not understood (listed above); the raw words are kept`,
      );
  }
  return `${lines.join('\n')}\n`;
}

const isQuantity = (f: Figure): boolean => f.result.is === 'worked' && f.result.value.is === 'quantity';
const quantitiesFirst = (figures: readonly Figure[]): readonly Figure[] =>
  figures.toSorted((a, b) => Number(isQuantity(b)) - Number(isQuantity(a)));

/** "How old is this tire? 7.5 years"; of several places the least and the most. */
function figureLine(of: readonly Figure[]): string {
  const sorted = of.toSorted((a, b) => numberOf(a) - numberOf(b));
  const [least, most] = [sorted[0], sorted.at(-1)];
  if (!least || !most) return '';
  if (least === most)
    return `${least.card.asks}${least.place ? ` ${placeName(least.place)}:` : ''} ${answer(least)}`;
  if (answer(least) === answer(most)) return `${least.card.asks} ${answer(least)}, ${of.length} places`;
  return `${least.card.asks} ${of.length} places: ${answer(least)} (${placeName(least.place ?? '')}) to ${answer(most)} (${placeName(most.place ?? '')})`;
}

const numberOf = (f: Figure): number =>
  f.result.is === 'worked' && f.result.value.is === 'quantity' ? f.result.value.value : 0;

/** As it is shown everywhere: rounded to the careful side, with its doubt. */
function answer(f: Figure): string {
  const value = shownValue(f);
  return value === undefined ? '' : sayValue(value, f.card.gives.part, f.card.gives.aspect);
}

const lowerFirst = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);

function said(f: Finding): string {
  const first = f.fact?.evidence[0];
  return first ? ` (${sayEvidence(first)})` : '';
}
