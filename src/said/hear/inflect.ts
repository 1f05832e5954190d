// Why: a verb is listed once; "leaks", "leaking", "leaked" follow by the rules of English, and the odd ones are written out.

/** The forms of a verb: as it is, with s, with -ing, its past, its participle. */
export interface VerbForms {
  readonly base: string;
  readonly s: string;
  readonly ing: string;
  readonly past: string;
  readonly part: string;
}

const vowel = /[aeiou]/;
/** One short vowel and one consonant at the end of one syllable: the consonant doubles ("drip, dripping"). */
const doubles = (verb: string): boolean =>
  /[^aeiou][aeiou][bdgklmnprtv]$/.test(verb) && (verb.match(/[aeiouy]+/g)?.length ?? 0) === 1;

/** The forms of `verb`, written "break/broke/broken" where they follow no rule; the rest of a phrase is kept: "kick out". */
export function formsOf(written: string): VerbForms {
  const [head = '', ...tail] = written.split(' ');
  const [verb = '', past, part] = head.split('/');
  const end = tail.length > 0 ? ` ${tail.join(' ')}` : '';
  const y = /[^aeiou]y$/.test(verb);
  const e = verb.endsWith('e');
  const long = doubles(verb) ? `${verb}${verb.at(-1) ?? ''}` : verb;
  const s = /(?:s|x|z|ch|sh|o)$/.test(verb) ? `${verb}es` : y ? `${verb.slice(0, -1)}ies` : `${verb}s`;
  const ing =
    e && !/(?:ee|oe|ye|nge)$/.test(verb)
      ? verb.endsWith('ie')
        ? `${verb.slice(0, -2)}ying`
        : `${verb.slice(0, -1)}ing`
      : `${long}ing`;
  const ed = e ? `${verb}d` : y && !vowel.test(verb.at(-2) ?? '') ? `${verb.slice(0, -1)}ied` : `${long}ed`;
  return {
    base: verb + end,
    s: s + end,
    ing: ing + end,
    past: (past ?? ed) + end,
    part: (part ?? past ?? ed) + end,
  };
}
