// Why: "fresh is full, black's empty" is how a tank stands, and "shows full, I just dumped it" is a sensor that lies.
import type { Clause, Draft } from './clause.ts';
import { defectPhrases } from './lexicon.ts';
import { phrasesOf } from './phrase-index.ts';
import { draftOf } from './state-draft.ts';
import type { Talk } from './talk.ts';

const list = (text: string): string[] => text.split(',').map((p) => p.trim());
/** What stands full or empty. */
const vessels = /^(?:fresh_tank|gray_tank|black_tank|waste_tanks_under|lp_tank|fuel_tank|def_system)$/;
const panels = /^(?:monitor_panel|tank_sensors)$/;

const fills = phrasesOf<'full' | 'empty'>({
  ...Object.fromEntries(
    list(
      'full, plumb full, clear full, chock full, brim full, full up, filled up, full to the brim, full to the top, topped off, topped up, all the way full, completely full',
    ).map((p) => [p, 'full' as const]),
  ),
  ...Object.fromEntries(
    list(
      'empty, bone dry, dry as a bone, plumb empty, completely empty, all the way empty, drained, drained down, drained out, dumped, pumped out, emptied, emptied out, on empty, run dry',
    ).map((p) => [p, 'empty' as const]),
  ),
});
/** Behind "full" these make another word of it. */
const notFull =
  /^(?:hookup|hookups|hook|body|size|sized|set|sets|time|wall|cycle|load|width|charge|open|of|length|service|kitchen|bath|throttle|power|timer|timers|timing|blast|stroke|extension|range|every|paint|record|records|speed|height|depth)$/;
const shows =
  /^(?:reads?|reading|shows?|showing|says?|saying|said|read|showed|indicates?|indicating|registers?|registering|claims?|swears?|lights?|stuck|thinks?)$/;
/** A reading that never changes, or covers everything, is no level. */
const always =
  /^(?:always|everything|constantly|permanently|forever|anyway|regardless|still|whatever|everywhere|all)$/;
const behindAlways = list(
  'all the time, no matter what, on everything, on all of, on every, across the board, all the way across, every time, even when, even though, even after, even with',
);

/** The vessel that a word of fill at `i` is said of. */
function vesselOf(talk: Talk, clause: Clause, i: number): string | undefined {
  const own = clause.mentions.filter((m) => !m.aside && m.to <= i);
  const said = own.at(-1);
  if (said)
    return i - said.to <= 5 ? (said.parts.find((p) => vessels.test(p)) ?? recentVessel(talk, i)) : undefined;
  const next = clause.mentions.find((m) => m.from === i + 1);
  if (next?.parts.some((p) => vessels.test(p)) && i - clause.from <= 3) return undefined;
  return i - clause.from <= 5 ? recentVessel(talk, i) : undefined;
}
const recentVessel = (talk: Talk, i: number): string | undefined => {
  const last = talk.recent.find((r) => r.at < i && i - r.at < 30);
  return last?.parts.find((p) => vessels.test(p));
};

/** What is said of how full the tanks are, in a clause; marks its words as taken. */
export function hearFill(talk: Talk, clause: Clause, taken: Uint8Array): Draft[] {
  const out: Draft[] = [];
  const { words } = talk.marks;
  const norm = (k: number): string => (k >= clause.from ? (words[k]?.norm ?? '') : '');
  for (let i = clause.from; i < clause.to; i++) {
    if (taken[i] || talk.scopes.elsewhere[i]) continue;
    const hit = fills.at(words, i);
    const state = hit?.values[0];
    if (!hit || !state || i + hit.length > clause.to) continue;
    const to = i + hit.length;
    if (clause.mentions.some((m) => m.from <= i && i < m.to)) continue;
    if (words[to - 1]?.stop === 0 && notFull.test(words[to]?.norm ?? '')) continue;
    // "a third full" is a share
    if (
      /^(?:half|third|thirds|quarter|quarters|fourth|fourths|fifth|fifths|eighth|eighths|percent|way|not|isn't|ain't)$/.test(
        norm(i - 1),
      )
    )
      continue;
    if (talk.marks.numberAt.to(i) && state === 'full') continue;
    let shown = -1;
    for (let k = i - 1; k >= Math.max(clause.from, i - 4); k--) if (shows.test(norm(k))) shown = k;
    const onPanel =
      clause.mentions.some((m) => m.parts.some((p) => panels.test(p))) ||
      talk.recent.some((r) => i - r.at < 14 && r.parts.some((p) => panels.test(p)));
    const vessel = vesselOf(talk, clause, i);
    if ((shown >= 0 || state === 'full') && (vessel || onPanel) && isFalse(talk, clause, shown, to, state)) {
      const part = onPanel
        ? (clause.mentions.flatMap((m) => m.parts).find((p) => panels.test(p)) ?? 'monitor_panel')
        : 'tank_sensors';
      out.push(
        draftOf(
          talk,
          clause,
          taken,
          { part, aspect: 'reading', state: 'fails', sense: 'defect', polarity: 'bad', weight: 0.75 },
          i,
          hit.length,
        ),
      );
      i = to - 1;
      continue;
    }
    if (!vessel || talk.scopes.denied[i] === 1 || defectPhrases.at(words, i - 1)?.length === hit.length + 1)
      continue;
    const before = norm(i - 1);
    // "I dumped it" is what somebody did
    const done = /^(?:drained|dumped|pumped|emptied|filled|topped)/.test(norm(i));
    if (done && !/^(?:is|'s|are|'re|was|were|been|got|all)$/.test(before)) continue;
    const led =
      clause.mentions.some((m) => m.to === i) ||
      shown >= 0 ||
      /^(?:is|'s|are|'re|was|were|at|sits?|sitting|stays?|about|near|nearly|almost|totally|completely|all|both|currently|now|just|got|been|it|them|i|we)$/.test(
        before,
      );
    if (!led || /^(?:when|if|once|until|till|before|after|while)$/.test(norm(clause.from))) continue;
    const both =
      /^(?:both|all)$/.test(norm(clause.from)) || words.slice(clause.from, i).some((w) => w.norm === 'both');
    const others = both
      ? talk.recent
          .filter((r) => r.at < i && i - r.at < 24)
          .flatMap((r) => r.parts.slice(0, 1))
          .filter((p) => vessels.test(p) && p !== vessel)
      : [];
    for (const other of new Set(others))
      out.push(
        draftOf(
          talk,
          clause,
          taken,
          { part: other, aspect: 'level', state, sense: 'condition', polarity: 'neutral', weight: 0.65 },
          i,
          hit.length,
        ),
      );
    out.push(
      draftOf(
        talk,
        clause,
        taken,
        { part: vessel, aspect: 'level', state, sense: 'condition', polarity: 'neutral', weight: 0.7 },
        i,
        hit.length,
      ),
    );
    i = to - 1;
  }
  return out;
}

/** A gauge that shows what is not so: always the same, or full right after it was emptied. */
function isFalse(talk: Talk, clause: Clause, shownAt: number, to: number, state: 'full' | 'empty'): boolean {
  const { words, sentenceOf } = talk.marks;
  const shown = shownAt < 0 ? clause.from : shownAt;
  const norm = (k: number): string => words[k]?.norm ?? '';
  for (let k = Math.max(clause.from, shown - 3); k < shown; k++)
    if (always.test(norm(k)) && norm(k) !== 'all') return true;
  const tail = [0, 1, 2, 3, 4].map((k) => norm(to + k)).join(' ');
  if (behindAlways.some((p) => p !== '' && tail.startsWith(p.trim()))) return true;
  // the other state follows, or stood before, in one breath
  for (let k = to; k < Math.min(words.length, to + 12); k++) {
    if ((sentenceOf[k] ?? 0) - (sentenceOf[to - 1] ?? 0) > 1) break;
    const other = fills.at(words, k)?.values[0];
    const joined = words
      .slice(to, k)
      .some((w) => /^(?:but|and|when|with|though|although|while|it|they|tank|i|we)$/.test(w.norm));
    const named = words
      .slice(to, k)
      .some((_, j) => talk.marks.mentionAt.from(to + j) && !/^tanks?$/.test(norm(to + j)));
    if (other && other !== state && joined && !named) return true;
  }
  return false;
}

/** "Two thirds fresh, a third gray", "sixty gallons fresh": a share or a size said right before its tank; marks the number as taken. */
export function hearFillBefore(talk: Talk, clause: Clause, taken: Uint8Array): Draft[] {
  const out: Draft[] = [];
  for (const span of clause.numbers) {
    const share = span.items[0]?.kind === 'fraction' || span.items.at(-1)?.kind === 'fraction';
    const size = span.unit?.units[0] === '[gal_us]';
    const value = span.readings[0]?.value;
    if (
      (!share && !size) ||
      (share && span.unit) ||
      value === undefined ||
      taken[span.from] ||
      talk.scopes.elsewhere[span.from]
    )
      continue;
    const m = clause.mentions.find((x) => x.from === span.to);
    const part = m?.parts.find((p) => /^(?:fresh|gray|black)_tank$/.test(p));
    if (
      !m ||
      !part ||
      clause.mentions.some(
        (x) => x.to <= span.from && span.from - x.to <= 3 && x.parts.some((p) => vessels.test(p)),
      )
    )
      continue;
    // "a third gray tank" is a tank more
    if (/tanks?$/.test(talk.marks.words[m.to - 1]?.norm ?? '') && share) continue;
    const doubt = talk.doubtAt(span.from);
    taken.fill(1, span.from, span.to);
    out.push({
      part,
      aspect: size ? 'capacity' : 'level',
      value: size
        ? { is: 'quantity', value, unit: '[gal_us]' }
        : { is: 'quantity', value: Math.round(value * 1e8) / 1e6, unit: '%' },
      sense: 'quantity',
      polarity: 'neutral',
      ...doubt,
      hedged: doubt.hedged || span.approx,
      from: Math.max(clause.from, span.from - 4),
      to: Math.min(clause.to, m.to + 2),
      at: span.from,
      weight: 0.75,
    });
  }
  return out;
}
