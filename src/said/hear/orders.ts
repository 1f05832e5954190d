// Why: two people work at a coach: what one asks the other to do, hand over or call out is no reading and no finding.
import type { Marks } from './marks.ts';

/** Verbs of handing over and looking for: the whole clause is about tools. */
const hands = /^(?:hand|pass|fetch|toss|throw|lend|find|grab|bring|reach|chuck|get|gimme|give)$/;
const tools =
  /^(?:meter|gauge|tape|light|lamp|flashlight|torch|ladder|rag|rags|wrench|socket|screwdriver|driver|hammer|mirror|rule|ruler|stick|pad|pen|pencil|marker|chalk|clipboard|sheet|camera|phone|key|keys|glove|gloves|creeper|jack|stand|stands|chock|chocks|thermometer|probe|multimeter|tester|gun|pump|hose|bucket|towel|paper|coffee|water|knife|pliers|pick|stool|lead|leads|clamp|adapter|plug|cord|charger|battery|millimeter|mil|eighth|quarter|half|sixteenth|inch|one|other|card|tag|tags|book|bag|box|kit|drill|putty|sealant|roll|cable|scale)$/;
/** Verbs of a helper's work, where a figure follows that is to be reached. */
const aims =
  /^(?:call|tell|give|shout|holler|yell|hold|take|bring|run|rev|pump|get|stop|wait|let|read|watch|keep|push|count|say|sing|wave|stay)$/;
const opener =
  /^(?:and|then|now|okay|ok|so|please|alright|right|lad|kid|son|buddy|just|somebody|someone|you|go|come|yeah|yes|no|hey)$/;

/** Marks in `out` orders to the helper: 2, no finding. Linear. */
export function ordersIn(marks: Marks, out: Uint8Array): void {
  const { words, clauseOf } = marks;
  const norm = (i: number): string => words[i]?.norm ?? '';
  for (let from = 0; from < words.length; ) {
    let to = from;
    while (to < words.length && clauseOf[to] === clauseOf[from]) to++;
    let k = from;
    while (k < to && k < from + 3 && opener.test(norm(k))) k++;
    const verb = norm(k);
    const next = norm(k + 1);
    // "hand me the moisture meter", "somebody find my ten millimeter"
    const gives =
      hands.test(verb) &&
      (/^(?:me|us|him|her|my|over)$/.test(next) || verb === 'gimme') &&
      words.slice(k + 1, to).some((w) => tools.test(w.norm));
    if (gives) for (let i = from; i < to; i++) out[i] ||= 2;
    else if (aims.test(verb) && isAimed(marks, k, to)) for (let i = from; i < to; i++) out[i] ||= 2;
    else if (/^(?:is|was)$/.test(verb) && /^(?:that|it|this)$/.test(next)) {
      // "is that a one or a seven": a choice, whether a mark of question was written or not
      const or = words.slice(k, to).findIndex((w) => w.norm === 'or');
      if (or > 0 && hasNumber(marks, k, k + or) && hasNumber(marks, k + or, to))
        for (let i = from; i < to; i++) out[i] ||= 2;
    }
    from = to;
  }
}

/** "Call me eighty-five", "hold it at ninety", "take it up to a hundred": a figure to be reached. */
function isAimed(marks: Marks, k: number, to: number): boolean {
  const { words } = marks;
  const norm = (i: number): string => words[i]?.norm ?? '';
  const verb = norm(k);
  const calls = /^(?:call|tell|give|shout|holler|yell|read|sing|say|wave)$/.test(verb);
  if (calls) {
    let i = k + 1;
    if (!/^(?:me|us|out|when|at)$/.test(norm(i))) return false;
    while (i < Math.min(to, k + 7) && !marks.numberAt.from(i)) {
      if (
        !/^(?:me|us|out|when|at|it|it's|'s|gets|hits|is|reaches|comes|to|a|about|around|the|past|passes|says|needle|gauge|we're|you're|'re|if|goes)$/.test(
          norm(i),
        )
      )
        return false;
      i++;
    }
    const span = marks.numberAt.from(i);
    // "give me two minutes" and "give me ninety"; "give me a hand" has no figure
    return span !== undefined && i < to;
  }
  let i = k + 1;
  let led = false;
  while (i < Math.min(to, k + 6) && !marks.numberAt.from(i)) {
    const n = norm(i);
    if (/^(?:at|to|till|until|for|past|over|under|near|around)$/.test(n)) led = true;
    else if (
      !/^(?:it|her|him|them|that|up|down|there|steady|get|come|build|drop|climb|go|run|off|the|rpm|revs|idle|needle|gauge|throttle|me|us|about|a)$/.test(
        n,
      )
    )
      return false;
    i++;
  }
  return led && i < to && marks.numberAt.from(i) !== undefined;
}

function hasNumber(marks: Marks, from: number, to: number): boolean {
  for (let k = from; k < to; k++) if (marks.numberAt.from(k)) return true;
  return false;
}
