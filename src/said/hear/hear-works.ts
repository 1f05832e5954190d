// Why: "works", "won't lock", "I ran it": verbs of a part's work say that it does it or that it does not.

import { partOf } from '../../catalogue/index.ts';
import type { Clause, Draft } from './clause.ts';
import { defectPhrases, verbs } from './lexicon.ts';
import { brokenNo, denied as deniedVerb, isTurned, notGotten } from './no-work.ts';
import { leftOut, subjects } from './predicate.ts';
import { denialBefore, draftOf, subjectOf, type Verdict } from './state-draft.ts';
import type { Talk } from './talk.ts';
import { workSaid } from './work-said.ts';
import { neededThings } from './work-words.ts';

const set = (text: string): Set<string> => new Set(text.split(' '));
const lamps = set('headlamps marker_lights tail_lights lights_led awning_light dash_gauges');
/** Where "no water" is a fault; elsewhere none is wanted. */
const givesWater =
  /pump|sink|shower|toilet|heater|ice_maker|wash|city_water|countertop|kitchen|flush|plumbing|fresh|outside_kitchen|hydronic|filter|wipers/;

/** Said by somebody who did it: "I ran it", "we tested both". */
const done = set(
  'ran tested test tried cycled operated opened leveled started flushed lit fired exercised extended',
);
const objects = set('it them that all both every each these those everything him three two four the');

/** "It heats on gas, it heats on electric": the way of running that the verb is said of. */
function modeOf(talk: Talk, clause: Clause, i: number, part: string): string | undefined {
  const norm = (k: number): string => (k < clause.to ? (talk.marks.words[k]?.norm ?? '') : '');
  for (let k = Math.max(clause.from, i - 8); k < Math.min(clause.to, i + 6); k++) {
    if (norm(k) !== 'on') continue;
    const n = /^(?:the|shore)$/.test(norm(k + 1)) ? norm(k + 2) : norm(k + 1);
    const ids = /^(?:gas|propane|lp)$/.test(n)
      ? ['mode_LP', 'gas_ok']
      : /^(?:electric|electricity|ac|shore|power)$/.test(n)
        ? ['mode_AC', 'electric_ok']
        : [];
    const own = partOf(part)?.aspects.find((a) => ids.includes(a.id));
    if (own) return own.id;
  }
  return undefined;
}

/** Working and failing, by verbs, in a clause. */
export function hearWorks(talk: Talk, clause: Clause, taken: Uint8Array): Draft[] {
  const out: Draft[] = [];
  const { words } = talk.marks;
  const put = (v: Verdict, at: number, length: number): void =>
    void out.push(draftOf(talk, clause, taken, v, at, length));
  const fails = (part: string, state: 'fails' | 'out' = 'fails'): Verdict => ({
    part,
    aspect: 'operates',
    state,
    sense: 'defect',
    polarity: 'bad',
    weight: 0.75,
  });
  const works = (part: string, weight: number): Verdict => ({
    part,
    aspect: 'operates',
    state: 'works',
    sense: 'operates',
    polarity: 'good',
    weight,
  });
  const norm = (i: number): string => words[i]?.norm ?? '';
  const lead = norm(clause.from);
  const asked =
    /^(?:when|if|let|lets|how|what|where|letting|before|after|until|while)$/.test(lead) ||
    (lead === 'let' && norm(clause.from + 1) === "'s");
  // "does the fan run? No.": the answer turns it round
  const answeredNo = words[clause.to - 1]?.asks === true && talk.scopes.denied[clause.to - 1] === 1;
  for (let i = clause.from; i < clause.to; i++) {
    if (taken[i] || talk.scopes.elsewhere[i]) continue;
    const n = norm(i);
    const inMention = clause.mentions.some((m) => m.from <= i && i < m.to);
    const denied =
      brokenNo(talk, clause, i) ??
      notGotten(talk, clause, i) ??
      (verbs.at(words, i + 1) ? undefined : deniedVerb(talk, clause, i));
    if (denied) {
      put(fails(denied.part), i, denied.length);
      i += denied.length - 1;
      continue;
    }
    // "no heat", "no picture"
    if (
      n === 'no' &&
      neededThings.has(norm(i + 1)) &&
      !(
        norm(i + 1) === 'water' &&
        !givesWater.test(
          clause.mentions.find((m) => m.to <= i)?.parts[0] ?? talk.partFor(i, i + 2, clause) ?? '',
        )
      ) &&
      words[i]?.stop === 0 &&
      i + 1 < clause.to &&
      !defectPhrases.at(words, i + 2) &&
      (defectPhrases.at(words, i + 1)?.length ?? 1) === 1 &&
      !/^(?:smell|leaks?|stains?|damage|pump|heater|on|in|of|intrusion|inside|hooked|connected|available|here|yet|aboard|turned|drop|running|under|anywhere|hammer|lines?)$/.test(
        norm(i + 2),
      )
    ) {
      const near = clause.mentions.find((m) => m.from > i && m.from - i <= 5);
      const part =
        clause.mentions.find((m) => m.from === i + 1 && m.to > i + 2)?.parts[0] ??
        clause.mentions.find((m) => m.to <= i)?.parts[0] ??
        (near && words.slice(i + 2, near.from).some((w) => /^(?:at|in|from|on|to|of|out)$/.test(w.norm))
          ? near.parts[0]
          : undefined) ??
        (clause.to - clause.from <= 5 ? talk.partFor(i, i + 2, clause) : undefined);
      if (part) {
        put(fails(part), i, 2);
        i++;
        continue;
      }
    }
    // "two burners light, the back one does not": the verb is that of the clause before
    const left = asked ? undefined : leftOut(talk, clause, i);
    if (left) {
      const part = talk.partFor(i, i + 1, clause);
      if (part && part !== 'coach') {
        put(left === 'does' ? works(part, 0.7) : fails(part), i, 1);
        continue;
      }
    }
    if (inMention) continue;
    // "that works out", "works for me": no finding
    if (
      /^work(?:s|ed)?$/.test(n) &&
      /^(?:out|for)$/.test(norm(i + 1)) &&
      words[i]?.stop === 0 &&
      !(norm(i + 1) === 'for' && /^(?:a|the|now)$/.test(norm(i + 2)))
    )
      continue;
    // "it cranks and won't start"
    if (
      /^(?:cranks?|cranked|clicks?|spins?)$/.test(n) &&
      words.slice(i, clause.to).some((w) => /^(?:won't|doesn't|not|didn't|never)$/.test(w.norm))
    )
      continue;
    if (
      done.has(n) &&
      /^(?:i|we|just|did|'ve|we've)$/.test(norm(i - 1)) &&
      objects.has(norm(i + 1)) &&
      !(n === 'opened' && norm(i + 1) === 'the') &&
      talk.scopes.denied[i] !== 1
    ) {
      const part = talk.partFor(i, i + 1, clause);
      if (part && !/twice already|out of/.test(norm(i + 2))) {
        put(works(part, 0.65), i, 2);
        continue;
      }
    }
    // "ran a full cycle through it": the load tells which machine
    if (
      /^(?:ran|run|did|washed)$/.test(n) &&
      talk.scopes.denied[i] !== 1 &&
      /^(?:a|one|two|the|some)$/.test(norm(i + 1))
    ) {
      const k = /^(?:full|whole|quick|short|small|rinse|complete|test|wash|little|couple)$/.test(norm(i + 2))
        ? i + 3
        : i + 2;
      if (k < clause.to && /^(?:loads?|cycles?|wash|laundry|dishes|clothes|towels)$/.test(norm(k))) {
        const all = talk.partsFor(i, i + 1, clause);
        const part =
          all.find((p) => /^(?:washer_dryer|dishwasher)$/.test(p)) ??
          (/^(?:loads?|laundry|clothes|towels)$/.test(norm(k)) ? 'washer_dryer' : undefined);
        if (part) {
          put(works(part, 0.7), i, k - i + 1);
          i = k;
          continue;
        }
      }
    }
    // "I had it going", "got them lit"
    if (
      /^(?:had|have|got)$/.test(n) &&
      /^(?:i|we|just|'ve|he|they)$/.test(norm(i - 1)) &&
      /^(?:it|them|'em|em|that|those|both|all|her)$/.test(norm(i + 1)) &&
      /^(?:going|running|lit|working|on|started|up|cooking|humming|blowing)$/.test(norm(i + 2)) &&
      i + 2 < clause.to &&
      talk.scopes.denied[i] !== 1
    ) {
      const part = talk.partFor(i, i + 1, clause);
      if (part && part !== 'coach' && (norm(i + 2) !== 'up' || norm(i + 3) === 'and')) {
        put(works(part, 0.65), i, 3);
        i += 2;
        continue;
      }
    }
    if (
      /^pulls?$/.test(n) &&
      words.slice(i + 1, Math.min(clause.to, i + 7)).some((w) => /^(?:left|right)$/.test(w.norm)) &&
      talk.scopes.denied[i] !== 1
    ) {
      const part = subjectOf(talk, clause, i);
      if (part) {
        put(
          { part, aspect: 'operates', state: 'pulling', sense: 'defect', polarity: 'bad', weight: 0.75 },
          i,
          1,
        );
        continue;
      }
    }
    const denial = denialBefore(talk, clause, i);
    const said = asked ? undefined : workSaid(talk, clause, i);
    // a denial that stands before the subject belongs to what was said before: "can't find it the fan spins"
    const outside =
      said?.from !== undefined &&
      denial !== undefined &&
      i - denial < said.from &&
      (!/^(?:no|none|not|neither)$/.test(norm(i - denial)) || norm(i - denial - 1) === 'me');
    if (said && (denial === undefined || outside) && !isTurned(talk, i, said.length)) {
      for (const part of said.parts)
        if (answeredNo) put(fails(part), i, said.length);
        else
          put(
            { ...works(part, said.weight), aspect: modeOf(talk, clause, i, part) ?? 'operates' },
            i,
            said.length,
          );
      i += said.length - 1;
      continue;
    }
    if (
      denial !== undefined &&
      denial <= 3 &&
      !verbs.at(words, i) &&
      /n't$|^(?:not|never)$/.test(norm(i - denial))
    ) {
      const fault = workSaid(talk, clause, i, true);
      if (fault && (fault.from !== undefined || i - denial > clause.from)) {
        for (const part of fault.parts) put(fails(part), i, fault.length);
        i += fault.length - 1;
        continue;
      }
    }
    if (verbs.at(words, i) && (defectPhrases.at(words, i)?.length ?? 1) === 1) {
      const mention = clause.mentions.filter((m) => !m.aside && m.to <= i).at(-1);
      const near =
        mention !== undefined ||
        subjects.has(lead) ||
        i - clause.from <= 4 ||
        /^(?:one|ones|side)$/.test(norm(clause.from + 2)) ||
        (/^(?:one|another|neither)$/.test(lead) && clause.mentions.length === 0);
      const part = near ? subjectOf(talk, clause, i) : undefined;
      // "no pull", "no drain": a noun, not a verb that is denied
      if (
        denial !== undefined &&
        /^(?:no|nothing|none|without|never)$/.test(norm(i - denial)) &&
        norm(i - denial) !== 'never'
      )
        continue;
      if (part && denial !== undefined) {
        const person = /^(?:i|we|you)$/.test(norm(i - denial - 1)) || /^(?:i|we)$/.test(norm(i - denial - 2));
        const loose =
          (/^(?:go|goes|went)$/.test(n) && norm(i + 1) === 'through') ||
          (/^(?:read|reads|see|find|finds|track|came|ran|going|stop|moved|level|move|shut|put)$/.test(n) &&
            !(/^(?:move|shut)$/.test(n) && /^(?:won't|doesn't|don't|wouldn't|not)$/.test(norm(i - denial))));
        const could =
          person &&
          /^(?:can't|cannot|couldn't|not)$/.test(norm(i - denial)) &&
          /^(?:could|can|i|we)$/.test(norm(i - denial - 1)) &&
          /^(?:light|open|close|start|move|turn|latch|lock|shut)$/.test(n);
        if (could) put(fails(part), i, 1);
        else if (!person && !loose && !(/^(?:come|comes|go|run)$/.test(n) && denial > 1))
          put(fails(part), i, 1);
        continue;
      }
    }
    if (
      n === 'out' &&
      (words[i]?.stop !== 0 ||
        i === clause.to - 1 ||
        /^(?:over|in|on|above|by|up|down|at|back|there|here)$/.test(norm(i + 1))) &&
      /^(?:'s|is|are|one|ones|two|three|light|lights|marker|bulb|bulbs|lamp|lamps|beam|signal)$/.test(
        norm(i - 1),
      )
    ) {
      const near = [subjectOf(talk, clause, i), talk.recent[0]?.parts[0]].find(
        (p) => p !== undefined && lamps.has(p),
      );
      if (near) put(fails(near, 'out'), i, 1);
      continue;
    }
    // "check engine light's not on": a warning that does not show
    if (
      (n === 'on' || n === 'lit') &&
      clause.mentions.some((m) => m.parts[0] === 'dash_gauges' && m.to <= i) &&
      denialBefore(talk, clause, i) !== undefined
    ) {
      put(
        { part: 'dash_gauges', aspect: 'lit', state: 'no', sense: 'absent', polarity: 'good', weight: 0.75 },
        i,
        1,
      );
      continue;
    }
    // "all four down", "both on": short for a thing done
    if (
      (n === 'down' || n === 'on' || n === 'up' || n === 'lit') &&
      /^(?:all|both)$/.test(lead) &&
      clause.to - clause.from <= 4 &&
      i === clause.to - 1
    ) {
      const part = talk.partFor(clause.from, i, clause);
      if (part) put(works(part, 0.65), i, 1);
    }
  }
  return out;
}
