// Why: a verb is listed once; its persons and tenses are made from it, so that none is forgotten.

/** How a form of a verb is used: base ("they run"), third person, past, or with -ing. */
export type VerbForm = 'base' | 'third' | 'past' | 'ing';

const irregular: Readonly<Record<string, readonly [past: string, participle?: string]>> = {
  be: ['was', 'been'],
  blow: ['blew', 'blown'],
  bring: ['brought'],
  build: ['built'],
  burn: ['burned', 'burnt'],
  catch: ['caught'],
  come: ['came', 'come'],
  cut: ['cut'],
  do: ['did', 'done'],
  draw: ['drew', 'drawn'],
  drive: ['drove', 'driven'],
  fall: ['fell', 'fallen'],
  feel: ['felt'],
  find: ['found'],
  freeze: ['froze', 'frozen'],
  get: ['got', 'gotten'],
  give: ['gave', 'given'],
  go: ['went', 'gone'],
  have: ['had'],
  hit: ['hit'],
  hold: ['held'],
  keep: ['kept'],
  let: ['let'],
  light: ['lit', 'lighted'],
  make: ['made'],
  put: ['put'],
  read: ['read'],
  reset: ['reset'],
  ring: ['rang', 'rung'],
  rise: ['rose', 'risen'],
  run: ['ran', 'run'],
  set: ['set'],
  shine: ['shone', 'shined'],
  shut: ['shut'],
  sing: ['sang', 'sung'],
  sit: ['sat'],
  spin: ['spun'],
  stand: ['stood'],
  swing: ['swung'],
  take: ['took', 'taken'],
  throw: ['threw', 'thrown'],
  wind: ['wound'],
};
/** Of one syllable with a short vowel, or stressed on its last. */
const doubles = (verb: string): boolean =>
  /^(?:[^aeiou]*|qu)[aeiou][bdgklmnprtvz]$/.test(verb) || /^(?:transfer|commit|refit|reset)$/.test(verb);
const ending = (verb: string, end: 'ed' | 'ing'): string =>
  /[^aeiou]e$/.test(verb) || (/ue$/.test(verb) && end === 'ing') || (/e$/.test(verb) && end === 'ed')
    ? verb.slice(0, -1) + end
    : /[^aeiou]y$/.test(verb) && end === 'ed'
      ? `${verb.slice(0, -1)}ied`
      : doubles(verb)
        ? `${verb}${verb.at(-1)}${end}`
        : verb + end;

/** Every form of a verb with what it is. "Run" is base and participle; both are kept. */
export function formsOf(verb: string): readonly (readonly [form: string, as: VerbForm])[] {
  const third = /(?:s|x|z|ch|sh|o)$/.test(verb)
    ? `${verb}es`
    : /[^aeiou]y$/.test(verb)
      ? `${verb.slice(0, -1)}ies`
      : `${verb}s`;
  const odd = irregular[verb];
  const pasts = odd ? odd.filter((p) => p !== verb) : [ending(verb, 'ed')];
  return [
    [verb, 'base'],
    [third, 'third'],
    ...pasts.map((p) => [p as string, 'past'] as const),
    [ending(verb, 'ing'), 'ing'],
  ];
}

/** True for a verb whose past is its base, as "shut": both uses must be tried. */
export const isSame = (verb: string): boolean => irregular[verb]?.[0] === verb;
