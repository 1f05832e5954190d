// Why: the carbon monoxide alarm speaks when nobody is awake to.
import { rvStandard } from '../../standards/national-fire-protection-association/alarms-and-extinguishers.ts';
import { worksRule } from '../making/works-rule.ts';

export const coAlarmWorks = worksRule({
  id: 'co-alarm-works',
  asks: 'Does the carbon monoxide alarm sound when tested?',
  why: 'It speaks when nobody is awake.',
  part: 'co_alarm',
  aspect: 'operates',
  look: 'Hold its test button until it sounds.',
  minutes: 1,
  weight: 'danger',
  weightOfPoor: 'danger',
  cite: rvStandard('a sleeping place has a working alarm'),
  says: {
    meets: 'The carbon monoxide alarm did its work when tried.',
    fails: 'The carbon monoxide alarm did not work when tried, or not as it should.',
    cannotTell: 'What was said does not settle whether the carbon monoxide alarm works: try again.',
    notSeen: 'Nobody has tried the carbon monoxide alarm.',
  },
  next: 'New alarm before anyone sleeps in the coach.',
  who: 'shop technician',
  caution: 'carbon-monoxide',
});
