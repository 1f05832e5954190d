// Why: what cannot be titled cannot be sold.
import { practice } from '../../standards/trade-practice/practice.ts';
import { worksRule } from '../making/works-rule.ts';

export const titleInHand = worksRule({
  id: 'title-in-hand',
  asks: 'Is the title in hand?',
  why: 'What cannot be titled cannot be sold.',
  part: 'title_doc',
  aspect: 'title_in_hand',
  also: ['present'],
  look: 'Hold it: name, brand, lien, odometer line, and the number against the plate.',
  minutes: 4,
  weight: 'defect',
  cite: practice('a coach is paid for when its title is in hand or its payoff is in writing'),
  says: {
    meets: 'The title is in hand.',
    fails: 'The title is not in hand.',
    cannotTell: 'Whether the title is in hand was only told, or is disputed: hold it.',
    notSeen: 'Nobody has said where the title is.',
  },
  next: 'Get the title, or a written payoff from the lender, before paying or advertising it.',
  who: 'office',
});
