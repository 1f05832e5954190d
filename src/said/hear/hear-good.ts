// Why: "solid", "in the green", "okay": good order said of a part, and work already done on it.
import { partOf } from '../../catalogue/index.ts';
import type { Clause, Draft } from './clause.ts';
import { hearHistory, hearPapers } from './hear-history.ts';
import { goodPhrases } from './lexicon.ts';
import { denialBefore, draftOf, subjectOf } from './state-draft.ts';
import type { Talk } from './talk.ts';

const be = new Set(
  "is are was were be been being 's 're looks look looked stays seems checks tests tested appears all still both they it and pretty real very really a little bit just got has have circuits".split(
    ' ',
  ),
);
const devices =
  /lamp|light|alarm|pump|switch|camera|tv|radio|fan|horn|oven|cooktop|microwave|toilet|generator|inverter|furnace|ac_|wiper|signal|outlets|washer|dish|ice|step|awning|slide$|jack|mirror|thermostat|fridge|refrigerator|antenna|plug|macerator|brake_controller|monitor|cruise/;
const ending = /^(?:and|too|also|on|up|in|for|at|under|all|again|there|dark|but|with|around)$/;
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
    const good = goodPhrases.at(words, i);
    const state = good?.values[0];
    if (!good || !state || i + good.length > clause.to) continue;
    const before = clause.mentions.filter((m) => !m.aside && m.to <= i).at(-1);
    const beside = before !== undefined && i - before.to <= 3 && (words[i - 1]?.stop ?? 0) === 0;
    const lead = norm(clause.from);
    const led =
      i > clause.from &&
      be.has(norm(i - 1)) &&
      (before !== undefined ||
        /^(?:it|they|these|those|everything|both|all|and|he|she)$/.test(lead) ||
        clause.places.some((p) => p.from <= clause.from + 1 && p.to <= i && i - p.to <= 3) ||
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
    const article = /^(?:a|an|the|some|my|your|of|for|with|feels|feel)$/.test(norm(i - 1));
    const part = beside || led || good.length > 1 ? subjectOf(talk, clause, i) : undefined;
    if (!part || !ends || article || !partOf(part) || !(beside || led || (good.length > 1 && !filler)))
      continue;
    const not = talk.scopes.denied[i] === 1 && (denialBefore(talk, clause, i) ?? 9) <= 3;
    const runs = good.length === 1 && /^(?:okay|ok|fine|good)$/.test(n) && devices.test(part);
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
