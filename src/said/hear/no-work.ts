// Why: "heater no work", "not getting any air from the ducts", "blows but it ain't cold": failures told without a verb that is denied.
import type { Clause } from './clause.ts';
import { defectPhrases } from './lexicon.ts';
import { subjectOf } from './state-draft.ts';
import type { Talk } from './talk.ts';
import { neededThings } from './work-words.ts';

/** A failure found: the part, and how many words tell of it. */
export interface Denied {
  readonly part: string;
  readonly length: number;
}

const bare =
  /^(?:work|works|working|open|close|start|run|turn|light|function|flush|drain|pump|lock|blow|fire|cool|go|move|spin|charge|come)$/;

/** "Heater no work", "door no open": said as in another tongue. */
export function brokenNo(talk: Talk, clause: Clause, i: number): Denied | undefined {
  const { words } = talk.marks;
  const norm = (k: number): string => words[k]?.norm ?? '';
  if (norm(i) !== 'no' || !bare.test(norm(i + 1)) || words[i]?.stop !== 0 || i + 1 >= clause.to)
    return undefined;
  const led =
    clause.mentions.some((m) => m.to === i && !m.aside) || /^(?:it|he|she|this|that|is)$/.test(norm(i - 1));
  const ends =
    i + 2 >= clause.to ||
    (words[i + 1]?.stop ?? 0) > 0 ||
    /^(?:he|she|it|and|but|because|too|good|more|now|any|on|at|is|i|when|only)$/.test(norm(i + 2));
  const part = led && ends ? subjectOf(talk, clause, i) : undefined;
  return part && part !== 'coach' ? { part, length: 2 } : undefined;
}

const noFault =
  /^(?:leak|drip|rock|wobble|smell|know|look|see|have|need|want|matter|mean|appear|seem|show|bother|get|got|make|feel|sound|say|think|like|rattle|squeak|squeal|stick|bind|sag|move|rub|wiggle|be|been|include|count|vibrate|shake|pull|wander|drift|sway|smoke|burn|use|lose|drop|hit|touch|come|take|belong|exist|care|ask|scare|worry|hurt|surprise|budge|grind|slip|hesitate|miss|overheat|weep|seep|run|last)$/;

/** "Thermostat won't switch to furnace": any verb that is denied right behind a part, unless not doing it is good. */
export function denied(talk: Talk, clause: Clause, i: number): Denied | undefined {
  const { words } = talk.marks;
  const norm = (k: number): string => (k < clause.to ? (words[k]?.norm ?? '') : '');
  if (!/^(?:won't|doesn't|wouldn't|refuses|wont|doesnt)$/.test(norm(i)) || words[i]?.stop !== 0)
    return undefined;
  const m = clause.mentions.find((x) => x.to === i && !x.aside);
  const part = m?.parts[0];
  let k = i + 1;
  while (/^(?:to|even|ever|always|really|fully|quite|actually)$/.test(norm(k))) k++;
  const verb = norm(k);
  if (!part || part === 'coach' || verb === '' || noFault.test(verb) || defectPhrases.at(words, k))
    return undefined;
  if (talk.marks.mentionAt.from(k) || !/^[a-z]{2,}$/.test(verb) || /(?:ed|ing|ly)$/.test(verb))
    return undefined;
  return { part, length: k + 1 - i };
}

/** "Not getting any air from the ducts", "get no heat out of it": `i` is what is wanting. */
export function notGotten(talk: Talk, clause: Clause, i: number): Denied | undefined {
  const { words } = talk.marks;
  const norm = (k: number): string => (k >= clause.from ? (words[k]?.norm ?? '') : '');
  if (!neededThings.has(norm(i)) || i <= clause.from + 1) return undefined;
  const none =
    /^(?:any|much|no)$/.test(norm(i - 1)) &&
    /^(?:get|gets|getting|got|gettin|have|having|feel|feeling|see|seeing)$/.test(norm(i - 2));
  const not = norm(i - 1) === 'no' || /n't$|^(?:not|never|no)$/.test(norm(i - 3));
  const after = clause.mentions.find((m) => m.from > i && m.from - i <= 5);
  const led = words
    .slice(i + 1, after?.from ?? i + 1)
    .some((w) => /^(?:from|of|at|to|in|through)$/.test(w.norm));
  const part = after?.parts[0];
  return none && not && led && part ? { part, length: 1 } : undefined;
}

/** "It blows but it ain't cold", "clicks but never lights": what follows takes the work back. */
export function isTurned(talk: Talk, i: number, length: number): boolean {
  const { words, sentenceOf } = talk.marks;
  if (!/^(?:blow|run|crank|click|spin|turn|hum|come|kick|power|try|tries)/.test(words[i]?.norm ?? ''))
    return false;
  const norm = (k: number): string => (sentenceOf[k] === sentenceOf[i] ? (words[k]?.norm ?? '') : '');
  let k = i + length;
  while (k < i + length + 2 && !/^(?:but|only|just)$/.test(norm(k))) k++;
  if (!/^(?:but|only|just)$/.test(norm(k))) return false;
  if (norm(k) !== 'but') return /^(?:warm|hot|cold|room)$/.test(norm(k + 1));
  const tail = [1, 2, 3, 4].map((d) => norm(k + d));
  return (
    /^(?:it|that|they|she|he|won't|doesn't|never|not|no|nothing|there|i|don't|ain't|isn't)$/.test(
      tail[0] ?? '',
    ) &&
    tail.some((t) => /^(?:not|never|no|nothing)$|n't$|nt$/.test(t)) &&
    tail
      .concat(norm(k + 5))
      .some((t) =>
        /^(?:cold|cool|cools|cooling|hot|warm|heat|heats|lights?|light|fires?|start|starts|catch|catches|work|works|pressure|build|builds|hold|holds|water|prime|pump|pumps|move|moves|anything|comes?|come|charge|ice|spin|spins|go|goes|dry|air)$/.test(
          t,
        ),
      )
  );
}
