// Why: generator exhaust under a coach kills sleepers.
import { rvStandard } from '../../standards/national-fire-protection-association/alarms-and-extinguishers.ts';
import { noneRule } from '../making/none-rule.ts';

export const generatorCoRisk = noneRule({
  id: 'generator-co-risk',
  asks: 'Can generator exhaust get into the coach?',
  why: 'Carbon monoxide kills sleepers.',
  part: 'generator',
  aspect: 'co_risk',
  look: 'Exhaust past the wall, no holes in the floor above, no smell inside.',
  minutes: 5,
  weight: 'danger',
  cite: rvStandard('generator exhaust leaves beyond the wall'),
  says: {
    meets: 'No way for exhaust into the coach was seen.',
    fails: 'Exhaust can get into the coach.',
    cannotTell: 'What was said does not settle it: follow the pipe.',
    notSeen: 'Nobody has followed the generator exhaust.',
  },
  next: 'Do not run it until the exhaust is right.',
  who: 'certified RV technician',
  caution: 'carbon-monoxide',
});
