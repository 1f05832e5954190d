// Why: a verdict is told by word, then by glyph, then by color; these are the five glyphs as SVG.
import type { Verdict } from '../../judged/rule.ts';
import { sheet, verdictColors } from './palette.ts';

const n = (value: number): string => String(Number(value.toFixed(2)));

/** The glyph's marks around a middle, in the units of the SVG it stands in; filled with paper so that it can lie on a drawing. */
export function glyphMarks(verdict: Verdict, x: number, y: number, r: number): string {
  const color = verdictColors[verdict];
  const w = n(r * 0.22);
  const ring = (extra = '', fill = sheet): string =>
    `<circle cx="${n(x)}" cy="${n(y)}" r="${n(r)}" fill="${fill}" stroke="${color}" stroke-width="${w}"${extra}/>`;
  switch (verdict) {
    case 'stop':
      return `${ring()}<rect x="${n(x - r * 0.58)}" y="${n(y - r * 0.2)}" width="${n(r * 1.16)}" height="${n(r * 0.4)}" fill="${color}"/>`;
    case 'repair':
      return `<path d="M${n(x)} ${n(y - r * 1.05)}L${n(x + r * 1.1)} ${n(y + r * 0.85)}H${n(x - r * 1.1)}Z" fill="${sheet}" stroke="${color}" stroke-width="${w}" stroke-linejoin="round"/>`;
    case 'watch':
      return `${ring()}<path d="M${n(x)} ${n(y - r)}A${n(r)} ${n(r)} 0 0 1 ${n(x)} ${n(y + r)}Z" fill="${color}"/>`;
    case 'sound':
      return ring('', color);
    case 'not seen':
      return ring(` stroke-dasharray="${n(r * 0.45)} ${n(r * 0.35)}"`);
  }
}

/** The glyph as a small picture that screen readers skip: its word stands beside it. */
export const glyphSvg = (verdict: Verdict): string =>
  `<svg class="glyph" viewBox="0 0 20 20" width="18" height="18" aria-hidden="true" focusable="false">${glyphMarks(verdict, 10, 10, 8)}</svg>`;
