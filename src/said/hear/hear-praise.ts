// Why: praise is kept apart as a claim, and a thing that is merely there is worth one line.
import type { Clause, Draft } from './clause.ts';
import { commonWords } from './common-words.ts';
import { praisePhrases, verbs } from './lexicon.ts';
import { phraseList } from './phrase-index.ts';
import type { Talk } from './talk.ts';
import { presences } from './trigger-words.ts';

const span = (clause: Clause, at: number, before: number, after: number): { from: number; to: number } => ({
  from: Math.max(clause.from, at - before),
  to: Math.min(clause.to, at + after),
});

/** Praise in a clause: one claim, tied to its part. */
export function hearPraise(talk: Talk, clause: Clause): Draft[] {
  const { words } = talk.marks;
  for (let i = clause.from; i < clause.to; i++) {
    const hit = praisePhrases.at(words, i);
    if (!hit) continue;
    const own = clause.mentions.find((m) => !m.aside)?.parts[0];
    const part = own ?? talk.partFor(i, i + hit.length, clause) ?? 'coach';
    return [
      {
        part,
        aspect: 'claim',
        value: {
          is: 'text',
          text: words
            .slice(i, i + hit.length)
            .map((w) => w.norm)
            .join(' '),
        },
        sense: 'claim',
        polarity: 'good',
        hedged: false,
        ...span(clause, i, 8, hit.length + 5),
        at: i,
        weight: 0.7,
      },
    ];
  }
  return [];
}

const none = phraseList([
  "there isn't one",
  "there 's none",
  'there is none',
  'there is not one',
  "there isn't any",
  "there aren't any",
  "doesn't have one",
  "don't have one",
  'does not have one',
  "it 's not there",
  "isn't there",
  'not there',
  'never had one',
  'nowhere to be found',
  'not equipped',
  'not fitted',
  'not installed',
]);
/** "Extinguisher, there isn't one": there is none of what was just named. */
export function hearAbsence(talk: Talk, clause: Clause, taken: Uint8Array): Draft[] {
  for (let i = clause.from; i < clause.to; i++) {
    const hit = none.at(talk.marks.words, i);
    if (!hit || talk.scopes.elsewhere[i]) continue;
    const own = clause.mentions.filter((m) => !m.aside && m.to <= i).at(-1);
    const part = own?.parts[0] ?? talk.recent.find((r) => r.at < i && i - r.at < 14)?.parts[0];
    if (!part) continue;
    taken.fill(1, i, i + hit.length);
    const place = talk.placeOf(part, i, clause);
    return [
      {
        part,
        ...(place === undefined ? {} : { place }),
        aspect: 'present',
        value: { is: 'state', state: 'no' },
        sense: 'absent',
        polarity: 'neutral',
        ...talk.doubtAt(i),
        ...span(clause, i, 4, hit.length + 2),
        at: i,
        weight: 0.75,
      },
    ];
  }
  return [];
}

/** "It's got the outside shower": it is there. Only where nothing else was said of it in the clause. */
export function hearPresence(talk: Talk, clause: Clause, said: ReadonlySet<string>): Draft[] {
  const { words } = talk.marks;
  const out: Draft[] = [];
  for (const m of clause.mentions) {
    const part = m.parts[0];
    if (m.aside || m.weak || !part || said.has(part) || talk.scopes.elsewhere[m.from]) continue;
    const denied = talk.scopes.denied[m.from] === 1;
    let led = false;
    for (let k = Math.max(clause.from, m.from - 6); k < m.from; k++) {
      const hit = presences.at(words, k);
      if (
        hit &&
        k + hit.length <= m.from &&
        m.from - k - hit.length <= 4 &&
        !words.slice(k + hit.length, m.from).some((w) => verbs.at([w], 0) && !commonWords.has(w.norm))
      )
        led = true;
    }
    const there =
      /^(?:'s|is|are)$/.test(words[m.to]?.norm ?? '') &&
      /^(?:in|here|there|right|inside|included)$/.test(words[m.to + 1]?.norm ?? '') &&
      /^(?:there|here|in)$/.test(words[m.to + 2]?.norm ?? words[m.to + 1]?.norm ?? '');
    const noneOf =
      denied && words[m.from - 1]?.norm === 'no' && (m.to === clause.to || words[m.to - 1]?.stop !== 0);
    if (noneOf) {
      out.push({
        part,
        aspect: 'present',
        value: { is: 'state', state: 'no' },
        sense: 'absent',
        polarity: 'neutral',
        ...talk.doubtAt(m.from),
        ...span(clause, m.from, 3, m.to - m.from + 2),
        at: m.from,
        weight: 0.75,
      });
      continue;
    }
    if ((!led && !there) || denied) continue;
    const place = talk.placeOf(part, m.from, clause);
    out.push({
      part,
      ...(place === undefined ? {} : { place }),
      aspect: 'present',
      value: { is: 'state', state: 'present' },
      sense: 'condition',
      polarity: 'neutral',
      ...talk.doubtAt(m.from),
      ...span(clause, m.from, 4, m.to - m.from + 3),
      at: m.from,
      weight: 0.6,
    });
  }
  return out;
}
