// Why: what the stations of a walk must beat: splitting talk into topics by its words alone, knowing nothing of motorhomes.
// TextTiling: M. A. Hearst, "TextTiling: Segmenting Text into Multi-paragraph Subtopic Passages", Computational Linguistics 23(1), 1997.

/** Words of no topic; a short list of our own, as the method asks for one. */
const stop = new Set(
  (
    'a an the this that these those it its he she they them i we you my your our his her and or but so because if when then than as of in on at to for from with by up down out over under off into is are was were be been am do does did ' +
    "has have had got get can could will would should may might not no don't doesn't didn't isn't there here what which who how one two just like all some any it's that's there's i'm we're you're okay uh um well now right good about also too very"
  ).split(' '),
);

/** The root of a word, roughly: enough that "leak" and "leaking" are one. */
const stem = (word: string): string => (word.length > 4 ? word.replace(/(?:ing|ed|es|s)$/, '') : word);

/** Pseudo-sentences of `w` words; a block is `k` of them. The paper's own defaults. */
const w = 20;
const k = 10;

/**
 * Word indexes at which a new topic begins. `words` as written, in order; a boundary only falls between
 * pseudo-sentences of 20 words. Depth scores above mean - sd / 2 count (the paper's liberal cut-off).
 */
export function textTiling(words: readonly string[]): number[] {
  const bare = words.map((x) => stem(x.toLowerCase().replace(/[^a-z']/g, '')));
  const blocks: Map<string, number>[] = [];
  for (let i = 0; i < bare.length; i += w) {
    const counts = new Map<string, number>();
    for (const x of bare.slice(i, i + w))
      if (x !== '' && !stop.has(x)) counts.set(x, (counts.get(x) ?? 0) + 1);
    blocks.push(counts);
  }
  const sum = (from: number, to: number): Map<string, number> => {
    const all = new Map<string, number>();
    for (const b of blocks.slice(Math.max(0, from), to))
      for (const [x, n] of b) all.set(x, (all.get(x) ?? 0) + n);
    return all;
  };
  const likeness = (a: Map<string, number>, b: Map<string, number>): number => {
    let dot = 0;
    let aa = 0;
    let bb = 0;
    for (const [x, n] of a) {
      dot += n * (b.get(x) ?? 0);
      aa += n * n;
    }
    for (const n of b.values()) bb += n * n;
    return aa === 0 || bb === 0 ? 0 : dot / Math.sqrt(aa * bb);
  };
  const gaps = Array.from({ length: Math.max(0, blocks.length - 1) }, (_, i) =>
    likeness(sum(i + 1 - k, i + 1), sum(i + 1, i + 1 + k)),
  );
  const smooth = gaps.map((_, i) => {
    const near = gaps.slice(Math.max(0, i - 1), i + 2);
    return near.reduce((a, b) => a + b, 0) / near.length;
  });
  const depth = smooth.map((here, i) => {
    let left = i;
    while (left > 0 && (smooth[left - 1] ?? 0) >= (smooth[left] ?? 0)) left--;
    let right = i;
    while (right < smooth.length - 1 && (smooth[right + 1] ?? 0) >= (smooth[right] ?? 0)) right++;
    return (smooth[left] ?? 0) - here + (smooth[right] ?? 0) - here;
  });
  const mean = depth.reduce((a, b) => a + b, 0) / Math.max(1, depth.length);
  const sd = Math.sqrt(depth.reduce((a, b) => a + (b - mean) ** 2, 0) / Math.max(1, depth.length));
  const out: number[] = [];
  depth.forEach((d, i) => {
    const peak = d >= (depth[i - 1] ?? 0) && d > (depth[i + 1] ?? 0);
    if (peak && d > mean - sd / 2 && i - ((out.at(-1) ?? -99 * w) / w - 1) > 3) out.push((i + 1) * w);
  });
  return out;
}
