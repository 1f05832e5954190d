// Why: a recording to play beside the transcript: the written walk read aloud by a speech synthesizer, cue by cue, in time.
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { SpokenCue } from './speech.ts';

const rate = 22_050;

/** True when the programs that read aloud and encode are on this machine (Debian packages espeak-ng and ffmpeg). */
export const canRecord = (): boolean =>
  ['espeak-ng', 'ffmpeg'].every(
    (program) => spawnSync(program, [program === 'ffmpeg' ? '-version' : '--version']).status === 0,
  );

function read(program: string, args: string[], input?: string): void {
  const result = spawnSync(program, args, input === undefined ? {} : { input });
  if (result.status !== 0) throw new Error(`${program} failed: ${result.stderr}`);
}

/** 16-bit samples of a WAV file made by espeak-ng (a 44-byte head, mono, 22,050 a second). */
const samplesOf = (file: string): Int16Array => {
  const bytes = readFileSync(file).subarray(44);
  return new Int16Array(bytes.buffer.slice(bytes.byteOffset, bytes.byteOffset + (bytes.byteLength & ~1)));
};

/** The recording as WebM with Opus, 16 kbit/s. A cue that would run into the next is read faster. */
export function record(cues: readonly SpokenCue[]): Buffer {
  const scratch = mkdtempSync(join(tmpdir(), 'walkwright-demo-'));
  try {
    const wav = join(scratch, 'cue.wav');
    const track = new Int16Array(Math.ceil((cues.at(-1)!.end + 1) * rate));
    for (const cue of cues) {
      const room = Math.floor((cue.end - cue.start) * rate);
      let speed = 165;
      let spoken: Int16Array;
      do {
        read('espeak-ng', ['-v', 'en-us', '-s', String(speed), '-w', wav, '--stdin'], cue.text);
        spoken = samplesOf(wav);
        speed += 25;
      } while (spoken.length > room && speed < 420);
      track.set(spoken.subarray(0, room), Math.floor(cue.start * rate));
    }
    const raw = join(scratch, 'track.raw');
    writeFileSync(raw, Buffer.from(track.buffer));
    const out = join(scratch, 'recording.webm');
    read('ffmpeg', [
      '-y',
      '-f',
      's16le',
      '-ar',
      String(rate),
      '-ac',
      '1',
      '-i',
      raw,
      '-c:a',
      'libopus',
      '-b:a',
      '16k',
      '-fflags',
      '+bitexact',
      '-flags:a',
      '+bitexact',
      out,
    ]);
    return readFileSync(out);
  } finally {
    rmSync(scratch, { recursive: true, force: true });
  }
}
