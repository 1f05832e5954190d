// Why: tread of the front tires, in the inner groove.
import { treadRule } from '../making/tread-rule.ts';

export const tireTreadSteerInner = treadRule('steer', 'inner');
