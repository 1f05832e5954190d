// Why: mutations and benches want much real talk as one stream of words.
import { readFileSync } from 'node:fs';
import { readTranscript } from '../../src/said/transcript/read-transcript.ts';
import { openWalks } from './walk-score.ts';

/** The words of the walks that may be read while building, one after the other, as they were written. */
export const walkTalk = (): string[] =>
  openWalks().flatMap((walk) => {
    const text = readFileSync(new URL(`../data/walks/${walk}.vtt`, import.meta.url), 'utf8');
    return readTranscript(`${walk}.vtt`, text).cues.flatMap((c) => c.text.split(/\s+/));
  });
