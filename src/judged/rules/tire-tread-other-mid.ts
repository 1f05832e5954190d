// Why: tread of the tires behind the front axle, in the middle groove.
import { treadRule } from '../making/tread-rule.ts';

export const tireTreadOtherMid = treadRule('other', 'mid');
