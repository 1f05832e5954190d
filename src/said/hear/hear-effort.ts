// Why: "took three tries", "you've got to lift it", "won't quit": a failure told by what it takes, without a word for it.

import type { Clause, Draft } from './clause.ts';
import { verbs } from './lexicon.ts';
import { draftOf } from './state-draft.ts';
import { suits } from './suits.ts';
import type { Talk } from './talk.ts';

const try_ =
  /^(?:try|tries|attempt|attempts|push|pushes|pull|pulls|go|goes|crank|cranks|shot|shots|time|times)$/;
const many =
  /^(?:third|fourth|fifth|sixth|couple|few|several|two|three|four|five|six|2|3|4|5|3rd|4th|half|dozen|multiple|extra)$/;
const must = /^(?:got|gotta|have|has|had|need|needs)$/;
const handling =
  /^(?:lift|jiggle|wiggle|slam|shove|kick|bang|hit|force|fight|coax|baby|help|muscle|prop|smack|thump|yank|nudge|tap|wrestle|jerk|manhandle|shoulder|whack|hump|persuade|finagle|feather|pump|re-?start|babysit)$/;
const given =
  /^(?:shove|push|nudge|kick|tap|hand|yank|bump|thump|whack|wiggle|jiggle|tug|pull|lift|smack|boost|jump)$/;
/** Verbs of going on: who will not do them goes on for ever. */
const ending = /^(?:quit|stop|shut|turn|end|let)$/;

/** Failures told by the effort, in a clause. */
export function hearEffort(talk: Talk, clause: Clause, taken: Uint8Array): Draft[] {
  const out: Draft[] = [];
  const { words, numbers } = talk.marks;
  const norm = (k: number): string => (k >= clause.from && k < clause.to ? (words[k]?.norm ?? '') : '');
  const put = (i: number, length: number, state: 'sticky' | 'stuck', of?: RegExp): void => {
    const part = talk
      .partsFor(i, i + length, clause)
      .find((p) => suits(p, 'operates', state) && of?.test(p) !== false);
    if (part === undefined || part === 'coach') return;
    out.push(
      draftOf(
        talk,
        clause,
        taken,
        { part, aspect: 'operates', state, sense: 'defect', polarity: 'bad', weight: 0.7 },
        i,
        length,
      ),
    );
  };
  const numbered = (i: number): boolean => numbers.some((n) => n.to === i && n.from >= clause.from);
  const refuses = (k: number): boolean =>
    /^(?:won't|wont|doesn't|doesnt|can't|cannot|couldn't|wouldn't|don't|dont|didn't|didnt|ain't)$/.test(
      norm(k),
    ) ||
    (norm(k) === 'not' && /^(?:will|does|do|did|can|could|would)$/.test(norm(k - 1)));
  for (let i = clause.from; i < clause.to; i++) {
    if (talk.scopes.elsewhere[i] === 1) continue;
    const n = norm(i);
    // "took three tries to light", "only on the third push"
    if (
      try_.test(n) &&
      (many.test(norm(i - 1)) ||
        (norm(i - 1) === 'of' && many.test(norm(i - 2))) ||
        (numbered(i) && /s$/.test(n))) &&
      (/^(?:try|tries|attempt|attempts)$/.test(n) ||
        /^(?:took|takes|take|taking|wants|want|needs|need|on|only)$/.test(norm(i - 2)) ||
        /^(?:took|takes|wants|needs|on)$/.test(norm(i - 3))) &&
      !/^(?:i|we|you|he|she)$/.test(norm(i + 1)) &&
      !talk.scopes.denied[i]
    ) {
      put(i, 1, 'sticky');
      continue;
    }
    // "you've got to lift it", "you have to give it a shove"
    if (norm(i) === 'to' && (must.test(norm(i - 1)) || norm(i - 1) === 'gotta')) {
      const verb = norm(i + 1);
      const give =
        /^(?:give|help|hold)$/.test(verb) &&
        [2, 3, 4, 5, 6].some((k) => given.test(norm(i + k))) &&
        /^(?:it|them|her|the|him|that)$/.test(norm(i + 2));
      if (
        give ||
        (handling.test(verb) && /^(?:it|them|the|her|him|that|on|this|up|its)$/.test(norm(i + 2)))
      ) {
        put(i, 3, 'sticky');
        i += 2;
        continue;
      }
    }
    // "the pump runs and won't quit", "it never shuts off"
    if (
      (refuses(i) || n === 'never') &&
      ending.test(norm(i + 1).replace(/s$/, '')) &&
      (/^(?:quit|stop)s?$/.test(norm(i + 1)) ||
        (/^(?:shut|turn)s?$/.test(norm(i + 1)) && norm(i + 2) === 'off') ||
        (/^lets?$/.test(norm(i + 1)) && norm(i + 2) === 'go')) &&
      !/^(?:i|we|you|they)$/.test(norm(i - 1))
    ) {
      put(i, 2, 'stuck');
      i++;
      continue;
    }
    // "the needle didn't budge": a pressure that is watched holds
    if (refuses(i) || norm(i) === 'never') {
      const watched =
        /^(?:budge|budged|move|moved|drop|dropped|fall|fell|change|changed|lose|lost|waver|wavered|creep|slip|flinch|twitch)$/.test(
          norm(i + 1),
        )
          ? talk
              .partsFor(i, i + 2, clause)
              .slice(0, 2)
              .find((p) => held.test(p))
          : undefined;
      if (watched) {
        const v = {
          part: watched,
          aspect: 'condition',
          state: 'holds',
          sense: 'condition',
          polarity: 'good',
          weight: 0.75,
        } as const;
        out.push(draftOf(talk, clause, taken, v, i, 2));
        i++;
        continue;
      }
    }
    // "it won't budge", "don't catch", "never caught": more verbs of a part's work than those that say it works
    if (
      !taken[i + 1] &&
      refuses(i) &&
      refused.test(norm(i + 1)) &&
      verbs.at(words, i + 1) === undefined &&
      !/^(?:i|we|you)$/.test(norm(i - 1))
    ) {
      put(i, 2, 'stuck', norm(i + 1) === 'catch' ? burners : undefined);
      i++;
    }
    // "the pump doesn't cycle", "never kicked back on": it holds
    if (
      /^(?:doesn't|doesnt|don't|didn't|never|not|ain't)$/.test(n) &&
      (/^(?:cycle|cycles|cycled|cycling|short)$/.test(norm(i + 1)) ||
        (/^(?:kick|kicked|come|came|run|ran)$/.test(norm(i + 1)) && norm(i + 2) === 'back'))
    ) {
      const part = talk
        .partsFor(i, i + 2, clause)
        .find((p) => /^(?:water_pump|fresh_system_test|suspension_air|hydraulic_unit)$/.test(p));
      if (part)
        out.push(
          draftOf(
            talk,
            clause,
            taken,
            { part, aspect: 'leak', state: 'no', sense: 'absent', polarity: 'good', weight: 0.75 },
            i,
            2,
          ),
        );
    }
  }
  return out;
}

/** Where a pressure is put on and watched. */
const held = /^(?:lp_system|lp_regulator|fresh_system_test|air_gauges|air_tanks)$/;
/** What catches when it is started. */
const burners = /engine|generator|furnace|water_heater|refrigerator|oven|cooktop|hydronic/;
const refused =
  /^(?:budge|catch|keep|take|stay|burn|draw|do|retract|return|rise|click|react|boot|build|deploy|unlatch|unlock|fold|unfold|show|pair|sync|register|ring|beep|swing|prime|suck|flow|throw|wake|dim|glow|display|play|tune|rotate|raise|slide|grab)$/;
