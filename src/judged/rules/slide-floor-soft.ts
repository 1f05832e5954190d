// Why: a slide floor rots from its outer edge.
import { practice } from '../../standards/trade-practice/practice.ts';
import { noneRule } from '../making/none-rule.ts';

export const slideFloorSoft = noneRule({
  id: 'slide-floor-soft',
  asks: 'Is the slide floor soft?',
  why: 'Rot shows there first.',
  part: 'slide_floor_out',
  aspect: 'soft',
  look: 'From below, press along the outer edge.',
  minutes: 3,
  weight: 'defect',
  cite: practice('a slide floor is firm to its edge'),
  says: {
    meets: 'The floor edge was firm where it was pressed.',
    fails: 'The slide floor is soft.',
    cannotTell: 'What was said does not settle it: press along the edge.',
    notSeen: 'Nobody has pressed the slide floor.',
  },
  next: 'Find the water, measure how far it goes, price the floor.',
  who: 'body or trim technician',
  caution: 'slides',
});
