// Why: what should be done, or is promised to be done, is said aloud on a walk; it is kept apart from what was found.
import {
  jobNouns,
  notes,
  shopBase,
  shopDoing,
  shopDone,
  wantsDone,
  wantsThing,
  wishes,
} from './advice-words.ts';
import type { Clause, Draft } from './clause.ts';
import type { Talk } from './talk.ts';
import { advice } from './trigger-words.ts';

/** Where a job is spoken of in a clause, and one past its last word. */
interface Spoken {
  readonly from: number;
  readonly to: number;
}

const no =
  /^(?:not|never|don't|doesn't|didn't|won't|wouldn't|can't|couldn't|no|ain't|without|haven't|nobody|you)$/;

function jobAt(talk: Talk, clause: Clause): Spoken | undefined {
  const { words } = talk.marks;
  const norm = (k: number): string => (k >= clause.from && k < clause.to ? (words[k]?.norm ?? '') : '');
  const plain = (k: number): boolean => !no.test(norm(k - 1)) && !no.test(norm(k - 2)) && norm(k) !== '';
  for (let i = clause.from; i < clause.to; i++) {
    const n = norm(i);
    const note = notes.at(words, i) ?? advice.at(words, i);
    if (note && i + note.length <= clause.to && plain(i)) {
      const single = /^(?:need|needs|wants|recommended)$/.test(n) && note.length === 1;
      if (!single || clause.mentions.some((m) => m.to <= i && i - m.to <= 2))
        return { from: i, to: i + note.length };
    }
    const wish = wishes.at(words, i);
    if (wish && plain(i))
      for (let k = i + wish.length; k < Math.min(clause.to, i + wish.length + 6); k++) {
        if (no.test(norm(k))) break;
        if (
          shopBase.has(norm(k)) &&
          (k === i + wish.length ||
            /^(?:to|just|also|probably|kid|them|him|shop|guys|and|go|up|then|him)$/.test(norm(k - 1)))
        )
          return { from: i, to: k + 1 };
        if (
          shopDone.has(norm(k)) &&
          !/^(?:fit|set)$/.test(norm(k)) &&
          /^(?:get|have|getting|be)$/.test(norm(i + wish.length)) &&
          k > i + wish.length
        )
          return { from: i, to: k + 1 };
        if (shopDoing.has(norm(k)) && norm(k - 1) === 'be') return { from: i, to: k + 1 };
        // "we'll throw a new one in there"
        if (
          /^(?:put|throw|stick|get|hang|slap|mount|buy|bring|find|drop)$/.test(norm(k)) &&
          newThing(norm, k)
        )
          return { from: i, to: k + 1 };
      }
    // "I'm fitting a new end", "I am changing it"
    if (shopDoing.has(n) && /^(?:'m|am|'re|are)$/.test(norm(i - 1)) && /^(?:i|we)$/.test(norm(i - 2)))
      return { from: i - 2, to: i + 1 };
    if (
      /^(?:putting|hanging|throwing|getting)$/.test(n) &&
      newThing(norm, i) &&
      /^(?:'m|am|'re|are|be)$/.test(norm(i - 1))
    )
      return { from: i - 1, to: i + 1 };
    const done = wantsDone.at(words, i);
    if (done && plain(i) && subjectOk(norm(i - 1), norm(i)))
      for (let k = i + done.length; k < Math.min(clause.to, i + done.length + 3); k++) {
        if (
          (shopDone.has(norm(k)) && norm(k) !== 'fit') ||
          (shopDoing.has(norm(k)) && /^(?:needs|need|wants|want|could)$/.test(n))
        )
          return { from: i, to: k + 1 };
        if (/^(?:is|was|to|not|no)$/.test(norm(k))) break;
      }
    const thing = wantsThing.at(words, i);
    if (thing && plain(i) && subjectOk(norm(i - 1), n))
      for (let k = i + thing.length; k < Math.min(clause.to, i + thing.length + 4); k++) {
        if (
          jobNouns.test(norm(k)) &&
          (n !== 'takes' || norm(k) === 'new') &&
          (n !== 'gets' || norm(k) === 'new')
        )
          return { from: i, to: k + 1 };
        if (
          !/^(?:a|an|new|some|two|four|its|the|good|full|fresh|another|little|complete|seal|one|both|his|her|six)$/.test(
            norm(k),
          )
        )
          break;
      }
    // "that's a seal kit", "so that's a windshield", "so two new batteries"
    if (n === 'kit' && /^(?:a|the|rebuild|seal|repair|new)$/.test(norm(i - 1)))
      return { from: Math.max(clause.from, i - 3), to: i + 1 };
    if (n === 'so' && i <= clause.from + 1) {
      const k = /^(?:that|it)$/.test(norm(i + 1)) && /^(?:'s|'ll|is|will)$/.test(norm(i + 2)) ? i + 3 : i + 1;
      const art = /^(?:a|an|two|four|six|new|one|three)$/.test(norm(k)) || norm(k) === 'be';
      const fresh = norm(k) === 'new' || norm(k + 1) === 'new';
      const named = clause.mentions.some((m) => m.from > k && m.from - k <= 2);
      if (art && (fresh || (k === i + 3 && named && /^(?:a|an)$/.test(norm(k)) && clause.to - k <= 4)))
        return { from: i, to: k + 2 };
    }
  }
  return undefined;
}

const newThing = (norm: (k: number) => string, k: number): boolean =>
  [1, 2, 3].some((n) => norm(k + n) === 'new' || norm(k + n) === 'another' || norm(k + n) === 'fresh');

/** "You need", "I want", "if you want": what people want is no job; "I need a new one" neither. */
const subjectOk = (before: string, word: string): boolean =>
  !/^(?:need|want)$/.test(word) ||
  !/^(?:you|i|we|they|people|who|don't|to|'d|would|may|might|'ll|all_)$/.test(before);

/** What should be done, in the speaker's opinion: "I would reseal that", "wants an alignment", "I'm fitting a new end". */
export function hearAdvice(talk: Talk, clause: Clause, last: Draft | undefined): Draft[] {
  const job = jobAt(talk, clause);
  if (!job || talk.scopes.elsewhere[job.from] === 1) return [];
  const own = clause.mentions.filter((m) => !m.aside);
  const after = own.find((m) => m.from >= job.to && m.from - job.to <= 6);
  const before = own.filter((m) => m.to <= job.from).at(-1);
  const named = talk.recent.find((r) => !r.weak && r.at < job.from);
  const stale =
    named !== undefined &&
    talk.fault !== undefined &&
    named.at > talk.fault.at + 4 &&
    !named.parts.includes(talk.fault.part);
  const fault = talk.fault && !stale && job.from - talk.fault.at < 45 ? talk.fault.part : undefined;
  const lately =
    last && job.from - last.at < 30 && (!stale || last.at > (named?.at ?? 0)) ? last.part : undefined;
  const fits = (m: typeof after): string | undefined =>
    m === undefined
      ? undefined
      : (m.parts.find((p) => p === fault || p === lately) ?? (m.weak ? undefined : m.parts[0]));
  const part = fits(after) ?? fits(before) ?? fault ?? lately ?? talk.partFor(job.from, job.to, clause);
  if (!part) return [];
  const said = talk.advised;
  if (said && said.part === part && job.from - said.at < 25) return [];
  talk.advised = { part, at: job.from };
  const place = last && last.part === part ? last.place : talk.placeOf(part, job.from, clause);
  return [
    {
      part,
      ...(place === undefined ? {} : { place }),
      aspect: 'advice',
      value: { is: 'state', state: 'advised' },
      sense: 'condition',
      polarity: 'neutral',
      hedged: false,
      from: Math.max(clause.from, job.from - 5),
      to: Math.min(clause.to, job.to + 7),
      at: job.from,
      weight: 0.6,
    },
  ];
}
