// Why: the smoke alarm speaks when nobody is awake to.
import { rvStandard } from '../../standards/national-fire-protection-association/alarms-and-extinguishers.ts';
import { worksRule } from '../making/works-rule.ts';

export const smokeAlarmWorks = worksRule({
  id: 'smoke-alarm-works',
  asks: 'Does the smoke alarm sound when tested?',
  why: 'It speaks when nobody is awake.',
  part: 'smoke_alarm',
  aspect: 'operates',
  look: 'Hold its test button until it sounds.',
  minutes: 1,
  weight: 'danger',
  weightOfPoor: 'danger',
  cite: rvStandard('a sleeping place has a working alarm'),
  says: {
    meets: 'The smoke alarm did its work when tried.',
    fails: 'The smoke alarm did not work when tried, or not as it should.',
    cannotTell: 'What was said does not settle whether the smoke alarm works: try again.',
    notSeen: 'Nobody has tried the smoke alarm.',
  },
  next: 'New alarm before anyone sleeps in the coach.',
  who: 'shop technician',
  caution: 'carbon-monoxide',
});
