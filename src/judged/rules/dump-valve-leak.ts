// Why: a dump valve that weeps is a spill in the yard.
import { practice } from '../../standards/trade-practice/practice.ts';
import { noneRule } from '../making/none-rule.ts';

export const dumpValveLeak = noneRule({
  id: 'dump-valve-leak',
  asks: 'Do the dump valves leak?',
  why: 'A spill on the lot is a call to the health office.',
  part: 'dump_valves',
  aspect: 'leak',
  look: 'Gloves. Valves shut: dry behind the cap; open: flow; shut: watch five minutes.',
  minutes: 6,
  weight: 'defect',
  cite: practice('a shut dump valve is dry behind its cap'),
  says: {
    meets: 'No leak at the dump valves was found.',
    fails: 'There is a leak at the dump valves.',
    cannotTell: 'What was said does not settle whether there is a leak at the dump valves: look again.',
    notSeen: 'Nobody has looked for a leak at the dump valves.',
  },
  next: 'Clean or change the blade and seals.',
  who: 'certified RV technician',
  caution: 'sewage',
});
