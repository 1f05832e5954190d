// Why: "headlights also", "the oven yes, the microwave no": what was just said is said of one more part by a single word.
import type { Clause, Draft } from './clause.ts';
import { hasTrait } from './part-traits.ts';
import { phraseList } from './phrase-index.ts';
import { draftOf } from './state-draft.ts';
import type { Talk } from './talk.ts';

/** Behind the part: the same is true of it. */
const same = phraseList(
  'also,too,as well,likewise,ditto,same,same thing,the same,is the same,are the same,is same,are same,same for it,equal,equally,idem,yes,yes too,also yes,same story,same way,same here,same deal,is also,are also,does too,do too,does also,do also'.split(
    ',',
  ),
);
/** Behind the part: the contrary is true of it. */
const contrary = phraseList(
  'no,not,nope,nothing,not so,not at all,is not,are not,does not,do not'.split(','),
);
const opener = /^(?:and|but|the|a|an|my|both|all|so|also|same|for|with|of)$/;

/** A clause that names a part and repeats what was said before it, or denies it. */
export function hearLikewise(
  talk: Talk,
  clause: Clause,
  taken: Uint8Array,
  last: Draft | undefined,
): Draft[] {
  if (!last || clause.numbers.length > 0 || clause.to - clause.from > 8) return [];
  if (last.value.is !== 'state' || !/^(?:operates|defect|condition|absent)$/.test(last.sense)) return [];
  if (clause.from - last.at > 12 || talk.scopes.elsewhere[clause.from]) return [];
  if (/^(?:age|present)$/.test(last.aspect) || last.polarity === 'neutral') return [];
  const { words } = talk.marks;
  const own = clause.mentions.filter((m) => !m.aside);
  const first = own[0];
  const end = own.at(-1);
  if (!first || !end || taken[first.from]) return [];
  for (let k = clause.from; k < end.to; k++)
    if (
      !opener.test(words[k]?.norm ?? '') &&
      !talk.marks.placeAt.from(k) &&
      !own.some((m) => m.from <= k && k < m.to)
    )
      return [];
  const yes = same.at(words, end.to);
  const no = contrary.at(words, end.to);
  const hit = yes ?? no;
  if (!hit || end.to + hit.length !== clause.to) return [];
  if (no && last.aspect !== 'operates') return [];
  const works = (last.sense === 'operates' || last.polarity === 'good') !== (no !== undefined);
  const out: Draft[] = [];
  for (const m of own) {
    const part = m.parts[0];
    if (
      !part ||
      part === last.part ||
      (last.aspect === 'operates' && !hasTrait(part, ['electric', 'machine', 'moving', 'road']))
    )
      continue;
    const verdict =
      no === undefined
        ? {
            part,
            aspect: last.aspect,
            state: last.value.state,
            sense: last.sense,
            polarity: last.polarity,
            weight: 0.65,
          }
        : works
          ? ({
              part,
              aspect: 'operates',
              state: 'works',
              sense: 'operates',
              polarity: 'good',
              weight: 0.6,
            } as const)
          : ({
              part,
              aspect: 'operates',
              state: 'fails',
              sense: 'defect',
              polarity: 'bad',
              weight: 0.6,
            } as const);
    out.push(draftOf(talk, clause, taken, verdict, m.from, end.to + hit.length - m.from));
    taken.fill(0, m.from, end.to + hit.length);
  }
  taken.fill(1, end.to, end.to + hit.length);
  return out;
}
