// Why: the gas alarm speaks when nobody is awake to.
import { rvStandard } from '../../standards/national-fire-protection-association/alarms-and-extinguishers.ts';
import { worksRule } from '../making/works-rule.ts';

export const lpAlarmWorks = worksRule({
  id: 'lp-alarm-works',
  asks: 'Does the gas alarm sound when tested?',
  why: 'It speaks when nobody is awake.',
  part: 'lp_alarm',
  aspect: 'operates',
  look: 'Hold its test button until it sounds.',
  minutes: 1,
  weight: 'danger',
  weightOfPoor: 'danger',
  cite: rvStandard('a sleeping place has a working alarm'),
  says: {
    meets: 'The gas alarm did its work when tried.',
    fails: 'The gas alarm did not work when tried, or not as it should.',
    cannotTell: 'What was said does not settle whether the gas alarm works: try again.',
    notSeen: 'Nobody has tried the gas alarm.',
  },
  next: 'New alarm before anyone sleeps in the coach.',
  who: 'shop technician',
  caution: 'lp-gas',
});
