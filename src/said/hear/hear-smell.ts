// Why: what a coach smells of is told by a scent and a word of smelling in any order; the scent alone ("damp", "dog") is no failure of a part.
import type { Clause, Draft } from './clause.ts';
import { hasTrait } from './part-traits.ts';
import { draftOf } from './state-draft.ts';
import type { Talk } from './talk.ts';

const set = (text: string): ReadonlySet<string> => new Set(text.split(' '));
/** Scents of rooms; those of gas, oil and heat are faults of the parts that give them off. */
const scents = set(
  'dog dogs doggy cat cats pet pets animal animals puppy smoke smoker smokers smoky cigarette cigarettes cigar cigars ashtray tobacco nicotine mold moldy mould mildew mildewy mildewed must musty mustiness damp dampness stale mothball mothballs mothbally urine pee ammonia basement cellar attic skunk mouse mice mousy rodent rodents rodenty wet dank fusty closed stuffy perfume incense curry',
);
const smelling =
  /^(?:smell|smells|smelled|smelt|smelling|odor|odors|odour|stink|stinks|stunk|reek|reeks|whiff|aroma|scent|nose|funk)$/;
const verb = /^(?:smell|smells|smelled|smelt|smelling|stink|stinks|reek|reeks)$/;
const between =
  /^(?:like|of|a|an|the|any|some|old|wet|little|bit|kind|sort|lot|faint|faintly|slight|slightly|light|strong|strongly|heavy|real|really|pretty|very|somebody|somebody's|'s|from|for|to|and|or|that|it|in|here|just|still|no|not|at|all|your|grandma|grandma's|wet|stale|cold|sour|mild|tiny|touch|hint|trace|ever|one|much|more|kinda|somewhat|lingering|leftover)$/;
const none =
  /^(?:no|not|never|don't|doesn't|didn't|can't|couldn't|without|neither|nor|none|nothing|ain't|isn't|any|haven't|zero|free|nobody)$/;
/** Named with the smell, these only say what sort it is. */
const near = 5;

/** Smells of rooms, and none of them, in a clause. Marks its words as taken. */
export function hearSmell(talk: Talk, clause: Clause, taken: Uint8Array): Draft[] {
  const out: Draft[] = [];
  const { words } = talk.marks;
  const norm = (k: number): string => (k >= clause.from && k < clause.to ? (words[k]?.norm ?? '') : '');
  for (let i = clause.from; i < clause.to; i++) {
    if (!smelling.test(norm(i)) || taken[i] || talk.scopes.elsewhere[i]) continue;
    if (/^(?:nose|scent|aroma)$/.test(norm(i)) && !/^of$/.test(norm(i + 1))) continue;
    let from = i;
    let to = i + 1;
    let found = false;
    for (let k = i - 1; k >= Math.max(clause.from, i - 3); k--) {
      if (scents.has(norm(k))) {
        found = true;
        from = k;
      } else if (!between.test(norm(k)) || verb.test(norm(i))) break;
    }
    for (let k = i + 1; k <= i + near && k < clause.to; k++) {
      if (scents.has(norm(k))) {
        found = true;
        to = k + 1;
      } else if (!between.test(norm(k))) break;
    }
    if (!found) continue;
    const denied =
      talk.scopes.denied[i] === 1 ||
      talk.scopes.denied[to - 1] === 1 ||
      words.slice(Math.max(clause.from, from - 3), to).some((w) => none.test(w.norm));
    const part = partOf(talk, clause, from, to);
    out.push(
      draftOf(
        talk,
        clause,
        taken,
        denied
          ? { part, aspect: 'smell', state: 'no', sense: 'absent', polarity: 'good', weight: 0.8 }
          : { part, aspect: 'smell', state: 'smelling', sense: 'defect', polarity: 'bad', weight: 0.8 },
        i,
        1,
      ),
    );
    taken.fill(1, from, to);
    i = to - 1;
  }
  return out;
}

/** What smells: named as subject before it, or as the room of it behind it; else the interior. */
function partOf(talk: Talk, clause: Clause, from: number, to: number): string {
  const own = clause.mentions.filter((m) => m.parts[0] !== 'pet_smoke_odor');
  const subject = own
    .filter((m) => !m.aside && m.to <= from)
    .map((m) => m.parts.find((p) => hasTrait(p, ['smells'])))
    .find((p) => p !== undefined && p !== 'coach');
  const room = own.find(
    (m) =>
      m.from >= to &&
      m.from - to <= 3 &&
      /^(?:in|inside|under|behind|the)$/.test(talk.marks.words[m.from - 1]?.norm ?? ''),
  );
  const inside = room?.parts.find((p) =>
    /^(?:wardrobe|under_bed|bay_storage|refrigerator|cabinets|cab_over)$/.test(p),
  );
  return subject ?? inside ?? 'interior';
}
