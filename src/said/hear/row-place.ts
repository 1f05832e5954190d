// Why: a row has one place in words: the side or corner, then the room, landmark or condition that was said with it.
import type { HeardObservation } from './heard.ts';
import { homePlace } from './home-place.ts';
import { placeWords } from './place-words.ts';

/** The place said or, without one, the only one the part has; then what else was said of where. */
export function rowPlace(o: Pick<HeardObservation, 'part' | 'place' | 'where'>): string | undefined {
  const kitchen = o.place === 'galley' && o.where?.includes('kitchen');
  const said = o.place === undefined ? homePlace(o.part) : placeWords(o.place);
  const again = said !== undefined && o.where?.includes(said.replace('room', ''));
  const bits = [kitchen || again ? undefined : said, o.where].filter((b) => b !== undefined);
  return bits.length === 0 ? undefined : bits.join(', ');
}
