// Why: a reviewer reads a stretch of words once and rules on all that was heard in it, not once for every value.
import type { Observation } from '../../../said/entry.ts';

/** As much as is read in one look: seconds of speech and lines of meaning. House choice, no source. */
const longest = 10;
const most = 6;

/** Observation -> the first one of its breath. Handed in the order in which they were said. */
export function breathsOf(spoken: readonly Observation[]): ReadonlyMap<string, string> {
  const breaths = new Map<string, string>();
  let first: Observation | undefined;
  let count = 0;
  for (const o of spoken) {
    if (o.source.from !== 'speech') continue;
    const goesOn =
      first?.source.from === 'speech' &&
      first.source.media === o.source.media &&
      count < most &&
      o.source.start - first.source.start <= longest;
    if (!goesOn) {
      first = o;
      count = 0;
    }
    count += 1;
    breaths.set(o.id, first?.id ?? o.id);
  }
  return breaths;
}
