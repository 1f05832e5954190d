// Why: a soft shower pan has a wet floor under it.
import { practice } from '../../standards/trade-practice/practice.ts';
import { noneRule } from '../making/none-rule.ts';

export const showerPanSoft = noneRule({
  id: 'shower-pan-soft',
  asks: 'Is the shower pan soft?',
  why: 'The floor under it rots.',
  part: 'shower_tub',
  aspect: 'soft_pan',
  also: ['soft'],
  look: 'Stand in it; run five minutes; look below.',
  minutes: 8,
  weight: 'defect',
  cite: practice('a shower pan is firm'),
  says: {
    meets: 'The pan was firm.',
    fails: 'The pan is soft.',
    cannotTell: 'What was said does not settle it: stand in it.',
    notSeen: 'Nobody has stood in the shower.',
  },
  next: 'Look below before pricing the pan.',
  who: 'certified RV technician',
});
