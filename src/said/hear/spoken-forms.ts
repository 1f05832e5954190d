// Why: a verb of the trade is written once; its forms are made, so that no tense is forgotten.

/** The forms of a verb, each a single word. */
export interface Forms {
  readonly base: string;
  readonly past: readonly string[];
  readonly ing: string;
}

const irregular: Readonly<Record<string, readonly string[]>> = {
  see: ['saw', 'seen'],
  read: ['read'],
  find: ['found'],
  get: ['got', 'gotten'],
  make: ['made'],
  tell: ['told'],
  know: ['knew', 'known'],
  say: ['said'],
  speak: ['spoke', 'spoken'],
  swear: ['swore', 'sworn'],
  run: ['ran', 'run'],
  light: ['lit', 'lighted'],
  drive: ['drove', 'driven'],
  take: ['took', 'taken'],
  put: ['put'],
  have: ['had'],
  lay: ['laid'],
  stick: ['stuck'],
  shine: ['shone', 'shined'],
  set: ['set'],
  spin: ['spun'],
  do: ['did', 'done'],
  go: ['went', 'gone'],
  hit: ['hit'],
  feel: ['felt'],
  ride: ['rode', 'ridden'],
  tow: ['towed'],
  give: ['gave', 'given'],
  throw: ['threw', 'thrown'],
  redo: ['redid', 'redone'],
  rebuild: ['rebuilt'],
  rewire: ['rewired'],
  write: ['wrote', 'written'],
  send: ['sent'],
  bring: ['brought'],
  hold: ['held'],
  try: ['tried'],
  blow: ['blew', 'blown'],
  bleed: ['bled'],
  mess: ['messed'],
  fit: ['fitted', 'fit'],
  leave: ['left'],
  cut: ['cut'],
  shut: ['shut'],
};
/** Short verbs that double their last letter. */
const doubling = new Set(
  'flip plug drop unplug snug swap patch_ probe_ dip top strip sip tap pop'.split(' '),
);

/** The forms of a verb, from its base. */
export function formsOf(base: string): Forms {
  const stem = base.endsWith('e') && !base.endsWith('ee') ? base.slice(0, -1) : base;
  const twin = doubling.has(base) || /^(?:get|put|run|set|spin|hit|fit|cut|shut)$/.test(base);
  const root = twin ? base + base.slice(-1) : stem;
  const regular = /[^aeiou]y$/.test(base) ? `${base.slice(0, -1)}ied` : `${root}ed`;
  return { base, past: irregular[base] ?? [regular], ing: `${root}ing` };
}
