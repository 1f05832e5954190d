// Why: `npm run hear-fuzz -- COUNT SEED` hears broken transcripts by the million, and says how long the slowest took.
import { brokenTranscript, dice, hearingFault } from '../test/walks/mutate.ts';
import { walkTalk } from '../test/walks/walk-talk.ts';

const count = Number(process.argv[2] ?? 1_000_000);
const seed = Number(process.argv[3] ?? 1);
const roll = dice(seed);
const talk = walkTalk();
let slowest = 0;
let faults = 0;
const began = performance.now();
for (let n = 1; n <= count; n++) {
  const text = brokenTranscript(roll, talk);
  const from = performance.now();
  let fault: string | undefined;
  try {
    fault = hearingFault(text);
  } catch (error) {
    fault = String(error);
  }
  slowest = Math.max(slowest, performance.now() - from);
  if (fault) {
    faults++;
    if (faults <= 5) console.log(`${fault}\n${text}\n`);
  }
  if (n % Math.max(1, Math.round(count / 20)) === 0) {
    const gone = (performance.now() - began) / 1000;
    console.log(`${n} of ${count}, ${gone.toFixed(0)} s, slowest ${slowest.toFixed(1)} ms, ${faults} faults`);
  }
}
process.exit(faults === 0 ? 0 : 1);
