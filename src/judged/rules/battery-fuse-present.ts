// Why: a big cable without a fuse is a welding set.
import { rvStandard } from '../../standards/national-fire-protection-association/alarms-and-extinguishers.ts';
import { worksRule } from '../making/works-rule.ts';

export const batteryFusePresent = worksRule({
  id: 'battery-fuse-present',
  asks: 'Is there a fuse on the big battery cable?',
  why: 'A short in it burns the coach.',
  part: 'battery_cables',
  aspect: 'fuse_present',
  look: 'Within a foot and a half of the post.',
  minutes: 2,
  weight: 'danger',
  cite: rvStandard('the battery cable is fused near the post'),
  says: {
    meets: 'A fuse was seen on the battery cable.',
    fails: 'No fuse was found on the battery cable.',
    cannotTell: 'What was said does not settle it: follow the cable.',
    notSeen: 'Nobody has looked for the battery fuse.',
  },
  next: 'Fit one before the inverter is used.',
  who: 'certified RV technician',
  caution: 'batteries',
});
