// Why: what is wrong with a part, or said not to be: the failure words of the trade, with their denials.

import type { Clause, Draft } from './clause.ts';
import { defectPhrases } from './lexicon.ts';
import { canHurt, isPlausible } from './plausible.ts';
import { denialBefore, draftOf } from './state-draft.ts';
import type { Talk } from './talk.ts';

const afterSoft = /^(?:start|starter|close|touch|light|lights|beam|beams|copy|top)$/;
/** Words that are a failure in one sentence and nothing in another, by what follows or comes before. */
function isHarmless(talk: Talk, clause: Clause, i: number, length: number): boolean {
  const norm = (k: number): string => talk.marks.words[k]?.norm ?? '';
  const n = norm(i);
  const next = talk.marks.words[i + length - 1]?.stop === 0 ? norm(i + length) : '';
  if (n === 'soft') return afterSoft.test(next);
  if (n === 'low')
    return /^(?:beam|beams|profile|miles|mile|hours|mileage|and|power|voltage cutoff)$/.test(next);
  if (n === 'gone' || n === 'lost') return /^(?:have|has|i|we|you|'ve)$/.test(norm(i - 1));
  if (n === 'flat') return /^(?:screen|floor|towing|spot|tow|roof|top)$/.test(next) || norm(i - 1) === 'a';
  if (n === 'fails' || n === 'fail') return norm(i + 1) === 'it' || norm(i - 1) === 'that';
  if (/^smells?$/.test(n))
    return /^(?:dry|clean|new|fine|good|fresh|nice|great)$/.test(next) || (length === 1 && next === 'like');
  if (n === 'warm')
    return (
      talk.scopes.denied[i] === 1 ||
      !/^(?:dash_ac|ac_run|ac_roof|refrigerator|wheel_bearings|shore_cord|tire)$/.test(
        talk.partFor(i, i + 1, clause) ?? '',
      )
    );
  if (n === 'surge' || n === 'pop' || n === 'pops' || n === 'bang')
    return /^(?:protector|guard|tank|up|out|open|brake|the|it)$/.test(next);
  if (n === 'broke' || n === 'broken') return next === 'in';
  if (n === 'drain' || n === 'tick' || n === 'ticks') return false;
  if (n === 'smoke') return /^(?:detector|alarm|alarms|detectors|test|free)$/.test(next);
  if (n === 'cracked' || n === 'crack') return next === 'open' || next === 'it';
  if (n === 'split' || n === 'splitting') return /^(?:system|bath|level|king|shaft|tank)$/.test(next);
  if (n === 'settles' || n === 'settled' || n === 'leans') return /^(?:in|down on)$/.test(next);
  if (n === 'rips' || n === 'bubble') return next === 'through' || next === 'level';
  return false;
}

const levelled =
  /oil|coolant|fluid|tank|batter|tire|fuel|lp_|^def|washer|transmission|steering|pressure|jack|hydraul|monitor|sensor|charge|air_|spare|cylinder|level|generator|engine|refriger|radiator|surge/;
/** "Low" is a level only where there is something to be low; "rock chips down low" is a place. */
const mayBe = (part: string, aspect: string): boolean => aspect !== 'level' || levelled.test(part);

/** An alarm that makes a noise when its button is pressed does what it should. */
const isTried = (talk: Talk, clause: Clause): boolean =>
  talk.marks.words
    .slice(clause.from, clause.to)
    .some((w) => /^(?:button|test|tested|press|pressed|push|pushed)$/.test(w.norm));

/** Failures and denied failures, in a clause. */
export function hearStates(talk: Talk, clause: Clause, taken: Uint8Array): Draft[] {
  const out: Draft[] = [];
  const { words } = talk.marks;
  const norm = (k: number): string => words[k]?.norm ?? '';
  for (let i = clause.from; i < clause.to; i++) {
    if (taken[i] || talk.scopes.elsewhere[i]) continue;
    // "no water in any of these bays", "no drop", "nothing wet"
    if (
      norm(i) === 'no' &&
      /^(?:water|moisture|drop|loss|movement)$/.test(norm(i + 1)) &&
      words[i]?.stop === 0 &&
      i + 1 < clause.to &&
      (/^(?:in|inside|under|anywhere|intrusion|behind|around|at|on)$/.test(norm(i + 2)) ||
        (/^(?:drop|loss|movement|moisture)$/.test(norm(i + 1)) &&
          (i + 2 >= clause.to || norm(i + 2) === 'in')))
    ) {
      const part = talk.partFor(i, i + 2, clause);
      if (part) {
        out.push(
          draftOf(
            talk,
            clause,
            taken,
            {
              part,
              aspect: /water|moisture/.test(norm(i + 1)) ? 'wet' : 'leak',
              state: 'no',
              sense: 'absent',
              polarity: 'good',
              weight: 0.75,
            },
            i,
            2,
          ),
        );
        i++;
        continue;
      }
    }
    const hit = defectPhrases.at(words, i);
    const word = hit?.values[0];
    if (!hit || !word || i + hit.length > clause.to) continue;
    const end = i + hit.length;
    const inside = clause.mentions.find((m) => m.from <= i && i < m.to);
    // inside the name of a part only its last words can be a failure: "oil leak", never "smoke detector"
    if (inside && !(inside.to <= end && (inside.to - inside.from > 1 || end > inside.to))) continue;
    if (isHarmless(talk, clause, i, hit.length)) continue;
    const denial = denialBefore(talk, clause, i);
    const denied =
      talk.scopes.denied[i] === 1 || (inside !== undefined && talk.scopes.denied[inside.from] === 1);
    const close =
      clause.mentions.some((m) => m.to <= i && i - m.to <= 4) ||
      /^(?:it|they|that)$/.test(norm(clause.from)) ||
      clause.to - clause.from <= 4;
    const part = talk.partsFor(i, end, clause).find((p) => isPlausible(p, word.aspect));
    if (part && !denied && canHurt(part) && !talk.isClose(part, i, clause)) continue;
    if (!part || (word.near && !close) || (norm(i) === 'low' && !mayBe(part, word.aspect))) continue;
    if (!denied && word.aspect === 'noise' && /_alarm$/.test(part) && isTried(talk, clause)) {
      out.push(
        draftOf(
          talk,
          clause,
          taken,
          { part, aspect: 'operates', state: 'works', sense: 'operates', polarity: 'good', weight: 0.8 },
          i,
          hit.length,
        ),
      );
    } else if (!denied) {
      out.push(
        draftOf(
          talk,
          clause,
          taken,
          {
            part,
            aspect: word.aspect,
            state: word.state,
            sense: 'defect',
            polarity: 'bad',
            weight: close ? 0.82 : 0.7,
          },
          i,
          hit.length,
        ),
      );
    } else if (word.noun || (denial !== undefined && denial <= 3)) {
      out.push(
        draftOf(
          talk,
          clause,
          taken,
          // Denied, a way of failing is a way of working: "no surging" is not "does not work".
          {
            part,
            aspect: word.aspect,
            state: word.aspect === 'operates' ? 'works' : 'no',
            sense: 'absent',
            polarity: 'good',
            weight: 0.8,
          },
          i,
          hit.length,
        ),
      );
    }
    i = end - 1;
  }
  return out;
}
