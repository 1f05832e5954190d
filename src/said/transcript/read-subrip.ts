// Why: SubRip is WebVTT's older cousin and still what many tools write.

import { blocksOf, gather, readBlock, split } from './read-webvtt.ts';
import { readSrtTimestamp } from './timestamp.ts';
import type { Transcript } from './transcript.ts';

/** Reads SubRip: a number, the times, the words, an empty line. A missing number is let pass. */
export function readSubRip(text: string): Transcript {
  return gather(
    blocksOf(text)
      .flatMap(split)
      .map((b) => readBlock(b, readSrtTimestamp)),
  );
}
