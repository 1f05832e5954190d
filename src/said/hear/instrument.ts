// Why: once a heat gun or a moisture meter is out, bare numbers are what it shows, of whatever part it is held to.
// Trade usage (common practice, no source).
import { PhraseIndex } from './phrase-index.ts';
import type { Talk } from './talk.ts';

/** What an instrument reads: the general aspect, and where its readings lie, in the unit of the aspect. */
export interface Instrument {
  readonly aspect: string;
  readonly within: readonly [low: number, high: number];
  /** Only of these parts, where there are any. */
  readonly of?: RegExp;
}

const instruments = new PhraseIndex<Instrument>();
const add = (said: Instrument, phrases: string): void => {
  for (const p of phrases.split(',')) instruments.add(p, said);
};
add(
  { aspect: 'measured_temperature', within: [20, 500] },
  'heat gun,with the gun,with a gun,on the gun,by the gun,off the gun,the gun says,the gun reads,temp gun,temperature gun,infrared,infrared gun,laser thermometer,ir gun,thermal gun,thermometer,infra red,point and shoot,laser gun',
);
add(
  {
    aspect: 'measured_share',
    within: [3, 60],
    of: /wall|floor|ceiling|cab_over|roof|cabinet|wardrobe|window|slide|bay|under|interior|corner|shower|bed|sink|door|skylight|vent|countertop|stain/,
  },
  'moisture meter,moisture,damp meter,the pins,pin meter,probe,stuck the pins,moisture reading,moisture readings,the meter,my meter,a meter,meter on,meter to,meter in,meter against,meter says,meter reads,meter shows,damp reading,damp readings,pinless,moister meter',
);
add({ aspect: 'measured_current', within: [0.2, 120] }, 'amp clamp,clamp meter,clamp on,current clamp,clamp');

const reach = 45;
interface Seen {
  at: number;
  upTo: number;
  tool: Instrument | undefined;
}
const seen = new WeakMap<Talk, Seen>();

/** The instrument that the talk is reading at word `at`, if one was named lately. */
export function instrumentAt(talk: Talk, at: number): (Instrument & { readonly part?: string }) | undefined {
  let s = seen.get(talk);
  if (!s) {
    s = { at: -999, upTo: 0, tool: undefined };
    seen.set(talk, s);
  }
  for (; s.upTo < at; s.upTo++) {
    const hit = instruments.at(talk.marks.words, s.upTo);
    if (hit && !talk.scopes.denied[s.upTo]) {
      s.at = s.upTo;
      s.tool = hit.values[0];
    }
  }
  if (at - s.at > reach || !s.tool) return undefined;
  // "heat gun on the drums": what it is held to, where nothing was named since
  for (let i = at - 1; i > s.at; i--) {
    const part = talk.marks.mentionAt.from(i)?.parts[0];
    if (part) return i - s.at <= 7 ? { ...s.tool, part } : s.tool;
  }
  return s.tool;
}

/** "The plug tester says": with this behind it a word names a tool and no part. */
export const isTester = (next: string): boolean =>
  /^(?:testers?|checkers?|analyzers?|analysers?)$/.test(next);
