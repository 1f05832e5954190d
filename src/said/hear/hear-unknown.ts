// Why: not checked, not known and only guessed are observations too; praise is kept apart as a claim.
import { partOf } from '../../catalogue/index.ts';
import type { Clause, Draft } from './clause.ts';
import { defectPhrases } from './lexicon.ts';
import { phraseList } from './phrase-index.ts';
import type { Talk } from './talk.ts';
import { advice, causeGuesses, unknowns } from './trigger-words.ts';

const span = (clause: Clause, at: number, before: number, after: number): { from: number; to: number } => ({
  from: Math.max(clause.from, at - before),
  to: Math.min(clause.to, at + after),
});

const why = (phrase: string): string =>
  /see|visible|read|legible|reach|access|get to/.test(phrase)
    ? 'could not be seen or reached'
    : /run|test|tried|try|check|done|drive|verif|inspect|open|measure/.test(phrase)
      ? 'not tried'
      : 'not known';

/** "On gas I haven't tried it": which way of running is meant. */
function modeOf(talk: Talk, clause: Clause): readonly string[] | undefined {
  for (let i = clause.from; i + 1 < clause.to; i++) {
    if (talk.marks.words[i]?.norm !== 'on') continue;
    const n = talk.marks.words[i + 1]?.norm ?? '';
    if (/^(?:gas|propane|lp)$/.test(n)) return ['mode_LP', 'gas_ok'];
    if (/^(?:electric|shore|ac|electricity)$/.test(n)) return ['mode_AC', 'electric_ok'];
    if (/^(?:battery|dc)$/.test(n)) return ['mode_DC'];
  }
  return undefined;
}

const unseen = phraseList([
  "haven't seen",
  'have not seen',
  "haven't been able to",
  "haven't used",
  'have not used',
  "haven't done",
  "couldn't do",
  'could not do',
  "can't do",
]);
/** "The rear edge I haven't seen": not known only where nothing follows; "I haven't seen a leak" is a finding. */
function unseenAt(talk: Talk, clause: Clause, i: number): { readonly length: number } | undefined {
  const hit = unseen.at(talk.marks.words, i);
  return hit && (i + hit.length >= clause.to || (talk.marks.words[i + hit.length - 1]?.stop ?? 0) > 0)
    ? hit
    : undefined;
}

const named_ = (talk: Talk, clause: Clause, parts: readonly string[]): Clause['aspects'] =>
  clause.mentions.some((m) => !m.aside && parts.includes(m.parts[0] ?? '')) ? [] : talk.lead;

/** What the speaker says is not known, in a clause; marks its words as taken. */
export function hearUnknown(talk: Talk, clause: Clause, taken: Uint8Array): Draft[] {
  const out: Draft[] = [];
  const { words } = talk.marks;
  for (let i = clause.from; i < clause.to; i++) {
    const hit = unknowns.at(words, i) ?? unseenAt(talk, clause, i);
    if (!hit || i + hit.length > clause.to) continue;
    const phrase = words
      .slice(i, i + hit.length)
      .map((w) => w.norm)
      .join(' ');
    // "couldn't find a tear" looked and found none
    if (
      /find|found|see/.test(phrase) &&
      [0, 1, 2, 3].some((k) => defectPhrases.at(words, i + hit.length + k) && i + hit.length + k < clause.to)
    )
      break;
    const after = clause.mentions.find(
      (m) =>
        !m.aside &&
        m.from >= i + hit.length &&
        m.from - i - hit.length <= 5 &&
        !words
          .slice(i + hit.length, m.from)
          .some((w) => /^(?:with|because|since|so|when|while|behind|until|it|them|that|if)$/.test(w.norm)),
    );
    const before = clause.mentions.filter((m) => m.to <= i && !m.aside).at(-1);
    const person = /^(?:not going|not gonna)/.test(phrase);
    if (
      person &&
      !words
        .slice(Math.max(clause.from, i - 3), i)
        .some((w) => /^(?:i|we|'m|'re)$/.test(w.norm) && w.norm !== "'re")
    ) {
      i += hit.length - 1;
      continue;
    }
    const papers = /paper|record/.test(phrase)
      ? 'records_folder'
      : /drive|driven/.test(phrase)
        ? 'road_test_drive'
        : undefined;
    const general =
      /^(?:not found|don't know|i don't know|do not know|no idea|not done|not sure|i'm not sure|unknown)$/.test(
        phrase,
      );
    const other = talk.partsFor(i, i + hit.length, {
      ...clause,
      mentions: clause.mentions.filter((m) => m.to <= i || m === after),
    });
    const inPart =
      (before && !before.weak ? before.parts[0] : undefined) ?? after?.parts[0] ?? before?.parts[0];
    const parts =
      papers && !(inPart && /drive/.test(phrase)) ? [papers] : inPart ? [inPart] : other.slice(0, 1);
    // "the date on the tank, I can't get to it": what was named before the comma
    if (
      !inPart &&
      !papers &&
      talk.herePart &&
      clause.places.some(
        (p) =>
          !p.side &&
          !p.depth &&
          ((p.from - i - hit.length <= 2 && p.from >= i) || (p.to <= i && i - p.to <= 2)),
      )
    )
      parts.splice(0, parts.length, talk.herePart);
    const lead = /get|read|see|find|make out/.test(phrase) ? named_(talk, clause, parts) : [];
    if (parts.length === 0 && /drive|driven/.test(phrase)) parts.push('road_test_drive');
    // "the turbo, the injectors, I couldn't tell you": every part of the list
    if (!inPart && !papers) {
      for (const r of talk.recent)
        if (talk.marks.sentenceOf[r.at] === clause.sentence && r.parts[0] && !parts.includes(r.parts[0]))
          parts.push(r.parts[0]);
    }
    if (general && !inPart && clause.to - clause.from > hit.length + 6) {
      i += hit.length - 1;
      continue;
    }
    for (const part of parts) {
      const own = partOf(part)?.aspects ?? [];
      const named = [...clause.aspects, ...lead]
        .map((a) => own.find((x) => a.keys.has(`${part}/${x.id}`)))
        .find((x) => x !== undefined);
      const mode = own.find((x) => modeOf(talk, clause)?.includes(x.id));
      const aspect =
        mode?.id ??
        named?.id ??
        (/read|date/.test(phrase)
          ? 'date'
          : /run|test|tr(?:y|ied)|drive|check|open|fire|hook|turn/.test(phrase)
            ? 'operates'
            : 'condition');
      const place = talk.placeOf(part, i, clause);
      const said = talk.doubtAt(i).saidBy;
      out.push({
        part,
        ...(place === undefined ? {} : { place }),
        aspect,
        value: { is: 'unknown', why: why(phrase) },
        sense: 'unknown',
        polarity: 'neutral',
        hedged: false,
        ...(said === undefined ? {} : { saidBy: said }),
        ...span(clause, i, 6, hit.length + 8),
        at: i,
        weight: 0.75,
      });
    }
    taken.fill(1, i, clause.to);
    break;
  }
  return out;
}

/** A guess at the reason of something wrong: "could be the seal". */
export function hearCause(talk: Talk, clause: Clause, last: Draft | undefined, taken: Uint8Array): Draft[] {
  const { words } = talk.marks;
  if (
    !last ||
    (last.sense !== 'defect' && last.sense !== 'unknown') ||
    clause.numbers.length > 0 ||
    clause.from - last.at > 28
  )
    return [];
  for (let i = clause.from; i < clause.to; i++) {
    const hit = causeGuesses.at(words, i);
    if (!hit || talk.scopes.elsewhere[i]) continue;
    const lead = words[clause.from]?.norm ?? '';
    if (words.slice(i, clause.to).some((w) => w.norm === 'reason')) continue;
    const short = clause.to - clause.from <= 13;
    const before = i === clause.from || /^(?:it|that|this|they|which|and|or)$/.test(lead);
    if (!short || !before) continue;
    taken.fill(1, clause.from, clause.to);
    return [
      {
        part: last.part,
        ...(last.place === undefined ? {} : { place: last.place }),
        aspect: 'cause',
        value: { is: 'unknown', why: 'a guess at the cause' },
        sense: 'unknown',
        polarity: 'neutral',
        hedged: true,
        from: clause.from,
        to: clause.to,
        at: i,
        weight: 0.6,
      },
    ];
  }
  return [];
}

/** What should be done, in the speaker's opinion: "I would reseal that". */
export function hearAdvice(talk: Talk, clause: Clause, last: Draft | undefined): Draft[] {
  const { words } = talk.marks;
  for (let i = clause.from; i < clause.to; i++) {
    const hit = advice.at(words, i);
    if (!hit) continue;
    const phrase = words
      .slice(i, i + hit.length)
      .map((w) => w.norm)
      .join(' ');
    if (
      /^(?:need|wants|should be|needs|need|i'd have|i would have|has to be|have to be)$/.test(phrase) &&
      !clause.mentions.some((m) => m.to <= i && i - m.to <= 2)
    )
      continue;
    const after = clause.mentions.find((m) => m.from >= i + hit.length && m.from - i - hit.length <= 3);
    const part =
      after?.parts[0] ?? (last && i - last.at < 30 ? last.part : talk.partFor(i, i + hit.length, clause));
    if (!part) continue;
    const place = last && last.part === part ? last.place : talk.placeOf(part, i, clause);
    return [
      {
        part,
        ...(place === undefined ? {} : { place }),
        aspect: 'advice',
        value: { is: 'state', state: 'advised' },
        sense: 'condition',
        polarity: 'neutral',
        hedged: false,
        ...span(clause, i, 4, hit.length + 6),
        at: i,
        weight: 0.6,
      },
    ];
  }
  return [];
}
