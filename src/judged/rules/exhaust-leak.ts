// Why: a leak in the exhaust is carbon monoxide under the floor.
import { practice } from '../../standards/trade-practice/practice.ts';
import { noneRule } from '../making/none-rule.ts';

export const exhaustLeak = noneRule({
  id: 'exhaust-leak',
  asks: 'Is there a leak in the exhaust?',
  why: 'Carbon monoxide comes up through the floor.',
  part: 'exhaust_pipe',
  aspect: 'leak',
  look: 'With a light and a dry rag.',
  minutes: 4,
  weight: 'defect',
  cite: practice('it is dry and tight'),
  says: {
    meets: 'No leak in the exhaust was found.',
    fails: 'There is a leak in the exhaust.',
    cannotTell: 'What was said does not settle whether there is a leak in the exhaust: look again.',
    notSeen: 'Nobody has looked for a leak in the exhaust.',
  },
  next: 'Find and mend it.',
  who: 'heavy-vehicle technician',
  caution: 'carbon-monoxide',
});
