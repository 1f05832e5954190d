// Why: mutations and benches want much real talk as one stream of words.
import { readFileSync } from 'node:fs';
import type { Cue } from '../../src/said/entry.ts';
import { readTranscript } from '../../src/said/transcript/read-transcript.ts';
import { openWalks } from './walk-score.ts';

/** The cues of a walk. */
export const cuesOf = (walk: string): readonly Cue[] =>
  readTranscript(`${walk}.vtt`, readFileSync(new URL(`../data/walks/${walk}.vtt`, import.meta.url), 'utf8'))
    .cues;

/** The cues of the walks that may be read while building, one walk after the other in time. */
export function walkCues(): Cue[] {
  const out: Cue[] = [];
  for (const walk of openWalks()) {
    const after = out.at(-1)?.end ?? 0;
    for (const c of cuesOf(walk)) out.push({ ...c, start: c.start + after, end: c.end + after });
  }
  return out;
}

/** Their words, as they were written. */
export const walkTalk = (): string[] => walkCues().flatMap((c) => c.text.split(/\s+/));
