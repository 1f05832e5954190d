// Why: at the wheel and at the engine parts go unnamed: "slips in fourth" is the transmission, "drifts to the right" the alignment.
// Trade usage (common practice, no source).
import type { Clause } from './clause.ts';
import { phraseList } from './phrase-index.ts';
import type { Talk } from './talk.ts';

const spread = (heads: string, tails: string): string[] =>
  heads.split(',').flatMap((h) => tails.split(',').map((t) => `${h} ${t}`));

const gears = 'first,second,third,fourth,fifth,sixth,low,high,gear,top gear,low gear,high gear,drive,reverse';
/** Words of a clause, by which a failure told without its part is understood. */
const gearTalk = phraseList([
  ...spread(
    'in,into,out of,to,from,between,through,going into,shift into,go into,puts it in,drop it in',
    gears,
  ),
  ...spread(
    'reverse,drive,first gear,second gear,third gear,fourth gear',
    'takes,took,is,hesitates,slips,grabs,engages,bangs,clunks,slams,wont',
  ),
  ...'between gears,the gears,any gear,every gear,each gear,one two shift,two three shift,three four shift,one two,two three,three four,four five,five six,shift points'.split(
    ',',
  ),
]);
const runTalk = phraseList(
  'at idle,at an idle,on idle,cold start,cold starts,on start up,at start up,on startup,at startup,first start,when cold,when its cold,when hot,under load,under power,under acceleration,when you romp on it,romp on it,when you get on it,on the throttle,off throttle,give it gas,cranks,cranking,revs,rev it,throttle,wide open,on a cold morning'.split(
    ',',
  ),
);
const climbTalk = phraseList(
  'on the grade,on a grade,up the grade,on the hill,on a hill,up the hill,on the climb,climbing,on the pass,up the pass,in the mountains,into the red,in the red,needle'.split(
    ',',
  ),
);
const lanes = phraseList(
  'to the right,to the left,right,left,to one side,all over,over the lane,the lane,the road,the ditch,the shoulder,the center line,the centerline,hands off,let go'.split(
    ',',
  ),
);
/** "Three inches of slop in the wheel", "hands off the wheel": the one that steers. */
const steered =
  /^(?:play|slop|slack|shimmy|vibration|shake|wobble|buzz|off|of|behind|grip|looseness|lash|movement|judder)$/;

/** True where "wheel" at `i` is the one that is held. */
export function isSteeringWheel(words: readonly { readonly norm: string }[], i: number): boolean {
  const n = (k: number): string => words[k]?.norm ?? '';
  if (!/^(?:the|your|my|that)$/.test(n(i - 1))) return false;
  if (!/^(?:in|of|off|on|at|behind|through)$/.test(n(i - 2))) return false;
  if (n(i - 2) === 'behind' || n(i - 2) === 'through') return true;
  return (
    (steered.test(n(i - 3)) && n(i - 3) !== 'of') ||
    /^(?:go|hands|hand)$/.test(n(i - 3)) ||
    (n(i - 2) === 'at' && n(i - 3) !== 'leak')
  );
}

/** What a failure of this aspect and state is of where the clause names nothing that can be meant. */
export function meantByWords(talk: Talk, clause: Clause, aspect: string, state: string): string | undefined {
  const { words } = talk.marks;
  const has = (list: typeof gearTalk): boolean => {
    for (let k = clause.from; k < clause.to; k++) {
      const hit = list.at(words, k);
      if (hit && k + hit.length <= clause.to) return true;
    }
    return false;
  };
  if (/^(?:noise|operates|speed|loose|strength)$/.test(aspect) && has(gearTalk)) return 'transmission';
  if (/^(?:pulling|drifting)$/.test(state) && has(lanes)) return 'alignment';
  if (state === 'overheating' || (state === 'drifting' && has(climbTalk) && clause.numbers.length > 0))
    return 'engine';
  if (state === 'surging') return 'engine';
  if (/^(?:noise|operates|speed|strength)$/.test(aspect) && has(runTalk)) return 'engine';
  return undefined;
}
