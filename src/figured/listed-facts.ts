// Why: facts that stand in a plain list (figures laid over a record, inputs given by hand) answer through the same door.
import type { Fact, Facts } from '../known/facts.ts';

/** What the list itself does not say: the day, the papers, the kind, what the unit may have. */
export type Around = Pick<Facts, 'on' | 'unit' | 'kind' | 'mayHave'>;

const keyOf = (part: string, aspect: string, place: string | undefined): string =>
  `${part}/${aspect}@${place ?? ''}`;

/** The key under which a fact stands: part, aspect and place. */
export const factKey = (f: {
  readonly part: string;
  readonly aspect: string;
  readonly place?: string | undefined;
}): string => keyOf(f.part, f.aspect, f.place);

/** Facts that answer from a list. Of two with the same key, the first answers `get`. */
export function listedFacts(list: readonly Fact[], around: Around): Facts {
  const byKey = new Map<string, Fact>();
  const byAspect = new Map<string, Fact[]>();
  const byPart = new Map<string, Fact[]>();
  for (const f of list) {
    const key = factKey(f);
    if (!byKey.has(key)) byKey.set(key, f);
    const aspect = `${f.part}/${f.aspect}`;
    const some = byAspect.get(aspect);
    if (some) some.push(f);
    else byAspect.set(aspect, [f]);
    const part = byPart.get(f.part);
    if (part) part.push(f);
    else byPart.set(f.part, [f]);
  }
  return {
    on: around.on,
    unit: around.unit,
    kind: around.kind,
    mayHave: (part) => around.mayHave(part),
    get: (part, aspect, place) => byKey.get(keyOf(part, aspect, place)),
    all: (part, aspect) => byAspect.get(`${part}/${aspect}`) ?? [],
    of: (part) => byPart.get(part) ?? [],
    every: () => list,
  };
}
