// Why: on the road "it pulls", "it tracks straight" and "there's a vibration" are said of the drive, whatever was talked about before.
import type { Clause, Draft } from './clause.ts';
import { phraseList } from './phrase-index.ts';
import { denialBefore, draftOf } from './state-draft.ts';
import type { Talk } from './talk.ts';

const openers = phraseList(
  'took it out,took her out,drove it,drove her,drive it,drove,road test,test drive,on the highway,on the freeway,on the interstate,on the road,took it for a drive,took it for a spin,up to speed,miles an hour,miles per hour,at highway speed,out on the road'.split(
    ',',
  ),
);
const feels =
  /^(?:vibration|vibrations|vibrates|shimmy|shimmies|shakes|shake|shudder|shudders|wobble|wobbles|buzz|buzzing)$/;
const strays = /^(?:pulls?|pulled|pulling|wanders?|wandered|wandering|drifts?|drifted)$/;
const drives = /^(?:tracks?|tracked|drives|drove|runs|rides|goes|stops|steers)$/;
const last = new WeakMap<Talk, number>();

/** What was felt on the road, in a clause that names no part of its own. */
export function hearRoad(talk: Talk, clause: Clause, taken: Uint8Array): Draft[] {
  const { words } = talk.marks;
  const norm = (i: number): string => words[i]?.norm ?? '';
  for (let i = clause.from; i < clause.to; i++) if (openers.at(words, i)) last.set(talk, i);
  if (clause.from - (last.get(talk) ?? -999) > 90 || talk.scopes.elsewhere[clause.from]) return [];
  const own = clause.mentions.find((m) => !m.aside && !m.weak && !m.parts.includes('road_test_drive'));
  const out: Draft[] = [];
  for (let i = clause.from; i < clause.to; i++) {
    if (taken[i] || (own && own.to <= i)) continue;
    const n = norm(i);
    const denied = talk.scopes.denied[i] === 1 || denialBefore(talk, clause, i) !== undefined;
    const side = words.slice(i + 1, Math.min(clause.to, i + 8)).some((w) => /^(?:left|right)$/.test(w.norm));
    if (feels.test(n) || (strays.test(n) && (side || denied))) {
      const [aspect, state] = feels.test(n)
        ? (['vibration', 'vibrating'] as const)
        : (['pulling', 'pulling'] as const);
      out.push({
        ...draftOf(
          talk,
          clause,
          taken,
          denied
            ? {
                part: 'road_test_drive',
                aspect,
                state: 'no',
                sense: 'absent',
                polarity: 'good',
                weight: 0.75,
              }
            : {
                part: 'road_test_drive',
                aspect,
                state,
                sense: 'defect',
                polarity: 'bad',
                weight: 0.75,
              },
          i,
          1,
        ),
      });
      const at = clause.numbers.find((x) => x.from > i && x.from - i <= 6);
      const value = at?.readings[0]?.value ?? 0;
      if (
        at &&
        !denied &&
        feels.test(n) &&
        value >= 5 &&
        value <= 90 &&
        (!at.unit || at.unit.units[0] === '[mi_i]/h')
      ) {
        const doubt = talk.doubtAt(at.from);
        out.push({
          part: 'road_test_drive',
          aspect: 'vibration_mph',
          value: { is: 'quantity', value, unit: '[mi_i]/h' },
          sense: 'quantity',
          polarity: 'neutral',
          ...doubt,
          hedged: at.approx || doubt.hedged,
          from: i,
          to: Math.min(clause.to, at.to + 2),
          at: at.from,
          weight: 0.8,
        });
        taken.fill(1, at.from, at.to);
      }
    } else if (drives.test(n) && /^(?:straight|true|arrow)$/.test(norm(i + 1)) && !denied) {
      out.push(
        draftOf(
          talk,
          clause,
          taken,
          {
            part: 'road_test_drive',
            aspect: 'pull',
            state: 'straight',
            sense: 'condition',
            polarity: 'good',
            weight: 0.75,
          },
          i,
          2,
        ),
      );
    }
  }
  return out.map(({ place: _place, ...d }) => d);
}
