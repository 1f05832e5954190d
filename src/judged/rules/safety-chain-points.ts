// Why: the last thing holding a trailer.
import { practice } from '../../standards/trade-practice/practice.ts';
import { worksRule } from '../making/works-rule.ts';

export const safetyChainPoints = worksRule({
  id: 'safety-chain-points',
  asks: 'Are the safety chain points whole?',
  why: 'They are the last thing that holds what is towed.',
  part: 'safety_chain',
  aspect: 'points_ok',
  look: 'Points, links and hooks; the breakaway pin.',
  minutes: 2,
  weight: 'danger',
  weightOfPoor: 'defect',
  cite: practice('chain points are whole'),
  says: {
    meets: 'The chain points were whole.',
    fails: 'The chain points are not whole.',
    cannotTell: 'What was said does not settle it: look at each.',
    notSeen: 'Nobody has looked at the chain points.',
  },
  next: 'Tow nothing until they are whole.',
  who: 'shop technician',
});
