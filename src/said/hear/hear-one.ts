// Why: "there's just the one slide" counts, while "the one on the left" points; the small words before tell which.
import type { Clause, Draft } from './clause.ts';
import type { Talk } from './talk.ts';

const has = /^(?:there|there's|just|only|got|has|have|had|is|'s|'ve|with|comes|came)$/;
const onlys = /^(?:just|only|lone|lonely|single|solitary)$/;
const between = /^(?:lonely|lone|single|solitary|big|little|small|old|new|good|of|them|these|those|em)$/;
const uncounted =
  /^(?:coach|body_paint|floor_main|roof_membrane|interior|road_test_drive|records_folder|wall_stains|coolant|engine_oil|engine|transmission)$/;

/** Counts of one: "there's the one battery", "just the one slide", "one lonely panel". */
export function hearOne(talk: Talk, clause: Clause, taken: Uint8Array): Draft[] {
  const { words, mentionAt } = talk.marks;
  const norm = (i: number): string => words[i]?.norm ?? '';
  const out: Draft[] = [];
  for (let i = clause.from; i < clause.to; i++) {
    if (
      (norm(i) !== 'one' && norm(i) !== 'single') ||
      taken[i] ||
      talk.scopes.elsewhere[i] ||
      talk.scopes.denied[i]
    )
      continue;
    const the = norm(i - 1) === 'the' || norm(i - 1) === 'a';
    const lead = norm(the ? i - 2 : i - 1);
    if (!has.test(lead) || (norm(i - 1) === 'a' && norm(i) === 'one')) continue;
    // one thing named behind, or "only the one" of what was named before
    let to = i + 1;
    while (to < clause.to && to < i + 3 && between.test(norm(to))) to++;
    const m = mentionAt.from(to);
    const alone = (words[i]?.stop ?? 2) > 0 && (onlys.test(lead) || (the && /^(?:there|'s|got)$/.test(lead)));
    const stands = m !== undefined && (norm(to - 1) === 'one' || to > i + 1 || m.from === i + 1);
    if (!stands && !alone) continue;
    if (stands && !the && !onlys.test(lead) && !onlys.test(norm(i + 1))) {
      // "there's one slide": read as a number elsewhere
      if (talk.marks.numberAt.from(i)) continue;
    }
    const part = stands ? m?.parts[0] : talk.partFor(i, i + 1, clause);
    if (!part || uncounted.test(part)) continue;
    const place = talk.placeOf(part, i, clause);
    const doubt = talk.doubtAt(i);
    out.push({
      part,
      ...(place === undefined ? {} : { place }),
      aspect: 'count',
      value: { is: 'count', count: 1 },
      sense: 'quantity',
      polarity: 'neutral',
      ...doubt,
      from: Math.max(clause.from, i - 4),
      to: Math.min(clause.to, (m?.to ?? i) + 1),
      at: i,
      weight: 0.75,
    });
    taken[i] = 1;
  }
  return out;
}

const tries = /^(?:tries|attempts|cranks)$/;
const lights =
  /generator|engine|furnace|water_heater|cooktop|oven|refrigerator|heater|fireplace|hydronic|grill|induction|starter/;

/** "It took three tries": how often it had to be tried. */
export function hearTries(talk: Talk, clause: Clause, taken: Uint8Array): Draft[] {
  const { words, numberAt } = talk.marks;
  const out: Draft[] = [];
  for (let i = clause.from + 1; i < clause.to; i++) {
    if (!tries.test(words[i]?.norm ?? '') || talk.scopes.elsewhere[i] || talk.scopes.denied[i]) continue;
    const n = clause.numbers.find((x) => x.to === i || x.bare === i) ?? numberAt.to(i);
    const times = n?.readings[0]?.value;
    const from = n?.from ?? i;
    if (times === undefined || !Number.isInteger(times) || times < 1 || times > 12 || taken[from]) continue;
    const part = talk
      .partsFor(from, i + 1, clause)
      .slice(0, 4)
      .find((p) => lights.test(p));
    if (!part) continue;
    const place = talk.placeOf(part, from, clause);
    const doubt = talk.doubtAt(from);
    out.push({
      part,
      ...(place === undefined ? {} : { place }),
      aspect: 'tries',
      value: { is: 'count', count: times },
      sense: 'quantity',
      polarity: 'neutral',
      ...doubt,
      hedged: (n?.approx ?? false) || doubt.hedged,
      from: Math.max(clause.from, from - 5),
      to: Math.min(clause.to, i + 3),
      at: from,
      weight: 0.8,
    });
    if (n) taken.fill(1, n.from, n.to);
  }
  return out;
}
