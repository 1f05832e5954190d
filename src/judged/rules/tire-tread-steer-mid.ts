// Why: tread of the front tires, in the middle groove.
import { treadRule } from '../making/tread-rule.ts';

export const tireTreadSteerMid = treadRule('steer', 'mid');
