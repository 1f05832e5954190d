// Why: a relief valve that drips is trying to say something.
import { rvStandard } from '../../standards/national-fire-protection-association/alarms-and-extinguishers.ts';
import { noneRule } from '../making/none-rule.ts';

export const waterHeaterRelief = noneRule({
  id: 'water-heater-relief',
  asks: 'Does the relief valve of the water heater drip?',
  why: 'It scalds, and it may be holding back too much.',
  part: 'water_heater_out',
  aspect: 'relief_drip',
  look: 'Cold and hot, from the side.',
  minutes: 3,
  weight: 'defect',
  cite: rvStandard('a relief valve holds until it is needed'),
  says: {
    meets: 'No drip at the relief valve was found.',
    fails: 'There is a drip at the relief valve.',
    cannotTell: 'What was said does not settle whether there is a drip at the relief valve: look again.',
    notSeen: 'Nobody has looked for a drip at the relief valve.',
  },
  next: 'Restore the air cushion or change the valve; never plug it.',
  who: 'certified RV technician',
  caution: 'hot-water',
});
