// Why: tread of the tires behind the front axle, in the inner groove.
import { treadRule } from '../making/tread-rule.ts';

export const tireTreadOtherInner = treadRule('other', 'inner');
