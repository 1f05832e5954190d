// Why: the limit strip of a finding on paper: the bad side tinted, the limit a line, the reading a dot, its doubt a bar.
import type { LimitStrip } from '../../published/limit-strip.ts';
import { escapeHtml } from './escape-html.ts';
import { ink, numberFont, rule, soft, verdictColors } from './palette.ts';

const [left, width] = [8, 254];

/** An SVG of 270 by 46. Text is escaped; the picture names its numbers for those who cannot see it. */
export function stripSvg(strip: LimitStrip): string {
  const x = (at: number): string => (left + at * width).toFixed(1);
  const color = verdictColors[strip.verdict];
  const anchor = (at: number): string => (at < 0.25 ? 'start' : at > 0.75 ? 'end' : 'middle');
  const [from, to] = strip.bad;
  const label = escapeHtml(`reading ${strip.readingLabel}, ${strip.limitLabel}`);
  return (
    `<svg class="strip" xmlns="http://www.w3.org/2000/svg" viewBox="0 0 270 46" width="270" height="46" role="img" aria-label="${label}">` +
    `<path d="M${x(0)} 26H${x(1)}" stroke="${rule}" stroke-width="8"/><path d="M${x(from)} 26H${x(to)}" stroke="${color}" stroke-width="8" opacity="0.35"/>` +
    `<path d="M${x(strip.limit)} 15v22" stroke="${ink}" stroke-width="2"/>` +
    `<text x="${x(strip.limit)}" y="11" text-anchor="${anchor(strip.limit)}" font-family="${numberFont}" font-size="11" fill="${soft}">${escapeHtml(strip.limitLabel)}</text>` +
    (strip.doubt[1] > strip.doubt[0]
      ? `<path d="M${x(strip.doubt[0])} 26H${x(strip.doubt[1])}" stroke="${ink}" stroke-width="3"/>`
      : '') +
    `<circle cx="${x(strip.reading)}" cy="26" r="5" fill="${color}"/>` +
    `<text x="${x(strip.reading)}" y="45" text-anchor="${anchor(strip.reading)}" font-family="${numberFont}" font-size="11" font-weight="700" fill="${ink}">${escapeHtml(strip.readingLabel)}</text></svg>`
  );
}
