// Why: not checked and not known are observations too: of which part, of which aspect, and why.
import { partOf } from '../../catalogue/index.ts';
import type { Clause, Draft } from './clause.ts';
import { guessBefore } from './guess-words.ts';
import type { Talk } from './talk.ts';
import { unknownAt } from './unknown-at.ts';
import { unknownOf } from './unknown-part.ts';
import type { UnknownHit } from './unknown-phrase.ts';
import { wordTable } from './word-table.ts';

/** "On gas I haven't tried it", "gas side of it": which way of running is meant. */
function modeOf(talk: Talk, clause: Clause): readonly string[] | undefined {
  for (let i = clause.from; i + 1 < clause.to; i++) {
    const a = talk.marks.words[i]?.norm ?? '';
    const b = talk.marks.words[i + 1]?.norm ?? '';
    const named = a === 'on' ? b : /^(?:side|mode|part)$/.test(b) ? a : '';
    if (/^(?:gas|propane|lp)$/.test(named)) return ['mode_LP', 'gas_ok'];
    if (/^(?:electric|shore|ac|electricity)$/.test(named)) return ['mode_AC', 'electric_ok'];
    if (/^(?:battery|dc)$/.test(named)) return ['mode_DC'];
  }
  return undefined;
}

/** The clauses that named the subject before the comma: "Oven, | I left that alone". */
function topicsOf(talk: Talk, clause: Clause): Clause[] {
  const out: Clause[] = [];
  for (const p of talk.passed) {
    const length = p.to - p.from;
    const near =
      p.sentence === clause.sentence || (out.length === 0 && p.index === clause.index - 1 && length <= 4);
    if (!near || length > (out.length === 0 ? 9 : 4) || p.mentions.length === 0) break;
    if (p.numbers.length > 0 || guessBefore.at(talk.marks.words, p.from)) break;
    out.push(p);
  }
  return out;
}

/** Parts that do nothing: not tried, it is their condition that is not known. */
const still =
  /^(?:tire|roof_|floor|wall|windshield|frame|sidewall|suspension|wheels|susp|records|title|body|brake_)/;
const measuring: Readonly<Record<string, string>> = wordTable({
  gauge: 'pressure',
  chuck: 'pressure',
  tread: 'tread',
  pressure: 'pressure',
  pressures: 'pressure',
  date: 'date',
  dates: 'date',
  code: 'date',
  codes: 'date',
  torque: 'torque',
  torqued: 'torque',
  moisture: 'moisture',
  thermometer: 'temp',
  hours: 'hours',
});
/** What would have been measured: "can't get my gauge on it". */
const measuredBy = (talk: Talk, clause: Clause, hit: UnknownHit): string | undefined =>
  talk.marks.words
    .slice(clause.from, Math.min(clause.to, hit.to + 6))
    .map((w) => measuring[w.norm])
    .find((m) => m !== undefined);

const aspectOf = (
  talk: Talk,
  clause: Clause,
  topics: readonly Clause[],
  part: string,
  hit: UnknownHit,
): string => {
  const own = partOf(part)?.aspects ?? [];
  const lead = clause.mentions.length > 0 ? [] : [...talk.lead, ...(talk.passed[0]?.aspects ?? [])];
  const modes = [clause, ...topics].map((c) => modeOf(talk, c)).find((m) => m !== undefined);
  const mode = own.find((x) => modes?.includes(x.id));
  const named = [...clause.aspects, ...topics.flatMap((t) => t.aspects), ...lead]
    .map((a) => own.find((x) => a.keys.has(`${part}/${x.id}`)))
    .find((x) => x !== undefined);
  const measured = measuredBy(talk, clause, hit);
  const gauged = own.find((x) => measured !== undefined && x.id.includes(measured));
  const works = hit.why === 'not tried' && !still.test(part);
  return (
    mode?.id ?? gauged?.id ?? named?.id ?? (hit.verb === 'read' ? 'date' : works ? 'operates' : 'condition')
  );
};

/** "The furnace also not", "the water heater neither": what was just not tried, of one more part. */
function alsoNot(talk: Talk, clause: Clause, from: number): Draft[] {
  const { words } = talk.marks;
  const norm = (k: number): string => (k < clause.to ? (words[k]?.norm ?? '') : '');
  return clause.mentions.flatMap((m): Draft[] => {
    const part = m.parts[0];
    if (m.aside || !part || m.from < from) return [];
    const of = `${norm(m.to)} ${norm(m.to + 1)}`;
    if (!/^(?:also not|also no|neither|not either|same not|too not)(?: |$)/.test(of)) return [];
    const place = talk.placeOf(part, m.from, clause);
    const aspect = still.test(part) ? 'condition' : 'operates';
    return [
      {
        part,
        ...(place === undefined ? {} : { place }),
        aspect,
        value: { is: 'unknown', why: 'not tried' },
        sense: 'unknown',
        polarity: 'neutral',
        hedged: false,
        from: m.from,
        to: Math.min(clause.to, m.to + 2),
        at: m.to,
        weight: 0.7,
      },
    ];
  });
}

/** What the speaker says is not known, in a clause; marks its words as taken. */
export function hearUnknown(talk: Talk, clause: Clause, taken: Uint8Array): Draft[] {
  for (let i = clause.from; i < clause.to; i++) {
    const hit = unknownAt(talk, clause, i);
    if (!hit) continue;
    // "I'd bet it's the carburetor, but I haven't had it apart": the guess said that already
    if (talk.guessed && i - talk.guessed.at < 14 && clause.mentions.length === 0) return [];
    const topics = topicsOf(talk, clause);
    const of = unknownOf(talk, clause, hit, topics);
    // "Socket, nobody was here to look, so I leave it open": said once
    const before = talk.unknownOf;
    const again =
      before !== undefined &&
      i - before.at < 16 &&
      clause.mentions.every((m) => m.aside) &&
      of.parts.every((p) => before.parts.includes(p));
    talk.unknownOf = { parts: of.parts, at: i };
    if (again && clause.places.length === 0) {
      taken.fill(1, i, clause.to);
      return [];
    }
    const out: Draft[] = [];
    for (const part of of.parts) {
      const place = talk.placeOf(part, i, clause);
      const said = talk.doubtAt(i).saidBy;
      out.push({
        part,
        ...(place === undefined ? {} : { place }),
        aspect: aspectOf(talk, clause, topics, part, hit),
        value: { is: 'unknown', why: hit.why },
        sense: 'unknown',
        polarity: 'neutral',
        hedged: false,
        ...(said === undefined ? {} : { saidBy: said }),
        from: Math.max(of.from, i - 12),
        to: Math.min(clause.to, hit.to + 8),
        at: i,
        weight: hit.general ? 0.65 : 0.75,
      });
    }
    if (out.length === 0 && hit.general) return [];
    taken.fill(1, i, clause.to);
    return [...out, ...alsoNot(talk, clause, hit.to)];
  }
  const last = talk.unknownOf;
  if (!last || clause.from - last.at > 24) return [];
  const more = alsoNot(talk, clause, clause.from);
  if (more.length > 0) {
    talk.unknownOf = { parts: more.map((d) => d.part), at: clause.to };
    taken.fill(1, clause.from, clause.to);
  }
  return more;
}
