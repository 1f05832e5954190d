// Why: the size of a tire is said as a run of numbers with letters among them: "two forty-five seventy R nineteen five", "eleven R twenty-two five".
import { itemAt } from './number-item.ts';
import type { Word } from './word.ts';

/** Between the numbers of a size, and before them. */
const between = /^(?:r|slash|dash|by|over|series|bias|radial|lt|st|d|hyphen|stroke)$/;
/** Rims said as a plural: "seventy-five fifteens". */
const rims: Readonly<Record<string, string>> = {
  thirteens: '13',
  fourteens: '14',
  fifteens: '15',
  sixteens: '16',
  seventeens: '17',
  eighteens: '18',
  nineteens: '19',
  twenties: '20',
  fives: '5',
  "five's": '5',
};
const metric = /^([1-4]\d5)([2-9][05])(?:[rd])?(1[2-9]|2[0-4])(5)?$/;
const inches = /^(8|9|10|11|12)r(1[5-9]|2[0-4])(5)?$/;

/** A size and where its words end. */
export interface TireSize {
  readonly text: string;
  readonly to: number;
}

/** The size that begins at word `i`: "245/70R19.5", "11R22.5"; undefined where none begins. */
export function tireSizeAt(words: readonly Word[], i: number): TireSize | undefined {
  let text = '';
  let found: TireSize | undefined;
  for (let at = i, pieces = 0; at < words.length && pieces < 9; pieces++) {
    const w = words[at] as Word;
    const n = w.norm;
    let next = at + 1;
    if (Object.hasOwn(rims, n)) text += rims[n];
    else if (n === 'r' || n === 'radial' || n === 'd') text += text === '' ? '' : 'r';
    else if (/^r\d\d(?:\.5)?$/.test(n)) text += n.replace('.', '');
    else if (/^\d/.test(n) || !between.test(n)) {
      if (/^\d{3}\/\d\d$/.test(n)) text += n.replace('/', '');
      else {
        const item = itemAt(words, at);
        if (!item || item.kind === 'fraction' || item.value < 0) break;
        text += (
          item.kind === 'decimal' ? String(item.value).replace(/^0/, '') : String(item.value)
        ).replaceAll('.', '');
        next = item.to;
      }
    } else if (text === '') break;
    if (text.length > 10) break;
    const m = metric.exec(text);
    const s = m ?? inches.exec(text);
    if (s)
      found = m
        ? { text: `${m[1]}/${m[2]}R${m[3]}${m[4] ? '.5' : ''}`, to: next }
        : { text: `${s[1]}R${s[2]}${s[3] ? '.5' : ''}`, to: next };
    if ((words[next - 1]?.stop ?? 2) > 0) break;
    at = next;
  }
  return found;
}
