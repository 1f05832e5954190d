// Why: soot outside means a fire that burns badly inside.
import { rvStandard } from '../../standards/national-fire-protection-association/alarms-and-extinguishers.ts';
import { noneRule } from '../making/none-rule.ts';

export const furnaceSoot = noneRule({
  id: 'furnace-soot',
  asks: 'Is there soot at the furnace outlet?',
  why: 'Soot is carbon monoxide made visible.',
  part: 'furnace_out',
  aspect: 'soot',
  look: 'Outlet and wall above it; insect nests.',
  minutes: 3,
  weight: 'danger',
  cite: rvStandard('a furnace burns clean and vents outside'),
  says: {
    meets: 'No soot was seen at the furnace outlet.',
    fails: 'There is soot at the furnace outlet.',
    cannotTell: 'What was said does not settle it: look at the outlet.',
    notSeen: 'Nobody has looked at the furnace outlet.',
  },
  next: 'Do not run it until a technician has found out why.',
  who: 'certified RV technician',
  caution: 'carbon-monoxide',
});
