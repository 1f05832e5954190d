// Why: the unit's drawing as an SVG picture for pages and the printed report; the shapes are those every door shows.
import type { DimensionLine, Drawing } from '../../published/drawing/drawing.ts';
import type { Pin } from '../../published/drawing/pins.ts';
import type { Role, Segment, Shape } from '../../published/drawing/shape.ts';
import { escapeHtml } from './escape-html.ts';
import { glyphMarks } from './glyph-svg.ts';
import { grid, ink, numberFont, rule, sheet, soft, verdictColors } from './palette.ts';

/** Pixels a foot. */
const scale = 18;

const strokes: Readonly<Record<Role, string>> = {
  outline: `stroke="${ink}" stroke-width="1.8"`,
  thin: `stroke="${soft}" stroke-width="0.9"`,
  dashed: `stroke="${soft}" stroke-width="1.2" stroke-dasharray="6 4"`,
  ground: `stroke="${ink}" stroke-width="1"`,
};

interface Frame {
  readonly x: (feet: number) => string;
  readonly y: (feet: number) => string;
}

function pathData(path: readonly Segment[], closed: boolean, { x, y }: Frame): string {
  const steps = path.map((s) => {
    if (s.to === 'curve') return `Q${x(s.cx)} ${y(s.cy)} ${x(s.x)} ${y(s.y)}`;
    if (s.to === 'arc')
      return `A${(s.r * scale).toFixed(1)} ${(s.r * scale).toFixed(1)} 0 0 ${s.clockwise ? 1 : 0} ${x(s.x)} ${y(s.y)}`;
    return `${s.to === 'move' ? 'M' : 'L'}${x(s.x)} ${y(s.y)}`;
  });
  return steps.join('') + (closed ? 'Z' : '');
}

function shapeSvg(shape: Shape, frame: Frame): string {
  if (shape.is === 'circle') {
    return `<circle cx="${frame.x(shape.x)}" cy="${frame.y(shape.y)}" r="${(shape.r * scale).toFixed(1)}" fill="${shape.role === 'thin' ? 'none' : sheet}" ${strokes[shape.role]}/>`;
  }
  return `<path d="${pathData(shape.path, shape.closed, frame)}" fill="none" ${strokes[shape.role]}/>`;
}

function dimensionSvg(d: DimensionLine, { x, y }: Frame): string {
  const [x1, y1, x2, y2] = [x(d.from[0]), y(d.from[1]), x(d.to[0]), y(d.to[1])];
  const upright = d.what === 'height';
  const ends = upright
    ? `M${Number(x1) - 5} ${y1}h10M${Number(x2) - 5} ${y2}h10`
    : `M${x1} ${Number(y1) - 5}v10M${x2} ${Number(y2) - 5}v10`;
  const [mx, my] = [(Number(x1) + Number(x2)) / 2, (Number(y1) + Number(y2)) / 2];
  const at = upright
    ? `x="${mx + 15}" y="${my}" transform="rotate(90 ${mx + 15} ${my})"`
    : `x="${mx}" y="${my + 15}"`;
  return (
    `<path d="M${x1} ${y1}L${x2} ${y2}" fill="none" stroke="${soft}" stroke-width="0.9"${d.assumed ? ' stroke-dasharray="4 3"' : ''}/><path d="${ends}" fill="none" stroke="${soft}" stroke-width="0.9"/>` +
    `<text ${at} text-anchor="middle" font-family="${numberFont}" font-size="11" fill="${soft}">${escapeHtml(d.label)}</text>`
  );
}

function pinSvg(pin: Pin, { x, y }: Frame): string {
  const [cx, cy] = [Number(x(pin.x)), Number(y(pin.y))];
  return (
    `<g id="pin-${escapeHtml(pin.id)}"><title>${escapeHtml(`${pin.number}. ${pin.label}`)}</title>${glyphMarks(pin.verdict, cx, cy, 9)}` +
    `<text x="${cx + 11}" y="${cy - 6}" font-family="${numberFont}" font-size="10" font-weight="700" fill="${verdictColors[pin.verdict]}" stroke="${sheet}" stroke-width="2.5" paint-order="stroke">${pin.number}</text></g>`
  );
}

/** What the picture shows, in words, for those who cannot see it. */
export function drawingWords(d: Drawing): string {
  const sizes = d.dimensions.map((line) => `${line.what} ${line.label}`).join(', ');
  const found =
    d.pins.length === 0
      ? 'No faults are pinned on this side.'
      : `Pinned: ${d.pins.map((p) => `${p.number} ${p.label}`).join('; ')}.`;
  return `The ${d.view} of the unit, drawn to scale: ${sizes}. ${found}`;
}

/** The drawing as SVG, on paper ruled in feet, 18 pixels a foot. Every text in it is escaped. */
export function drawingSvg(d: Drawing): string {
  const { left, right, bottom, top } = d.bounds;
  const [width, height] = [(right - left) * scale, (top - bottom) * scale];
  const frame: Frame = {
    x: (feet) => ((feet - left) * scale).toFixed(1),
    y: (feet) => ((top - feet) * scale).toFixed(1),
  };
  const across = Array.from(
    { length: Math.floor(right) - Math.ceil(left) + 1 },
    (_, i) => `M${frame.x(Math.ceil(left) + i)} 0V${height.toFixed(1)}`,
  );
  const up = Array.from(
    { length: Math.floor(top) - Math.ceil(bottom) + 1 },
    (_, i) => `M0 ${frame.y(Math.ceil(bottom) + i)}H${width.toFixed(1)}`,
  );
  return (
    `<svg class="coach" xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width.toFixed(1)} ${height.toFixed(1)}" width="${width.toFixed(0)}" height="${height.toFixed(0)}" role="img" aria-label="${escapeHtml(drawingWords(d))}">` +
    `<rect width="100%" height="100%" fill="${sheet}" stroke="${rule}"/><path d="${across.join('')}${up.join('')}" fill="none" stroke="${grid}" stroke-width="1"/>` +
    `<text x="10" y="15" font-family="${numberFont}" font-size="11" fill="${soft}">${escapeHtml(d.title)}</text>` +
    d.shapes.map((s) => shapeSvg(s, frame)).join('') +
    d.dimensions.map((line) => dimensionSvg(line, frame)).join('') +
    d.pins.map((p) => pinSvg(p, frame)).join('') +
    '</svg>'
  );
}
