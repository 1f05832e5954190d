// Why: seeded dice, so that the invented data is the same whoever makes it.

/** A generator of numbers in [0, 1) from a seed (mulberry32, from memory). */
export function dice(seed: number): () => number {
  let a = seed >>> 0;
  return () => {
    a = (a + 0x6d2b79f5) >>> 0;
    let t = Math.imul(a ^ (a >>> 15), 1 | a);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

/** A normal deviate of mean 0 and standard deviation 1 (Box-Muller). */
export const normal = (roll: () => number): number =>
  Math.sqrt(-2 * Math.log(1 - roll())) * Math.cos(2 * Math.PI * roll());
