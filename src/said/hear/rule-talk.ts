// Why: people lay down rules while they read ("anything under four I reject", "a good one sits at six three"); a rule's number was never read.
import type { Marks } from './marks.ts';

/** Stand for whatever there may be. */
const whatever = /^(?:anything|anywhere|anyplace|anyone|whatever|something|nothing|everything|any)$/;
const bounds =
  /^(?:past|over|above|under|below|beneath|beyond|more|less|older|newer|younger|deeper|between|from|within|north|south|shy|short|up|bigger|smaller|higher|lower|longer|shorter|hotter|colder|warmer|better|worse|outside|inside|upwards|exceeding|around|near|close)$/;
/** Own and shop thresholds: what one wants, and at which figure one does something. */
const wants =
  /^(?:like|likes|want|wants|prefer|prefers|need|needs|reject|rejects|fail|fails|worry|worries|allow|allows|accept|accepts|condemn|condemns|scrap|scraps|toss|aim|aims|require|requires|expect|expects|shoot|insist|insists|recommend|recommends|flag|replace|swap|change|pull|redline|stop|panic|sweat|fret|argue|bother|care|complain|walk|demand|hope|look)$/;
const whoRules = /^(?:i|we|you|they|he|she|folks|people|dealers|inspectors|shops|auditors|insurance)$/;
/** What a figure is called that nobody read. */
const norms =
  /^(?:limit|limits|max|maximum|min|minimum|spec|specs|specification|legal|allowed|allowable|allowance|norm|standard|rule|rules|law|nominal|cutoff|threshold|target|tolerance|ceiling|acceptable|permitted|permissible|recommended|requirement|guideline|passing)$/;
const passes = /^(?:passes|fails|flunks|qualifies)$/;
/** One that stands for all of its kind. */
const model =
  /^(?:good|healthy|new|proper|decent|fresh|brand|bad|dead|typical|normal|standard|strong|weak|tired|worn|modern|real|perfect|happy)$/;
const reads =
  /^(?:sits|sit|reads|read|runs|run|shows|show|measures|measure|holds|hold|gives|give|makes|make|has|have|rests|rest|pulls|pull|weighs|weigh|blows|blow|lasts|last|takes|take|tests|test|is|are|'s|will|should|would|comes|come|starts|gets|get|needs|wants|drops|drop|leaks|smells)$/;

/** Marks in `out` what is a rule, and no reading: 2, supposed. Linear: every word is looked at in its own clause. */
export function rulesIn(marks: Marks, out: Uint8Array): void {
  const { words, clauseOf, sentenceOf } = marks;
  const norm = (i: number): string => words[i]?.norm ?? '';
  const endOf = (i: number, of: readonly number[]): number => {
    let k = i;
    while (k < words.length && of[k] === of[i]) k++;
    return k;
  };
  const mark = (from: number, to: number): void => {
    for (let k = from; k < to; k++) out[k] ||= 2;
  };
  for (let from = 0; from < words.length; ) {
    const to = endOf(from, clauseOf);
    const end = Math.min(endOf(from, sentenceOf), from + 26);
    const lead = /^(?:but|and|so|now|well|because|'cause|because|okay|see|mind)$/.test(norm(from))
      ? from + 1
      : from;
    if (hasNumber(marks, from, end)) {
      if (
        whatever.test(norm(lead)) &&
        (bounds.test(norm(lead + 1)) || bounds.test(norm(lead + 2)) || marks.numberAt.from(lead + 1))
      )
        mark(from, end);
      else if (norm(lead) === 'any' && anyBeyond(marks, lead, to)) mark(from, end);
      else if (isModel(marks, lead)) mark(from, end);
      else thresholds(marks, from, to, lead, mark);
    }
    from = to;
  }
}

function hasNumber(marks: Marks, from: number, to: number): boolean {
  for (let k = from; k < to; k++) if (marks.numberAt.from(k)) return true;
  return false;
}

/** "Any seam that's open over six": a kind of thing, and a bound. */
function anyBeyond(marks: Marks, lead: number, to: number): boolean {
  for (let k = lead + 2; k < Math.min(to, lead + 8); k++)
    if (bounds.test(marks.words[k]?.norm ?? '') && numberSoon(marks, k + 1, Math.min(to, k + 4))) return true;
  return false;
}

/** "A good one sits at six three", "new ones are eighty-five". */
function isModel(marks: Marks, lead: number): boolean {
  const norm = (i: number): string => marks.words[i]?.norm ?? '';
  let k = lead;
  const one = /^(?:a|an|any|your|most)$/.test(norm(k));
  if (one) k++;
  if (!model.test(norm(k))) return false;
  k++;
  if (/^(?:new)$/.test(norm(k))) k++;
  const ones = /^(?:one|ones)$/.test(norm(k));
  // "good battery, twelve six" is read; "a good battery reads twelve six" is a rule
  if (!one && !(ones && reads.test(norm(k + 1)))) return false;
  for (let j = k; j < k + 4; j++) {
    if ((marks.words[j]?.stop ?? 2) > 0 && j > k) return false;
    if (reads.test(norm(j + 1)) && (marks.words[j]?.stop ?? 2) === 0 && !/^(?:is|are|'s)$/.test(norm(j + 1)))
      return true;
    if (ones && /^(?:is|are|'s)$/.test(norm(j + 1))) return true;
  }
  return false;
}

/** "I like eighteen", "two inches is the limit", "only good for ten years", "you're allowed two". */
function thresholds(
  marks: Marks,
  from: number,
  to: number,
  lead: number,
  mark: (from: number, to: number) => void,
): void {
  const { words } = marks;
  const norm = (i: number): string => words[i]?.norm ?? '';
  for (let k = from; k < to; k++) {
    const n = norm(k);
    const span = marks.numberAt.from(k);
    // "six is fine for November", "a hundred and ten is the limit", "fifteen passes"
    if (span && span.to < to) {
      const v = norm(span.to);
      const be = /^(?:is|'s|are|was|would|be)$/.test(v);
      const a =
        be && /^(?:the|a|an|my|our|their|your|what|all|about)$/.test(norm(span.to + 1))
          ? span.to + 2
          : span.to + 1;
      if (
        passes.test(v) ||
        (be && (norms.test(norm(a)) || norms.test(norm(a + 1)))) ||
        (be && norm(span.to + 1) === 'what' && whoRules.test(norm(span.to + 2))) ||
        (be &&
          /^(?:fine|good|plenty|enough|normal|okay|ok|typical|right|about|low|high|excellent|nothing|great|common|usual)$/.test(
            norm(span.to + 1),
          ) &&
          norm(span.to + 2) === 'for')
      ) {
        mark(from, to);
        return;
      }
      k = span.to - 1;
      continue;
    }
    // "my limit is", "the cutoff's", "legal minimum of"
    if (
      norms.test(n) &&
      /^(?:my|our|your|their|the|shop|state|legal|factory|a|bare|federal|absolute|house|dot|wear)$/.test(
        norm(k - 1),
      ) &&
      k - lead <= 3 &&
      n !== 'standard' &&
      n !== 'ceiling' &&
      n !== 'recommended' &&
      n !== 'passing' &&
      numberSoon(marks, k + 1, Math.min(to, k + 6)) &&
      !marks.mentionAt.from(k)
    ) {
      mark(from, to);
      return;
    }
    // "I like eighteen", "I'd worry over two twenty", "they want them swapped at twelve years"
    if (wants.test(n) && k - lead >= 1 && k - lead <= 3 && whoRules.test(norm(lead))) {
      const helped = words
        .slice(lead + 1, k)
        .every((w) =>
          /^(?:don't|do|always|only|usually|just|'d|would|won't|will|normally|generally|never|really|start|begin)$/.test(
            w.norm,
          ),
        );
      if (helped && wantsFigure(marks, n, k + 1, to)) {
        mark(from, to);
        return;
      }
    }
    // "they run a thousand hours between rebuilds"
    if (
      k === lead + 1 &&
      /^(?:they|these|those|it)$/.test(norm(lead)) &&
      /^(?:run|go|do|get|make|hold|cost|live|take|need)$/.test(n) &&
      words
        .slice(k, to)
        .some((w) => /^(?:between|easy|easily|average|usually|apiece|forever|normally)$/.test(w.norm)) &&
      hasNumber(marks, k, to)
    ) {
      mark(from, to);
      return;
    }
    // "they're only good for ten years", "good for ten thousand", "you're allowed two", "seven years they last"
    const allowed =
      n === 'allowed' ||
      n === 'permitted' ||
      (n === 'good' && norm(k + 1) === 'for' && !/^(?:is|'s|was|tests|tested)$/.test(norm(k - 1)));
    const lasts =
      /^(?:last|lasts)$/.test(n) &&
      /^(?:they|these|those|it|them|usually|only|normally|batteries|tires|ones|roofs?)$/.test(norm(k - 1));
    if ((allowed && numberSoon(marks, k + 1, Math.min(to, k + 6))) || (lasts && hasNumber(marks, from, to))) {
      mark(from, to);
      return;
    }
  }
}

function numberSoon(marks: Marks, from: number, to: number): boolean {
  for (let k = from; k < to; k++) if (marks.numberAt.from(k)) return true;
  return false;
}

/** The verb of wanting leads to a figure: right behind it, or behind "at least", "to see", "over". */
function wantsFigure(marks: Marks, verb: string, from: number, to: number): boolean {
  const { words } = marks;
  const moves = /^(?:pull|stop|walk|look|change|replace|swap|need|hope)$/.test(verb);
  for (let k = from; k < Math.min(to, from + 6); k++) {
    const n = words[k]?.norm ?? '';
    if (marks.numberAt.from(k))
      return (
        !moves ||
        /^(?:at|over|under|above|below|past|than|least|for|around|between)$/.test(words[k - 1]?.norm ?? '')
      );
    if (
      !/^(?:to|see|at|least|about|around|over|under|above|below|for|than|more|less|em|them|it|'em|swapped|changed|replaced|done|when|past|between|a|good|no|most|in|there|be|have|find|out|myself|mine|the|tires?|ones?|any|anything|if|it's|'s|up|until|till|of|off|one)$/.test(
        n,
      )
    )
      return false;
  }
  return false;
}
