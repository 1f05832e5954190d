// Why: a state is one word of a list; on a page it stands as a person would say it of the part: "surging as it runs", not "operates surging".
import { generalAspects } from '../catalogue/general-aspect.ts';
import { aspectOf } from '../catalogue/index.ts';

/** States whose bare word says too little. The rest stand as they are: "cracked", "loose", "torn". */
const phrases: Readonly<Record<string, string>> = {
  fails: 'not working',
  surging: 'surging as it runs',
  lagging: 'lagging behind',
  sticky: 'sticking',
  intermittent: 'working only off and on',
  drifting: 'drifting, not holding',
  weeping: 'weeping fluid',
  out: 'out, not lit',
  marginal: 'only just good enough',
  unsafe: 'not to be driven on or used as it is, in the walker’s words',
  vibrating: 'vibrating',
  pulling: 'pulling to one side',
  lit: 'lit as a warning',
  expired: 'past its date',
  overdue: 'overdue for service',
  warm: 'warm where it should be cold',
  weak: 'weak',
  open: 'open where it should be closed',
};

/** Aspects of one part's own that a state names already: "slow" needs no "speed" before it. */
const saysItself = new Set([
  'strength',
  'speed',
  'cooling',
  'sag',
  'flex',
  'wet',
  'safety',
  'heat',
  'gfci_trips',
  'missing',
  'cracked',
  'worn',
  'broken',
  'torn',
]);

/** What can be said of any part is told by its state alone. */
const isGeneral = (aspectId: string): boolean => generalAspects.some((a) => a.id === aspectId);

/** The word of a state, as it is said of a part. */
export const stateWords = (state: string): string => phrases[state] ?? state;

/** "loose", "fabric torn", "burn marks seen", "not there": bad news of a part, without the part's name. */
export function badStateWords(part: string, aspectId: string, state: string): string {
  const aspect = aspectOf(part, aspectId);
  const name = aspect?.name ?? aspectId.replaceAll(/[_.-]/g, ' ');
  if (aspectId === 'present' && (state === 'no' || state === 'absent')) return 'not there';
  if (aspectId === 'operates' && state === 'no') return 'not working';
  if (state === 'yes') return aspect?.good === 'no' ? `${name} seen` : name;
  if (state === 'no') return aspect?.good === 'yes' ? `${name}: no` : `no ${name}`;
  const own = aspect !== undefined && !isGeneral(aspectId) && !saysItself.has(aspectId);
  return own && name !== state ? `${name} ${stateWords(state)}` : stateWords(state);
}
