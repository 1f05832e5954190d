// Why: what somebody makes of chosen words begins with a guess, so that most of it need not be typed.
import type { VehicleKind } from '../../../catalogue/vehicle-kind.ts';
import type { Cue, Observation, Value } from '../../../said/entry.ts';
import type { Chosen } from './word-pick.ts';

/** What the words may say. Every field may be changed before it is written. */
export interface Guess {
  readonly part: string | undefined;
  readonly place: string | undefined;
  readonly aspect: string | undefined;
  readonly value: Value | undefined;
}

/** Seconds of talk before the words that may name the part they speak of. House choice, no source. */
const lookBack = 20;

/**
 * What chosen words may mean: heard after what was said before them; if that gives nothing, heard alone; if that gives nothing
 * either, something of the part that was spoken of last. Never empty. The hearing is fetched when it is first wanted.
 */
export async function guessesOf(
  chosen: Chosen,
  cues: readonly Cue[],
  before: Observation | undefined,
  vehicle: VehicleKind | undefined,
): Promise<readonly Guess[]> {
  const { hear } = await import('../../../said/hear/hear.ts');
  const context = vehicle ? { vehicle } : {};
  const own: Cue = { start: chosen.start, end: chosen.end, text: chosen.words };
  const lead: Cue = { ...chosen.lead, end: chosen.start };
  const earlier = cues.filter((c) => c.end <= lead.start + 0.001 && c.end > lead.start - lookBack);
  const inPlace = hear([...earlier, ...(lead.text.trim() ? [lead] : []), own], context).observations.filter(
    (o) => o.start >= chosen.start - 0.001,
  );
  const heard = inPlace.length > 0 ? inPlace : hear([own], context).observations;
  const found = heard.map(({ part, place, aspect, value }) => ({ part, place, aspect, value }));
  return found.length > 0
    ? found
    : [{ part: before?.part, place: before?.place, aspect: before && 'condition', value: undefined }];
}
