// Why: a cracked skylight drips behind the shower wall.
import { practice } from '../../standards/trade-practice/practice.ts';
import { noneRule } from '../making/none-rule.ts';

export const skylightCracks = noneRule({
  id: 'skylight-cracks',
  asks: 'Is the skylight cracked?',
  why: 'It leaks behind the shower wall.',
  part: 'skylight',
  aspect: 'cracks',
  also: ['crack'],
  look: 'From above and, against the light, from below.',
  minutes: 2,
  weight: 'defect',
  cite: practice('a skylight is whole'),
  says: {
    meets: 'No crack in the skylight was found.',
    fails: 'There is a crack in the skylight.',
    cannotTell: 'What was said does not settle whether there is a crack in the skylight: look again.',
    notSeen: 'Nobody has looked for a crack in the skylight.',
  },
  next: 'Change the dome; reseal.',
  who: 'certified RV technician',
  caution: 'roof',
});
