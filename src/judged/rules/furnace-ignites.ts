// Why: a furnace that lights at the third try is on its way out.
import { practice } from '../../standards/trade-practice/practice.ts';
import { worksRule } from '../making/works-rule.ts';

export const furnaceIgnites = worksRule({
  id: 'furnace-ignites',
  asks: 'Does the furnace light?',
  why: 'It is a cracked heat exchanger or a cold night.',
  part: 'furnace_run',
  aspect: 'ignition_ok',
  also: ['operates'],
  look: 'Call for heat; fan, then burner, first try; carbon monoxide alarm on.',
  minutes: 12,
  weight: 'defect',
  weightOfPoor: 'defect',
  cite: practice('a furnace lights at the first try'),
  says: {
    meets: 'The furnace did its work when tried.',
    fails: 'The furnace did not work when tried, or not as it should.',
    cannotTell: 'What was said does not settle whether the furnace works: try again.',
    notSeen: 'Nobody has tried the furnace.',
  },
  next: 'Sail switch, board or burner; look for soot.',
  who: 'certified RV technician',
  caution: 'carbon-monoxide',
});
