// Why: a row has one place in words: the side or corner, then the room, landmark or condition that was said with it.
import type { HeardObservation } from './heard.ts';
import { homePlace } from './home-place.ts';
import { placeWords } from './place-words.ts';

const sides = /\b(?:left|right|driver|passenger)\b/;
const ends = /\b(?:front|rear)\b/;
/** What makes it needless, or wrong, to say where the part always is. */
const against = (home: string): RegExp =>
  sides.test(home) ? sides : ends.test(home) ? ends : /\b(?:bath|bathroom|bedroom|galley|kitchen|living)\b/;

/** The place said, with what else was said of where; before it the only place the part has, if nothing said that. */
export function rowPlace(o: Pick<HeardObservation, 'part' | 'place' | 'where'>): {
  readonly place: string | undefined;
  readonly assumed: string | undefined;
} {
  const kitchen = o.place === 'galley' && o.where?.includes('kitchen');
  const said = o.place === undefined || kitchen ? undefined : placeWords(o.place);
  const rest = [said, o.where].filter((b) => b !== undefined);
  const home = homePlace(o.part);
  const known = home !== undefined && rest.some((b) => against(home).test(b));
  const assumed = known ? undefined : home;
  const bits = assumed === undefined ? rest : [assumed, ...rest];
  return { place: bits.length === 0 ? undefined : [...new Set(bits)].join(', '), assumed };
}
