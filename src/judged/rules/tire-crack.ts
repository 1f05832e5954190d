// Why: a crack is often said of a tire as such, not of its sidewall.
import { practice } from '../../standards/trade-practice/practice.ts';
import { noneRule } from '../making/none-rule.ts';

export const tireCrack = noneRule({
  id: 'tire-crack',
  asks: 'Are there cracks in the tires?',
  why: 'A tire that cracks open lets go under load.',
  part: 'tire',
  aspect: 'crack',
  appliesTo: (facts, place) => facts.get('tire', 'crack', place) !== undefined,
  expectedAt: () => [],
  look: 'Both sidewalls and between the tread blocks, in raking light.',
  minutes: 2,
  weight: 'defect',
  cite: practice('open cracks are a reason to change a tire, whatever the tread'),
  says: {
    meets: 'No cracks were seen.',
    fails: 'Cracks were seen.',
    cannotTell: 'What was said does not settle whether there are cracks.',
    notSeen: 'Nobody has looked for cracks.',
  },
  next: 'Measure how deep the cracks go and read the date code; change the tire if they are open.',
  who: 'tire shop',
  caution: 'tires',
});
