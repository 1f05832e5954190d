// Why: year, maker, model and floor plan of the coach are said once, early, in any order, in one breath or in several sentences.
import type { Clause } from './clause.ts';
import type { Put } from './hear-plates.ts';
import { isNameLike } from './name-like.ts';
import { itemAt } from './number-item.ts';
import type { NumberSpan } from './number-span.ts';
import type { Talk } from './talk.ts';
import { nameAt } from './written-name.ts';

/** What is known of the coach's name so far, and where it was said. */
interface Known {
  year?: number;
  maker?: number;
  model?: number;
  plan?: number;
}
const knownOf = new WeakMap<Talk, Known>();

/** After this many words a walk no longer says what the coach is. */
const early = 320;
/** Words between two pieces of the name of one coach. */
const near = 45;

const presents =
  /^(?:is|'s|are|be|have|has|got|here|on|with|looking|at|called|of|into|walk|around|doing|this|today|now|about|inspecting|see)$/;
const articles = /^(?:a|an|the|your|my|our|this|that|her|his)$/;
const vehicleWords =
  /^(?:model|motorhome|motor|coach|diesel|fifth|travel|class|camper|rv|toy|super|trailer|van|gas|gasser|unit|rig|bumper|camping|caravan)$/;
const thing = /^(?:chassis|cutaway|engine|motor|tires?|generator|transmission|axles?|frame|cab)$/;
const yearBefore =
  /^(?:a|an|year|is|'s|the|this|it|model|'|of|titled|as|early|late|here|got|have|your|our|my)$/;

/** Reads the year, maker, model and floor plan of the coach in a clause. */
export function coachName(talk: Talk, clause: Clause, put: Put, taken: Uint8Array): void {
  let known = knownOf.get(talk);
  if (!known) {
    known = {};
    knownOf.set(talk, known);
  }
  for (const span of clause.numbers) yearIn(talk, clause, span, put, taken, known);
  if (clause.from > early) return;
  makerIn(talk, clause, put, taken, known);
  planIn(talk, clause, put, taken, known);
}

/** The model year a number may be: four digits, or two before a name ("a sixteen Pellworth", "an oh three"). */
function yearOf(talk: Talk, span: NumberSpan, named: boolean): number | undefined {
  const whole = span.readings.find(
    (r) => Number.isInteger(r.value) && r.value >= 1965 && r.value <= 2040,
  )?.value;
  if (whole || !named) return whole;
  const words = talk.marks.words;
  const oh = /^(?:oh|o|aught|ought)$/.test(words[span.from]?.norm ?? '');
  const v = span.readings[0]?.value ?? span.items.at(-1)?.value ?? -1;
  if (!Number.isInteger(v)) return undefined;
  if (oh ? v >= 0 && v <= 9 : v >= 10 && v <= 29) return 2000 + v;
  return v >= 80 && v <= 99 ? 1900 + v : undefined;
}

function yearIn(
  talk: Talk,
  clause: Clause,
  span: NumberSpan,
  put: Put,
  taken: Uint8Array,
  known: Known,
): void {
  const { words, isName } = talk.marks;
  if (span.unit || span.money || talk.scopes.elsewhere[span.from]) return;
  const after = words[span.to]?.norm ?? '';
  const before = words[span.from - 1]?.norm ?? '';
  const joined = words[span.to - 1]?.stop === 0;
  let to = span.to;
  if (joined)
    while (
      to < clause.to &&
      to - span.to < 3 &&
      (isName(to) || (known.year === undefined && span.from < early && isNameLike(talk, to))) &&
      (to === span.to || words[to - 1]?.stop === 0)
    )
      to++;
  const named = to > span.to;
  const kind =
    /^(?:class|diesel|gas|gasser|motorhome|coach|fifth|travel|toy|camper|model|super)$/.test(after) &&
    joined &&
    known.year === undefined &&
    /^(?:a|an|the|is|'s|early|late)$/.test(before);
  const year = yearOf(
    talk,
    span,
    kind || (named && (known.maker === undefined || nearBy(known.maker, span.from))),
  );
  if (!year) return;
  // "a 2006 coach on a 2005 chassis", "the chassis is a 2005"
  const ofChassis =
    (after === 'chassis' && joined) ||
    words.slice(Math.max(clause.from, span.from - 4), span.from).some((w) => w.norm === 'chassis');
  if (ofChassis) {
    put('chassis_label', 'chassis_year', String(year), span.from, span.to - span.from + 1, 0.88);
    taken.fill(1, span.from, span.to);
    if (named) {
      put('chassis_label', 'maker', namesOf(talk, span.to, to), span.to, to - span.to, 0.75);
      taken.fill(1, span.to, to);
    }
    return;
  }
  const coachy =
    vehicleWords.test(after) ||
    words.slice(Math.max(clause.from, span.from - 5), span.from).some((w) => w.norm === 'year');
  const alone =
    span.from === clause.from &&
    span.to === clause.to &&
    span.items[0]?.written?.length === 4 &&
    talk.recent.length === 0;
  // "the paperwork calls it a 2015", "twenty nineteen" behind the name
  const full = span.readings.some((r) => r.value === year);
  const spare =
    known.year === undefined &&
    full &&
    span.from < early &&
    !clause.mentions.some(
      (m) => !/^(?:coach|records_folder|title_doc|cert_label|vin_plate)$/.test(m.parts[0] ?? ''),
    ) &&
    ((nearBy(known.maker, span.from) && clause.to - clause.from <= 4) ||
      (/^(?:a|an)$/.test(before) && /^(?:it|is|'s|as|this)$/.test(words[span.from - 2]?.norm ?? '')));
  if (!named && !coachy && !alone && !spare) return;
  if (!named && known.year !== undefined && !coachy) return;
  if (
    named &&
    !full &&
    !yearBefore.test(before) &&
    span.from !== clause.from &&
    words[span.from - 1]?.stop === 0
  )
    if (known.maker !== undefined || !/^[a-z]*\d?$/.test(before)) return;
  const isChassis = clause.mentions.some((m) => m.parts[0] === 'chassis_label' || m.parts[0] === 'engine');
  if (isChassis && !named) return;
  put('coach', 'year', String(year), span.from, to - span.from, 0.88);
  known.year = span.from;
  taken.fill(1, span.from, span.to);
  if (!named) return;
  put('coach', 'maker', namesOf(talk, span.to, span.to + 1), span.to, 1, 0.85);
  known.maker = span.to;
  taken.fill(1, span.to, to);
  if (to - span.to > 1) {
    put('coach', 'model', namesOf(talk, span.to + 1, to), span.to + 1, to - span.to - 1, 0.8);
    known.model = span.to + 1;
  }
}

const nearBy = (at: number | undefined, i: number): boolean => at !== undefined && Math.abs(i - at) <= near;

const namesOf = (talk: Talk, from: number, to: number): string =>
  talk.marks.words
    .slice(from, to)
    .map((w) => nameAt(talk, w.written))
    .join(' ');

/** "this is the Quillory Fenlark", and the model in a phrase of its own: ", the Larkmoor". */
function makerIn(talk: Talk, clause: Clause, put: Put, taken: Uint8Array, known: Known): void {
  const { words } = talk.marks;
  for (let i = clause.from; i < clause.to; i++) {
    if (taken[i] || talk.scopes.elsewhere[i]) continue;
    if (!isNameLike(talk, i) || (i > clause.from && isNameLike(talk, i - 1) && words[i - 1]?.stop === 0))
      continue;
    const before = words[i - 1]?.norm ?? '';
    let to = i + 1;
    while (to < clause.to && to - i < 3 && isNameLike(talk, to) && words[to - 1]?.stop === 0) to++;
    const behind = words[to]?.norm ?? '';
    if (words[to - 1]?.stop === 0 && (thing.test(behind) || behind === "'s")) continue;
    if (words[to - 1]?.stop === 0 && itemAt(words, to) && thing.test(words[to + 1]?.norm ?? '')) continue;
    if (clause.mentions.some((m) => m.parts[0] !== 'coach' && m.to <= i && !m.aside)) continue;
    if (known.maker === undefined) {
      const lead = words[i - 2]?.norm ?? '';
      if (!articles.test(before) && !(/^(?:is|'s)$/.test(before) && lead === 'this' && isDescribed(talk, to)))
        continue;
      if (articles.test(before) && !presents.test(lead)) continue;
      // without capitals any word that nobody knows would do: "has a chunk missing"
      if (!talk.marks.isName(i) && to - i === 1 && !isDescribed(talk, to)) continue;
      put('coach', 'maker', namesOf(talk, i, i + 1), i, 1, 0.75);
      known.maker = i;
      if (to - i > 1) {
        put('coach', 'model', namesOf(talk, i + 1, to), i + 1, to - i - 1, 0.75);
        known.model = i + 1;
      }
      taken.fill(1, i, to);
    } else if (known.model === undefined && i - known.maker <= 12 && i > known.maker) {
      const set = i === clause.from || /^(?:the|model|called|it|a)$/.test(before);
      if (!set) continue;
      const again = to - i > 1 && words[i]?.norm === words[known.maker]?.norm ? i + 1 : i;
      put('coach', 'model', namesOf(talk, again, to), again, to - again, 0.72);
      known.model = i;
      taken.fill(1, i, to);
    }
  }
}

/** True where a year, a model or a floor plan comes soon: the name before it is that of a coach, not of a person. */
const isDescribed = (talk: Talk, to: number): boolean =>
  talk.marks.words
    .slice(to, to + 12)
    .some(
      (w) =>
        /^(?:year|model|floorplan|plan|class|motorhome|trailer|coach)$/.test(w.norm) ||
        /^(?:19|20)\d\d$/.test(w.norm),
    );

const notPlan = /^(?:a|k|v|w|s|t's|o|x)$/;

/** "thirty D", "26BH", "the 28 R K", "floor plan forty T": a number and up to three letters. */
function planIn(talk: Talk, clause: Clause, put: Put, taken: Uint8Array, known: Known): void {
  if (known.plan !== undefined) return;
  const { words } = talk.marks;
  const said = (i: number): boolean => {
    const n = words[i]?.norm ?? '';
    return n === 'floorplan' || n === 'layout' || (n === 'plan' && words[i - 1]?.norm === 'floor');
  };
  for (let i = clause.from; i < clause.to; i++) {
    const item = itemAt(words, i);
    if (!item || taken[i] || item.kind === 'fraction' || item.kind === 'decimal') continue;
    let digits = item.written ?? String(item.value);
    let at = item.to;
    const more = itemAt(words, at);
    if (
      more &&
      words[at - 1]?.stop === 0 &&
      digits.length <= 2 &&
      more.kind !== 'fraction' &&
      more.kind !== 'decimal'
    ) {
      digits +=
        more.kind === 'digit' || more.value >= 10 ? (more.written ?? String(more.value)) : `0${more.value}`;
      at = more.to;
    }
    if (!/^\d{2,4}$/.test(digits)) continue;
    let letters = '';
    while (at < clause.to && letters.length < 3 && words[at - 1]?.stop === 0) {
      const n = words[at]?.norm ?? '';
      if (!/^[a-z]{1,3}$/.test(n) || letters.length + n.length > 4) break;
      if (n.length === 1 ? n === 'a' && letters === '' && !words[at]?.capital : !isCode(talk, at)) break;
      letters += n.toUpperCase();
      at++;
    }
    const frame =
      said(at) ||
      said(i - 1) ||
      said(i - 2) ||
      said(at + 1) ||
      /^(?:model|layout)$/.test(words[i - 1]?.norm ?? '');
    const close = nearBy(known.maker, i) || nearBy(known.model, i) || nearBy(known.year, i);
    if (
      letters === ''
        ? !frame || digits.length > 3
        : !frame && (!close || (notPlan.test(letters.toLowerCase()) && !words[at - 1]?.capital))
    )
      continue;
    if (letters.length === 1 && /^[KVW]$/.test(letters) && !frame) continue;
    if (talk.scopes.elsewhere[i]) continue;
    put('coach', 'floor_plan', `${digits}${letters}`, i, at - i, 0.78);
    known.plan = i;
    taken.fill(1, i, at);
    return;
  }
}

/** Two or three letters that are no word: "RL", "BH". */
const isCode = (talk: Talk, i: number): boolean => {
  const w = talk.marks.words[i];
  return (
    w !== undefined &&
    !/[aeiou]/.test(w.norm) &&
    !/^(?:mph|psi|lbs|hz|kw|gph|mpg|ft|cm|mm|km|th|rpm|hp)$/.test(w.norm)
  );
};
