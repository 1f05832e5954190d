// Why: makes demo/walks anew. Everything in it is invented; the same seeds give the same files.
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { comparablesCsv } from './comparables.ts';
import { simulate, toGpx, toMotionCsv } from './drive.ts';
import { photograph } from './plate.ts';
import { canRecord, record } from './recording.ts';
import { speak, toWebVtt } from './speech.ts';
import { ternPhotos } from './tern-38-photos.ts';
import { dunlinUnit, shop, ternUnit, wrenUnit } from './units.ts';

const make = import.meta.dirname;
const walks = join(make, '..', 'walks');

function write(folder: string, name: string, content: string | Buffer): void {
  mkdirSync(join(walks, folder), { recursive: true });
  writeFileSync(join(walks, folder, name), content);
}

const asJson = (value: unknown): string => `${JSON.stringify(value, null, 2)}\n`;
const quoted = (text: string): string => (/[",\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text);

for (const [folder, text, unit] of [
  ['hollowell-tern-38', 'tern-38.txt', ternUnit],
  ['pennick-dunlin-24', 'dunlin-24.txt', dunlinUnit],
  ['corley-wren-19', 'wren-19.txt', wrenUnit],
] as const) {
  const cues = speak(readFileSync(join(make, text), 'utf8'));
  const words = cues.reduce((n, c) => n + c.text.split(' ').length, 0);
  write(folder, 'unit.json', asJson(unit));
  write(folder, 'walk.vtt', toWebVtt(cues));
  write(folder, 'comps.csv', comparablesCsv(150, 150));
  write(folder, 'shop.json', asJson(shop));
  if (folder === 'hollowell-tern-38') {
    if (canRecord()) write(folder, 'recording.webm', record(cues));
    else console.log('The recording is left as it is: espeak-ng and ffmpeg are not on this machine.');
  }
  console.log(
    `${folder}: ${words} words in ${(cues.at(-1)!.end / 60).toFixed(1)} minutes, ${cues.length} cues`,
  );
}

const tern = 'hollowell-tern-38';
write(tern, 'readings.csv', readFileSync(join(make, 'tern-38-readings.csv'), 'utf8'));
const drive = simulate();
write(tern, 'drive.gpx', toGpx(drive, '2026-11-24T15:50:00Z'));
write(tern, 'motion.csv', toMotionCsv(drive.filter((_, i) => i % 2 === 0)));
mkdirSync(join(walks, tern, 'photos'), { recursive: true });
for (const [i, plate] of ternPhotos.entries())
  write(join(tern, 'photos'), plate.file, await photograph(plate, 100 + i));
write(
  tern,
  'photos.csv',
  `file,part,place,taken,caption\n${ternPhotos
    .map((p, i) =>
      [
        p.file,
        p.part,
        p.place ?? '',
        new Date(Date.UTC(2026, 10, 24, 13, 40 + i * 6)).toISOString(),
        quoted(`${p.caption} (drawn, invented)`),
      ].join(','),
    )
    .join('\n')}\n`,
);
console.log(
  `${tern}: ${ternPhotos.length} drawn photos, a drive of ${(drive.at(-1)!.t / 60).toFixed(1)} minutes`,
);
