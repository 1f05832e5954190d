// Why: the main job from the terminal, against watching the film again, which is what people do today.
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { readWebVtt } from '../src/said/transcript/read-webvtt.ts';
import type { Measured } from './main.ts';
import { medianMs, showMs } from './median.ts';

const root = join(import.meta.dirname, '..');
const walk = join(root, 'demo', 'walks', 'hollowell-tern-38');

export async function benchPacket(): Promise<readonly Measured[]> {
  const out = mkdtempSync(join(tmpdir(), 'walkwright-bench-'));
  const ms = await medianMs(5, () => {
    const ran = spawnSync(
      process.execPath,
      [join(root, 'dist', 'walkwright.mjs'), 'packet', walk, '--out', out],
      {
        encoding: 'utf8',
      },
    );
    if (ran.status !== 0) throw new Error(`packet failed: ${ran.stderr}`);
  });
  rmSync(out, { recursive: true, force: true });
  const film = readWebVtt(readFileSync(join(walk, 'walk.vtt'), 'utf8')).cues.at(-1)!.end * 1000;
  return [
    {
      name: 'packet of the demo walk, terminal, whole process',
      measured: showMs(ms),
      instead: `watching the film again: ${(film / 60_000).toFixed(1)} min`,
      ratio: `${Math.round(film / ms)} times faster`,
    },
  ];
}
