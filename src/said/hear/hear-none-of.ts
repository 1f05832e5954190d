// Why: "no pull", "no jerk", "not a drop": words that are a fault only where they are denied, since said plainly they mean something else.
// Trade usage (common practice, no source).
import type { State } from '../../catalogue/state.ts';
import type { Clause, Draft } from './clause.ts';
import { draftOf } from './state-draft.ts';
import type { Talk } from './talk.ts';
import { wordTable } from './word-table.ts';

interface Fault {
  readonly aspect: string;
  /** Parts it may be said of, and the one meant where none of them was talked about; undefined: then nothing is said. */
  readonly of: RegExp;
  readonly otherwise?: string;
}
const brakes = 'brake_\\w+|parking_brake';
const rolling = `road_test_drive|alignment|steering_gear|tire|wheels_lugs|${brakes}`;
const shifting = 'transmission|driveline_u|differential';
const faults: Readonly<Record<string, Fault>> = wordTable(
  Object.fromEntries(
    (
      [
        ['pull pulling', 'pulling', rolling, 'alignment'],
        ['wander wandering drift drifting', 'pulling', rolling, 'road_test_drive'],
        [
          'shimmy vibration vibrations shake shaking wobble shudder',
          'vibrating',
          `${rolling}|driveline_u|engine`,
          'road_test_drive',
        ],
        ['sway swaying lean roll', 'pulling', 'road_test_drive|suspension_\\w+|shocks', 'road_test_drive'],
        ['jerk jerks jerking bang banging slam slamming flare flaring', 'operates', shifting, 'transmission'],
        [
          'slip slips slipping slippage',
          'operates',
          `${shifting}|cruise_control|parking_brake|belts_hoses`,
          'transmission',
        ],
        ['grab grabbing fade fading lockup', 'operates', brakes, 'brake_drum_rotor'],
        [
          'play slop slack endplay looseness',
          'loose',
          `steering_gear|wheel_bearings|driveline_u|pin_box|suspension_leaf|shocks|hitch_receiver|tongue_jack|ladder_rear|grab_handle|entry_step|bath_sink|toilet|differential|${shifting}`,
          '',
        ],
        [
          'miss skip skips stumble hesitation surge',
          'operates',
          'engine|generator|front_engine|turbo_exhaust',
          'engine',
        ],
        ['bounce', 'operates', 'shocks|suspension_\\w+|road_test_drive', 'road_test_drive'],
        ['lag', 'operates', 'turbo_exhaust|engine|slide', ''],
      ] as const
    ).flatMap(([words, aspect, of, otherwise]) =>
      words
        .split(' ')
        .map((w): [string, Fault] => [
          w,
          { aspect, of: new RegExp(`^(?:${of})$`), ...(otherwise === '' ? {} : { otherwise }) },
        ]),
    ),
  ),
);
const states: Readonly<Record<string, State>> = {
  pulling: 'no',
  vibrating: 'no',
  operates: 'works',
  loose: 'no',
};
const wet = /^(?:drop|drip|dribble|speck|spot|bead|trace|hint|sign)$/;
const ofWet =
  /^(?:leak|leaks|leaking|seep|seepage|oil|water|fluid|coolant|fuel|diesel|anywhere|nowhere|underneath|under|on|in|at)$/;

/** Faults denied in a clause. */
export function hearNoneOf(talk: Talk, clause: Clause, taken: Uint8Array): Draft[] {
  const { words } = talk.marks;
  const norm = (k: number): string => words[k]?.norm ?? '';
  const out: Draft[] = [];
  for (let i = clause.from; i < clause.to - 1; i++) {
    if (taken[i] || talk.scopes.elsewhere[i]) continue;
    const one = /^(?:not|nary|never)$/.test(norm(i)) && /^(?:a|one|any|the)$/.test(norm(i + 1));
    if (!one && !/^(?:no|zero|without)$/.test(norm(i))) continue;
    let at = one ? i + 2 : i + 1;
    if (/^(?:any|hard|harsh|more|excess|excessive|noticeable|real|bad|free|end|side)$/.test(norm(at))) at++;
    if (at >= clause.to || (words[at - 1]?.stop ?? 0) > 0) continue;
    if (one && wet.test(norm(at)) && (at + 1 >= clause.to || ofWet.test(norm(at + 1)))) {
      const part = talk.partFor(i, at + 1, clause);
      if (part && part !== 'coach')
        out.push(
          draftOf(
            talk,
            clause,
            taken,
            { part, aspect: 'leak', state: 'no', sense: 'absent', polarity: 'good', weight: 0.75 },
            i,
            at + 1 - i,
          ),
        );
      continue;
    }
    if (
      /^(?:stored|active|fault|trouble|pending|engine|current|historic|other)$/.test(norm(at)) &&
      at + 1 < clause.to
    )
      at++;
    if (
      /^(?:codes|faults|dtcs)$/.test(norm(at)) &&
      !talk.recent.slice(0, 2).some((r) => /tire|_alarm|extinguisher/.test(r.parts[0] ?? '')) &&
      !/^(?:on|for|to|from)$/.test(norm(at + 1))
    ) {
      out.push(
        draftOf(
          talk,
          clause,
          taken,
          {
            part: 'engine_ecm',
            aspect: 'code',
            state: 'no',
            sense: 'absent',
            polarity: 'good',
            weight: 0.75,
          },
          i,
          at + 1 - i,
        ),
      );
      continue;
    }
    const fault = faults[norm(at)];
    // "no pull tab", "no play area": before another noun it is something else
    const next = (words[at]?.stop ?? 2) > 0 || at + 1 >= clause.to ? '' : norm(at + 1);
    if (
      !fault ||
      !(
        next === '' ||
        /^(?:in|at|on|or|and|to|when|under|between|no|from|anywhere|whatsoever|left|right|going|either|there|that|with|of|coming|pulling|slipping|felt|found|noted|up)$/.test(
          next,
        )
      )
    )
      continue;
    const part =
      talk
        .partsFor(i, at + 1, clause)
        .slice(0, 5)
        .find((p) => fault.of.test(p)) ?? fault.otherwise;
    if (!part) continue;
    out.push(
      draftOf(
        talk,
        clause,
        taken,
        {
          part,
          aspect: fault.aspect === 'pulling' || fault.aspect === 'vibrating' ? 'operates' : fault.aspect,
          state: states[fault.aspect] ?? 'no',
          sense: 'absent',
          polarity: 'good',
          weight: 0.75,
        },
        i,
        at + 1 - i,
      ),
    );
  }
  return out;
}
