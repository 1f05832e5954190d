// Why: a thing that is merely there is worth one line, and so is one that a buyer would look for and is not there.
import type { Clause, Draft } from './clause.ts';
import { commonWords } from './common-words.ts';
import { verbs } from './lexicon.ts';
import type { Mention } from './mention.ts';
import { phraseList } from './phrase-index.ts';
import type { Talk } from './talk.ts';
import { presences } from './trigger-words.ts';
import { neededThings } from './work-words.ts';

const set = (text: string): ReadonlySet<string> => new Set(text.split(' '));
const list = (text: string): string[] => text.split(',').map((p) => p.trim());
/** There is none of what was just named. */
const none = phraseList(
  list(
    "there isn't one, there 's none, there is none, there is not one, there isn't any, there aren't any, there ain't one, there ain't any, there ain't none, there never was one, doesn't have one, don't have one, does not have one, do not have one, hasn't got one, haven't got one, ain't got one, has none, have none, has n't one, it 's not there, isn't there, ain't there, not there, is not here, isn't here, are not here, aren't here, ain't here, is nowhere, never had one, never came with one, never got one, nowhere to be found, not equipped, not fitted, not installed, can't find one, couldn't find one, cannot find one, could not find one, didn't find one, they took it with them, took it with them, took it with him, took it with her, went with the owner, went with the old owner, somebody took it, somebody walked off with it, not on this one, not on this unit, not on this coach, without one",
  ),
);
for (const verb of ['went', 'left', 'gone', 'walked off', 'stayed'])
  for (const det of ['the', 'his', 'her', 'their'])
    for (const which of ['', 'last ', 'previous ', 'prior ', 'old ', 'first ', 'original ', 'former '])
      for (const owner of ['owner', 'owners']) none.add(`${verb} with ${det} ${which}${owner}`, true);
/** Alone after a thing named: there is none. */
const nope = set('nope none nada negative zip nil no neither');
/** Of these, "it's gone" means that the thing is not there. */
const removable =
  /^(?:spare_tire|tv_|antenna|bed_mattress|records_|manuals|keys|title|extinguisher|ladder|microwave|radio|battery|house_battery|generator|washer_dryer|dinette|lp_tank|hitch|tow_|surge|shore_cord|cargo|sewer|mirror|remote|shower|bbq|grill|inverter|solar|bunk|camera|water_filter|table)/;
/** Things that lie somewhere in the coach. */
const carried =
  /^(?:spare_tire|title|manuals|keys|remote|records|extinguisher|cargo|hitch|sewer|tow_|bbq|shore_cord)/;
/** Of these none is a matter of level or failure, not of equipment. */
const stuff = set(
  'oil coolant fuel gas propane diesel fluid def slack play charge brakes brake lights lamp lamps codes code tread moisture smoke engine house chassis battery batteries paint rust roof floor tire tires washer_fluid alarms alarm',
);
const held = set(
  'in on under underneath behind with up back hung stored mounted down bolted there here included inside strapped parked sitting along right down',
);

const span = (clause: Clause, at: number, before: number, after: number): { from: number; to: number } => ({
  from: Math.max(clause.from, at - before),
  to: Math.min(clause.to, at + after),
});

const draft = (
  talk: Talk,
  clause: Clause,
  part: string,
  at: number,
  there: boolean,
  weight: number,
  of = span(clause, at, 4, 5),
): Draft => {
  const place = talk.placeOf(part, at, clause);
  return {
    part,
    ...(place === undefined ? {} : { place }),
    aspect: 'present',
    value: { is: 'state', state: there ? 'present' : 'no' },
    sense: there ? 'condition' : 'absent',
    polarity: 'neutral',
    ...talk.doubtAt(at),
    ...of,
    at,
    weight,
  };
};

/** The part a clause is about: named before `at` in it, or standing alone before the comma. */
function topicOf(talk: Talk, clause: Clause, at: number): { part: string; from: number } | undefined {
  const own = clause.mentions.filter((m) => !m.aside && m.to <= at);
  const m = own.filter((x) => !x.weak).at(-1) ?? own.at(-1);
  if (m?.parts[0]) return { part: m.parts[0], from: clause.from };
  const p = talk.passed[0];
  if (!p || p.to - p.from > 8 || p.index !== clause.index - 1) return undefined;
  const head = p.mentions.filter((x) => !x.aside).at(-1);
  return head?.parts[0] && p.numbers.length === 0 ? { part: head.parts[0], from: p.from } : undefined;
}

/** "Extinguisher, there isn't one", "solar, nope", "the spare's gone": there is none. Marks its words as taken. */
export function hearAbsence(talk: Talk, clause: Clause, taken: Uint8Array): Draft[] {
  const { words } = talk.marks;
  for (let i = clause.from; i < clause.to; i++) {
    if (talk.scopes.elsewhere[i] === 1) continue;
    const hit = none.at(words, i);
    if (hit && i + hit.length <= clause.to) {
      // "no solar, not on this one": said already
      const topic = topicOf(talk, clause, i);
      const part = topic?.part ?? talk.recent.find((r) => r.at < i && i - r.at < 14)?.parts[0];
      if (!part) continue;
      taken.fill(1, i, i + hit.length);
      return [
        draft(talk, clause, part, i, false, 0.75, {
          from: topic?.from ?? Math.max(clause.from, i - 4),
          to: Math.min(clause.to, i + hit.length + 2),
        }),
      ];
    }
    // "solar, nope": alone at the end of what is said
    const n = words[i]?.norm ?? '';
    const last =
      i + 1 === clause.to &&
      ((words[i]?.stop ?? 0) === 2 ||
        i + 1 === words.length ||
        talk.marks.sentenceOf[i + 1] !== clause.sentence);
    // "the furnace I did not try, the water heater neither"
    const untried = talk.unknownOf !== undefined && i - talk.unknownOf.at < 14;
    if (
      nope.has(n) &&
      !(n === 'neither' && untried) &&
      (n !== 'no' || (i === clause.from && (words[i - 1]?.stop ?? 0) === 1)) &&
      last &&
      clause.to - clause.from <= 4 &&
      (i === clause.from || clause.mentions.some((m) => m.to === i))
    ) {
      const topic = topicOf(talk, clause, i);
      if (topic && i - topic.from <= 6 && !words[i]?.asks) {
        taken.fill(1, i, i + 1);
        return [draft(talk, clause, topic.part, i, false, 0.7, { from: topic.from, to: clause.to })];
      }
    }
    // "TV's gone", "bracket's empty"
    if (
      n === 'gone' &&
      /^(?:'s|is|are|was|were|'re|long|just)$/.test(words[i - 1]?.norm ?? '') &&
      (i + 1 === clause.to || /^(?:too|now|with|already)$/.test(words[i + 1]?.norm ?? ''))
    ) {
      const m = clause.mentions.filter((x) => !x.aside && x.to < i && i - x.to <= 2).at(-1);
      if (m?.parts[0] && removable.test(m.parts[0])) {
        taken.fill(1, i, i + 1);
        return [draft(talk, clause, m.parts[0], i, false, 0.7)];
      }
    }
  }
  return [];
}

/** "No spare", "ain't no smoke alarm": nothing else is said of the thing. */
function isNone(talk: Talk, clause: Clause, m: Mention): boolean {
  const { words } = talk.marks;
  const norm = (k: number): string => (k >= clause.from && k < clause.to ? (words[k]?.norm ?? '') : '');
  let k = m.from - 1;
  if (
    /^(?:outside|outdoor|second|working|real|rear|front|built|factory|separate|backup|proper|new|extra|single|spare)$/.test(
      norm(k),
    )
  )
    k--;
  const before = norm(k);
  const plain = before === 'no' || (before === 'any' && talk.scopes.denied[m.from] === 1);
  const had =
    /^(?:a|an|one)$/.test(before) &&
    /^(?:have|has|had|got|is|was|carry|carries|came|get|gets|include|includes|see|offer|with|find)$/.test(
      norm(k - 1),
    ) &&
    /^(?:doesn't|don't|never|hasn't|haven't|ain't|not|didn't|isn't|won't|come|came|comes)$/.test(
      norm(k - 2),
    ) &&
    (!/^(?:come|came|comes)$/.test(norm(k - 2)) || /^(?:doesn't|don't|never|didn't|not)$/.test(norm(k - 3)));
  if (!plain && !had) return false;
  const said = words.slice(m.from, m.to).map((w) => w.norm);
  if (said.some((w) => neededThings.has(w) || stuff.has(w)) && said.length === 1) return false;
  const next = norm(m.to);
  if (had && next === 'here') return false;
  if (/^(?:nothing|none|installed|fitted|put|from|hooked|plumbed)$/.test(next)) return true;
  return (
    next === '' ||
    (words[m.to - 1]?.stop ?? 0) !== 0 ||
    /^(?:on|in|at|here|either|anymore|yet|of|to|back|up|and|or|that|whatsoever|period|with|neither|for|around|over|above|behind|under|by|anywhere|left|along|across|no|just|only)$/.test(
      next,
    )
  );
}

/** "It's got the outside shower", "no spare": it is there, or not. Only where nothing else was said of it in the clause. */
export function hearPresence(talk: Talk, clause: Clause, said: ReadonlySet<string>): Draft[] {
  const out: Draft[] = [];
  for (const m of clause.mentions) {
    const part = m.parts[0];
    if (m.aside || !part || talk.scopes.elsewhere[m.from] === 1) continue;
    if (said.has(part)) {
      // "your king bed, two TVs, a fireplace": the list goes on past what was counted or called
      if (talk.scopes.denied[m.from] !== 1 && (isLed(talk, clause, m) || isListed(talk, clause, m)))
        talk.listed = { at: clause.index, sentence: clause.sentence };
      continue;
    }
    if (isNone(talk, clause, m)) {
      out.push(draft(talk, clause, part, m.from, false, 0.75, span(clause, m.from, 4, m.to - m.from + 2)));
      continue;
    }
    if (m.weak || talk.scopes.denied[m.from] === 1 || talk.scopes.elsewhere[m.from]) continue;
    if (
      isLed(talk, clause, m) ||
      isHeld(talk, clause, m) ||
      isAccounted(talk, clause, m.to) ||
      isListed(talk, clause, m)
    ) {
      talk.listed = { at: clause.index, sentence: clause.sentence };
      out.push(draft(talk, clause, part, m.from, true, 0.6, span(clause, m.from, 4, m.to - m.from + 3)));
    }
  }
  return out;
}

/** "You've got your…", "comes with…": the thing follows within a few words. */
function isLed(talk: Talk, clause: Clause, m: Mention): boolean {
  const { words } = talk.marks;
  for (let k = Math.max(clause.from, m.from - 6); k < m.from; k++) {
    const hit = presences.at(words, k);
    if (
      hit &&
      k + hit.length <= m.from &&
      m.from - k - hit.length <= 4 &&
      !/^(?:no|not|never|none)$/.test(words[k + hit.length]?.norm ?? '') &&
      !words
        .slice(k + hit.length, m.from)
        .some(
          (w) =>
            (verbs.at([w], 0) && !commonWords.has(w.norm)) ||
            /^(?:on|in|at|under|behind|with|down|that|to|from|than)$/.test(w.norm),
        )
    )
      return true;
  }
  return false;
}

/** "The spare's under the bed", "title's in my folder": said only of things that can be carried off. */
function isHeld(talk: Talk, clause: Clause, m: Mention): boolean {
  const norm = (k: number): string => (k < clause.to ? (talk.marks.words[k]?.norm ?? '') : '');
  const be = /^(?:'s|is|are|'re|sits|hangs|lives|rides|stays|goes)$/.test(norm(m.to));
  const there =
    /^(?:there|here|in|right|inside|included)$/.test(norm(m.to + 1)) &&
    /^(?:there|here|in)$/.test(norm(m.to + 2) || norm(m.to + 1));
  return (
    be && (there || (m.from - clause.from <= 3 && carried.test(m.parts[0] ?? '') && held.has(norm(m.to + 1))))
  );
}

const lists = set("is are 's 're was were both all still also too and it they");
/** "Safety chains both there", "the tow bar stays with it": the words from `i` on say that it is there. */
function isAccounted(talk: Talk, clause: Clause, i: number): boolean {
  const { words } = talk.marks;
  const norm = (k: number): string => (k < clause.to ? (words[k]?.norm ?? '') : '');
  let k = i;
  while (k < i + 3 && lists.has(norm(k))) k++;
  const n = norm(k);
  if (/^(?:stays?|comes?|goes|go)$/.test(n) && /^(?:with|along)$/.test(norm(k + 1))) return true;
  if (!/^(?:there|here|present|included|accounted)$/.test(n)) return false;
  return (
    k > i &&
    (k + 1 >= clause.to || /^(?:for|and|but|too|with|also)$/.test(norm(k + 1)) || words[k]?.stop !== 0)
  );
}

const listWords =
  /^(?:a|an|and|your|the|our|its|big|nice|little|two|three|four|outside|full|new|then|also|plus|some|even|both|another|large|small|extra|size|sized|free|standing|real|huge|great|beautiful|lovely|brand|power|electric|inside|of|course|front|rear|dual|double|built|in|solid|good|old|heated|wood|leather|matching|separate|private|walk|queen|king|stainless|steel|flat|screen|inch|as|well|ceramic|factory|upgraded|gorgeous)$/;
/** A bare thing in a list that began with one that is there: "you've got your theater seats, a fireplace, two recliners". */
function isListed(talk: Talk, clause: Clause, m: Mention): boolean {
  const open = talk.listed;
  if (!open || open.sentence !== clause.sentence || clause.index - open.at > 2) return false;
  const lead = talk.marks.words.slice(clause.from, m.from).map((w) => w.norm);
  return m.to === clause.to && lead.length <= 4 && lead.every((n) => listWords.test(n));
}
