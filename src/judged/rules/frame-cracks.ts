// Why: everything hangs from the frame.
import { practice } from '../../standards/trade-practice/practice.ts';
import { noneRule } from '../making/none-rule.ts';

export const frameCracks = noneRule({
  id: 'frame-cracks',
  asks: 'Is the frame cracked?',
  why: 'Everything hangs from it.',
  part: 'frame_rails',
  aspect: 'cracks',
  also: ['crack'],
  look: 'Welds, outriggers, suspension and hitch mounts, brushed clean.',
  minutes: 8,
  weight: 'danger',
  cite: practice('a frame has no crack'),
  says: {
    meets: 'No crack in the frame was found.',
    fails: 'There is a crack in the frame.',
    cannotTell: 'What was said does not settle whether there is a crack in the frame: look again.',
    notSeen: 'Nobody has looked for a crack in the frame.',
  },
  next: 'Do not drive it; a frame shop gives an opinion before money goes into anything else.',
  who: 'heavy-vehicle technician',
  caution: 'lifting',
});
