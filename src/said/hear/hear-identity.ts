// Why: kinds, makers, model years, plates and codes: what a thing is rather than how it is.

import type { Clause, Draft } from './clause.ts';
import { coachName } from './hear-coach-name.ts';
import { makerAt } from './hear-maker.ts';
import { codeAt, plates } from './hear-plates.ts';
import { kinOf } from './kin.ts';
import { typePhrases } from './lexicon.ts';
import type { Talk } from './talk.ts';
import { colors } from './type-words.ts';

const looseTypes = new Set([
  'gas',
  'electric',
  'power',
  'manual',
  'air',
  'auto',
  'double',
  'diesel',
  'propane',
  'rear',
  'side',
  'plastic',
  'steel',
  'wood',
  'metal',
  'rubber',
  'glass',
  'tub',
  'box',
  'cloth',
  'leather',
  'vinyl',
  'rigid',
  'full',
  'color',
  'tile',
  'carpet',
  'aluminum',
  'heated',
  'hydraulic',
  'cable',
  'chrome',
  'highway',
  'automatic',
  'lp',
  'modified',
  'quartz',
  'cherry',
  'mounted',
  'portable',
  'modern',
  'inverter',
  'permanent',
  'ducted',
  'vacuum',
  'gravity',
  'booth',
  'mini',
  'folding',
  'polished',
  'three way',
  'two way',
  'electric',
  'flexible',
  'plank',
  'wardrobe',
  'drum',
  'disc',
  'roller',
  'marble',
  'maple',
  'oak',
  'laminated',
  'decals',
  'gel coat',
  'two tone',
  'solid wood',
  'swivel',
  'combo',
  'residential',
  'bunks',
  'independent',
  'china',
  'painted',
  'ash',
  'pine',
  'walk in',
  'slide out',
  'fabric',
  'adjustable',
  'black out',
  'full bed',
]);

/** Reads what things are in a clause. */
export function hearIdentity(talk: Talk, clause: Clause, taken: Uint8Array): Draft[] {
  const out: Draft[] = [];
  const { words } = talk.marks;
  const put = (
    part: string,
    aspect: string,
    text: string,
    at: number,
    length: number,
    weight: number,
  ): void => {
    const place = talk.placeOf(part, at, clause);
    out.push({
      part,
      ...(place === undefined || part === 'coach' ? {} : { place }),
      aspect,
      value: { is: 'text', text },
      sense: 'identity',
      polarity: 'neutral',
      ...talk.doubtAt(at),
      from: Math.max(clause.from, at - 5),
      to: Math.min(clause.to, at + length + 3),
      at,
      weight,
    });
  };
  plates(talk, clause, put, taken);
  coachName(talk, clause, put, taken);
  const seen = new Set<string>();
  const named_ = clause.mentions.filter((m) => !m.aside);
  for (let i = clause.from; i < clause.to; i++) {
    if (talk.scopes.elsewhere[i] || talk.scopes.denied[i]) continue;
    const hit = typePhrases.at(words, i);
    // "a jackknife, vinyl": a kind that is also a weak name of something else, said of what was talked about
    const lately = talk.recent[0];
    const own =
      hit &&
      clause.to - clause.from <= hit.length + 1 &&
      named_.every((m) => m.weak && m.from >= i && m.to <= i + hit.length) &&
      lately !== undefined &&
      i - lately.at < 10 &&
      hit.values.some((v) => v.part === lately.parts[0])
        ? []
        : named_;
    if (hit && i + hit.length <= clause.to && !isPartNamed(talk, clause, i, hit.length)) {
      const named = words
        .slice(i, i + hit.length)
        .map((w) => w.norm)
        .join(' ');
      const inClause = own.find(
        (m) =>
          hit.values.some((v) => m.parts.includes(v.part) || kinOf(m.parts[0] ?? '').includes(v.part)) &&
          Math.abs(m.from - i) <= 8,
      );
      // "the grab handle is solid" says nothing of the steps named before
      const other = own.some((m) => !m.weak && m.to <= i && m.to >= i - 2);
      const parts = inClause
        ? inClause.parts.flatMap((p) => [p, ...kinOf(p)])
        : other && hit.length === 1
          ? []
          : (own.length === 0 && !looseTypes.has(named)) || isPredicateOnly(talk, clause, i, hit.length)
            ? talk.partsFor(i, i + hit.length, clause).slice(0, 2)
            : [];
      const bed =
        own.length === 0 &&
        /^(?:king|queen|short queen|queen size|king size|rv queen|rv king|twins|california king|split king)s?$/.test(
          named,
        ) &&
        /^(?:a|an|your|the|'s|real|is|short|rv|and|two|full)$/.test(words[i - 1]?.norm ?? '')
          ? hit.values.find((v) => v.part === 'bed_mattress')
          : undefined;
      const word =
        bed ??
        parts.map((p) => hit.values.find((v) => v.part === p)).find((v) => v !== undefined) ??
        (hit.length >= 2 ? hit.values.find((v) => v.part === 'coach') : undefined) ??
        // "it's a gasser" says it of the engine, whatever is talked about
        (named === 'gasser' ? hit.values[0] : undefined);
      if (
        word &&
        !(words[i - 1]?.norm === 'on' && /gas|electric|lp|propane/.test(named)) &&
        !seen.has(`${word.part}/${word.aspect}/${word.text}`)
      ) {
        seen.add(`${word.part}/${word.aspect}/${word.text}`);
        put(word.part, word.aspect, word.text, i, hit.length, inClause ? 0.82 : 0.65);
        taken.fill(1, i, i + hit.length);
        i += hit.length - 1;
        continue;
      }
    }
    if (
      colors.has(words[i]?.norm ?? '') &&
      talk
        .partsFor(i, i + 1, clause)
        .slice(0, 2)
        .includes('body_paint') &&
      !own.some((m) => /tank|valve/.test(m.parts[0] ?? ''))
    ) {
      let to = i + 1;
      while (
        to < clause.to &&
        (colors.has(words[to]?.norm ?? '') ||
          (words[to]?.norm === 'and' && colors.has(words[to + 1]?.norm ?? '')))
      )
        to++;
      put(
        'body_paint',
        'color',
        words
          .slice(i, to)
          .map((w) => w.norm)
          .join(' '),
        i,
        to - i,
        0.75,
      );
      i = to - 1;
      continue;
    }
    const code = codeAt(talk, i);
    if (code) {
      put('engine_ecm', 'code', code.text, i, code.length, 0.85);
      taken.fill(1, i, i + code.length);
      i += code.length - 1;
      continue;
    }
    if (
      words[i]?.norm === 'range' &&
      words[i - 1]?.norm === 'load' &&
      /^[a-n]$/.test(words[i + 1]?.norm ?? '')
    )
      put('tire', 'load_range', (words[i + 1]?.norm ?? '').toUpperCase(), i - 1, 3, 0.9);
    const past = makerAt(talk, clause, i, put, taken);
    if (past !== undefined) i = past - 1;
  }
  return out;
}

/** Kinds that are also things, or ways in which one thing runs. */
const alsoThings =
  /^(?:carpets?|drums?|discs?|bunks?|tub|booth|decals?|propane|auto|highway|absorption|electric|gas|lp|diesel|gel coat|golf cart|tiles?|vinyl|wardrobe|tank|cable|air|power)$/;
const kindBefore = /^(?:new|'s|'re|is|are|was|were|be|a|an|got|with|have|has|all|full|real|and)$/;
/** "The carpet is wet", "on the electric side": the word names the thing or one way it runs, not what kind it is. */
function isPartNamed(talk: Talk, clause: Clause, at: number, length: number): boolean {
  const { words } = talk.marks;
  const said = words
    .slice(at, at + length)
    .map((w) => w.norm)
    .join(' ');
  if (!alsoThings.test(said)) return false;
  const before = at > clause.from ? (words[at - 1]?.norm ?? '') : '';
  // "planks in the galley, carpet in the slides": each says what the floor is there
  if (
    /^(?:carpet|tile|vinyl|lino|linoleum)$/.test(said) &&
    (before === '' || before === 'and') &&
    /^(?:in|on|through|throughout|everywhere|up|back|elsewhere)$/.test(words[at + length]?.norm ?? '') &&
    clause.to - at <= 6
  )
    return false;
  const next = words[at + length - 1]?.stop === 0 ? (words[at + length]?.norm ?? '') : '';
  if (/^(?:side|element|mode|heat|level|quits|works)$/.test(next)) return true;
  if (/^(?:on|into|from|off|using|like)$/.test(before)) return true;
  if (/^(?:the|a)$/.test(before) && /^(?:on|by|in|from|of|at)$/.test(words[at - 2]?.norm ?? '')) return true;
  const own = clause.mentions.find((m) => m.from <= at && m.to >= at + length);
  return (
    own !== undefined &&
    own.to === at + length &&
    !kindBefore.test(before) &&
    clause.to - clause.from > length
  );
}

/** "it's induction", "T P O": the clause says nothing but the kind. */
function isPredicateOnly(talk: Talk, clause: Clause, at: number, length: number): boolean {
  const { words } = talk.marks;
  const lead = words[clause.from]?.norm ?? '';
  const rest = clause.to - clause.from - length;
  return (
    rest <= 1 ||
    (rest <= 5 && (/^(?:it|they|that|so|and|all|material|one)$/.test(lead) || lead === "it's")) ||
    (/^(?:'s|'re|is|are)$/.test(words[at - 1]?.norm ?? '') && rest <= 6) ||
    (at === clause.from && rest <= 2)
  );
}
