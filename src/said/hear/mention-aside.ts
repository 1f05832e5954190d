// Why: "over the sink", "the topper on the slide", "on propane", "our ladder": a part may be named only to say where, or with what.
import { defectPhrases } from './lexicon.ts';
import type { Mention } from './mention.ts';
import type { Word } from './word.ts';

const words_ = (text: string): Set<string> => new Set(text.split(' '));
const asideBefore = words_(
  'by near behind over under underneath above below beside around round at next beneath inside along across alongside past',
);
const articles = words_('the a an this that your my these those his her its');
const placing = words_('front rear back left right driver passenger side upper lower top bottom other');
/** "I put the charger on it", "with the air on", "our ladder": a thing used for the look, not looked at. */
export function isTool(words: readonly Word[], i: number, to: number): boolean {
  const norm = (k: number): string => words[k]?.norm ?? '';
  // "thirty minutes on the hose", "hooked a hose to it", "on propane": with what it was run
  if (
    /^(?:hose|garden hose|water hose)s?$/.test(
      words
        .slice(i, to)
        .map((w) => w.norm)
        .join(' '),
    )
  ) {
    let b = i - 1;
    while (b > i - 4 && (articles.has(norm(b)) || /^(?:garden|water|drinking|white|some)$/.test(norm(b))))
      b--;
    if (/^(?:on|with|hooked|hook|put|ran|run|using|connected|attached|screwed|by|off)$/.test(norm(b)))
      return true;
  }
  if (
    /^(?:propane|lp|lp gas)$/.test(
      words
        .slice(i, to)
        .map((w) => w.norm)
        .join(' '),
    ) &&
    /^(?:on|with|off|using)$/.test(norm(i - 1))
  )
    return true;
  if (norm(i - 1) === 'our' && /^(?:ladder|meter|light|cord|gauge)s?$/.test(norm(to - 1))) return true;
  let back = i - 1;
  while (
    back > i - 4 &&
    (articles.has(norm(back)) || /^(?:both|a|some|two|three|all|one|roof)$/.test(norm(back)))
  )
    back--;
  // "with the furnace running and a burner lit"
  if (norm(back) === 'and' && back < i - 1)
    for (let k = back - 1; k > back - 7 && words[k]?.stop === 0; k--)
      if (/^(?:with)$/.test(norm(k))) {
        back = k;
        break;
      }
  return (
    /^(?:put|hooked|with|plugged|had)$/.test(norm(back)) &&
    back < i - 1 &&
    /^(?:on|off|running|going|lit|unplugged|disconnected)$/.test(norm(to)) &&
    words[to - 1]?.stop === 0
  );
}

/** "The topper on the rear slide": the second only says which topper. */
export function isOfBefore(
  words: readonly Word[],
  i: number,
  last: Mention | undefined,
  weak: boolean,
): boolean {
  if (!last || last.weak || last.aside || weak) return false;
  let back = i - 1;
  while (back > last.to && (articles.has(words[back]?.norm ?? '') || placing.has(words[back]?.norm ?? '')))
    back--;
  return (
    back === last.to &&
    /^(?:on|of|in|for|to)$/.test(words[back]?.norm ?? '') &&
    words[last.to - 1]?.stop === 0 &&
    words[back]?.stop === 0
  );
}

/** True when the words before `i` only say where: "over the sink", "next to the fridge". */
export function isAside(words: readonly Word[], i: number, to: number): boolean {
  let back = i - 1;
  while (
    back > i - 5 &&
    words[back]?.stop === 0 &&
    (articles.has(words[back]?.norm ?? '') || placing.has(words[back]?.norm ?? ''))
  )
    back--;
  const a = words[back]?.norm ?? '';
  const b = words[back - 1]?.norm ?? '';
  if (words[back]?.stop !== 0) return false;
  // "under the sink is wet": what is said is said of there
  if (
    (back === 0 || words[back - 1]?.stop !== 0) &&
    words[to - 1]?.stop === 0 &&
    /^(?:is|are|'s|was|feels|smells|looks)$/.test(words[to]?.norm ?? '') &&
    defectPhrases.at(words, to + 1)
  )
    return false;
  if (a === 'at') return !/^look(?:ing|s|ed)?$/.test(b);
  if (a === 'inside' && back === i - 1) return false;
  if (a === 'of' && /^(?:front|out|ahead|forward|aft|outboard|inboard)$/.test(b)) return true;
  // "sags away from the ceiling", "folds out into a bed", "makes a bed"
  if (a === 'from') return /^(?:away|off|down|out|up|back|inches|inch)$/.test(b);
  if (a === 'into')
    return /^(?:out|down|over|flat|up|folds?|folded|makes?|turns?|converts?|changes?|opens?|goes)$/.test(b);
  if (/^(?:makes?|making|made)$/.test(a) && back < i - 1 && /^beds?$/.test(words[i]?.norm ?? '')) return true;
  if (/^(?:on|onto|against|into)$/.test(a) && /[aeiouy].*ing$/.test(b) && defectPhrases.at(words, back - 1))
    return true;
  return asideBefore.has(a) || (a === 'to' && b === 'next');
}
