// Why: a misspelt id is told with the one that was probably meant.

function distance(a: string, b: string): number {
  let row = Array.from({ length: b.length + 1 }, (_, i) => i);
  for (let i = 1; i <= a.length; i++) {
    const next = [i];
    for (let j = 1; j <= b.length; j++) {
      next.push(Math.min(row[j]! + 1, next[j - 1]! + 1, row[j - 1]! + (a[i - 1] === b[j - 1] ? 0 : 1)));
    }
    row = next;
  }
  return row[b.length]!;
}

/** The word of a list with the fewest letters changed, when at most a third of them are; "" when none is near. */
export function nearest(word: string, words: readonly string[]): string {
  const asked = word.slice(0, 80);
  let best = '';
  let least = Math.max(1, Math.floor(asked.length / 3)) + 1;
  for (const w of words) {
    if (Math.abs(w.length - asked.length) >= least) continue;
    const d = distance(asked, w);
    if (d < least) [best, least] = [w, d];
  }
  return best;
}
