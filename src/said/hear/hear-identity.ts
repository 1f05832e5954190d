// Why: kinds, makers, model years, plates and codes: what a thing is rather than how it is.

import { kinOf } from './kin.ts';
import { typePhrases } from './lexicon.ts';
import { itemAt } from './number-item.ts';
import type { Clause, Draft, Talk } from './talk.ts';
import { colors } from './type-words.ts';

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
  coachYear(talk, clause, put, taken);
  plates(talk, clause, put, taken);
  const seen = new Set<string>();
  const own = clause.mentions.filter((m) => !m.aside);
  for (let i = clause.from; i < clause.to; i++) {
    if (talk.scopes.elsewhere[i] || talk.scopes.denied[i]) continue;
    const hit = typePhrases.at(words, i);
    if (
      hit &&
      i + hit.length <= clause.to &&
      !talk.marks.numbers.some((s) => s.from <= i && i < s.to && s.unit && s.to < i + hit.length)
    ) {
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
    if (talk.marks.isName(i) && !taken[i]) {
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
            .map((w) => talkWritten(talk, w.written))
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

const writtenOf = new WeakMap<Talk, readonly string[]>();
/** Tells this file the written words of a talk. */
export const knowWritten = (talk: Talk, written: readonly string[]): void =>
  void writtenOf.set(talk, written);
const talkWritten = (talk: Talk, i: number): string =>
  (writtenOf.get(talk)?.[i] ?? '').replace(/^[^\p{L}\p{N}]+|[^\p{L}\p{N}]+$/gu, '').replace(/['’]s$/, '');

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

type Put = (part: string, aspect: string, text: string, at: number, length: number, weight: number) => void;

/** "2018 Corvanta Solstrand, the 41 B": year, maker, model and floor plan of the coach. */
function coachYear(talk: Talk, clause: Clause, put: Put, taken: Uint8Array): void {
  const { words, isName } = talk.marks;
  for (const span of clause.numbers) {
    const year = span.readings.find(
      (r) => Number.isInteger(r.value) && r.value >= 1965 && r.value <= 2040,
    )?.value;
    if (!year || span.unit || talk.scopes.elsewhere[span.from]) continue;
    const after = words[span.to]?.norm ?? '';
    const coachy =
      /^(?:model|motorhome|motor|coach|diesel|fifth|travel|class|camper|rv|toy|super)$/.test(after) ||
      words[span.from - 1]?.norm === 'year';
    let to = span.to;
    while (to < clause.to && to - span.to < 3 && isName(to) && words[to - 1]?.stop === 0) to++;
    if (to === span.to && !coachy) continue;
    const isChassis = clause.mentions.some((m) => m.parts[0] === 'chassis_label' || m.parts[0] === 'engine');
    if (isChassis && to === span.to) continue;
    put('coach', 'year', String(year), span.from, to - span.from, 0.88);
    taken.fill(1, span.from, span.to);
    if (to === span.to) continue;
    put('coach', 'maker', talkWritten(talk, words[span.to]?.written ?? 0), span.to, 1, 0.85);
    if (to - span.to > 1)
      put(
        'coach',
        'model',
        words
          .slice(span.to + 1, to)
          .map((w) => talkWritten(talk, w.written))
          .join(' '),
        span.to + 1,
        to - span.to - 1,
        0.8,
      );
    taken.fill(1, span.to, to);
    const next = talk.marks.numbers.find((s) => s.from >= to && s.from - to <= 12);
    const letter = next ? words[next.bare] : undefined;
    if (
      next &&
      (next.from === to ||
        words.slice(next.bare, next.bare + 4).some((w) => w.norm === 'plan' || w.norm === 'floorplan')) &&
      !next.unit
    ) {
      const isLetter =
        letter !== undefined && /^[a-z]{1,3}$/.test(letter.norm) && letter.capital && letter.norm.length <= 2;
      put(
        'coach',
        'floor_plan',
        `${next.readings[0]?.value ?? ''}${isLetter ? letter.norm.toUpperCase() : ''}`,
        next.from,
        next.bare - next.from + (isLetter ? 1 : 0),
        0.75,
      );
      taken.fill(1, next.from, next.bare);
    }
  }
}

/** VIN and stock number: letters and digits read aloud. */
function plates(talk: Talk, clause: Clause, put: Put, taken: Uint8Array): void {
  const { words } = talk.marks;
  for (let i = clause.from; i < clause.to; i++) {
    const n = words[i]?.norm;
    const isVin = n === 'vin' || n === 'serial';
    const isStock =
      (n === 'unit' || n === 'stock' || (n === 'number' && words[i - 1]?.norm === 'stock')) &&
      words[i + 1]?.stop !== undefined;
    if (!isVin && !isStock) continue;
    let best: { text: string; from: number; to: number } | undefined;
    for (let k = i + 1; k < Math.min(words.length, i + 9); k++) {
      if (words[k - 1]?.norm === 'last' || (words[k]?.stop === 1 && words[k - 2]?.norm === 'last')) continue;
      let text = '';
      let at = k;
      while (at < words.length && (at === k || words[at - 1]?.stop !== 2 || text.length < 4)) {
        const item = itemAt(words, at);
        if (item && item.kind !== 'fraction' && item.kind !== 'decimal') {
          text += item.written ?? String(item.value);
          at = item.to;
        } else if (/^[a-z]$/.test(words[at]?.norm ?? '') && (words[at]?.capital || text !== ''))
          text += (words[at++]?.norm ?? '').toUpperCase();
        else if (/^[a-z]*\d[a-z0-9]{2,}$/.test(words[at]?.norm ?? ''))
          text += (words[at++]?.norm ?? '').toUpperCase();
        else break;
        if (text.length > 17) break;
      }
      if (text.length >= (isVin ? 5 : 2) && /\d/.test(text) && (!best || text.length > best.text.length))
        best = { text, from: k, to: at };
      if (isStock && k > i + 1) break;
    }
    if (!best) continue;
    if (isStock && (talk.marks.words[best.to]?.norm ?? '') in { of: 1, years: 1 }) continue;
    put(
      isVin ? 'vin_plate' : 'coach',
      isVin ? 'vin' : 'stock',
      best.text,
      best.from,
      best.to - best.from,
      isVin ? 0.85 : 0.7,
    );
    taken.fill(1, i, best.to);
    i = best.to - 1;
  }
}

/** "P oh four five six" -> P0456. */
function codeAt(talk: Talk, i: number): { text: string; length: number } | undefined {
  const { words } = talk.marks;
  const n = words[i]?.norm ?? '';
  if (/^[pbcu]\d{4}$/.test(n)) return { text: n.toUpperCase(), length: 1 };
  if (!/^[pbcu]$/.test(n) || !words[i]?.capital || words[i]?.stop !== 0) return undefined;
  let text = '';
  let at = i + 1;
  while (at < words.length && text.length < 4) {
    const item = itemAt(words, at);
    if (!item || item.kind === 'fraction' || item.kind === 'decimal') break;
    text += item.written ?? String(item.value);
    at = item.to;
  }
  return text.length === 4 ? { text: n.toUpperCase() + text, length: at - i } : undefined;
}
