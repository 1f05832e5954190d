// Why: "cracked", "no leaks", "works", "won't lock", "solid": what is wrong, denied, working or in good order.
import { partOf } from '../../catalogue/index.ts';
import type { states } from '../../catalogue/state.ts';
import { neededThings } from './defect-words.ts';
import { defectPhrases, goodPhrases, verbs } from './lexicon.ts';
import type { Clause, Draft, Talk } from './talk.ts';

const be = new Set(
  "is are was were be been 's 're looks look feels feel stays seems checks tests tested appears all still both they it and pretty real very nice really a little bit just good in got has have".split(
    ' ',
  ),
);
const lamps = new Set([
  'headlamps',
  'marker_lights',
  'tail_lights',
  'lights_led',
  'awning_light',
  'dash_gauges',
]);
/** Verbs that say a part works when they stand right after it. */
const working = new Set(
  'work works worked working run runs ran running start starts started fire fires light lights open opens opened close closes latch latches lock locks extend extends retract retracts heat heats cool cools flush flushes charge charges hold holds alarm alarms alarmed swivel swivels recline reclines tilt tilts telescope telescopes spray sprays function functions operate operates engage engages release releases drain drains pump pumps seal seals lift lifts lower lowers ignite ignites crank cranks shift shifts trip trips roll rolls sound sounds spin spins blow blowing slide slides move moves go goes come comes adjust adjusts power powers pull pulls transfer transfers shut shuts swing swings'.split(
    ' ',
  ),
);
const particles: Readonly<Record<string, RegExp>> = {
  go: /^(?:out|in|up|down|on)$/,
  goes: /^(?:out|in|up|down|on)$/,
  come: /^(?:on|out|in|down|up)$/,
  comes: /^(?:on|out|in|down|up)$/,
  came: /^(?:on|out|in|down|up)$/,
  pull: /^in$/,
  pulls: /^(?:in|strong|hard)$/,
  blow: /^(?:cold|hot|warm|strong)$/,
  blowing: /^(?:cold|hot)$/,
  move: /^(?:in|out|up|freely|smooth)$/,
  moves: /^(?:in|out|up|freely|smooth)$/,
  power: /^(?:up|on)$/,
  powers: /^(?:up|on)$/,
  shut: /^(?:off|tight)$/,
  shuts: /^(?:off|tight)$/,
  roll: /^(?:out|in|up)$/,
  rolls: /^(?:out|in|up|smooth)$/,
  slide: /^(?:out|in|both|smooth)$/,
  slides: /^(?:out|in|both|smooth)$/,
  swing: /^(?:out|free)$/,
  swings: /^(?:out|free)$/,
  hold: /^(?:pressure|water|air|vacuum|charge|steady|them|it|up|fine|good|)$/,
};
const adverbs = new Set(
  'all both just still right also fine first easily smoothly only always now do does did are is were then actually great will can each really it they them'.split(
    ' ',
  ),
);
const subjects = new Set('it they that everything both all these those this one which burners he'.split(' '));
const nounAfterSoft = new Set('start starter close touch light lights beam beams copy top'.split(' '));
const negative = new Set(
  "not never no won't wont don't doesn't doesnt isn't aren't can't cannot didn't wouldn't couldn't wasn't nor".split(
    ' ',
  ),
);

const quoteOf = (clause: Clause, at: number, length: number): { from: number; to: number } => ({
  from: Math.max(clause.from, at - 7),
  to: Math.min(clause.to, at + length + 5),
});

/** True when the words right before `i` in the clause deny it. */
function deniedBefore(talk: Talk, clause: Clause, i: number): boolean {
  for (let k = i - 1; k >= Math.max(clause.from, i - 4); k--) {
    const n = talk.marks.words[k]?.norm ?? '';
    if (negative.has(n)) return true;
    if (verbs.at(talk.marks.words, k) && n !== 'come' && n !== 'go') return false;
  }
  return false;
}

/** What is said of the state of parts in a clause. `taken` marks words that already gave something. */
export function hearStates(talk: Talk, clause: Clause, taken: Uint8Array): Draft[] {
  const out: Draft[] = [];
  const { words } = talk.marks;
  const scopes = talk.scopes;
  const put = (
    part: string,
    aspect: string,
    state: keyof typeof states,
    sense: Draft['sense'],
    polarity: Draft['polarity'],
    at: number,
    length: number,
    weight: number,
  ): void => {
    const place = talk.placeOf(part, at, clause);
    const doubt = talk.doubtAt(at);
    taken.fill(1, at, at + length);
    out.push({
      part,
      ...(place === undefined ? {} : { place }),
      aspect,
      value: { is: 'state', state },
      sense,
      polarity,
      ...doubt,
      ...quoteOf(clause, at, length),
      at,
      weight: doubt.hedged ? weight - 0.15 : weight,
    });
  };
  for (let i = clause.from; i < clause.to; i++) {
    if (taken[i] || scopes.elsewhere[i]) continue;
    const inMention = clause.mentions.find((m) => m.from <= i && i < m.to);
    const defect = defectPhrases.at(words, i);
    const n = words[i]?.norm ?? '';
    const denied = scopes.denied[i] === 1;
    if (
      defect &&
      i + defect.length <= clause.to &&
      !(
        inMention &&
        inMention.to > i + defect.length - 1 &&
        !/check|crack|leak|cell/.test(n) &&
        inMention.to - inMention.from > 1
      ) &&
      !(inMention && inMention.from === i && inMention.to === i + defect.length && !/^(?:leak|oil)/.test(n))
    ) {
      const word = defect.values[0];
      const next = words[i + defect.length]?.norm ?? '';
      const skip =
        !word ||
        (n === 'soft' && nounAfterSoft.has(next)) ||
        (n === 'low' && /^(?:beam|beams|profile|miles|mile|hours|mileage|and)$/.test(next)) ||
        (n === 'gone' && words[i - 1]?.norm === 'have') ||
        (n === 'missing' && false) ||
        (n === 'flat' && /^(?:screen|floor|towing|spot)/.test(next)) ||
        (n === 'warm' && denied);
      if (!skip && word) {
        const near = talk.partsFor(i, i + defect.length, clause);
        const part = near[0];
        const close =
          clause.mentions.some((m) => m.to <= i && i - m.to <= 4) ||
          (words[clause.from]?.norm ?? '') in { it: 1, they: 1, that: 1 } ||
          clause.to - clause.from <= 4;
        if (part && (!word.near || close)) {
          if (denied) {
            if (word.noun || word.aspect !== 'operates' || /^(?:fails|out|stuck)$/.test(word.state))
              put(part, word.aspect, 'no', 'absent', 'good', i, defect.length, 0.8);
          } else
            put(part, word.aspect, word.state, 'defect', 'bad', i, defect.length, part && close ? 0.82 : 0.7);
        }
        i += defect.length - 1;
        continue;
      }
    }
    if (inMention) continue;
    // "no heat", "no picture"
    if (
      n === 'no' &&
      neededThings.has(words[i + 1]?.norm ?? '') &&
      words[i]?.stop === 0 &&
      i + 1 < clause.to &&
      !defectPhrases.at(words, i + 2) &&
      !/^(?:smell|leaks?|stains?|damage|pump|heater|on|in|of|intrusion|inside|drop|running|under)$/.test(
        words[i + 2]?.norm ?? '',
      )
    ) {
      const mention = clause.mentions.find((m) => m.to <= i) ?? undefined;
      const part =
        mention?.parts[0] ?? (clause.to - clause.from <= 4 ? talk.partFor(i, i + 2, clause) : undefined);
      if (part) {
        put(part, 'operates', 'fails', 'defect', 'bad', i, 2, 0.75);
        i++;
        continue;
      }
    }
    const part = (): string | undefined => {
      const before = clause.mentions.filter((m) => !m.aside && m.to <= i).at(-1);
      if (before) return before.parts[0];
      return talk.partFor(i, i + 1, clause);
    };
    const verb = verbs.at(words, i);
    if (verb) {
      const not = deniedBefore(talk, clause, i);
      const mention = clause.mentions.filter((m) => !m.aside && m.to <= i).at(-1);
      const subjectNear =
        mention !== undefined ||
        subjects.has(words[clause.from]?.norm ?? '') ||
        (words[clause.from]?.norm === 'and' && subjects.has(words[clause.from + 1]?.norm ?? '')) ||
        i - clause.from <= 3;
      const p = subjectNear ? part() : undefined;
      if (
        p &&
        not &&
        !/^(?:read|reads|see|find|finds|track|come|comes|came|run|ran|go|going|stop|move|moved|level)$/.test(
          n,
        )
      ) {
        put(p, 'operates', 'fails', 'defect', 'bad', i, 1, 0.75);
        continue;
      }
      if (
        p &&
        not &&
        /^(?:come|comes|go|move|run)$/.test(n) &&
        /^(?:won't|wont|doesn't|not|don't)$/.test(words[i - 1]?.norm ?? '') &&
        !/^i$|^we$/.test(words[i - 3]?.norm ?? words[i - 2]?.norm ?? '')
      ) {
        put(p, 'operates', 'fails', 'defect', 'bad', i, 1, 0.75);
        continue;
      }
      const after = particles[n];
      const right = !after || after.test(words[i + 1]?.norm ?? '');
      if (p && !not && working.has(n) && right && isPredicate(talk, clause, i, mention?.to)) {
        if (/^trips?$/.test(n) && p !== 'outlets_gfci') continue;
        put(p, 'operates', 'works', 'operates', 'good', i, 1, mention ? 0.8 : 0.65);
        continue;
      }
    }
    if (
      n === 'out' &&
      (words[i]?.stop !== 0 ||
        i === clause.to - 1 ||
        /^(?:over|in|on|above|by)$/.test(words[i + 1]?.norm ?? '')) &&
      /^(?:'s|is|are|one|ones|two|three|light|lights|marker|bulb|bulbs|lamp|lamps|beam|signal)$/.test(
        words[i - 1]?.norm ?? '',
      )
    ) {
      const p = part();
      if (
        p &&
        (lamps.has(p) || (clause.mentions.length === 0 && lamps.has(talk.recent[0]?.parts[0] ?? '')))
      ) {
        put(
          lamps.has(p) ? p : (talk.recent[0]?.parts[0] ?? p),
          'operates',
          'out',
          'defect',
          'bad',
          i,
          1,
          0.75,
        );
        continue;
      }
    }
    const good = goodPhrases.at(words, i);
    const state = good?.values[0];
    if (good && state && i + good.length <= clause.to) {
      const mention = clause.mentions.filter((m) => !m.aside && m.to <= i).at(-1);
      const beside = mention !== undefined && i - mention.to <= 3;
      const led =
        be.has(words[i - 1]?.norm ?? '') &&
        i > clause.from &&
        (mention !== undefined ||
          /^(?:it|they|that|these|those|everything|both|all|and|he)$/.test(words[clause.from]?.norm ?? ''));
      const ends =
        i + good.length === clause.to ||
        (words[i + good.length - 1]?.stop ?? 0) > 0 ||
        /^(?:and|too|also|on|up|in|for|at|under|all|again|there)$/.test(words[i + good.length]?.norm ?? '');
      const strong = good.length > 1;
      const weakFiller =
        /^(?:okay|ok|good|fine|fair|new|full|level|clear|clean|held|even|true|fresh|hot|pass|passed)$/.test(
          n,
        ) && good.length === 1;
      const joined = (words[i - 1]?.stop ?? 0) === 0;
      const p = beside || led || strong ? part() : undefined;
      const article = /^(?:a|an|the|some|my|your|of|for|with)$/.test(words[i - 1]?.norm ?? '');
      if (p && ends && !article && (beside && joined ? true : led || (strong && !weakFiller)) && partOf(p)) {
        const not = denied || deniedBefore(talk, clause, i);
        if (not) put(p, 'condition', 'poor', 'defect', 'bad', i, good.length, 0.65);
        else
          put(
            p,
            /^(?:okay|ok|fine|good)$/.test(n) && good.length === 1 && devices.test(p)
              ? 'operates'
              : 'condition',
            /^(?:okay|ok|fine|good)$/.test(n) && good.length === 1 && devices.test(p) ? 'works' : state,
            /^(?:okay|ok|fine|good)$/.test(n) && good.length === 1 && devices.test(p)
              ? 'operates'
              : 'condition',
            'good',
            i,
            good.length,
            0.72,
          );
        i += good.length - 1;
      }
    }
  }
  return out;
}

const devices =
  /lamp|light|alarm|pump|switch|camera|tv|radio|fan|horn|oven|cooktop|microwave|toilet|generator|inverter|furnace|ac_|wiper|signal|outlets|washer|dish|ice|step|awning|slide|jack|mirror|thermostat|fridge|refrigerator|antenna|plug|macerator|brake_controller|monitor|cruise/;

/** The verb is said of a thing right before it, not of what somebody did. */
function isPredicate(talk: Talk, clause: Clause, i: number, mentionEnd: number | undefined): boolean {
  const { words } = talk.marks;
  let k = i - 1;
  while (
    k >= clause.from &&
    adverbs.has(words[k]?.norm ?? '') &&
    k > (mentionEnd ?? clause.from - 1) - 1 &&
    !subjects.has(words[k]?.norm ?? '')
  )
    k--;
  if (k < clause.from)
    return (
      !/ing$/.test(words[i]?.norm ?? '') && words[i]?.capital === true && /s$/.test(words[i]?.norm ?? '')
    );
  const n = words[k]?.norm ?? '';
  if (
    /^(?:to|i|we|you|he|she|who|let|can|could|would|should|might|may|must|if|when|a|an|the|'d|'ll|gonna)$/.test(
      n,
    )
  )
    return false;
  if (mentionEnd !== undefined && (k < mentionEnd || k - mentionEnd <= 1)) return true;
  if (subjects.has(n) || n === "'s" || n === "'re" || n === 'are' || n === 'is') return true;
  if (n === 'and' && mentionEnd !== undefined) return true;
  return (
    (verbs.at(words, k) !== undefined && mentionEnd !== undefined) ||
    (n === 'and' && k > clause.from && verbs.at(words, k - 1) !== undefined)
  );
}
