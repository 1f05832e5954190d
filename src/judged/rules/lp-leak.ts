// Why: gas in a closed coach explodes.
import { rvStandard } from '../../standards/national-fire-protection-association/alarms-and-extinguishers.ts';
import { noneRule } from '../making/none-rule.ts';

export const lpLeak = noneRule({
  id: 'lp-leak',
  asks: 'Is there a gas leak?',
  why: 'Gas in a closed coach explodes.',
  part: 'lp_system',
  aspect: 'leak',
  look: 'Detector and nose at the bays, the tank and each appliance; leak spray by a licensed person.',
  minutes: 4,
  weight: 'danger',
  cite: rvStandard('a gas system is tight'),
  says: {
    meets: 'No gas leak was found.',
    fails: 'There is a gas leak.',
    cannotTell: 'What was said does not settle whether there is a gas leak: look again.',
    notSeen: 'Nobody has looked for a gas leak.',
  },
  next: 'Close the tank valve, get out, air it; a licensed technician finds it.',
  who: 'licensed LP gas technician',
  caution: 'lp-gas',
});
