// Why: cue text carries marks and entities that nobody spoke; only the words are kept.

const named: Readonly<Record<string, string>> = {
  amp: '&',
  lt: '<',
  gt: '>',
  nbsp: ' ',
  lrm: '',
  rlm: '',
  quot: '"',
  apos: "'",
};

const entity = (whole: string, name: string): string => {
  if (name.startsWith('#')) {
    const code =
      name[1] === 'x' || name[1] === 'X'
        ? Number.parseInt(name.slice(2), 16)
        : Number.parseInt(name.slice(1), 10);
    return Number.isFinite(code) && code > 31 && code < 0x110000 && !(code >= 0xd800 && code < 0xe000)
      ? String.fromCodePoint(code)
      : whole;
  }
  return named[name] ?? whole;
};

/** The spoken words of a cue payload: tags removed, entities decoded, white space single. */
export function plainWords(payload: string): string {
  return payload
    .replace(/<[^<>]*>/g, '')
    .replace(/\{\\[^{}]*\}/g, '')
    .replace(/&(#?[a-zA-Z0-9]{1,8});/g, entity)
    .replace(/\s+/g, ' ')
    .trim();
}
