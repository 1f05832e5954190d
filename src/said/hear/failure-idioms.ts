// Why: what people say of a thing that is done for, without any word of failure in it: "on its last legs", "wants a battery".
// Plain English and trade usage (common practice, no source).
import type { State } from '../../catalogue/state.ts';

type Row = readonly [aspect: string, state: State, phrases: string];

/** Adjectives and idioms said of a thing. */
export const failureIdioms: readonly Row[] = [
  [
    'swelling',
    'swollen',
    'swole, swole up, swelled up, a knot, knot on it, egg on it, goose egg, potato chipped',
  ],
  [
    'leak',
    'weeping',
    'wet with oil, wet with fluid, wet with coolant, wet with grease, wet with fuel, wet with diesel, oil all over, oil all down, oil down, oil running, fresh oil, wet around the seal, wet at the seal, wet around the fitting, wet at the fitting, oil soaked, grease slung, slinging grease, slung grease, oil spot, oil spots, an oil leak',
  ],
  [
    'operates',
    'fails',
    'rolls away, rolls on the hill, black picture, black screen, blue screen, picture is black, screen is black, only black, out of air, dead as a hammer, dead as a doornail, dead as can be, as dead as, deader than, ng, no bueno, kaput,  done for, on its last legs, on its last leg, on their last legs, on its way out, on the way out, on the fritz, on the blink, gave its last, beyond saving, beyond repair, past saving, belly up, no longer works, out to lunch, gone to heaven, ' +
      "not a peep, not a click, not a sound, not a spark, not a flicker, nary a, nothing comes out, nothing came out, nothing there, nothing out of it, got nothing, gets nothing, get nothing, gives nothing, deader, don't do squat, doesn't do squat, does squat, don't do nothing, doesn't do nothing, doesn't do anything, won't do anything, don't do anything, did nothing, ain't doing nothing, ain't worth, has had it, had its day, have had it, ain't doing squat, not doing anything, not doing nothing, doing nothing, no sign of life, no signs of life, no life in it, no juice, not getting any, finished, ruined, wrecked, useless, worthless, a goner, goner, garbage, scrap, non operational, nonoperational, non functional, defunct, dark, blank",
  ],
  [
    'condition',
    'poor',
    "seen better days, seen better, tired, getting tired, ready for replacement, due for replacement, up for replacement, up for a new one, in rough shape, in bad shape, in poor shape, rough shape, bad shape, poor shape, worse for wear, the worse for wear, sad, pretty sad, ugly, sorry shape, a mess, shabby, ratty, tatty, crummy, lousy, in tatters, not much left, nothing left, not long for this world, past its best, past its prime, asking for attention, could use some love, could use a, could use some, could use new, could do with, could stand a, could stand some, would benefit from, wants doing, needs doing, needs redoing, needs a redo, needs redone, wants redoing, needs love, needs some love, needs attention, needs work, needs some work, needs help, needs a rebuild, is asking for, wants attention, neglected, abused, trashed, on borrowed time, not up to it, out of spec, not in spec, below spec, out of limits, out of tolerance, condemned, butchered, hacked, rigged up, jury rigged, bodged, cobbled, not right, isn't right, ain't right, don't look right, doesn't look right, ain't good, isn't good, no longer any good, wrong with",
  ],
  [
    'age',
    'expired',
    'over the hill, past its date, out of its date, out of life, out of its life, past life, past the end of its life, past the date, too old, aged out, outta date, out of date, past its life, older than dirt, old as the hills, end of life, beyond its date, past its replacement date, past its replace by date',
  ],
  [
    'wear',
    'worn',
    'slick, threadbare, wore slick, down to the rivets, down to the cords, down to the backing, down to the wear bar, down to the wear bars, down to the metal, down to nothing, through to the cord, cord showing, cords showing, paper thin, razor thin, on the wear bars, at the wear bars, half gone, wore egg shaped, egg shaped, ate up, wallered, hogged out, toasted',
  ],
  [
    'heat',
    'burnt',
    'gone brown, gone black, turned brown, turned black, turned blue, gone blue, blued, heat blued, a bit cooked, brown from heat, hot spot, hot spots, scorch mark, scorch marks, scorching, charring, browning, heat marks, heat damage',
  ],
  [
    'rust',
    'corroded',
    'gone green, green inside, turned green, green fuzz, white fuzz, fuzz, white crust, crusty, crusted, blue crust, verdigris, all green, furred up',
  ],
  [
    'rust',
    'rusted',
    'scaly, surface scale, rusty as, eat up with rust, ate up with rust, pitted with rust, rotted with rust, freckles of rust, rust spots, rust holes',
  ],
  [
    'faded',
    'faded',
    'gone yellow, turned yellow, gone cloudy, gone chalky, gone dull, gone milky, sunburnt, sunburned, sun burnt, sun cooked, sun rotted, milky, brittle, gone hard, gone brittle',
  ],
  [
    'wet',
    'wet',
    'sopping, sopping wet, waterlogged, water logged, full of water, water in it, water in the lens, wet inside, got wet, still wet, drenched, swamped, pooled',
  ],
  ['wet', 'damp', 'clammy, dampness, moistness, a little damp'],
  [
    'wet',
    'rotted',
    'gone to mush, gone to mulch, wood gone, turned to mush, like wet cardboard, delaminated to nothing, punk',
  ],
  [
    'soft',
    'soft',
    'some give, give to it, give in it, gone soft, gone spongy, springy, trampoline, like a sponge, a sponge, mushy spot, feel it give, felt it give, feels it give, feel some give, push my thumb, push my finger, push a finger, push a thumb, poke my finger, poke a finger, poke my thumb, stick my finger, stick my thumb, thumb in it, finger in it, goes right in, sinks in, sinks under, gives underfoot, give underfoot, soft underfoot, spongy underfoot, gives under me, oil cans, weak spot, weak spots, soft place, soft places, hollow spot, hollow place, hollow',
  ],
  [
    'stain',
    'stained',
    'brown ring, brown rings, ring on the, tide mark, tide line, brown spot, brown spots, yellow ring, water ring, water rings, coffee colored spot, water spot, water spots',
  ],
  ['sag', 'sagging', 'low in the middle, bellied, belly in it'],
  ['damage', 'torn', 'pinhole, pinholes, pin holes, a hole, hole in it, holes in it, gaping hole, open seam'],
  [
    'damage',
    'broken',
    'in pieces, broke in two, busted off, busted out, held by one, hanging by a thread, hanging by one, taped together, zip tied, zip ties, duct taped',
  ],
  [
    'damage',
    'bent',
    'a bend to it, a bend in it, out of round, out of line, out of alignment, out of whack, cocked, askew, catawampus, cattywampus, whopperjawed, crooked, caddywampus',
  ],
  [
    'damage',
    'chewed',
    'mouse chewed, chewed by, mouse damage, mice got, mouse dirt, rodent nest, mouse turds, turds, mouse poop, mouse pee',
  ],
  [
    'separated',
    'separated',
    'let go, daylight, see daylight, gaps, a gap, gap at, unglued, undone, unbonded, ajar, hanging down, drooped down, backed off, backed out',
  ],
  [
    'loose',
    'loose',
    'finger loose, hand loose, flopping, loosey, got slop, has slop, some slop, has play, got play, some play, too much play, a lot of play, excess play, excessive play, play in it, slack in it, slop in it',
  ],
  [
    'operates',
    'intermittent',
    'when it wants to, when it feels like it, not every time, not each time, every other time, sometimes works, works sometimes, only sometimes, only works sometimes, works half the time, half the time, hit or miss, hit and miss, erratic, jumpy, spotty, dodgy, dicey, moody, has a mind of its own, mind of its own, flaky, touchy, possessed, haywire',
  ],
  [
    'operates',
    'stuck',
    'froze solid, froze shut, froze up, froze on it, rusted solid, rusted shut, stuck solid, stuck fast, stuck shut, painted shut, glued shut, welded shut, set in concrete, locked solid',
  ],
  [
    'operates',
    'sticky',
    'a bear to, hard to start, hard to light, hard starting, hard start, hard to shut, hard to pull, hard to slide, hard to move, hard to latch, hard to crank, stubborn, cranky, grabby, notchy, reluctant, ornery, tight to pull, takes some muscle, cantankerous, heavy to, pulls hard, turns hard, shuts hard, closes hard, opens hard, starts hard, slides hard, cranks hard, moves hard, goes hard, shifts hard',
  ],
  ['speed', 'slow', 'a hair slow, slow as molasses, slow as, slow to, like a snail, like molasses, crawls'],
  [
    'strength',
    'weak',
    'weak as, weak stream, yellow flame, yellow flames, lazy flame, lazy flames, lazy yellow flame, yellow and lazy, lazy and yellow, burns yellow, burning yellow, flame is yellow, flames are yellow, weak flame, puny, wimpy, pitiful, pathetic, underwhelming, lame, anemic, not pulling its weight, barely moves, barely turns, barely blows, barely a trickle, only a trickle',
  ],
  ['cooling', 'warm', 'not very cold, not that cold, only warm, never gets cold, lukewarm, tepid'],
  [
    'noise',
    'noisy',
    'makes a racket, a racket, racket, making noise, making a noise, makes noise, makes a noise, deafening, sounds rough, sounds awful, sounds bad, sounds like gravel, sounds dry, growly, clunky, clattery, squealy, creaky, noisier, loud as',
  ],
  [
    'smell',
    'smelling',
    'mousy, musty smell, fusty, stinky, funky, sour, gassy, rotten egg, rotten eggs, wet dog, cat pee, smells of, smells like, stale',
  ],
  [
    'level',
    'low',
    'on the low side, low side, running low, a quart low, down a quart, half a quart low, quart low, way down, below the plates, under the plates, below the mark, under the minimum, at the minimum, off the stick, off the dipstick, under half, short of full, not full, needs topping, needs water, bone dry in the, low water, below the fill',
  ],
  [
    'operates',
    'fails',
    'frost in, frost on the, frost buildup, ice buildup, ice built up, iced up, ices up, icing up, ice up, iced over, frosted up, frosts up, frosting up, frosted over, froze over, full of frost, frost in it, caked with frost, blank screen, blank display, blank face, screen is blank, display is blank, screen went blank, dead screen, dead display, nothing comes out, nothing comes through, nothing coming out, nothing coming through, nothing came out, nothing came through, nothing out of it, nothing on the screen, nothing on the display, gets nothing, getting nothing, get nothing out, got nothing out, not a drop comes out, no drip no nothing',
  ],
  [
    'reading',
    'fails',
    "is jumping, jumps around, jumping around, bouncing around, off by, way off, wrong, not accurate, inaccurate, unreliable, can't be trusted, don't trust, not to be trusted, out to lunch",
  ],
  [
    'clogged',
    'clogged',
    'caked, caked up, packed with dirt, packed solid, full of dirt, full of bugs, full of leaves, full of mud, full of crud, choked, spider web, spider webs, stopped up, dirt dauber, dirt daubers, mud dauber, mud daubers, wasp nest, wasp nests, wasps nest, bird nest, bird nests, birds nest, a nest, nest in it, nests in it, squirrel nest, hornet nest, hornets nest, leaves in it, packed with leaves, packed with bugs, full of bugs, full of wasps',
  ],
  [
    'dirty',
    'dirty',
    'gunky, gummy, mucky, crummy, scummy, slimy, black water, stinky, cruddy, sludgy, sludge, burnt smell, smells burnt, muddy, filmy',
  ],
  [
    'operates',
    'pulling',
    'pulls a little, wants to go to the right, wants to go to the left, wants to go right, wants to go left, wants to wander, wants the ditch, a wanderer',
  ],
  [
    'damage',
    'bent',
    'collapsed, mashed, mashed in, flattened, mushroomed, folded over, squashed, squished down, pancaked, sprung, cocked over',
  ],
  [
    'wear',
    'worn',
    'a lip on, lip on it, lip on them, a ridge on, ridge on it, wallowed out, wallowed, egged out, ground thin, ground down, ground flat, past the limit, below the limit, under the limit, past spec, under spec, down to the wear holes, down to the wear marks, down to the indicators, glazed over, flat spots, flat spotted, flatspotted, out of adjustment, chopped, choppy, scalloped, saw toothed, no meat left, not much meat',
  ],
  [
    'crack',
    'cracked',
    'heat checked, heat checks, heat checking, heat cracked, heat cracks, cracked through, broken leaf',
  ],
  [
    'dirty',
    'dirty',
    'crystals, crystallized, crystalized, crusted up, def crust, like chocolate milk, chocolate milk, milkshake, like mud, like tar, black as coal, gritty, metal flakes, metal in it, metal shavings, shavings, glitter in it, sparkles in it, oil in it, water in the oil, coolant in the oil, oil in the coolant',
  ],
  [
    'clogged',
    'clogged',
    'packed with,caked with,plugged with,stuffed with,clogged with,full of,covered in,covered with,matted with,choked with,coated with,coated in,packed full of,furred with,blocked with,stopped up with,loaded with'
      .split(',')
      .flatMap((h) =>
        'dog hair,hair,dirt,mud,lint,bugs,cottonwood,grass,fuzz,crud,dust,sand,oil,junk,trash,gunk,oily dirt,feathers,grime'
          .split(',')
          .map((t) => `${h} ${t}`),
      )
      .join(','),
  ],
  [
    'speed',
    'slow',
    'slow one, the slow one, a slow one, long crank, long cranks, cranks slow, cranks slowly, cranks and cranks, cranks a while, cranks a long time, slow to crank, slow cranking, slow to engage, slow to grab, slow to shift, takes its time to, late shift, late shifts, takes a few tries, takes several tries, takes a couple tries, takes some cranking, took a few tries',
  ],
  [
    'operates',
    'sticky',
    'bangs into, slams into, clunks into, jerks into, jerky, jerks, harsh, hard shift, hard shifts, harsh shift, harsh shifts, hard clunk, flares, flare between, slams, neutrals out, grabby, bucks, bucking, lurches, lurching',
  ],
  [
    'operates',
    'surging',
    'skips, skip in it, a miss, has a miss, missing on a cylinder, dead cylinder, running on three, lopes, loping, chugs, chugging, spits and sputters',
  ],
  [
    'operates',
    'vibrating',
    'bounces, bouncing, wallows, wallowing, porpoises, porpoising, bottoms out, bottoming out, rides rough, rides hard, rides harsh, rides like a truck, rides like a buckboard, rides like a log wagon, floats, floaty, hops, axle hop, wheel hop, white knuckle, white knuckles',
  ],
  [
    'wear',
    'worn',
    'dead spot, dead spots, dead band, chunks missing, chunk missing, chunks out, chunk out, missing chunks, missing ribs, hard like, hard as, turned hard, gone stiff, stiff as',
  ],
  [
    'rust',
    'rusted',
    'scabby, scabbed, salt got to, salt eaten, rusty looking, big rust, heavy rust, rotted with, rot holes, rust bucket, rust flakes, scale rust, rust jacking',
  ],
  [
    'separated',
    'separated',
    'unbolted, unscrewed, unclipped, unfastened, came unbolted, popped loose, come out of its',
  ],
  [
    'operates',
    'pulling',
    'dove to the, dives to the, dove right, dove left, dives right, dives left, darts, yanks, yanked, tugs, tugging, rather go left, rather go right, leads left, leads right, leads to the, steers itself, hunts for the ditch',
  ],
  [
    'strength',
    'weak',
    'no power, low on power, down on power, lacks power, no guts, gutless, no pulling power, falls on its face, lays down on',
  ],
  [
    'operates',
    'fails',
    'is finish, is finished, is kaputt, finito, broke down, derated, derates, derate, derating, limp mode, limps home, goes into limp, gone into limp',
  ],
  [
    'level',
    'low',
    'a pint low, two quarts low, down a pint, down two quarts, a quart down, took a pint, took a quart, took two quarts, below the add, on the add mark, an inch low, below the plug',
  ],
  [
    'level',
    'poor',
    'overfull, overfilled, over full, over filled, above the full mark, too full, over the full mark',
  ],
  ['wear', 'worn', 'play in the steering, sloppy steering, loosened up'],
];
