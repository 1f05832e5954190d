// Why: a state is one word of one list, so that a rule, a listing and a search mean the same by it.

export type Polarity = 'good' | 'bad' | 'neutral';

/** State -> whether it is good news of the part it is said of. Trade usage (common practice, no source). */
export const states = {
  yes: 'neutral', no: 'neutral', present: 'neutral', absent: 'neutral', full: 'neutral', empty: 'neutral', noted: 'neutral',
  good: 'good', works: 'good', sound: 'good', dry: 'good', tight: 'good', clean: 'good', clear: 'good', straight: 'good', quiet: 'good',
  holds: 'good', new: 'good', repaired: 'neutral', replaced: 'neutral', serviced: 'good', cold: 'good', hot: 'good', passes: 'good',
  worn: 'bad', damaged: 'bad', missing: 'bad', fails: 'bad', intermittent: 'bad', weak: 'bad', slow: 'bad', cracked: 'bad', chipped: 'bad',
  leaking: 'bad', weeping: 'bad', dripping: 'bad', loose: 'bad', soft: 'bad', stained: 'bad', wet: 'bad', damp: 'bad', stuck: 'bad',
  sticky: 'bad', noisy: 'bad', corroded: 'bad', rusted: 'bad', rotted: 'bad', expired: 'bad', burnt: 'bad', torn: 'bad', faded: 'bad',
  fogged: 'bad', bent: 'bad', dented: 'bad', scratched: 'bad', broken: 'bad', low: 'bad', sagging: 'bad', separated: 'bad', delaminated: 'bad',
  mildewed: 'bad', warm: 'bad', unhooked: 'bad', drifting: 'bad', vibrating: 'bad', pulling: 'bad', smoking: 'bad', smelling: 'bad',
  discharged: 'bad', tripped: 'bad', overdue: 'bad', marginal: 'bad', dirty: 'bad', crazed: 'bad', lit: 'bad', out: 'bad', poor: 'bad',
} as const satisfies Record<string, Polarity>;

export type State = keyof typeof states;

/** True when the word is in the list of states. */
export const isState = (word: string): word is State => Object.hasOwn(states, word);

/** The states as a list, for schemas and pickers. */
export const stateWords = Object.keys(states) as readonly State[];
