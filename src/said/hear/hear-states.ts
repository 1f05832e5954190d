// Why: what is wrong with a part, or said not to be: the failure words of the trade, with their denials.

import type { Clause, Draft } from './clause.ts';
import type { DefectWord } from './defect-table.ts';
import { failedPart } from './failed-part.ts';
import { isNoFailure } from './failure-guards.ts';
import { defectPhrases } from './lexicon.ts';
import { denialBefore, draftOf } from './state-draft.ts';
import type { Talk } from './talk.ts';

/** An alarm that makes a noise when its button is pressed does what it should. */
const isTried = (talk: Talk, clause: Clause): boolean =>
  talk.marks.words
    .slice(clause.from, clause.to)
    .some((w) =>
      /^(?:button|test|tested|press|pressed|pressing|push|pushed|me|both|when|finger)$/.test(w.norm),
    );

/** What an alarm does by itself, or all the time, is a fault. */
const unasked =
  /^(?:constantly|constant|continuously|randomly|random|every|keeps|kept|keep|itself|won't|stop|stops|reason|low|intermittent|battery|always|nonstop|false|whenever|minutes|seconds|goes|weak|weakly|faint|faintly)$/;
/** A beep or a loud tone of an alarm is what it is for; a chirp only where somebody pressed its button. */
const sounds = (talk: Talk, clause: Clause, i: number): boolean => {
  const n = talk.marks.words[i]?.norm ?? '';
  if (/^(?:chirp|noise|noises|click|clicking|buzz|buzzes|hum|hums)/.test(n)) return isTried(talk, clause);
  return (
    isTried(talk, clause) || !talk.marks.words.slice(clause.from, clause.to).some((w) => unasked.test(w.norm))
  );
};

/** A failure told with a denial ("does nothing") is not denied by it. */
const ownDenial = /^(?:no|not|nothing|never|don't|doesn't|isn't|ain't|can't|won't|squat|nary)$/;
/** Rooms and skins: no water there is good news. */
const dryable =
  /^(?:bay_|cab_over|under_bed|wall_stains|floor_|compartment|roof_|skylight|windows|ceiling|cabinets|wardrobe|slide|rear_wall|entry_door|sidewall|interior|vents_roof)/;

/** True where fittings that carry gas or air were talked about last. */
const soapedAt = (talk: Talk, i: number): string | undefined => {
  const last = talk.recent
    .slice(0, 3)
    .find((r) => r.at < i && i - r.at < 60 && soaped.test(r.parts[0] ?? ''));
  return last?.parts[0];
};
const soaped = /^(?:lp_|tire|valve_stems|air_tanks|suspension_air)/;

/** Machines with oil or coolant in them: wet outside, they leak; a mushy pedal has not rotted. */
const oily =
  /^(?:shocks|steering_gear|wheel_bearings|differential|transmission|engine|brake_(?:drum_rotor|fluid|chambers)|hydraulic_unit|levelling_jacks|fuel_lines|fuel_tank|radiator_cac|turbo_exhaust|engine_mounts|front_engine|fuel_injectors|coolant|belts_hoses|driveline_u)$/;
function asSaidOf(part: string | undefined, word: DefectWord): DefectWord {
  if (word.aspect !== 'wet' || part === undefined || !oily.test(part)) return word;
  return /^(?:wet|damp)$/.test(word.state)
    ? { ...word, aspect: 'leak', state: 'weeping' }
    : { ...word, aspect: 'soft', state: 'soft' };
}

/** True where what was said is followed by "like it should". */
function asMeant(talk: Talk, clause: Clause, end: number): boolean {
  const norm = (k: number): string => (k < clause.to ? (talk.marks.words[k]?.norm ?? '') : '');
  for (let k = end; k < end + 3; k++)
    if (
      /^(?:like|as|way|when)$/.test(norm(k)) &&
      (/^(?:should|ought|oughta|supposed|designed|meant)$/.test(norm(k + 2)) ||
        /^(?:supposed|designed|meant)$/.test(norm(k + 3)))
    )
      return true;
  return false;
}

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
          (i + 2 >= clause.to || norm(i + 2) === 'in')) ||
        (/^(?:water|moisture)$/.test(norm(i + 1)) &&
          !defectPhrases.at(words, i + 1) &&
          !defectPhrases.at(words, i + 2) &&
          !clause.mentions.some((m) => m.from === i + 1 || m.from === i + 2) &&
          dryable.test(talk.partFor(i, i + 2, clause) ?? '')))
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
    const listed = hit?.values[0];
    // a bubble of soap tells of gas, one in a wall of glue
    const gas = listed?.aspect === 'delamination' && /^bubbl/.test(norm(i)) ? soapedAt(talk, i) : undefined;
    const word = listed && gas ? ({ ...listed, aspect: 'leak', state: 'leaking' } as const) : listed;
    if (!hit || !word || i + hit.length > clause.to) continue;
    const end = i + hit.length;
    const inside = clause.mentions.find((m) => m.from <= i && i < m.to);
    // inside the name of a part only its last words can be a failure: "oil leak", never "smoke detector"
    if (inside && !(inside.to <= end && (inside.to - inside.from > 1 || end > inside.to))) continue;
    if (isNoFailure(talk, clause, i, hit.length, word)) continue;
    // "locked up like they should", "trips as it is supposed to": that is how it works
    if (asMeant(talk, clause, end)) {
      const part = talk.partsFor(i, end, clause)[0];
      if (part && part !== 'coach')
        out.push(
          draftOf(
            talk,
            clause,
            taken,
            { part, aspect: 'operates', state: 'works', sense: 'operates', polarity: 'good', weight: 0.75 },
            i,
            hit.length,
          ),
        );
      i = end - 1;
      continue;
    }
    // "not bad" is praise of a sort
    if (
      norm(i) === 'bad' &&
      /^(?:not|ain't|isn't|too|that)$/.test(norm(i - 1)) &&
      (norm(i - 1) === 'not' || norm(i - 2) === 'not')
    )
      continue;
    const denial = denialBefore(talk, clause, i);
    const own = words.slice(i, end).some((w) => ownDenial.test(w.norm));
    // "won't quit beeping"
    const onAndOn = /^(?:quit|stop|quits|stops|stopped|shut)$/.test(norm(i - 1)) && denial !== undefined;
    const denied =
      !own &&
      !onAndOn &&
      (talk.scopes.denied[i] === 1 || (inside !== undefined && talk.scopes.denied[inside.from] === 1));
    const close =
      clause.mentions.some((m) => m.to <= i && i - m.to <= 4) ||
      /^(?:it|they|that)$/.test(norm(clause.from)) ||
      clause.to - clause.from <= 4;
    const meant = asSaidOf(talk.partFor(i, end, clause), word);
    const part = gas ?? failedPart(talk, clause, i, end, meant, denied);
    if (!part || (word.near && !close)) continue;
    if (!denied && word.aspect === 'noise' && /_alarm$/.test(part) && sounds(talk, clause, i)) {
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
    } else if (!denied && word.state === 'soft' && /^slide_seals$/.test(part)) {
      // seals ought to be soft
      out.push(
        draftOf(
          talk,
          clause,
          taken,
          { part, aspect: 'condition', state: 'good', sense: 'condition', polarity: 'good', weight: 0.7 },
          i,
          hit.length,
        ),
      );
    } else if (
      denied &&
      word.aspect === 'noise' &&
      /_alarm$|^horn$/.test(part) &&
      !/^(?:chirp|noise)/.test(norm(i))
    ) {
      // no beep of an alarm is a failure
      const v = {
        part,
        aspect: 'operates',
        state: 'fails',
        sense: 'defect',
        polarity: 'bad',
        weight: 0.75,
      } as const;
      out.push(draftOf(talk, clause, taken, v, i, hit.length));
    } else if (!denied) {
      out.push(
        draftOf(
          talk,
          clause,
          taken,
          {
            part,
            aspect: meant.aspect,
            state: meant.state,
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
