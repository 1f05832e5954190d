// Why: a cracked wheel comes apart at speed.
import { wheelCitation } from '../../standards/us-code-of-federal-regulations/49-cfr-393-other.ts';
import { noneRule } from '../making/none-rule.ts';

export const wheelCracks = noneRule({
  id: 'wheel-cracks',
  asks: 'Is a wheel cracked?',
  why: 'It comes apart at speed.',
  part: 'wheels_lugs',
  aspect: 'cracks',
  also: ['crack'],
  look: 'Round the holes and the rim, brushed clean.',
  minutes: 4,
  weight: 'danger',
  cite: wheelCitation,
  says: {
    meets: 'No crack in a wheel was found.',
    fails: 'There is a crack in a wheel.',
    cannotTell: 'What was said does not settle whether there is a crack in a wheel: look again.',
    notSeen: 'Nobody has looked for a crack in a wheel.',
  },
  next: 'Do not drive it; change the wheel.',
  who: 'tire shop',
  caution: 'lifting',
});
