// Why: slides are the costliest fault of a house.
import { practice } from '../../standards/trade-practice/practice.ts';
import { worksRule } from '../making/works-rule.ts';

export const slideWorks = worksRule({
  id: 'slide-works',
  asks: 'Does each slide go out and in?',
  why: 'A slide is the costliest fault of the house.',
  part: 'slide',
  aspect: 'operates',
  look: 'Room level, way clear, batteries charged; out, listen, look at the gaps, in again.',
  minutes: 10,
  weight: 'defect',
  weightOfPoor: 'defect',
  cite: practice('a slide goes out and in evenly, without binding'),
  says: {
    meets: 'The slide did its work when tried.',
    fails: 'The slide did not work when tried, or not as it should.',
    cannotTell: 'What was said does not settle whether the slide works: try again.',
    notSeen: 'Nobody has tried the slide.',
  },
  next: 'Stop using it; have the drive, the seals and the floor looked at.',
  who: 'certified RV technician',
  caution: 'slides',
});
