// Why: whatever a recogniser writes, hearing gives an answer and accounts for every cue; a seeded sample of what `npm run hear-fuzz` does by the million.
import { expect, test } from 'vitest';
import { hear } from '../../src/said/hear/hear.ts';
import { readTranscript } from '../../src/said/transcript/read-transcript.ts';
import { brokenTranscript, dice, hearingFault } from './mutate.ts';
import { walkTalk } from './walk-talk.ts';

test('4,000 broken transcripts are heard without a fault', () => {
  const roll = dice(20261125);
  const talk = walkTalk();
  for (let n = 0; n < 4000; n++) {
    const text = brokenTranscript(roll, talk);
    expect(hearingFault(text), text).toBeUndefined();
  }
}, 600_000);

test('the same broken transcript is heard the same way twice', () => {
  const roll = dice(7);
  const talk = walkTalk();
  for (let n = 0; n < 200; n++) {
    const cues = readTranscript('broken.vtt', brokenTranscript(roll, talk)).cues;
    expect(hear(cues)).toEqual(hear(cues));
  }
});
