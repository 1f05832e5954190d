// Why: an estimate is a range; a range of one number is a number.
import { type Cents, showMoney } from '../../units/money.ts';

/** "$400 to $700", or "$400" when both ends are the same. */
export const sayMoneyRange = ([low, high]: readonly [low: Cents, high: Cents]): string =>
  low === high ? showMoney(low) : `${showMoney(low)} to ${showMoney(high)}`;
