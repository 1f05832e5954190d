// Why: a warning lamp is bad news when it is lit and good news when it is dark, the other way round from every other lamp.

import type { Clause, Draft } from './clause.ts';
import { phrasesOf } from './phrase-index.ts';
import { draftOf } from './state-draft.ts';
import type { Talk } from './talk.ts';

/** What a warning lamp warns of, and the part its observation is kept under. Trade usage (common practice, no source). */
const of = (words: string, part: string): [string, string][] =>
  words.split(',').flatMap((w) => [
    [`${w.trim()} light`, part],
    [`${w.trim()} lights`, part],
    [`${w.trim()} lamp`, part],
    [`${w.trim()} lamps`, part],
    [`${w.trim()} indicator`, part],
    [`${w.trim()} warning light`, part],
    [`${w.trim()} warning`, part],
    [`lamp of ${w.trim()}`, part],
    [`light of ${w.trim()}`, part],
    [`lamp for ${w.trim()}`, part],
    [`light for ${w.trim()}`, part],
    [`lamp for the ${w.trim()}`, part],
    [`light for the ${w.trim()}`, part],
  ]);
const warnings = phrasesOf<string>({
  ...Object.fromEntries(
    of(
      'check engine, service engine, service engine soon, engine, stop engine, abs, traction, traction control, stability, oil, oil pressure, temp, temperature, coolant, charge, charging, alternator, glow plug, water in fuel, regen, dpf, def, exhaust, maintenance, tpms, low tire, tire, low air, trouble, warning, dash, air filter, transmission, check transmission, wait to start, check, emissions, service, malfunction',
      'dash_gauges',
    ),
  ),
  ...Object.fromEntries(of('airbag, air bag, srs', 'airbag_srs')),
  'check engine': 'dash_gauges',
  'warning lights': 'dash_gauges',
  'warning lamps': 'dash_gauges',
  'warning light': 'dash_gauges',
  'idiot lights': 'dash_gauges',
  mil: 'dash_gauges',
  'lights on the dash': 'dash_gauges',
  'light on the dash': 'dash_gauges',
  'lamps on the dash': 'dash_gauges',
  'lamp on the dash': 'dash_gauges',
  'lights in the dash': 'dash_gauges',
  'lit on the dash': 'dash_gauges',
  'lit up on the dash': 'dash_gauges',
});

const lit =
  /^(?:on|lit|stays|stayed|burning|burns|burn|illuminated|glowing|glows|blinking|blinks|flashing|flashes|shining|lights|up|came|comes|popped|remains|solid|steady)$/;
const dark = /^(?:off|out|dark|goes|went|gone|clear|clears|cleared)$/;
const no = /^(?:no|not|isn't|ain't|never|doesn't|don't|didn't|without|nothing|none|aren't|wasn't)$/;

/** Warning lamps of a clause: lit is a failure, dark or none is one denied. */
export function hearWarnings(talk: Talk, clause: Clause, taken: Uint8Array): Draft[] {
  const out: Draft[] = [];
  const { words } = talk.marks;
  const norm = (k: number): string => words[k]?.norm ?? '';
  for (let i = clause.from; i < clause.to; i++) {
    const hit = warnings.at(words, i);
    const part = hit?.values[0];
    if (!hit || !part || taken[i] || talk.scopes.elsewhere[i] || i + hit.length > clause.to) continue;
    const end = i + hit.length;
    const denied =
      no.test(norm(i - 1)) ||
      (/^(?:any|other|single|more|warning)$/.test(norm(i - 1)) && no.test(norm(i - 2))) ||
      (talk.scopes.denied[i] === 1 && i > clause.from);
    let turn = -1;
    let shows: boolean | undefined;
    for (let k = end; k < Math.min(clause.to, end + 7) && shows === undefined; k++) {
      const n = norm(k);
      if (no.test(n)) {
        shows = false;
        turn = k;
      } else if (dark.test(n) && !(n === 'goes' || n === 'went' || n === 'gone')) {
        shows = false;
        turn = k;
      } else if (n === 'works' || n === 'working' || n === 'test' || n === 'tests') break;
      else if (/^(?:goes|went|gone)$/.test(n) && /^(?:out|off|dark)$/.test(norm(k + 1))) {
        shows = false;
        turn = k;
      } else if (
        /^(?:comes|came)$/.test(n) &&
        words.slice(k, clause.to + 6).some((w) => /^(?:goes|went|off|out)$/.test(w.norm))
      ) {
        shows = false;
        turn = k;
      } else if (lit.test(n)) {
        shows = true;
        turn = k;
      }
    }
    if (denied) shows = false;
    else if (shows === undefined && /^lit$/.test(norm(i))) shows = true;
    if (shows === undefined) continue;
    const at = turn >= 0 ? turn : i;
    const verdict = shows
      ? ({ part, aspect: 'lit', state: 'lit', sense: 'defect', polarity: 'bad', weight: 0.82 } as const)
      : ({ part, aspect: 'lit', state: 'no', sense: 'absent', polarity: 'good', weight: 0.8 } as const);
    out.push(draftOf(talk, clause, taken, verdict, i, Math.max(hit.length, at + 1 - i)));
    taken.fill(1, i, Math.min(clause.to, Math.max(end, at + 2)));
    i = Math.max(end, at) - 1;
  }
  return out;
}
