// Why: tread of the tires behind the front axle, in the outer groove.
import { treadRule } from '../making/tread-rule.ts';

export const tireTreadOtherOuter = treadRule('other', 'outer');
