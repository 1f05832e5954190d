// Why: many numbers of a walk are no readings: clock times, the weather, model numbers, the "one" of "this one".

import type { Clause } from './clause.ts';
import type { NumberSpan } from './number-span.ts';
import { ordinals } from './number-words.ts';
import type { Talk } from './talk.ts';

const labels =
  /^(?:model|part|phone|lot|room|page|step|route|highway|interstate|exit|channel|chapter|number|site|slot|row|stall|version|video|item|line|space|bay number)$/;
const afterIs = /^(?:model|part|serial|item|lot|stock|phone|setting|number|code)$/;
const clock = /^(?:am|pm|o'clock|oclock|in the morning)$/;
const weather =
  /^(?:ambient|weather|forecast|sunshine|shade temp|drizzling|drizzle|drizzly|raining|rainy|sprinkling|snowing|snowy|sleeting|overcast|cloudy|sunny|windy|breezy|foggy|muggy|humid)$/;
/** Behind a bare number these make a price of it, where somebody asks or pays. */
const pricing =
  /^(?:go|goes|went|cost|costs|run|runs|running|wants|want|wanted|pay|pays|paid|paying|charge|charges|charged|asking|sells|sell|selling|sold|bucks|quoted|quotes|priced|worth)$/;
const passing = new Set(['d', 'mo']);

/** "Sixty, eighty, one hundred.": a sentence of nothing but rising numbers is a needle watched. */
function isCounting(talk: Talk, span: NumberSpan): boolean {
  const { words, numberAt, sentenceOf } = talk.marks;
  if (span.unit) return false;
  const of = sentenceOf[span.from];
  let from = span.from;
  while (from > 0 && sentenceOf[from - 1] === of) from--;
  let last = -Infinity;
  let count = 0;
  for (let i = from; i < words.length && sentenceOf[i] === of; ) {
    const n = numberAt.from(i);
    const value = n?.readings[0]?.value;
    if (!n || value === undefined) {
      if (!/^(?:and|now|there|coming|up|going|climbing)$/.test(words[i]?.norm ?? '')) return false;
      i++;
      continue;
    }
    if (n.unit || value <= last || value < 20) return false;
    last = value;
    count++;
    i = Math.max(n.to, i + 1);
  }
  return count >= 3;
}

/** Who comes and goes, and when. */
const comings =
  /^(?:come|comes|coming|came|leave|leaves|leaving|left|arrive|arrives|arriving|meet|meets|meeting|call|calls|calling|close|closes|closing|open|opens|lunch|dinner|supper|breakfast|coffee|transporter|hauler|appointment|today|tomorrow|tonight|monday|tuesday|wednesday|thursday|friday|saturday|sunday|noon|home|here|back|pickup|delivery|rain|raining|rains|dark|sunset|start|starts|started|starting|finish|finished|finishing|end|ends|knock|shift|school|church|bank|desk|office)$/;

/** True where the clause tells of people and hours and names no part. */
function isAppointment(talk: Talk, clause: Clause, span: NumberSpan): boolean {
  const { words } = talk.marks;
  if (clause.mentions.some((m) => !m.weak && m.to <= span.from)) return false;
  const it = words[clause.from]?.norm ?? '';
  if (/^(?:it|she|that|they)$/.test(it) && !/^(?:come|comes|coming)$/.test(words[span.from - 2]?.norm ?? ''))
    return words
      .slice(clause.from, clause.to)
      .some((w) => /^(?:rain|raining|dark|closes?|lunch)$/.test(w.norm));
  return words.slice(clause.from, clause.to).some((w) => comings.test(w.norm));
}

/** True when a number is no reading of the coach. */
export function isAsideNumber(talk: Talk, clause: Clause, span: NumberSpan): boolean {
  const { words } = talk.marks;
  const norm = (i: number): string => words[i]?.norm ?? '';
  const next = norm(span.to);
  const before = norm(span.from - 1);
  if (
    span.money ||
    (Object.hasOwn(ordinals, norm(span.bare)) &&
      norm(span.bare + 1) !== 'week' &&
      span.unit?.units[0] !== 's' &&
      norm(span.bare) !== 'second')
  )
    return true;
  if (before === 'of' && /s$/.test(norm(span.from - 2)) && !span.unit && !/ts$|ss$/.test(norm(span.from - 2)))
    return true;
  // "end, eleven fifty-two": the clock
  const [hour, minute] = span.items;
  if (
    !span.unit &&
    span.items.length === 2 &&
    hour &&
    minute?.kind === 'small' &&
    hour.value >= 1 &&
    hour.value <= 12 &&
    minute.value < 60 &&
    (/^(?:end|ended|ending|time|finish|finished|finishing|clock|done|started|since|till|until)$/.test(
      before,
    ) ||
      /^(?:end time|start time|time is|time 's|it 's now|clock says|here at|done at|started at|finished at|stopped at)$/.test(
        `${norm(span.from - 2)} ${before}`,
      ))
  )
    return true;
  // "a hundred miles back", "five hundred miles to empty": a way, no odometer
  if (
    (span.unit?.units[0] === '[mi_i]' || span.unit?.units[0] === 'km') &&
    /^(?:back|ago|to|until|till|left|away|between|since|apart|before|further|farther|past|early)$/.test(
      next,
    ) &&
    !/^(?:at|odometer|reads|says|with|has)$/.test(before)
  )
    return true;
  if (!span.unit) {
    const behind = `${next} ${norm(span.to + 1)}`;
    if (/^(?:a pop|a throw|a whack)/.test(behind)) return true;
    if (/^(?:apiece|each|for|a piece|per tire)/.test(behind) || /^(?:$|now|to)/.test(next))
      for (let i = span.from - 1; i >= clause.from && span.from - i <= 4; i--)
        if (
          pricing.test(norm(i)) &&
          (span.readings[0]?.value ?? 0) >= 100 &&
          /^(?:apiece|each|a piece)/.test(behind)
        )
          return true;
  }
  if (isCounting(talk, span)) return true;
  if (clock.test(next) || (next === 'in' && norm(span.to + 1) === 'the' && norm(span.to + 2) === 'morning'))
    return true;
  if (labels.test(before) && before !== 'number' && before !== 'item' && before !== 'line') return true;
  if (next === 'is' && (afterIs.test(norm(span.to + 1)) || afterIs.test(norm(span.to + 2)))) return true;
  if (
    next === 'ago' ||
    next === 'times' ||
    next === 'people' ||
    next === 'guys' ||
    next === 'sure' ||
    (next === 'years' && norm(span.to + 1) === 'ago')
  )
    return true;
  // "the buyer comes at two": an hour
  if (
    !span.unit &&
    span.items.length <= 2 &&
    (span.items[0]?.value ?? 0) >= 1 &&
    (span.items[0]?.value ?? 99) <= 12
  )
    if (
      /^(?:at|by|till|until|til|before|after|around|past|since)$/.test(before) &&
      isAppointment(talk, clause, span)
    )
      return true;
  if (!span.unit && ((next === 'out' && norm(span.to + 1) === 'here') || next === 'outside')) return true;
  if (
    span.unit &&
    (norm(span.to) === 'ago' ||
      (norm(span.to) === 'out' && norm(span.to + 1) === 'here') ||
      norm(span.to) === 'outside')
  )
    return true;
  if (
    !span.unit &&
    /^(?:at|above|over|about|around|below)$/.test(before) &&
    talk.recent.some((r) => r.parts.includes('road_test_drive') && span.from - r.at < 120) &&
    (span.readings[0]?.value ?? 0) <= 85 &&
    span.items.length === 1
  )
    return true;
  // "the fifteen amp for the water heater": a breaker, not a reading
  if (
    norm(span.bare) === 'amp' &&
    /^(?:for|breaker|breakers|fuse|fuses)$/.test(norm(span.to)) &&
    /^(?:10|15|20|25|30|35|40|50|60)$/.test(String(span.readings[0]?.value))
  )
    return true;
  // "it's ninety out": the weather
  if (
    next === 'out' &&
    /^(?:'s|is|was)$/.test(before) &&
    norm(span.from - 2) === 'it' &&
    (words[span.to - 1]?.stop ?? 0) === 0 &&
    (span.to + 1 >= clause.to || (words[span.to]?.stop ?? 0) > 0)
  )
    return true;
  if (span.unit && passing.has(span.unit.units[0] ?? '')) return true;
  for (let i = clause.from; i < clause.to; i++)
    if (
      weather.test(norm(i)) &&
      Math.abs(i - span.from) < 6 &&
      !clause.mentions.some((m) => m.parts[0] === 'dash_ac')
    )
      return true;
  return false;
}
