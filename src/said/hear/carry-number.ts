// Why: the number said after a correction is of the same thing as the one before, whatever stands between.
import { isSameDimension } from '../../units/quantity.ts';
import type { Draft } from './clause.ts';
import type { Marks } from './marks.ts';
import { digitString } from './number-reading.ts';
import type { NumberSpan } from './number-span.ts';
import type { Scopes } from './scope.ts';
import type { TakeBack } from './take-back.ts';

/** Words after the correction in which the right number must begin. */
const ahead = 20;
/** Further readings than this from the wrong one (as a factor) are of something else. */
const factor = 3.2;

const amountOf = (d: Draft): number | undefined =>
  d.value.is === 'quantity' ? d.value.value : d.value.is === 'count' ? d.value.count : undefined;

/** The number a draft was read from. */
export function spanOf(marks: Marks, d: Draft): NumberSpan | undefined {
  for (let k = d.at; k >= 0 && d.at - k < 9; k--) {
    const s = marks.numberAt.from(k);
    if (s) return s.to > d.at ? s : undefined;
  }
  return undefined;
}

/** The draft `wrong` with the number that follows the correction in its stead, if one does. */
export function carriedNumber(
  marks: Marks,
  scopes: Scopes,
  wrong: Draft,
  back: TakeBack,
): { readonly draft: Draft; readonly span: NumberSpan } | undefined {
  const old = spanOf(marks, wrong);
  if (!old) return undefined;
  const base = amountOf(wrong);
  const week = wrong.sense === 'identity' && wrong.value.is === 'text' && /^\d{3,4}$/.test(wrong.value.text);
  if (base === undefined && !week) return undefined;
  const end = Math.min(marks.words.length, back.to + ahead);
  for (let k = back.to; k < (back.close ? back.to + 3 : end); k++) {
    const mention = marks.mentionAt.from(k);
    // "let me wipe the window off": what is done for another look is not what the number is of
    const aside = back.weak && marks.sentenceOf[k] === marks.sentenceOf[back.from];
    if (mention && !aside && !mention.aside && !mention.weak && !mention.parts.includes(wrong.part))
      return undefined;
    const place = marks.placeAt.from(k);
    if (place?.side && (place.end || place.depth)) return undefined;
    const span = marks.numberAt.from(k);
    if (!span) continue;
    if (scopes.elsewhere[k] === 1 || span.money) continue;
    const next = marks.words[span.to]?.norm ?? '';
    if (
      /^(?:was|were|'s|is)$/.test(next) &&
      /^(?:for|the|our|my|on|from)$/.test(marks.words[span.to + 1]?.norm ?? '')
    )
      continue;
    const unit = span.unit?.units[0];
    const kept = wrong.value.is === 'quantity' ? wrong.value.unit : undefined;
    if (unit !== undefined && kept !== undefined && !span.unit?.units.some((u) => isSameDimension(u, kept)))
      continue;
    if (week) {
      const digits = digitString(span.items);
      if (digits === undefined || digits.length !== 4) continue;
      return { draft: moved(wrong, span, { is: 'text', text: digits }), span };
    }
    const fits = span.readings
      .map((r) => ({ value: r.value, off: Math.abs(Math.log((r.value || 0.01) / (base || 0.01))) }))
      .filter((r) => r.off <= Math.log(back.close ? 1.6 : factor))
      .sort((a, b) => a.off - b.off)[0];
    if (!fits) {
      if (span.readings.length > 0 && !unit) return undefined;
      continue;
    }
    if (wrong.value.is === 'count') {
      if (!Number.isInteger(fits.value) || unit !== undefined) continue;
      return { draft: moved(wrong, span, { is: 'count', count: fits.value }), span };
    }
    if (wrong.value.is !== 'quantity') return undefined;
    const { upTo: _, ...rest } = wrong.value;
    return { draft: moved(wrong, span, { ...rest, value: fits.value }), span };
  }
  return undefined;
}

const moved = (d: Draft, span: NumberSpan, value: Draft['value']): Draft => ({
  ...d,
  value,
  hedged: d.hedged || span.approx,
  from: Math.max(0, span.from - 3),
  to: span.to,
  at: span.from,
});
