// Why: people call each other by name on a walk; a name that is spoken to, or that does something, is no maker.
import { itemAt } from './number-item.ts';
import type { Word } from './word.ts';

const doing = new Set('holding said says did told checked found thinks wants asked'.split(' '));
const beside = new Set(
  'and with me i him her hey hi thanks thank okay no yes yeah hello mister mr mrs dear'.split(' '),
);
const leads = new Set('ask asked told tell with and hey thanks thank hi'.split(' '));

/** The capitalised words that are people: called alone between stops, or with a verb of people behind them. */
export function peopleIn(words: readonly Word[], isName: (i: number) => boolean): ReadonlySet<string> {
  const people = new Set<string>();
  const things = new Set<string>();
  for (let i = 0; i < words.length; i++) {
    if (!isName(i)) continue;
    const w = words[i] as Word;
    const before = words[i - 1];
    const after = words[i + 1];
    if (before && before.stop === 0 && /^(?:the|a|an|by|of)$/.test(before.norm)) things.add(w.norm);
    if (before?.norm === 'and' && /^(?:me|him|her|i)$/.test(words[i - 2]?.norm ?? '')) people.add(w.norm);
    // "Corvandos, all six": the maker of a set
    if (w.stop > 0 && (itemAt(words, i + 1) || /^(?:all|both)$/.test(after?.norm ?? ''))) continue;
    const alone = w.stop > 0 && (before === undefined || before.stop > 0);
    const first = before === undefined || before.stop === 2;
    const called =
      (alone && !first) ||
      (alone && w.stop > 0 && after !== undefined && first && w.stop === 1) ||
      (before !== undefined && beside.has(before.norm) && w.stop > 0 && first === false && before.stop === 0);
    const acts =
      after !== undefined &&
      ((after.norm === "'s" && doing.has(words[i + 2]?.norm ?? '')) ||
        /^(?:said|says|here|told|checked|thinks|asked|did)$/.test(after.norm)) &&
      w.stop === 0;
    const led =
      before !== undefined &&
      before.stop === 0 &&
      leads.has(before.norm) &&
      (/^(?:me|i|got|'ve)$/.test(words[i - 2]?.norm ?? '') || before.norm === 'hey');
    if (called || acts || led) people.add(w.norm);
  }
  for (const t of things) people.delete(t);
  return people;
}
