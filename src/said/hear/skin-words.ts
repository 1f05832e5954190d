// Why: skins, glass, cloth, seals and pictures go wrong in ways that have words of their own.
// Trade usage and plain English (common practice, no source).
import type { State } from '../../catalogue/state.ts';

/** Aspect, state, words that can be denied ("no ripples"), words that cannot. */
type Row = readonly [aspect: string, state: State, nouns: string, others: string];

export const skinFailures: readonly Row[] = [
  [
    'damage',
    'scratched',
    'nick, nicks, scar, scars, blemish, blemishes, swirl, swirls, swirl marks, buffer trails, holograms, war wound, war wounds, battle scars, tree rash, branch scratches, pinstriping from, desert pinstripes, key mark, key scratch, chafe marks, chafing, marring',
    'nicked, nicked up, scarred, scarred up, keyed, marred, marked up, scuffed up, scratched up, scraped up, sandblasted, sand blasted',
  ],
  ['damage', 'chipped', 'stone peppering, sand pitting, peppering, stone hits, rock hits', 'peppered'],
  [
    'damage',
    'torn',
    'a cut, a slice, slices, a slit, slits, a slash, slashes, cuts in it, cuts in the, bald spot, bald spots',
    'sliced, slashed, gashed, slit open, cut open, cut through',
  ],
  [
    'damage',
    'bent',
    'buckle, a buckle, buckles in',
    'lopsided, cockeyed, catty corner, off kilter, kilter, uneven, rolled under, rolled over, folded over, folded under, folded back, tucked under, tucked in wrong, pinched, flattened, squashed, squished flat, compressed, mashed flat, out of the channel, out of its channel, out of the track, out of its track, sprung, hung crooked, racked out of square',
  ],
  [
    'crack',
    'cracked',
    'alligatoring, alligator cracks, alligator skin, crow feet, crows feet, spider web, a spider, hairlines, mud cracks, mud cracking, stars, star breaks, bullseyes, cracking up, weather cracks, a split, splits, a fracture, fractures',
    'alligatored, spidered, spider cracked, spider webbed, fissured, mud cracked',
  ],
  [
    'delamination',
    'delaminated',
    'waves, waves in it, waviness, ripple, ripples, rippling, pillowing, oil canning, hollow spots, hollow sound, a hollow spot, hollow areas, bubbles in the wall, bubbles in it',
    'wavy, rippled, ripply, pillowed, delammed, delamed, bubbly, washboard, washboarded, tapped hollow, taps hollow, sounds hollow, sound hollow, sounded hollow, rings hollow',
  ],
  [
    'separated',
    'separated',
    'wrinkle, wrinkles, loose spots, loose spot, void, voids, gap in it',
    'wrinkled, wrinkly, tented, tented up, puckered, receding, receded, shrunk, shrunken, shrunk back, shrinking, shrank, pulled back, pulling back, drawn back, coming up at the, coming up along the, coming up round, coming up around, curled, curling, curled up, curling up, curls, lifted up, raised up, letting loose, working loose, unstitched, stitching gone, stitching is gone, stitching let go, unseated, not seated, popped up, popping out, backed out, backing out, proud, cut short, too short, oozing out, oozing from, oozed out, squeezing out, squeezed out, pulled the screws, pulled its screws, screws pulled, screws are pulled, screws pulled out, screws backed out, screws are loose, blown off, blew off, torn off, tore off, flew off, flown off, ripped off, knocked off',
  ],
  [
    'faded',
    'faded',
    'fade, fading, some fade, haze, oxidation, hazing',
    'baked, washed out, blotchy, patchy, weathered, perished, hardened, hard as a rock, hard as rock, hard as nails, hard as plastic, crumbling, crumbly, crumbles, crumbled, powdery, dry and cracked',
  ],
  [
    'stain',
    'stained',
    'etching, bug etching, acid etching, bird etching, hard water spots, water spotting, tar spots, sap, tree sap, rust bleed, tannin',
    'etched, water spotted, streaky, spotted up, blotched',
  ],
  [
    'wet',
    'mildewed',
    'moss, algae, green slime, black spots, mildew spots, mold spots',
    'mildewed, mossy, moldy, mouldy, green with algae, green with moss, black with mold, black with mildew, gone green',
  ],
  [
    'condition',
    'poor',
    'overspray, over spray, runs in it, runs in the paint, a run in the paint, fish eyes, fisheyes, orange peel, mismatch, color mismatch, dirt in the paint',
    'mismatched, orange peeled, botched, sloppy job, off color, off shade',
  ],
  [
    'wear',
    'worn',
    '',
    'held on with tape, held together with tape, held on with zip ties, held together with zip ties, held on with wire, held with duct tape, hanging by its wires, hanging by the wires, hanging by a wire, hanging by a screw',
  ],
  [
    'operates',
    'fails',
    'black screen, blue screen, white screen, green screen, no signal, signal lost',
    "just clicks, only clicks, just click, just hums, only hums, just spins, only spins, clicks and that's it, shows nothing, showing nothing, blacked out, upside down",
  ],
  [
    'operates',
    'poor',
    'lines in it, lines across it, lines across the, snow on the screen, a green tint, green tint, pink tint, double image, ghosting, static on the screen',
    'blurry, blurred, blurs, grainy, fuzzy, snowy, pixelated, pixelly, out of focus, scrambled, garbled, dim, too dim, very dim, faint',
  ],
  [
    'operates',
    'drifting',
    '',
    'drops on your head, drops on my head, drops on you, drops down on, comes down on you, comes down on your head, came down on me, falls on your head, falls on you, fell on me, falls shut, fall shut, drops shut, slams shut by itself, blows shut',
  ],
  [
    'operates',
    'sticky',
    '',
    'has to be slammed, have to slam, got to slam, gotta slam, needs slamming, have to lift, gotta lift, got to lift, have to force, have to fight, gotta fight, have to jiggle, gotta jiggle, got to jiggle, have to push it, have to pull it, have to kick, have to help it, have to yank, hits the frame, rubs the frame, rubs on the, catches on, scrapes the, scrapes on',
  ],
  [
    'operates',
    'fails',
    '',
    'pops open, flies open, flew open, comes open, came open, comes unlatched, swings open on its own, swings open by itself, opens by itself, opens on its own, pops unlatched, lets light in, lets air in, see light around, light around it',
  ],
];
