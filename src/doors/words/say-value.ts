// Why: values, money and dates on screens are worded as in the documents; this is the one door to those words.

import { aspectOf } from '../../catalogue/index.ts';
import type { Fact } from '../../known/facts.ts';
import { aspectName } from '../../published/plain-subject.ts';
import { plainValue } from '../../published/plain-value.ts';
import type { Value } from '../../said/entry.ts';
import { unitFact } from '../../units/unit.ts';

export { plainDay as sayDay } from '../../published/plain-day.ts';
export {
  aspectName,
  factWords as sayFact,
  partName,
  subjectTitle,
} from '../../published/plain-subject.ts';
export { plainNumber as sayNumber } from '../../published/plain-value.ts';
export { showMoney as sayMoney } from '../../units/money.ts';

/** The value as words; the part and aspect say whether it is money, a year, a date code. */
export const sayValue = (value: Value, part: string, aspect: string): string =>
  plainValue(value, aspectOf(part, aspect));

/** "tread mid" with what it is measured in, for a field's label: "tread mid, in /32 in". */
export function sayField(part: string, aspect: string): string {
  const unit = aspectOf(part, aspect)?.unit;
  const symbol = unit === undefined ? '' : unitFact(unit).symbol;
  return symbol === '' ? aspectName(part, aspect) : `${aspectName(part, aspect)} (${symbol})`;
}

/** The sides of a conflict: "38.2 ft against 39 ft". One value when there is none. */
export const saySides = (fact: Fact): string =>
  fact.standing === 'conflict'
    ? fact.sides.map((s) => sayValue(s.value, fact.part, fact.aspect)).join(' against ')
    : sayValue(fact.value, fact.part, fact.aspect);
