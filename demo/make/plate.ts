// Why: draws the plates, labels and stickers that somebody would photograph on a walk, as a slightly tilted picture with grain.
import sharp from 'sharp';
import { dice, normal } from './dice.ts';

/** What stands on a plate, line by line; a line of two texts is set left and right. */
export interface Plate {
  readonly file: string;
  readonly title: string;
  readonly lines: readonly (string | readonly [string, string])[];
  readonly ink: string;
  readonly paper: string;
  readonly part: string;
  readonly place?: string;
  readonly caption: string;
  /** Degrees. */
  readonly tilt: number;
}

const escaped = (text: string): string => text.replace(/&/g, '&amp;').replace(/</g, '&lt;');

function svgOf(plate: Plate): string {
  const width = 900;
  const height = 170 + plate.lines.length * 62;
  const rows = plate.lines
    .map((line, i) => {
      const y = 150 + i * 62;
      if (typeof line === 'string') return `<text x="40" y="${y}" font-size="38">${escaped(line)}</text>`;
      return `<text x="40" y="${y}" font-size="30" opacity=".8">${escaped(line[0])}</text><text x="${width - 40}" y="${y}" font-size="42" text-anchor="end" font-weight="bold">${escaped(line[1])}</text>`;
    })
    .join('');
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" font-family="DejaVu Sans Mono, monospace" fill="${plate.ink}"><rect width="${width}" height="${height}" rx="14" fill="${plate.paper}" stroke="${plate.ink}" stroke-width="6"/><circle cx="26" cy="26" r="9"/><circle cx="${width - 26}" cy="26" r="9"/><text x="${width / 2}" y="78" font-size="36" text-anchor="middle" font-weight="bold">${escaped(plate.title)}</text><path d="M40 98H${width - 40}" stroke="${plate.ink}" stroke-width="3"/>${rows}</svg>`;
}

/** The plate as a JPEG of 1280 by 960. */
export async function photograph(plate: Plate, seed: number): Promise<Buffer> {
  const roll = dice(seed);
  const width = 1280;
  const height = 960;
  const drawn = await sharp(Buffer.from(svgOf(plate)))
    .rotate(plate.tilt, { background: { r: 118, g: 122, b: 120, alpha: 1 } })
    .resize(1100, 820, { fit: 'inside' })
    .png()
    .toBuffer();
  const grain = Buffer.alloc(width * height * 3);
  for (let i = 0; i < width * height; i++) {
    const g = 128 + normal(roll) * 9;
    grain[i * 3] = grain[i * 3 + 1] = grain[i * 3 + 2] = Math.max(0, Math.min(255, g));
  }
  const noise = await sharp(grain, { raw: { width, height, channels: 3 } })
    .png()
    .toBuffer();
  return sharp({ create: { width, height, channels: 3, background: { r: 118, g: 122, b: 120 } } })
    .composite([
      { input: drawn, gravity: 'center' },
      { input: noise, blend: 'soft-light' },
    ])
    .jpeg({ quality: 62, mozjpeg: true })
    .toBuffer();
}
