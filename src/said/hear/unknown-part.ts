// Why: what is not known is of the part named before it, after it, or right before the comma; a list gives one of each.
import type { Clause } from './clause.ts';
import { asksReason } from './guess-words.ts';
import type { Mention } from './mention.ts';
import type { Talk } from './talk.ts';
import type { UnknownHit } from './unknown-phrase.ts';

/** The parts an unknown is of, and the word its quote begins at. */
export interface UnknownOf {
  readonly parts: readonly string[];
  readonly from: number;
}

const blocks =
  /^(?:with|because|since|so|when|while|behind|until|it|them|that|if|for|by|without|unless|today|yet|but)$/;

/** The parts of an unknown, likeliest reading only. */
export function unknownOf(talk: Talk, clause: Clause, hit: UnknownHit, topics: readonly Clause[]): UnknownOf {
  const { words } = talk.marks;
  if (hit.verb === 'paper') return { parts: ['records_folder'], from: clause.from };
  // "where it comes from I couldn't say": of what failed
  const fault = talk.fault;
  if (hit.why === 'not known' && fault && hit.from - fault.at < 40) {
    const from = topics.at(-1)?.from ?? clause.from;
    const asked = words.slice(Math.min(from, clause.from), clause.to).some((w) => asksReason.test(w.norm));
    if (asked) return { parts: [fault.part], from };
  }
  // "the rear edge I haven't seen": a place of where the walk stands
  const here = talk.herePart;
  if (
    here &&
    !clause.mentions.some((m) => !m.aside && !m.weak) &&
    clause.places.some((p) => !p.side && !p.depth && p.end && p.to <= hit.from && hit.from - p.to <= 3)
  )
    return { parts: [here], from: clause.from };
  const own = clause.mentions.filter((m) => !m.aside);
  const before = own.filter((m) => m.to <= hit.from);
  // "no idea if the pump runs", "can't tell you whether the horn works": what is asked about
  const asks = (to: number): number => {
    const k = /^(?:you|ya|y'all)$/.test(words[to]?.norm ?? '') ? to + 1 : to;
    return /^(?:if|whether|how|when|what|that)$/.test(words[k]?.norm ?? '') && hit.why === 'not known'
      ? k + 1
      : to;
  };
  const object = clause.mentions.find(
    (m) =>
      m.to > hit.to &&
      m.from - hit.to <= 5 &&
      !words.slice(asks(hit.to), m.from).some((w) => blocks.test(w.norm)),
  );
  // "didn't get to the drop test": its name holds the verb
  const within = own.find((m) => !m.weak && m.from > hit.from && m.from < hit.to);
  if (within?.parts[0]) return { parts: [within.parts[0]], from: clause.from };
  // "never put a hose on that", "ain't put a wrench to the lugs": the tool is not what is not known
  const tool =
    object !== undefined &&
    /^(?:put|get|stick|lay|shine|hold|set|hook|clamp|run)$/.test(hit.verb) &&
    /^(?:on|to|in|at|up|under|into|through|against)$/.test(
      object.to < clause.to ? (words[object.to]?.norm ?? '') : '',
    );
  const after = tool ? clause.mentions.find((m) => m.from > object.to && m.from - object.to <= 5) : object;
  const last = before.filter((m) => !m.weak).at(-1);
  if (/^(?:drive|ride|tow|take|get|have|speak|vouch|run)$/.test(hit.verb) && onRoad(talk, clause, hit))
    return { parts: ['road_test_drive'], from: clause.from };
  if (last)
    return isDateCode(talk, last)
      ? { parts: ['tire'], from: clause.from }
      : { parts: listed(talk, before, last), from: clause.from };
  if (after && !after.aside && !after.weak) return { parts: first(after), from: clause.from };
  // "Oven, I left that alone": what stands alone before the comma, and every item of a list
  const heads: string[] = [];
  let from = clause.from;
  const weak = before.at(-1) ?? after;
  if (!weak || clause.to - clause.from > 4)
    for (const topic of topics) {
      // "a dishwasher, I haven't run it": one thing
      if (heads.length > 0 && /^(?:it|that|this)$/.test(words[hit.to]?.norm ?? '')) break;
      const named = topic.mentions.filter((m) => !m.aside);
      const strong = named.filter((m) => !m.weak);
      const use = strong.length > 0 ? strong : named;
      if (use.length === 0) break;
      for (const m of use) {
        const part = isDateCode(talk, m) ? 'tire' : m.parts[0];
        if (part && !heads.includes(part)) heads.push(part);
      }
      from = topic.from;
    }
  if (weak?.parts[0]) return { parts: [weakly(talk, weak, heads)], from: clause.from };
  if (heads.length > 0) return { parts: heads, from };
  // "I have not run | the washer": the stop was put in by a reader who saw none
  const next = hit.to === clause.to && hit.why === 'not tried' ? behind(talk, hit.to) : undefined;
  if (next) return { parts: first(next), from: clause.from };
  if (/^(?:drive|ride|tow)$/.test(hit.verb)) return { parts: ['road_test_drive'], from: clause.from };
  if (hit.general && clause.to - clause.from > hit.to - hit.from + 7) return { parts: [], from: clause.from };
  return {
    parts: talk
      .partsFor(hit.from, hit.to, { ...clause, mentions: clause.mentions.filter((m) => m.to <= hit.from) })
      .slice(0, 1),
    from: clause.from,
  };
}

const behind = (talk: Talk, at: number): Mention | undefined =>
  /^(?:the|my|your|a)$/.test(talk.marks.words[at]?.norm ?? '') && !talk.marks.words[at]?.capital
    ? talk.marks.mentionAt.from(at + 1)
    : undefined;

const roads = /^(?:road|roads|highway|interstate|speed|freeway|street|block)$/;
const onRoad = (talk: Talk, clause: Clause, hit: UnknownHit): boolean =>
  talk.marks.words.slice(hit.to, Math.min(clause.to, hit.to + 10)).some((w) => roads.test(w.norm));

const first = (m: Mention): string[] => (m.parts[0] ? [m.parts[0]] : []);

/** "The turbo and the injectors I couldn't tell you": those joined to the last. */
function listed(talk: Talk, before: readonly Mention[], last: Mention): string[] {
  const out = first(last);
  let at = last;
  for (const m of [...before].reverse()) {
    if (m.to > at.from) continue;
    const link = talk.marks.words.slice(m.to, at.from).map((w) => w.norm);
    const joined = link.some((n) => n === 'and' || n === 'or' || n === 'nor') && link.length <= 3;
    if (!joined && !(m.to > at.from - 2 && link.every((n) => n === 'the'))) break;
    if (m.parts[0] && !m.weak && !out.includes(m.parts[0])) out.push(m.parts[0]);
    at = m;
  }
  return out;
}

/** The code that is said near a tire is its date, not the engine's. */
const isDateCode = (talk: Talk, m: Mention): boolean =>
  m.parts[0] === 'engine_ecm' &&
  /^codes?$/.test(talk.marks.words[m.to - 1]?.norm ?? '') &&
  talk.recent.some((r) => r.parts[0] === 'tire' && m.from - r.at < 70);

/** A word like "the panel" means the part talked about where it can. */
const weakly = (talk: Talk, weak: Mention, heads: readonly string[]): string =>
  (isDateCode(talk, weak) ? 'tire' : undefined) ??
  heads.find((h) => weak.parts.includes(h)) ??
  talk.recent
    .slice(0, 3)
    .flatMap((r) => r.parts)
    .find((p) => weak.parts.includes(p)) ??
  (weak.parts[0] as string);
