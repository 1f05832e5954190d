// Why: a wall that gives under a thumb is rotted.
import { practice } from '../../standards/trade-practice/practice.ts';
import { noneRule } from '../making/none-rule.ts';

export const wallSoft = noneRule({
  id: 'wall-soft',
  asks: 'Is an inside wall soft?',
  why: 'A leak is priced from 2,000 to 30,000 dollars.',
  part: 'wall_stains',
  aspect: 'soft',
  appliesTo: (facts, place) => facts.get('wall_stains', 'soft', place) !== undefined,
  expectedAt: () => [],
  look: 'A thumb along corners, windows and cap seams.',
  minutes: 4,
  weight: 'defect',
  cite: practice('a wall is firm'),
  says: {
    meets: 'The wall was firm where it was pressed.',
    fails: 'The wall is soft.',
    cannotTell: 'What was said does not settle it: press again.',
    notSeen: 'Nobody has pressed the walls.',
  },
  next: 'Pin it; find the water; price the wall.',
  who: 'body or trim technician',
  caution: 'sewage',
});
