// Why: "Okay, cab." and "going up on the roof" begin a new subject: what was talked about before is not meant any more.
import type { Clause } from './clause.ts';
import { stationPhrases } from './lexicon.ts';
import type { Marks } from './marks.ts';

const fillers =
  /^(?:okay|ok|so|now|and|alright|all|right|well|then|next|uh|um|here|the|we|we're|i|i'm|'re|'m|let|'s|us|do|is|are|to|last|of|it|moving|on|out|in|over|back|down|up|going|go|coming|come|heading|head|walking|around|round|start|starting|with|at|my|into|inside|outside|this|a|gonna|get|got|look|looking|want|wants|part|everybody|more|other|side|along|finally|first|second|lastly|step|jump|jumping|climb|climbing|for)$/;

const motions =
  /^(?:okay|ok|now|alright|moving|going|go|coming|come|heading|head|walking|around|round|start|starting|down|let|we're)$/;
const sides = /^(?:front|rear|curb-side|road-side)$/;

/** What "it" is at a station where nothing has been named yet. */
export const stationPart: Readonly<Record<string, string>> = {
  front: 'front_cap',
  rear: 'rear_cap',
  'curb-side': 'sidewall_structure',
  'road-side': 'sidewall_structure',
  roof: 'roof_membrane',
  living: 'interior',
  'bath-bedroom': 'interior',
};

/** The station a clause announces, saying nothing else; undefined where it says anything more. */
export function headingOf(marks: Marks, clause: Clause): string | undefined {
  if (clause.to - clause.from > 9 || clause.numbers.length > 0) return undefined;
  let station: string | undefined;
  let moves = false;
  for (let i = clause.from; i < clause.to; ) {
    const hit = stationPhrases.at(marks.words, i);
    if (hit) {
      station ??= hit.values[0];
      i += hit.length;
    } else if (fillers.test(marks.words[i]?.norm ?? '')) {
      if (motions.test(marks.words[i]?.norm ?? '')) moves = true;
      i++;
    } else return undefined;
  }
  // "driver side" alone may only say where the thing is that is talked about
  return station && sides.test(station) && !moves ? undefined : station;
}
