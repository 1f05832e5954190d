// Why: kinds, makers, model years, plates and codes: what a thing is rather than how it is.

import type { Clause, Draft } from './clause.ts';
import { coachName } from './hear-coach-name.ts';
import { codeAt, plates } from './hear-plates.ts';
import { kinOf } from './kin.ts';
import { typePhrases } from './lexicon.ts';
import { isOrdinaryShape } from './name-like.ts';
import { itemAt } from './number-item.ts';
import type { Talk } from './talk.ts';
import { colors } from './type-words.ts';
import { nameAt } from './written-name.ts';

const made =
  /tire|engine|generator|chassis_label|coach|ac_|roof_mem|refrigerator|inverter|furnace|water_heater|transmission|awning|solar|batter|toilet|tv_|hitch|washer|microwave|dishwasher|levelling|hydronic|cooktop|oven|camera|radio|antenna|suspension|brake|axle|lp_|pump|mattress|seat|slide|pin_box|tow_bar|wheels|air_/;
const makerBefore =
  /^(?:'s|'re|is|are|a|an|the|by|make|maker|brand|from|all|both|six|four|two|five|eight|with|got|old|new|called|tires|made|has|have|of|on|engine|generator)$/;
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
  const own = clause.mentions.filter((m) => !m.aside);
  for (let i = clause.from; i < clause.to; i++) {
    if (talk.scopes.elsewhere[i] || talk.scopes.denied[i]) continue;
    const hit = typePhrases.at(words, i);
    if (hit && i + hit.length <= clause.to) {
      const named = words
        .slice(i, i + hit.length)
        .map((w) => w.norm)
        .join(' ');
      const inClause = own.find(
        (m) =>
          hit.values.some((v) => m.parts.includes(v.part) || kinOf(m.parts[0] ?? '').includes(v.part)) &&
          Math.abs(m.from - i) <= 8,
      );
      const parts = inClause
        ? inClause.parts.flatMap((p) => [p, ...kinOf(p)])
        : (own.length === 0 && !looseTypes.has(named)) || isPredicateOnly(talk, clause, i, hit.length)
          ? talk.partsFor(i, i + hit.length, clause).slice(0, 2)
          : [];
      const word =
        parts.map((p) => hit.values.find((v) => v.part === p)).find((v) => v !== undefined) ??
        (hit.length >= 2 ? hit.values.find((v) => v.part === 'coach') : undefined);
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
    if (talk.marks.isName(i) && !taken[i] && !isOrdinaryShape(words[i]?.norm ?? '')) {
      let to = i + 1;
      while (to < clause.to && talk.marks.isName(to) && words[to - 1]?.stop === 0) to++;
      const before = words[i - 1]?.norm ?? '';
      const first =
        (i === clause.from || words[i - 1]?.stop !== 0) &&
        (itemAt(words, to) !== undefined || words[to - 1]?.stop === 1);
      const after = own.find((m) => m.from >= to && m.from - to <= 6);
      const part =
        (after && made.test(after.parts[0] ?? '') ? after.parts[0] : undefined) ??
        talk
          .partsFor(i, to, clause)
          .slice(0, 3)
          .find((p) => made.test(p));
      if (
        part &&
        (first || makerBefore.test(before) || own.some((m) => m.to === i) || itemAt(words, to)) &&
        !/^(?:january|mr|mrs)$/.test(words[i]?.norm ?? '')
      ) {
        put(
          part,
          'maker',
          words
            .slice(i, to)
            .map((w) => nameAt(talk, w.written))
            .join(' '),
          i,
          to - i,
          0.7,
        );
      }
      i = to - 1;
    }
  }
  return out;
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
