// Why: people say "constructor"; a table looked up by what was said must hold nothing but its own words.

/** The table without anything inherited, so that a word it does not hold gives undefined. */
export const wordTable = <T>(words: Record<string, T>): Readonly<Record<string, T>> =>
  Object.assign(Object.create(null) as Record<string, T>, words);
