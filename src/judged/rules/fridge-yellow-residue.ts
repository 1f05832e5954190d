// Why: yellow powder behind an absorption refrigerator is its working fluid.
import { practice } from '../../standards/trade-practice/practice.ts';
import { noneRule } from '../making/none-rule.ts';

export const fridgeYellowResidue = noneRule({
  id: 'fridge-yellow-residue',
  asks: 'Is there yellow residue behind the refrigerator?',
  why: 'A cooling unit that leaks burns coaches.',
  part: 'refrigerator_vent_out',
  aspect: 'yellow_residue',
  look: 'Take the outside cover off; look, do not touch; smell.',
  minutes: 4,
  weight: 'danger',
  cite: practice('yellow residue is a leaking cooling unit'),
  says: {
    meets: 'No yellow residue was seen.',
    fails: 'There is yellow residue: the cooling unit leaks.',
    cannotTell: 'What was said does not settle it: look behind the cover.',
    notSeen: 'Nobody has looked behind the refrigerator.',
  },
  next: 'Shut it off and leave it off; a licensed technician decides.',
  who: 'certified RV technician',
  caution: 'ammonia',
});
