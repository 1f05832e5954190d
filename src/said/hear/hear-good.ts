// Why: "solid", "in the green", "okay": good order said of a part, and work already done on it.
import { partOf } from '../../catalogue/index.ts';
import type { Clause, Draft } from './clause.ts';
import { hearHistory, hearPapers } from './hear-history.ts';
import { defectPhrases, goodPhrases } from './lexicon.ts';
import { isPieceSubject } from './piece-nouns.ts';
import { denialBefore, draftOf, subjectOf } from './state-draft.ts';
import type { Talk } from './talk.ts';

const be = new Set(
  "is are was were be been being 's 're looks look looked stays stay stayed seems checks check tests test tested appears appear all still both they it and pretty real very really a little bit just got has have circuits feel feels felt remains sits sit reads nice good comes came read".split(
    ' ',
  ),
);
const devices =
  /lamp|light|alarm|pump|switch|camera|tv|radio|fan|horn|oven|cooktop|microwave|toilet|generator|inverter|furnace|ac_|wiper|signal|outlets|washer|dish|ice|step|awning|slide$|jack|mirror|thermostat|fridge|refrigerator|antenna|plug|macerator|brake_controller|monitor|cruise/;
const openers =
  /^(?:okay|ok|no|yeah|yep|so|and|but|well|now|alright|right|hey|oh|then|the|you|know|see|i|think|guess|'d|say)$/;
const ending =
  /^(?:and|too|also|on|up|in|for|at|under|all|again|there|dark|but|with|around|overall|it|they|no|the|i|we|still|except|only|now|since|this|that|so|you|then|as|along|across)$/;
const doneBefore = /^(?:been|was|were|got|have|has|'s|'ve|just|already|i|we|they|he)$/;
/** Good order and work done, in a clause. */
export function hearGood(talk: Talk, clause: Clause, taken: Uint8Array): Draft[] {
  const out: Draft[] = [...hearHistory(talk, clause, taken), ...hearPapers(talk, clause, taken)];
  const { words } = talk.marks;
  const norm = (i: number): string => words[i]?.norm ?? '';
  for (let i = clause.from; i < clause.to; i++) {
    if (taken[i] || talk.scopes.elsewhere[i] || clause.mentions.some((m) => m.from <= i && i < m.to))
      continue;
    const n = norm(i);
    if (
      n === 'cleared' &&
      (doneBefore.test(norm(i - 1)) || (i === clause.from && /^(?:it|them|that)$/.test(norm(i + 1)))) &&
      talk.recent.some((r) => r.parts.includes('engine_ecm'))
    ) {
      const v = {
        part: 'engine_ecm',
        aspect: 'condition',
        state: 'noted',
        sense: 'condition',
        polarity: 'neutral',
        weight: 0.6,
      } as const;
      out.push(draftOf(talk, clause, taken, v, i, 1));
      continue;
    }
    if (
      (n === 'new' || (n === 'brand' && norm(i + 1) === 'new')) &&
      /^(?:a|brand|got|has|with|'s|are|all|have|is|'re)$/.test(norm(i - 1)) &&
      clause.mentions.some((m) => m.to <= i || m.from > i) &&
      !/^(?:ones?|for)$/.test(norm(i + 1))
    ) {
      const after = clause.mentions.find((m) => m.from > i && m.from - i <= 3);
      const part = after?.parts[0] ?? subjectOf(talk, clause, i);
      if (part) {
        out.push(
          draftOf(
            talk,
            clause,
            taken,
            { part, aspect: 'condition', state: 'new', sense: 'condition', polarity: 'good', weight: 0.6 },
            i,
            1,
          ),
        );
        continue;
      }
    }
    const temper = temperature(talk, clause, i);
    if (temper) {
      const v = {
        part: temper,
        aspect: 'operates',
        state: 'works',
        sense: 'operates',
        polarity: 'good',
        weight: 0.7,
      } as const;
      out.push(draftOf(talk, clause, taken, v, i, 1));
      continue;
    }
    // "Headlights, turns, markers, good", "horn check"
    const listed = listBefore(talk, clause, i, taken);
    if (listed.length > 0) {
      for (const part of listed) {
        const v = devices.test(part)
          ? ({
              part,
              aspect: 'operates',
              state: 'works',
              sense: 'operates',
              polarity: 'good',
              weight: 0.7,
            } as const)
          : ({
              part,
              aspect: 'condition',
              state: 'good',
              sense: 'condition',
              polarity: 'good',
              weight: 0.7,
            } as const);
        out.push(draftOf(talk, clause, taken, v, i, 1));
      }
      continue;
    }
    if (
      n === 'no' &&
      i === clause.from &&
      clause.mentions.length === 0 &&
      talk.scopes.elsewhere[i - 1] === 2 &&
      (words[i - 1]?.stop ?? 2) === 1
    )
      continue;
    const good = goodPhrases.at(words, i);
    const state = good?.values[0];
    if (!good || !state || i + good.length > clause.to) continue;
    const before = clause.mentions.filter((m) => !m.aside && m.to <= i).at(-1);
    const beside = before !== undefined && i - before.to <= 3 && (words[i - 1]?.stop ?? 0) === 0;
    let first = clause.from;
    while (first < i && openers.test(norm(first))) first++;
    const lead = norm(first);
    const led =
      i > clause.from &&
      be.has(norm(i - 1)) &&
      (before !== undefined ||
        /^(?:it|they|these|those|everything|both|all|and|he|she|rest|other|others|remaining|balance|remainder|level|levels|color|colour|fluid|fluids|action|movement|operation|travel|response|feel|welds?|joints?|boots?|clamps?|bolts?|mounts?|bushings?|edges?|corners?|hinges?|connections?|threads?|fittings?)$/.test(
          lead,
        ) ||
        clause.places.some((p) => p.from <= clause.from + 1 && p.to <= i && i - p.to <= 3) ||
        isPieceSubject(words, first, i) ||
        (lead === 'that' && !/^feel|^sound/.test(norm(i - 1)))) &&
      !/^(?:i|we|you)$/.test(norm(i - 2));
    const at = i + good.length;
    const ends =
      at === clause.to ||
      (words[at - 1]?.stop ?? 0) > 0 ||
      ending.test(norm(at)) ||
      clause.mentions.some((m) => m.from === at) ||
      (talk.marks.placeAt.from(at) !== undefined && before !== undefined);
    const filler =
      good.length === 1 &&
      /^(?:okay|ok|good|fine|fair|new|full|level|clear|clean|held|even|true|fresh|hot|pass|passed|strong|sound|square|flush|firm|quiet)$/.test(
        n,
      );
    const article =
      /^(?:a|an|the|some|my|your|of|for|with)$/.test(norm(i - 1)) ||
      (/^feels?$/.test(norm(i - 1)) && !/^(?:sound|tight)$/.test(state)) ||
      (defectPhrases.at(words, i - 1) !== undefined && before?.to !== i) ||
      (state === 'full' && /^(?:fresh|gray|black)_tank$/.test(talk.partFor(i, i + 1, clause) ?? '')) ||
      (/^(?:level|even|correct|bright|proper|smooth|near)$/.test(n) &&
        good.length === 1 &&
        !beside &&
        !/^(?:it|they|'s|'re|is|are|all|both|pretty|nice)$/.test(norm(i - 1)));
    const part = beside || led || good.length > 1 ? subjectOf(talk, clause, i) : undefined;
    if (!part || !ends || article || !partOf(part) || !(beside || led || (good.length > 1 && !filler)))
      continue;
    // a cell that is dry wants water
    if (state === 'dry' && /^(?:house|chassis)_battery$/.test(part)) {
      const v = {
        part,
        aspect: 'level',
        state: 'low',
        sense: 'defect',
        polarity: 'bad',
        weight: 0.72,
      } as const;
      out.push(draftOf(talk, clause, taken, v, i, good.length));
      continue;
    }
    const not =
      talk.scopes.denied[i] === 1 &&
      i - (denialBefore(talk, clause, i) ?? 0) >= first &&
      (denialBefore(talk, clause, i) ?? 9) <= 3;
    const runs = good.length === 1 && /^(?:okay|ok|fine|good)$/.test(n) && devices.test(part);
    if (not && /^(?:full|hot|cold|straight|clear)$/.test(state)) continue;
    const verdict = not
      ? ({
          part,
          aspect: 'condition',
          state: 'poor',
          sense: 'defect',
          polarity: 'bad',
          weight: 0.65,
        } as const)
      : runs
        ? ({
            part,
            aspect: 'operates',
            state: 'works',
            sense: 'operates',
            polarity: 'good',
            weight: 0.72,
          } as const)
        : ({ part, aspect: 'condition', state, sense: 'condition', polarity: 'good', weight: 0.72 } as const);
    out.push(draftOf(talk, clause, taken, verdict, i, good.length));
    i += good.length - 1;
  }
  return out;
}

const cools = /^(?:dash_ac|ac_roof|ac_run)$/;
const heats =
  /^(?:furnace_run|water_heater_\w+|floor_heat|hydronic_unit|fireplace|oven|shower_tub|driver_seat)$/;
/** "Dash air's cold", "the water gets hot": the part that does what it is for. */
function temperature(talk: Talk, clause: Clause, i: number): string | undefined {
  const norm = (k: number): string => talk.marks.words[k]?.norm ?? '';
  const n = norm(i);
  if (!/^(?:cold|hot|toasty|frosty|chilly)$/.test(n) || i === clause.from) return undefined;
  if (
    !/^(?:is|are|'s|'re|was|were|got|gets|get|stays|stayed|nice|ice|plenty|good|real|running|keeps)$/.test(
      norm(i - 1),
    )
  )
    return undefined;
  const behind = norm(i + 1);
  const ends =
    i + 1 >= clause.to ||
    (talk.marks.words[i]?.stop ?? 0) > 0 ||
    ending.test(behind) ||
    clause.mentions.some((m) => m.from === i + 1);
  if (!ends || denialBefore(talk, clause, i) !== undefined || talk.scopes.denied[i]) return undefined;
  const part = subjectOf(talk, clause, i);
  return part && (/^(?:cold|frosty|chilly)$/.test(n) ? cools : heats).test(part) ? part : undefined;
}

/** The parts named one by one before a lone "good", or by one "check" behind a device. */
function listBefore(talk: Talk, clause: Clause, i: number, taken: Uint8Array): readonly string[] {
  const { words, mentionAt, placeAt } = talk.marks;
  const norm = (k: number): string => words[k]?.norm ?? '';
  const n = norm(i);
  const last = i === clause.to - 1 || (words[i]?.stop ?? 0) > 0;
  if (n === 'check' || n === 'checks') {
    const m = mentionAt.to(i);
    const part = m && m.from >= clause.from && !m.aside ? m.parts[0] : undefined;
    const alone = m?.from === clause.from && (last || talk.marks.numberAt.from(i + 1) !== undefined);
    return part && alone && devices.test(part) ? [part] : [];
  }
  if (!/^(?:good|okay|ok|fine|work|working|check)$/.test(n) || !last) return [];
  let k = i;
  while (k > clause.from && /^(?:all|both|are|is|look|looks|pretty|test|tests|everything)$/.test(norm(k - 1)))
    k--;
  if (k !== clause.from) return [];
  const parts: string[] = [];
  let clauses = 0;
  while (k > 0 && words[k - 1]?.stop === 1 && clauses < 6) {
    let j = k;
    const m = mentionAt.to(j);
    if (!m || m.aside) {
      const p = placeAt.to(j);
      // one word that is no part of the catalogue is looked through: "headlights, turns, markers, good"
      if (!p && (k === i || (words[k - 2]?.stop ?? 0) !== 1)) break;
      j = p?.from ?? k - 1;
      const owner = mentionAt.to(j);
      if (owner) j = owner.from;
      if (owner?.parts[0]) parts.push(owner.parts[0]);
    } else {
      j = m.from;
      if (m.parts[0]) parts.push(m.parts[0]);
    }
    while (
      j > 0 &&
      words[j - 1]?.stop === 0 &&
      /^(?:the|both|all|and|your|my|high|low|left|right|front|rear)$/.test(norm(j - 1))
    )
      j--;
    if (j === k || (j > 0 && words[j - 1]?.stop === 0) || taken[j]) {
      parts.pop();
      break;
    }
    k = j;
    clauses++;
  }
  return [...new Set(parts)];
}
