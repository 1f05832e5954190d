// Why: what a rule says of itself before its limits, whatever shape the limits have.
import type { Rule } from '../rule.ts';

export type Asked = Pick<
  Rule,
  | 'id'
  | 'asks'
  | 'why'
  | 'part'
  | 'aspect'
  | 'look'
  | 'minutes'
  | 'says'
  | 'next'
  | 'who'
  | 'caution'
  | 'appliesTo'
  | 'also'
  | 'expectedAt'
>;
