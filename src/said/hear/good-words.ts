// Why: the words by which people say that something is right, and those that only praise it.
// Trade usage (common practice, no source).
import type { State } from '../../catalogue/state.ts';

/** Condition words that are an observation: something was looked at. */
export const goodTable: Readonly<Record<string, State>> = Object.fromEntries(
  (
    [
      [
        'good',
        'good, ok, okay, fine, in good shape, in good condition, good shape, good condition, looks good, look good, checks good, all good, fair, decent, in decent shape, in fair shape, no issues, no problems, no problem, no complaints, serviceable, healthy, intact, all there, normal, as it should be, within spec, in spec, looks fine, up to snuff',
      ],
      ['sound', 'solid, sound, sturdy, firm, rock solid, strong'],
      ['tight', 'tight, snug, secure'],
      ['dry', 'dry, bone dry, dry as a bone, smells dry, smell dry'],
      ['clean', 'clean, spotless'],
      ['clear', 'clear, clear lenses'],
      [
        'straight',
        'straight, tracks straight, drives straight, runs straight, square, flush, true, even, level',
      ],
      ['quiet', 'quiet, shifts smooth, shifts smoothly, quiet running, smooth running'],
      ['holds', 'holds, holding, held'],
      [
        'full',
        'full, topped off, up where it should be, at the full mark, on the full mark, right on the mark',
      ],
      ['passes', 'in the green, passes, passed, pass, tests good, tested good'],
      ['new', 'new, brand new, newer, recently replaced, fresh'],
      ['cold', 'ice cold, nice and cold, blowing cold, blows cold, ice cubes'],
      ['hot', 'piping hot, nice and hot'],
    ] as const
  ).flatMap(([state, list]) => list.split(',').map((p) => [p.trim(), state])),
) as Record<string, State>;

/** Praise without evidence: kept as a claim. */
export const praiseWords: readonly string[] = (
  'gorgeous, beautiful, beautifully, stunning, amazing, awesome, fantastic, excellent, great, wonderful, incredible, immaculate, pristine, mint, mint condition, ' +
  'love, like new, super, top of the line, top notch, first class, world class, luxurious, luxury, really nice, real nice, very nice, so nice, super nice, nice, nicest, nicer, ' +
  'perfect, perfectly, flawless, showroom, cherry, cream puff, killer, one of the best, best, the best, second to none, high end, plush, ' +
  'runs great, drives great, drives like a dream, rides like a dream, like a dream, like a car, purrs, purrs like a kitten, ton of storage, tons of storage, a ton of, tons of, ' +
  'lots of, plenty of, super quiet, super clean, very clean, well cared for, well maintained, taken care of, babied, meticulously, you wont find, must see, spacious, roomy, ' +
  'huge, massive, impressive, outstanding, superb, spectacular, lovely, fabulous, phenomenal, unbelievable, turnkey, turn key, ready to go, bulletproof, workhorse, ' +
  'hardly used, barely used, just getting broke in, just getting broken in, low miles, feels like home, feels new, looks new, smells new, cozy, comfortable, ' +
  'comfy, premium, powerhouse, beast, head turner, dream, solid as a rock, tight as a drum, whisper quiet, super comfortable, strong runner, bargain, steal'
)
  .split(',')
  .map((p) => p.trim());
