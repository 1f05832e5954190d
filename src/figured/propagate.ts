// Why: how sure an answer is follows from how sure its inputs are; worked out here once for every figure, by moving each input.
import type { FigureCard, Have, Refused, Worked } from './figure.ts';
import type { Found, Moves } from './find-need.ts';

/** How an answer moves with each root, and which inputs each root reaches it through. */
export interface Spread {
  readonly moves: Moves;
  readonly through: ReadonlyMap<string, readonly string[]>;
}

type Outcome = Worked | Refused;
const isWorked = (o: Outcome): o is Worked => 'value' in o;

/** Which inputs each root reaches. */
function rootsOf(found: ReadonlyMap<string, Found>): Map<string, string[]> {
  const through = new Map<string, string[]>();
  for (const [name, f] of found) {
    for (const root of f.moves.keys()) through.set(root, [...(through.get(root) ?? []), name]);
  }
  return through;
}

function shifted(
  have: Have,
  found: ReadonlyMap<string, Found>,
  root: string,
  names: readonly string[],
  sign: 1 | -1,
): Have {
  const moved: Record<string, number | string | undefined> = { ...have };
  for (const name of names) {
    const f = found.get(name);
    if (f && typeof f.have === 'number') moved[name] = f.have + sign * (f.moves.get(root) ?? 0);
  }
  return moved;
}

/**
 * First order, by differences: every root is moved by its half width up and down, all inputs that hang on it together.
 * An answer in words that would change, or one that could not be given at either end, is refused as too close to call.
 */
export function propagate(
  card: FigureCard,
  have: Have,
  found: ReadonlyMap<string, Found>,
  at: Worked,
): Spread | Refused {
  const through = rootsOf(found);
  const moves = new Map<string, number>();
  for (const [root, names] of through) {
    const up = card.work(shifted(have, found, root, names, 1));
    const down = card.work(shifted(have, found, root, names, -1));
    if (typeof at.value === 'string') {
      const other = [up, down].find((o) => !isWorked(o) || o.value !== at.value);
      if (other) return tooClose(at, other);
      continue;
    }
    const high = isWorked(up) && typeof up.value === 'number' ? up.value : undefined;
    const low = isWorked(down) && typeof down.value === 'number' ? down.value : undefined;
    if (high !== undefined && low !== undefined) moves.set(root, (high - low) / 2);
    else if (high !== undefined) moves.set(root, high - at.value);
    else if (low !== undefined) moves.set(root, at.value - low);
    else return tooClose(at, up);
  }
  return { moves, through };
}

const tooClose = (at: Worked, other: Outcome): Refused => ({
  refused: 'too close to call',
  detail: `${at.value} | ${isWorked(other) ? other.value : other.refused}`,
});

/** Half width of an answer: its moves and its own doubt, as the root of the sum of squares. */
export const halfWidth = (moves: Moves, own: number): number => Math.hypot(own, ...moves.values());

/** Shares of the variance by input, largest first. Inputs that share a root share its name, joined with " + ". */
export function shares(
  spread: Spread,
  own: number,
): readonly { readonly name: string; readonly share: number }[] {
  const byName = new Map<string, number>();
  for (const [root, by] of spread.moves) {
    const name = (spread.through.get(root) ?? [root]).join(' + ');
    byName.set(name, (byName.get(name) ?? 0) + by * by);
  }
  if (own !== 0) byName.set('method', own * own);
  const total = [...byName.values()].reduce((a, b) => a + b, 0);
  if (total === 0) return [];
  return [...byName]
    .map(([name, square]) => ({ name, share: square / total }))
    .filter((s) => s.share > 0)
    .sort((a, b) => b.share - a.share || (a.name < b.name ? -1 : 1));
}
