// Why: gas in a closed coach explodes.
import { rvStandard } from '../../standards/national-fire-protection-association/alarms-and-extinguishers.ts';
import { noneRule } from '../making/none-rule.ts';

export const lpSmell = noneRule({
  id: 'lp-smell',
  asks: 'Is there a smell of gas?',
  why: 'Gas in a closed coach explodes.',
  part: 'lp_system',
  aspect: 'smell',
  look: 'Detector and nose at the bays, the tank and each appliance; leak spray by a licensed person.',
  minutes: 4,
  weight: 'danger',
  cite: rvStandard('a gas system is tight'),
  says: {
    meets: 'No smell of gas was found.',
    fails: 'There is a smell of gas.',
    cannotTell: 'What was said does not settle whether there is a smell of gas: look again.',
    notSeen: 'Nobody has looked for a smell of gas.',
  },
  next: 'Close the tank valve, get out, air it; a licensed technician finds it.',
  who: 'licensed LP gas technician',
  caution: 'lp-gas',
});
