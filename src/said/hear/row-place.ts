// Why: a row has one place in words: the side or corner, then the room, landmark or condition that was said with it.
import type { HeardObservation } from './heard.ts';
import { homePlace } from './home-place.ts';
import { placeWords } from './place-words.ts';

const sides = /\b(?:left|right|driver|passenger)\b/;
const ends = /\b(?:front|rear)\b/;
/** What makes it needless, or wrong, to say where the part always is. */
const against = (home: string): RegExp =>
  sides.test(home) ? sides : ends.test(home) ? ends : /\b(?:bath|bathroom|bedroom|galley|kitchen|living)\b/;

/** The place said or, without one, the only one the part has; then what else was said of where. */
export function rowPlace(o: Pick<HeardObservation, 'part' | 'place' | 'where'>): string | undefined {
  const kitchen = o.place === 'galley' && o.where?.includes('kitchen');
  const said = o.place === undefined || kitchen ? undefined : placeWords(o.place);
  const rest = [said, o.where].filter((b) => b !== undefined);
  const home = homePlace(o.part);
  const known = home !== undefined && rest.some((b) => against(home).test(b));
  const bits = home === undefined || known ? rest : [home, ...rest];
  return bits.length === 0 ? undefined : [...new Set(bits)].join(', ');
}
