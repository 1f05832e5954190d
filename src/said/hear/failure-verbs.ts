// Why: the verbs of things that go wrong, once each; what they say of a part and whether they are a noun as well ("no drips").
// Trade usage and plain English (common practice, no source).
import type { State } from '../../catalogue/state.ts';

/** Aspect, state, verbs that are nouns too, verbs that are not. */
type Row = readonly [aspect: string, state: State, nouns: string, verbs: string];

/** "Needs a good slam", "takes a little tug". */
const shoves = ['need', 'want', 'take/took/taken']
  .flatMap((v) =>
    ['', 'good ', 'little ', 'hard ', 'real ', 'big '].flatMap((a) =>
      'push shove nudge kick tap slam tug yank jerk lift bump pull thump bang whack squeeze jiggle wiggle twist hip shoulder knee boot'
        .split(' ')
        .map((n) => `${v} a ${a}${n}`),
    ),
  )
  .join(', ');

/** "Took a crunch", "caught a whack". */
const blows = ['take/took/taken', 'catch/caught']
  .flatMap((v) =>
    ['', 'good ', 'little ', 'hard ', 'big ', 'bad '].flatMap((a) =>
      'crunch whack wallop knock bump smack bang thump lick blow shot bash'
        .split(' ')
        .map((n) => `${v} a ${a}${n}`),
    ),
  )
  .join(', ');
/** "Grabs to the right", "yanks left". */
const aside = 'grab tug yank/yanked dive dart veer lead/led nose'
  .split(' ')
  .flatMap((v) =>
    ['left', 'right', 'to the left', 'to the right', 'to one side', 'off to the'].map((d) => `${v} ${d}`),
  )
  .join(', ');

export const failureVerbs: readonly Row[] = [
  [
    'leak',
    'leaking',
    'leak, dribble, hiss',
    'gush, spurt, puke, spew, spit/spat, leak by, leak out, leak down, leak back, bypass, blow/blew/blown by, lose/lost air, lose/lost pressure, lose/lost water, lose/lost vacuum, lose/lost its prime, lose/lost prime, lose/lost fluid, lose/lost oil, lose/lost coolant, bleed/bled off, bleed/bled out, run/ran down the wall, let/let water in, let/let air in, let/let the water in, let/let rain in, take/took on water, pee, make/made a puddle, throw/threw/thrown oil, push oil, push coolant, use oil, use coolant, mark its spot',
  ],
  ['leak', 'dripping', 'drip, trickle', 'dribble out, drip down'],
  ['leak', 'weeping', 'weep, seep', 'ooze, sweat'],
  [
    'crack',
    'cracked',
    'crack, fracture',
    'split/split/split, shatter, bust, spider, splinter, crack through, start checking, start to check, begin/began/begun to check, start cracking',
  ],
  ['crack', 'crazed', '', 'craze'],
  [
    'damage',
    'torn',
    'tear/tore/torn, rip, puncture, gouge',
    'shred, fray, snag, unravel, tear/tore/torn up, tear/tore/torn out, rip out, chafe, rub through, chafe through',
  ],
  [
    'damage',
    'bent',
    'kink',
    'bend/bent, warp, buckle, bow, crumple, crush, mangle, tweak, cave in, push in, bash in, stave in, twist, kick in, bend/bent over',
  ],
  [
    'damage',
    'broken',
    '',
    'break/broke/broken, snap, shear, snap off, break/broke/broken off, break/broke/broken loose, break/broke/broken through, shear off, strip out, come/came/come off in my hand, bottom out',
  ],
  [
    'damage',
    'dented',
    'dent, ding, crease, dimple',
    `whack, wallop, clobber, sideswipe, side swipe, bash, bash up, bang up, ding up, dent in, mash, mash in, punch in, get/got/gotten hit, be/been hit, get/got/gotten clipped, take/took/taken a hit, ${blows}, take/took/taken a knock, take/took/taken a whack, take/took/taken a lick, take/took/taken a shot`,
  ],
  ['damage', 'scratched', 'scratch, scrape, scuff', 'scar, rub'],
  ['damage', 'chewed', '', 'chew, chew up, chew through, gnaw, gnaw on'],
  ['rust', 'rusted', '', 'rust, rust out, rust through, rust up, rust away'],
  ['rust', 'corroded', '', 'corrode, oxidize, crust over, green over, grow/grew/grown crud'],
  ['stain', 'stained', 'stain, streak, smear', 'discolor, discolour, yellow, bleed/bled through'],
  ['wet', 'rotted', '', 'rot, rot out, rot away, rot through'],
  ['wet', 'wet', '', 'soak, soak through, wick, wick up'],
  [
    'delamination',
    'delaminated',
    '',
    'delaminate, delam, bubble, bubble out, come/came/come unglued, come/came unbonded',
  ],
  [
    'separated',
    'separated',
    '',
    'separate, detach, gap, pull away, pull loose, pull out, pull off, peel back, peel away, peel up, peel off, come/came/come loose, come/came/come off, come/came/come apart, come/came/come undone, come/came/come away, come/came/come unstuck, come/came/come adrift, come/came/come up at, fall/fell/fallen off, fall/fell/fallen out, fall/fell/fallen down, fall/fell/fallen apart, work loose, work out, let/let go, let/let loose, pop off, pop loose, hang/hung down, hang/hung by, hang/hung loose, hang/hung on by, turn loose, give/gave/given way, curl, curl up, shrink/shrank/shrunk, shrink/shrank/shrunk back, open up',
  ],
  ['peel', 'peeling', '', 'peel, flake, flake off'],
  [
    'faded',
    'faded',
    '',
    'fade, haze, haze over, chalk, bleach, sunburn/sunburnt, cloud up, cloud over, dry/dried out, dry up',
  ],
  ['fogged', 'fogged', '', 'fog, fog up, steam up, mist up, sweat inside'],
  [
    'wear',
    'worn',
    '',
    'wear/wore/worn, wear/wore/worn out, wear/wore/worn down, wear/wore/worn through, wear/wore/worn thin, wear/wore/worn off, wear/wore/worn uneven, wear/wore/worn unevenly, scallop, feather, cup, groove, score, glaze, egg out, waller out, wallow out, round off, round out, eat/ate/eaten up, eat/ate/eaten away, eat/ate/eaten through',
  ],
  [
    'wear',
    'worn',
    '',
    'eat/ate tires, eat/ate batteries, eat/ate brakes, eat/ate bulbs, eat/ate fuses, go/went/gone through batteries, go/went/gone through tires',
  ],
  ['age', 'expired', '', 'expire, age out, time out, run/ran/run out of date'],
  ['loose', 'loose', '', 'wobble, wiggle, flop, flop around, rock, jiggle, move around, flap'],
  [
    'strength',
    'weak',
    '',
    'struggle, labor, labour, strain, peter out, run/ran/run out of breath, fade away, limp',
  ],
  [
    'speed',
    'slow',
    '',
    'hesitate, dawdle, take/took/taken forever, take/took/taken a while, take/took/taken its time, take/took/taken its sweet time, take/took/taken too long, take/took/taken ages, take/took/taken a minute to, take/took/taken some coaxing, need coaxing, want coaxing',
  ],
  [
    'noise',
    'noisy',
    'scream, shriek, wail, squeal, squeak, rattle, chirp, clunk, whine, howl, screech, growl, groan, rumble, creak, thump, chatter, whistle, moan, clatter, hum, buzz, knock, bang, clank, clack, squawk, grumble, gurgle, thud',
    'grind/ground, sing, pop, tick, roar, squeal/squealed, ping, clang, bang shut, beep, talk back, rub',
  ],
  ['smell', 'smelling', 'smell, stink', 'reek'],
  [
    'smoke',
    'smoking',
    '',
    'smoke, burn oil, use oil, puff white, puff blue, puff black, puff smoke, blow/blew white, blow/blew blue, blow/blew black, blow/blew smoke, roll coal, throw/threw smoke, belch',
  ],
  [
    'heat',
    'burnt',
    '',
    'burn up, burn through, melt, melt down, scorch, char, brown, brown up, brown out, blacken, singe, arc, cook, toast, fry, discolor from heat',
  ],
  [
    'heat',
    'overheating',
    '',
    'overheat, run/ran/run hot, get/got/gotten hot, boil over, heat up too much, run/ran/run warm, get/got too hot, glow',
  ],
  [
    'operates',
    'fails',
    '',
    'fail, conk out, burn out, burn/burnt out, short out, short, give/gave/given up, give/gave/given up the ghost, give/gave/given out, crap out, quit/quit/quit, poop out, pack up, pack it in, go/went/gone dead, go/went bad, go/went/gone bad, go/went/gone belly up, die/died, die/died on me, do/did/done nothing, do/did nothing, blow/blew/blown up, blow/blew/blown out, error out, fault out, throw/threw/thrown an error, throw/threw/thrown a fault, throw/threw/thrown a code, throw/threw a code, draw/drew/drawn nothing, put/put out nothing, make/made nothing, give/gave/given me nothing, go/went/gone dark, stay dark, stay dead, stay cold, go/went/gone blank, stay blank',
  ],
  [
    'operates',
    'stuck',
    '',
    'jam, jam up, seize, seize up, freeze/froze/frozen, freeze/froze/frozen up, freeze/froze shut, bind/bound, bind/bound up, hang/hung up, lock up, gum up, stop halfway, stop half way, stop partway, stop part way, stop short, stop in the middle, stay open, stay on, stay stuck, stick/stuck/stuck open, stick/stuck shut, stick/stuck closed, quit halfway, quit partway, quit half way, quit part way',
  ],
  [
    'operates',
    'sticky',
    '',
    `stick/stuck/stuck, drag, hang/hung a little, fight/fought me, fight/fought you, catch/caught on, need a hand, need help, need two hands, need persuasion, want help, ${shoves} take/took two hands, take/took both hands, take/took some force`,
  ],
  [
    'operates',
    'intermittent',
    '',
    'flicker, cut/cut out, cut/cut in and out, act up, come/came/come and go, skip, sputter, slip, drop out, drop off, glitch, misbehave, jump around, wink, blink on and off, go/went on and off, turn itself off, shut itself off, shut itself down, shut down on me, cough, cycle on and off, short cycle, reboot, reset itself, play up, throw/threw a fit',
  ],
  [
    'operates',
    'tripped',
    '',
    'trip, trip out, trip off, kick off, kick out, kick the breaker, trip the breaker, pop the breaker, throw/threw the breaker, blow/blew the breaker, flip the breaker, trip the main, trip the gfci, trip its breaker, pop its breaker, kick its breaker, trip a breaker, pop a breaker, blow/blew/blown fuses, blow/blew/blown the fuse, blow/blew/blown a fuse, pop fuses, pop a fuse, take/took out the breaker, knock out the breaker, knock the breaker off',
  ],
  [
    'operates',
    'surging',
    'surge, stumble, misfire',
    'hunt, hunt around, bog, bog down, lope, lug down, stall, stall out, backfire, buck, lurch, cut/cut out, idle rough, run/ran/run rough, run/ran/run ragged, idle high, rev up and down',
  ],
  [
    'operates',
    'drifting',
    '',
    'drift, drift down, creep/crept, creep/crept out, creep/crept in, creep/crept down, sink/sank/sunk, lean, settle, bleed/bled down, sag down, fall/fell back, fall/fell down, go/went down overnight, drop overnight, leak down overnight, slide back, walk out, list, squat',
  ],
  [
    'operates',
    'lagging',
    '',
    'lag, lag behind, rack, crab, go/went/gone in crooked, come/came in crooked, go/went out crooked, come/came out crooked, run/ran crooked, move crooked, get/got out of time',
  ],
  [
    'operates',
    'vibrating',
    'shimmy, shudder, jerk, lurch, jolt, buck, shake/shook/shaken, wobble, judder, pulse',
    'vibrate, pulsate',
  ],
  [
    'operates',
    'pulling',
    'sway',
    `wander, dart, tramline, dog track, pull left, pull right, pull to the left, pull to the right, pull to one side, pull off to the, drift left, drift right, drift to the left, drift to the right, walk around, fishtail, ${aside}`,
  ],
  [
    'swelling',
    'swollen',
    'bulge, blister',
    'swell/swelled/swollen, swell/swelled/swollen up, puff up, puff out, balloon, pooch out, belly out',
  ],
  [
    'sag',
    'sagging',
    'sag, droop',
    'sit/sat low, hang/hung low, ride/rode low, sit/sat crooked, sit/sat lopsided, sit/sat down in, squat down',
  ],
  ['clogged', 'clogged', '', 'clog, clog up, plug up, stop up, block up'],
  [
    'reading',
    'fails',
    '',
    'read/read wrong, read/read high, read/read low, read/read off, read/read fast, read/read slow, read/read heavy, read/read full all the time, lie/lied, fib, stick/stuck on full, show wrong, run/ran fast, run/ran slow',
  ],
  [
    'soft',
    'soft',
    '',
    'give/gave/given a little, give/gave a bit, give/gave under, give/gave when, give/gave if, give/gave some, feel/felt soft, feel/felt spongy, feel/felt mushy, go/went/gone soft, dip, squish',
  ],
  ['dirty', 'dirty', '', 'soot up, sludge up, foul'],
];
