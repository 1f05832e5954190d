// Why: tread of the front tires, in the outer groove.
import { treadRule } from '../making/tread-rule.ts';

export const tireTreadSteerOuter = treadRule('steer', 'outer');
