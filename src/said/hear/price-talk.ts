// Why: money is no reading of the coach; what a part costs must not pass for what it measures.
import type { Marks } from './marks.ts';
import { phraseList } from './phrase-index.ts';

const money = /^(?:\$|dollar|dollars|buck|bucks|grand|cents|usd|euros|euro|pounds sterling)$/;
/** Words beside which a number is a price. */
const prices = phraseList(
  "a pop,apiece,runs you,run you,runs ya,run ya,ran me,run me,running you,cost you,costs you,set you back,sets you back,set me back,sets ya back,set ya back,asking,he's asking,offered,offered me,knock off,knocked off,worth,wants for it,for it,sticker price,list price,price,priced,book value,nada,cost,costs,cost me,cost us,paid,pay,sells for,sold for,selling for,charged,charge you,charges,quoted,estimate was,the bill,monthly,a month,down payment,interest rate,apr".split(
    ',',
  ),
);

/** Marks what is said of money: the number and what hangs on it, and the whole clause where no part is named. */
export function moneyIn(marks: Marks, out: Uint8Array): void {
  const { words, clauseOf } = marks;
  for (const span of marks.numbers) {
    const c = clauseOf[span.from];
    let from = span.from;
    while (from > 0 && clauseOf[from - 1] === c) from--;
    let to = span.to;
    while (to < words.length && clauseOf[to] === c) to++;
    // "half dollar size" tells how big
    if (
      /^(?:half|quarter|silver)$/.test(words[span.bare - 1]?.norm ?? '') &&
      !/s$/.test(words[span.to - 1]?.norm ?? '')
    )
      continue;
    let is = span.money || money.test(words[span.to]?.norm ?? '') || words[span.bare - 1]?.norm === 'grand';
    for (let k = Math.max(from, span.from - 8); !is && k < Math.min(to, span.to + 5); k++) {
      if (k >= span.from && k < span.to && !money.test(words[k]?.norm ?? '')) continue;
      const hit = prices.at(words, k);
      if (!hit) continue;
      const said = words[k]?.norm ?? '';
      if (span.unit && said !== 'a' && said !== 'offered' && said !== 'paid') continue;
      if (said === 'worth' && words[k - 1]?.written === words[k - 2]?.written) continue;
      if (
        (said === 'for' || said === 'apiece') &&
        !/^(?:wants?|asking|give|gave|took|take|get|pay|paid)$/.test(verbBefore(marks, from, k))
      )
        continue;
      if (said === 'charge' || said === 'charges') continue;
      is = k >= span.to || span.from - k <= 6;
    }
    if (!is) continue;
    let named = false;
    const costs = words.slice(from, to).some((w) => /^(?:costs?|apiece|runs?)$/.test(w.norm));
    for (let k = from; k < to && !costs; k++) if (marks.mentionAt.from(k) && !(k >= span.from)) named = true;
    for (let k = named ? span.from : from; k < to; k++) out[k] ||= 1;
  }
}

function verbBefore(marks: Marks, from: number, k: number): string {
  for (let j = k - 1; j >= from; j--)
    if (/^(?:wants?|asking|give|gave|took|take|get|pay|paid)$/.test(marks.words[j]?.norm ?? ''))
      return marks.words[j]?.norm ?? '';
  return '';
}
