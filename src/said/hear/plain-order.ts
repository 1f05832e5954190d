// Why: second-language speakers put words in the order of their own language ("light of the brake", "works not", "of cracks I see nothing"); everything after this step expects the order of English.

import { partPhrases } from './lexicon.ts';
import { asides, baseOf, carriedOver, seesNothing, workedBases } from './loan-words.ts';
import {
  adverbBehind,
  articles,
  commaSaid,
  fromSide,
  type Instead,
  ofLasting,
  smallWord,
} from './small-words.ts';
import type { Word } from './word.ts';

/** What stands behind its noun in the Romance languages and before it in English. */
const adjectives = new Set(
  'electric electrical electronic hydraulic interior exterior inside outside rear back front black gray grey fresh main automatic solar emergency hot cold auxiliary mechanical manual'.split(
    ' ',
  ),
);
/** Nouns that only say how much of the other there is, or where on it. */
const measures = new Set(
  'set sets pair couple lot lots number kind sort type types piece pieces bit half end ends top bottom edge side sides corner corners bunch list name year row out one two some most all part rest middle center back front'.split(
    ' ',
  ),
);
const auxiliary =
  /^(?:do|does|did|will|would|can|could|may|might|must|should|to|'ll|is|are|was|were|has|have|had|i|we|you)$/;
const plain = (n: string): string => (/[^su]s$/.test(n) ? n.slice(0, -1) : n);
const asWords = (norms: readonly string[]): { norm: string }[] => norms.map((norm) => ({ norm }));
const isPart = (norms: readonly string[]): boolean =>
  partPhrases.at(asWords(norms), 0)?.length === norms.length;
/** Nouns of other languages' compounds, by the word the catalogue has. */
const sames: Readonly<Record<string, readonly string[]>> = Object.assign(Object.create(null), {
  motor: ['engine', 'motor'],
  car: ['chassis', 'car'],
  vehicle: ['chassis'],
  living: ['house'],
  cabin: ['house', 'cab'],
  home: ['house'],
  glass: ['windshield'],
  entrance: ['entry'],
  ceiling: ['roof', 'ceiling'],
  back: ['rear', 'back'],
  behind: ['rear'],
});

/** "Light of the brake": the same two nouns as English has them, if that is a part. */
function genitive(words: readonly Word[], i: number): Instead | undefined {
  const head = words[i];
  const link = words[i + 1];
  if (!head || !link || head.stop > 0 || link.stop > 0 || !/^(?:of|from|for)$/.test(link.norm))
    return undefined;
  if (measures.has(head.norm)) return undefined;
  if (!/^[a-z]{3,}$/.test(head.norm) || partPhrases.at(words, i + 2) === undefined) {
    if (!articles.test(words[i + 2]?.norm ?? '') && sames[words[i + 2]?.norm ?? ''] === undefined)
      return undefined;
  }
  if ((partPhrases.at(words, i)?.length ?? 1) > 1) return undefined;
  const at = articles.test(words[i + 2]?.norm ?? '') && words[i + 2]?.stop === 0 ? i + 3 : i + 2;
  for (let length = 2; length >= 1; length--) {
    const run = words.slice(at, at + length);
    if (run.length < length || run.slice(0, -1).some((w) => w.stop > 0)) continue;
    const norms = run.map((w) => w.norm);
    const last = norms.at(-1) ?? '';
    for (const other of [last, plain(last), ...(length === 1 ? (sames[last] ?? []) : [])]) {
      const swapped = [...norms.slice(0, -1), other, head.norm];
      if (isPart(swapped) && !isPart([head.norm, link.norm, ...norms]))
        return { length: at + length - i, norms: swapped };
    }
  }
  return undefined;
}

/** "Step electric": noun and adjective, if the catalogue has them the other way round. */
function behindNoun(words: readonly Word[], i: number): Instead | undefined {
  const noun = words[i];
  const adjective = words[i + 1];
  if (!noun || !adjective || noun.stop > 0 || !adjectives.has(adjective.norm)) return undefined;
  if (partPhrases.at(words, i)?.length !== 1) return undefined;
  const next = adjective.stop === 0 ? words[i + 2] : undefined;
  if (
    next &&
    /^(?:by|here|there|in|on|of|the|at|half|it|a|an|to|from|with|for|over|under|up|off|left|right|side|corner|end|tire|tires|one)$/.test(
      next.norm,
    )
  )
    return undefined;
  if (next && (partPhrases.at(words, i + 2) || (partPhrases.at(words, i + 1)?.length ?? 1) > 1))
    return undefined;
  return isPart([adjective.norm, noun.norm]) ? { length: 2, norms: [adjective.norm, noun.norm] } : undefined;
}

/** "No works", "closes not", "doesn't opens": a verb denied in the way of another language. */
function deniedVerb(words: readonly Word[], i: number): Instead | undefined {
  const w = words[i];
  const next = words[i + 1];
  if (!w || w.stop > 0 || !next) return undefined;
  const base = baseOf.get(next.norm);
  const before = i > 0 && words[i - 1]?.stop === 0 ? (words[i - 1]?.norm ?? '') : '';
  if (
    /^(?:no|not)$/.test(w.norm) &&
    before !== '' &&
    !/^(?:do|does|did|is|are|there|with|has|have|a|the|or|and|if|why)$/.test(before)
  ) {
    if (
      base &&
      !/^(?:leaks|smells|drips|lights|cuts|slides|seals|lifts|catches|shows|moves|charges|runs|locks|pumps|stops|drains|fits|latches)$/.test(
        next.norm,
      )
    )
      return { length: 2, norms: ["doesn't", base] };
    if (
      base === undefined &&
      !auxiliary.test(before) &&
      /^(?:open|close|function|turn|ignite|react|flush)$/.test(next.norm) &&
      (next.stop > 0 ||
        i + 2 >= words.length ||
        /^(?:on|off|good|well|more|anymore|complete)$/.test(words[i + 2]?.norm ?? ''))
    )
      return { length: 2, norms: ["doesn't", next.norm] };
  }
  if (/^(?:doesn't|don't|didn't)$/.test(w.norm) && base) return { length: 2, norms: ["doesn't", base] };
  const own = baseOf.get(w.norm) ?? (workedBases.has(w.norm) && /s$/.test(before) ? w.norm : undefined);
  if (own && next.norm === 'not' && before !== '') {
    const behind = next.stop === 0 ? (words[i + 2]?.norm ?? '') : '';
    if (
      behind === '' ||
      /^(?:complete|completely|good|well|right|anymore|more|with|when|on|off|up|out|in|down|any|always|at|properly|because|and|the|it)$/.test(
        behind,
      )
    )
      return { length: 2, norms: ["doesn't", own] };
  }
  return undefined;
}

const lasting =
  /^(?:moving|going|coming|closing|opening|turning|holding|keeping|flushing|draining|reacting|responding|locking|latching|starting|cooling|heating|making|giving|showing|stopping|igniting|catching|shutting|fitting|sealing|rising|lifting|sliding|blowing|spinning|rotating)$/;
/** "Is not closing complete": a lasting state in the form of a passing one. */
function progressiveDenied(words: readonly Word[], i: number): Instead | undefined {
  const short = /^(?:isn't|aren't)$/.test(words[i]?.norm ?? '');
  if (!short && !(/^(?:is|are|'s|'re)$/.test(words[i]?.norm ?? '') && words[i + 1]?.norm === 'not'))
    return undefined;
  const at = short ? i + 1 : i + 2;
  const verb = words[at]?.norm ?? '';
  const base = ofLasting.get(verb);
  const aside = verb === 'pulling' && /^(?:to|on)$/.test(words[at + 1]?.norm ?? '');
  if (
    !base ||
    (!lasting.test(verb) && !aside) ||
    /^(?:i|you|we|he|she|who|what|that's)$/.test(words[i - 1]?.norm ?? '')
  )
    return undefined;
  const next = words[at]?.stop === 0 ? (words[at + 1]?.norm ?? '') : '';
  if (verb === 'going' && /^(?:to|on|anywhere|through|into|with|over|there|back|be|by|for)$/.test(next))
    return undefined;
  return { length: at - i + 1, norms: ["doesn't", base] };
}

/** "Of cracks I see nothing": the leading "of" says no more than what the talk is of, and begins a sentence. */
function leadingOf(words: readonly Word[], i: number): Instead | undefined {
  const before = words[i - 1];
  if (words[i]?.norm !== 'of' || words[i]?.stop !== 0) return undefined;
  const free = !before || before.stop > 0;
  for (let k = i + 2; k < Math.min(words.length, i + 9) && (words[k - 1]?.stop ?? 0) < 2; k++) {
    const n = words[k]?.norm ?? '';
    if (free && (words[k - 1]?.stop ?? 0) === 0 && /^(?:i|we|there|nothing|it)$/.test(n))
      return { length: 1, norms: [] };
    if (/^(?:i|we)$/.test(n) && seesNothing.at(words, k)) return { length: 1, norms: [], ends: true };
    if (/^(?:i|we|it|is|are|has|have)$/.test(n)) return undefined;
  }
  return undefined;
}

/** "The toilet it does not flush": the part was named, and "it" says it once more. */
function resumed(words: readonly Word[], i: number): Instead | undefined {
  if (!/^(?:it|they|he|she)$/.test(words[i]?.norm ?? '') || words[i]?.stop !== 0 || i === 0) return undefined;
  if (words[i - 1]?.stop !== 0) return undefined;
  const next = words[i + 1]?.norm ?? '';
  if (
    !/^(?:is|are|was|were|has|have|does|do|doesn't|don't|did|didn't|can|can't|not|no|only|also|always|never|needs|looks|seems|makes|gives|goes|comes|leaks|smells)$/.test(
      next,
    ) &&
    !baseOf.has(next)
  )
    return undefined;
  for (let j = Math.max(0, i - 4); j < i; j++) {
    if (partPhrases.at(words, j)?.length !== i - j) continue;
    let k = j - 1;
    while (
      k >= 0 &&
      words[k]?.stop === 0 &&
      (articles.test(words[k]?.norm ?? '') || adjectives.has(words[k]?.norm ?? ''))
    )
      k--;
    if (
      k >= 0 &&
      words[k]?.stop === 0 &&
      /^(?:in|on|at|by|under|over|behind|with|to|of|from|near|for|around|inside|into|if|when|because|that|and|or)$/.test(
        words[k]?.norm ?? '',
      )
    )
      return undefined;
    // "the pump he is loud": of a thing only where it begins what is said
    if (/^(?:he|she)$/.test(words[i]?.norm ?? '') && ((k >= 0 && words[k]?.stop === 0) || /^did/.test(next)))
      return undefined;
    return { length: 1, norms: [] };
  }
  return undefined;
}

/** "Carbon monoxide alarm there is no": the thing was named before, and there is none. */
function thereIsNo(words: readonly Word[], i: number): Instead | undefined {
  const [a, b, c] = [words[i], words[i + 1], words[i + 2]];
  if (a?.norm !== 'there' || !/^(?:is|are)$/.test(b?.norm ?? '') || !/^(?:no|not)$/.test(c?.norm ?? ''))
    return undefined;
  if (c && c.stop === 0 && i + 3 < words.length) {
    // "there is not spare wheel"
    if (c.norm === 'not' && partPhrases.at(words, i + 3)) return { length: 3, norms: ['there', 'is', 'no'] };
    return undefined;
  }
  return i > 0 ? { length: 3, norms: ['there', 'is', 'none'] } : undefined;
}

/** "Has not spare wheel", "has not a spare". */
function hasNot(words: readonly Word[], i: number): Instead | undefined {
  if (
    !/^(?:has|have)$/.test(words[i]?.norm ?? '') ||
    words[i + 1]?.norm !== 'not' ||
    words[i + 1]?.stop !== 0
  )
    return undefined;
  const at = /^(?:a|an|any|one)$/.test(words[i + 2]?.norm ?? '') ? i + 3 : i + 2;
  return partPhrases.at(words, at) ? { length: at - i, norms: ['has', 'no'] } : undefined;
}

function carried(words: readonly Word[], i: number): Instead | undefined {
  const hit = carriedOver.at(words, i);
  const meant = hit?.values[0];
  if (!hit || meant === undefined) return undefined;
  if (/^(?:no|not)$/.test(words[i]?.norm ?? '') && auxiliary.test(words[i - 1]?.norm ?? '')) return undefined;
  // a longer name of the catalogue that begins here stands as it is
  if ((partPhrases.at(words, i)?.length ?? 0) > hit.length) return undefined;
  return { length: hit.length, norms: meant.split(' ') };
}

/** The stream in the order and the words of plain English; each word keeps the written ones it came from. */
export function plainOrder(words: readonly Word[]): Word[] {
  const out: Word[] = [];
  for (let i = 0; i < words.length; ) {
    const aside = asides.at(words, i);
    if (aside) {
      const last = words[i + aside.length - 1];
      const before = out.at(-1);
      if (before && before.stop === 0) out[out.length - 1] = { ...before, stop: last?.stop === 2 ? 2 : 1 };
      i += aside.length;
      continue;
    }
    const found =
      commaSaid(words, i) ??
      leadingOf(words, i) ??
      resumed(words, i) ??
      thereIsNo(words, i) ??
      hasNot(words, i) ??
      progressiveDenied(words, i) ??
      deniedVerb(words, i) ??
      carried(words, i) ??
      adverbBehind(words, i) ??
      fromSide(words, i) ??
      smallWord(words, i) ??
      genitive(words, i) ??
      behindNoun(words, i);
    if (!found) {
      // nothing is put in order inside a longer name of the catalogue
      for (let k = partPhrases.at(words, i)?.length ?? 1; k > 0; k--) out.push(words[i++] as Word);
      continue;
    }
    const first = words[i] as Word;
    const last = words[i + found.length - 1] as Word;
    const before = out.at(-1);
    if (found.ends && before && before.stop === 0) out[out.length - 1] = { ...before, stop: 2 };
    found.norms.forEach((norm, k) => {
      const from = words[Math.min(i + k, i + found.length - 1)] as Word;
      const end = k === found.norms.length - 1;
      const { asks: _asks, ...rest } = from;
      out.push({
        ...rest,
        norm,
        written: end ? last.written : k === 0 ? first.written : from.written,
        end: end ? last.end : from.end,
        stop: end ? last.stop : 0,
        capital: k === 0 && first.capital,
        pause: k === 0 ? first.pause : 0,
        ...(end && last.asks ? { asks: true as const } : {}),
      });
    });
    i += found.length;
  }
  return out;
}
