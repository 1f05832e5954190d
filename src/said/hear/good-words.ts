// Why: the words by which people say that something is right, and those that only praise it.
// Trade usage (common practice, no source).
import type { State } from '../../catalogue/state.ts';

/** Condition words that are an observation: something was looked at. */
export const goodTable: Readonly<Record<string, State>> = Object.fromEntries(
  (
    [
      [
        'good',
        'good, ok, okay, fine, in good shape, in good condition, good shape, good condition, looks good, look good, checks good, all good, fair, decent, in decent shape, in fair shape, no issues, no problems, no problem, no complaints, serviceable, healthy, intact, all there, normal, as it should be, within spec, in spec, looks fine, supple, pliable, flexible, limber, shiny, glossy, deep shine, a deep shine, good shine, nice shine, still shines, shines up, good gloss, nice gloss, holds a shine, still has a shine, still got a shine, still has its shine, has its shine, presentable, up to snuff, in nice shape, nice shape, in great shape, in real good shape, in pretty good shape, in very good shape, in excellent shape, in good order, good order, in working order, in good working order, good to go, up to par, in order, as it ought to be, where it should be, where it ought to be, where it belongs, where it needs to be, like it should be, like it ought to be, like they should be, not bad, not bad at all, nothing wrong, nothing wrong with it, nothing wrong with them, satisfactory, acceptable, proper, correct, reads normal, reading normal, works a treat, in good nick, in good trim, in fine shape, legible, smooth, smooth as silk, smooth as glass, complete, entire, undamaged, unbroken, all complete, everywhere hard, hard everywhere, all hard, hard all over, comes back to center, returns to center, centers itself, bright, minimal, negligible, cool to the touch, cool to touch, still supple, soft and pliable, still pliable, crisp, responsive',
      ],
      [
        'good',
        "wired right, wired correctly, wired correct, correctly wired, properly wired, correct wiring, charged, fully charged, fully charged up, full charge, labelled, labeled, all labelled, all labeled, all marked, like it should, like they should, as it should, as they should, the way it should, the way they should, like it's supposed to, like it is supposed to, like they're supposed to, like they are supposed to, as it's supposed to, the way it's supposed to, does its job, doing its job, do their job, does its thing, doing its thing, do their thing, does what it should, does what it's supposed to, does what it is supposed to",
      ],
      [
        'good',
        'has life left, have life left, plenty of life left, life left in, life left in it, life left in them, seated, fully seated, seated good, seated well, sits right, sit right, sits flush, sit flush, sits tight, sit tight, fits tight, fit tight, fits good, fits well, fits right, lines up, line up, well lit, soft and supple, nice and soft, still soft, soft and pliable, like glass, like a mirror, solid underfoot, firm underfoot, a good shine, a nice shine, a great shine, a good gloss, a nice gloss, a deep gloss, has shine, shines, gleams, gleaming',
      ],
      ['good', "doesn't give, does not give, don't give, hasn't faded, haven't faded, not faded"],
      [
        'sound',
        'uncracked, undamaged, unmarked, unbroken, undented, unscratched, crack free, leak free, rust free, dent free, nothing gives, nothing gave, whole, solid, sound, sturdy, firm, rock solid, strong, stout, robust, in one piece, holding up, holding up well, holding up fine, holding up good, holding up okay, held up well',
      ],
      [
        'tight',
        'stuck down, stuck down good, stuck down well, stuck down tight, stuck on good, stuck on tight, well stuck, stuck fast down, glued down, bonded, well bonded, bonded down, bonded well, tight as a drum, tight as a tick, watertight, water tight, weathertight, weather tight, leakproof, taut, tight, snug, secure, snug as a bug, sealed up, sealed up nice, sealed up tight, sealed tight, sealed good, sealed well, well sealed, fastened, torqued',
      ],
      [
        'dry',
        'dry, bone dry, dry as a bone, dry as toast, dry as dust, dry as can be, all dry, nice and dry, smells dry, smell dry',
      ],
      [
        'clean',
        'clean, shiny, shiny as new, bright and shiny, nice and shiny, spotless, clean as a whistle, clean as can be, clean as a pin, nice and clean, free and clear',
      ],
      [
        'clear',
        'clear, clear lenses, clear as day, clear as a bell, crystal clear, clear as glass, nice picture, good picture, clear picture, sharp picture, nice and clear',
      ],
      [
        'straight',
        'flat, flat and straight, straight and flat, straight, tracks straight, drives straight, runs straight, square, flush, true, even, level, straight and true, straight as an arrow, in line, in a straight line, lined up',
      ],
      ['quiet', 'quiet, shifts smooth, shifts smoothly, quiet running, smooth running'],
      [
        'holds',
        'holds, holding, held, ' +
          ['stay', 'stays', 'stayed']
            .flatMap((v) => ['shut', 'closed', 'put', 'latched', 'locked', 'cold'].map((a) => `${v} ${a}`))
            .join(', '),
      ],
      [
        'full',
        'full, topped off, topped up, brim full, up where it should be, ' +
          ['on', 'at', 'to', 'right on', 'right at', 'up to', 'just under', 'near']
            .flatMap((p) =>
              [
                'full',
                'full mark',
                'full line',
                'line',
                'mark',
                'max line',
                'cold line',
                'cold mark',
                'upper mark',
                'top mark',
                'hot line',
              ].map((m) => `${p} the ${m}`),
            )
            .join(', ') +
          ', right on the mark, between the marks, between the lines, in between the marks, between the two marks',
      ],
      [
        'works',
        'first push, first push of the button, first press, first press of the button, first touch of the button, first touch, on the first push, on the first try, on the first crank, first crank, first pull, at the first push',
      ],
      [
        'passes',
        'in the green, green light, green lights, solid green, lights are green, light is green, in date, up to date, passes, passed, pass, tests good, tested good',
      ],
      ['new', 'new, brand new, newer, recently replaced, fresh'],
      [
        'good',
        [
          'good',
          'great',
          'strong',
          'decent',
          'plenty of',
          'nice',
          'excellent',
          'steady',
          'normal',
          'full',
          'solid',
          'real good',
          'pretty good',
          'fair',
          'adequate',
          'lots of',
        ]
          .flatMap((a) =>
            [
              'pressure',
              'water pressure',
              'flow',
              'water flow',
              'airflow',
              'air flow',
              'suction',
              'flame',
              'blue flame',
              'stream',
              'spray',
              'draft',
              'heat',
              'spark',
              'drainage',
              'output',
            ].map((n) => `${a} ${n}`),
          )
          .join(', ') +
          ', blue flame, blue flames, nice blue flame, blue and steady, steady and blue, burns blue, burning blue, burn blue, flame is blue, flames are blue, never used, never been used, never been cooked in, never cooked in, never been lit, never been fired, hardly been used, barely been used, like it was never used, unused',
      ],
      [
        'cold',
        'freezing you out, freeze you out, freezes you out, runs you out, run you out of there, cold as ice, cold enough to hang meat, good and cold, plenty cold, real cold, nice and cool, ice cold, nice and cold, blowing cold, blows cold, ice cubes',
      ],
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
