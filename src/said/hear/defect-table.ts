// Why: the words by which people say that something is wrong, with the aspect and the state each stands for.
// Trade usage (common practice, no source).
import type { State } from '../../catalogue/state.ts';
import { failureIdioms } from './failure-idioms.ts';
import { powerFailures } from './failure-power.ts';
import { roomFailures } from './failure-rooms.ts';
import { failureVerbs } from './failure-verbs.ts';
import { formsOf } from './inflect.ts';
import { skinFailures } from './skin-words.ts';

/** What a failure word says. `noun`: a thing that can be denied ("no cracks"); `of`: only of these parts. */
export interface DefectWord {
  readonly aspect: string;
  readonly state: State;
  readonly noun?: true;
  /** Weak words are a defect only right beside a part, never of a part far off. */
  readonly near?: true;
  /** Said as a verb, in this form; what somebody does is no failure ("I cracked the door"). */
  readonly verb?: 'base' | 's' | 'ing' | 'past';
}

const table: Record<string, DefectWord> = {};
const say = (
  aspect: string,
  state: State,
  phrases: string,
  more: { noun?: true; near?: true } = {},
): void => {
  for (const p of phrases.split(',')) table[p.trim()] = { aspect, state, ...more };
};
const noun = { noun: true } as const;
const near = { near: true } as const;

say(
  'crack',
  'cracked',
  'crack, cracks, hairline crack, hairline cracks, spider cracks, spider crack, stress cracks, stress crack, weather cracking, weather checking, sidewall checking, checking, cracking, sidewall cracks, dry rot, spider webbing, spidering, weather cracks',
  noun,
);
say(
  'crack',
  'cracked',
  'cracked, split, busted, shattered, dry rotted, weather checked, dry checked, sun checked, sidewall checked, dry cracked, weather cracked, splitting',
);
say('crack', 'crazed', 'crazed, crazing');
say(
  'damage',
  'chipped',
  'chip, chips, rock chips, rock chip, star chip, rock chipping, chipping, stone chips, stone chip, pitting, bullseye, star break, star',
  noun,
);
say('damage', 'chipped', 'chipped, pitted');
say('damage', 'torn', 'tear, tears, rip, rips, holes, puncture, punctures, gouge, gouges, gash', noun);
say(
  'damage',
  'torn',
  'torn, ripped, tore up, torn up, tore, shredded, punctured, gouged, frayed, fraying, chewed up',
);
say(
  'damage',
  'chewed',
  'chewed, rodent damage, mouse droppings, droppings, mouse nest, mice, rodents, rodent, mouse',
);
say('damage', 'dented', 'dent, dents, ding, dings, dimples, hail damage', noun);
say('damage', 'dented', 'dented, caved in, crushed, smashed');
say('damage', 'bent', 'bent, bowed, warped, twisted, kinked, out of square, crooked');
say(
  'damage',
  'scratched',
  'scrape, scrapes, scratch, scratches, scuff, scuffs, scuff marks, rub marks, road rash, curb rash',
  noun,
);
say('damage', 'scratched', 'scraped, scratched, scuffed');
say('damage', 'damaged', 'damage, water damage, accident damage, collision damage, impact damage', noun);
say('damage', 'damaged', 'damaged, beat up, messed up, tweaked, mangled');
say(
  'damage',
  'broken',
  'broken, broke, snapped, broken off, broke off, sheared, stripped, cracked off, failed weld',
);
say(
  'leak',
  'leaking',
  'leak, leaks, oil leak, oil leaks, water leak, air leak, fuel leak, exhaust leak, hydraulic leak, coolant leak, bubbles, hiss, active leak, active leaks',
  noun,
);
say(
  'leak',
  'leaking',
  'leaking, leaks by, leaks down, leaked, blowing out, spraying, hissing, bubbling up, spits, losing air, loses air, losing pressure, loses pressure, bypassing',
);
say('leak', 'dripping', 'drip, drips, dripping');
say(
  'leak',
  'weeping',
  'weep, weeps, weeping, weepage, seep, seeps, seeping, seepage, sweating, damp around the seal, oil film, wet with oil, oily',
);
say('rust', 'rusted', 'rust, surface rust, rust trails, rust streaks, rust through', noun);
say('rust', 'rusted', 'rusted, rusty, rusting, rusted out, rusted through, pitted with rust');
say('flaking', 'corroded', 'flaking, scaling, scale, rust scale, flakes', noun);
say('rust', 'corroded', 'corrosion, corrosion starting, green corrosion', noun);
say('rust', 'corroded', 'corroded, corroding, oxidized, oxidation, furry');
say(
  'stain',
  'stained',
  'stain, stains, water stain, water stains, staining, discoloration, water mark, water marks, streaks, streaking, streak, smear, smears, smearing',
  noun,
);
say('stain', 'stained', 'stained, discolored, yellowed, yellowing, black streaks');
say('wet', 'wet', 'wet, soaked, saturated, soaking wet, pegged, dripping wet');
say('wet', 'damp', 'damp, moist, clammy');
say(
  'wet',
  'wet',
  'water intrusion, water ingress, moisture intrusion, condensation, standing water, puddle, puddles, pooling, ponding, water in it, water standing, water pooling, water pooled, water sitting, water sits, water stands, water ponds, water pools, water is standing, water is sitting, water is pooling',
  noun,
);
say('wet', 'wet', "water 's standing, water 's sitting, water 's pooling", noun);
say('wet', 'mildewed', 'mildew, mold, mould, black mold, moldy, fungus', noun);
say('wet', 'rotted', 'rot, wood rot, dry rot in the wood', noun);
say('wet', 'rotted', 'rotted, rotten, rotting, punky, mush, mushy');
say(
  'soft',
  'soft',
  'soft spot, soft spots, soft area, soft areas, soft patch, soft patches, soft section, soft sections, soft place, soft places, soft corner, soft board, soft bit, flex in it, give anywhere, give anyplace, give any place, give at all, give to it, give in it, give underfoot',
  noun,
);
say('soft', 'soft', 'soft, spongy, squishy, bouncy, springy');
say('flex', 'flexing', 'flexes, flexing, flexed, oil cans');
say('delamination', 'delaminated', 'delamination, delam, bubble, bubbles in the wall, bubbling', noun);
say('delamination', 'delaminated', 'delaminated, delaminating, bubbled');
say('separated', 'separated', 'separation', noun);
say(
  'separated',
  'separated',
  'separated, separating, pulled away, pulling away, lifted, lifting, coming off, coming apart, coming loose, pulled out, popped out, coming undone, detached, unglued, gapped, gaps, come unglued, falling off, fell off, hanging',
);
say('peel', 'peeling', 'peeling, peeled, peels, clear coat failure, flaky');
say(
  'faded',
  'faded',
  'faded, fading, chalky, chalking, hazed, hazed over, hazy, dull, sun faded, sun baked, cloudy, hazing, bleached',
);
say('fogged', 'fogged', 'fogged, foggy, fogged up, fogging, moisture between the panes, lost its seal');
say(
  'wear',
  'worn',
  'wear, wear on the inside edge, edge wear, inside wear, cupping, feathering, uneven wear, wear and tear, slop, free play',
  noun,
);
say(
  'wear',
  'worn',
  'worn, worn out, wore out, bald, cupped, feathered, worn down, down to the wear bars, threadbare, past their prime, shot, grooved, scored, metal on metal',
);
say(
  'age',
  'expired',
  'expired, out of date, aged out, too old, outdated, past date, out of code, timed out, past its date, past due',
);
say('age', 'overdue', 'overdue, due for, due now, past due for');
say(
  'level',
  'low',
  'low, low on, down a quart, at the add mark, at the add line, on the add line, add line, at the add, below the add line, to the add line, below the add mark, below the line, below full, below the mark, under the mark, under the line, below minimum, needs topping up, nearly empty',
);
say('loose', 'loose', 'loose, wobbly, wobbles, rattling loose, sloppy, not tight, wiggles, floppy, rocking');
say('missing', 'missing', 'missing, gone, not there, nowhere to be found, lost');
say('strength', 'weak', 'weak, feeble, sluggish to lift');
say('strength', 'weak', 'barely, barely cool, barely works, not strong', near);
say(
  'speed',
  'slow',
  'slow, sluggish, lazy, takes forever, slowly, slower, a bit slow, hesitates, hesitation, delayed',
);
say(
  'noise',
  'noisy',
  'squeal, squeals, squeaking, squeak, squeaks, noise, bearing noise, wind noise, road noise, grinding, grinds, chirp, chirps, chirping, clunk, clunks, clunking, knock, knocks, knocking, rattle, rattles, rattling, hum, hums, humming, whine, whines, whining, howl, howls, pop, pops, screech, screeches, ticking, tick, ticks, growl, growls, groan, groans, bang, bangs, buzzes, buzzing, loud, noisy, rumble, rumbles, roar',
  noun,
);
say(
  'smell',
  'smelling',
  'smell, smells, odor, odour, musty, stink, stinks, smelly, gas smell, propane smell, sewer smell, smoke smell, lp smell, whiff',
  noun,
);
say('smoke', 'smoking', 'smoke, smokes, smoking, white smoke, black smoke, blue smoke', noun);
say(
  'heat',
  'burnt',
  'burnt, burned, melted, scorched, charred, heat discolored, browned, brown around, toasted, arcing, arced, overheated, heat damage, blackened, singed, burn marks, burn mark, cooked',
);
say('heat', 'overheating', 'overheats, overheating, runs hot, running hot, ran hot, gets hot, boils over');
say(
  'operates',
  'fails',
  'dead, toast, junk, no good, inop, inoperative, inoperable, failed, fails, fail, nonfunctional, not functional, kaput, fried, blown, conked out, quit, quit working, shorted, out of order, not working, down for the count, does nothing, nothing happens, no response, no go, stone dead, not responding, gave up, doesnt work, burned out, burnt out',
);
say('operates', 'fails', 'bad', near);
say(
  'operates',
  'stuck',
  'stuck, jammed, seized, seized up, frozen, froze up, hung up, binds, binding, bound up, hangs up, jams, locked up solid, stays open, stays on, stuck open, stuck closed',
);
say(
  'operates',
  'sticky',
  'sticky, sticks, sticking, stiff, hard to turn, hard to open, hard to close, drags, dragging, tight to turn, balky',
);
say(
  'operates',
  'intermittent',
  'intermittent, intermittently, cycles every, comes and goes, hit and miss, acts up, acting up, cuts out, cutting out, iffy, questionable, temperamental, flickers, flickering, finicky, in and out of service',
);
say(
  'operates',
  'tripped',
  'trips the breaker, pops the breaker, trips out, tripped, kicks off, trips off, kicked off, tripping',
);
say(
  'operates',
  'surging',
  'surges, surging, surge, hunts, hunting, stumbles, stumbling, misfires, misfiring, bogs down, bogs, dies, stalls, runs rough, rough idle, idles rough, lugs down',
);
say(
  'operates',
  'drifting',
  'drifts, drifting, drifted, bleeds down, bleeding down, creeps, creeping, settles, settled, sinks, leans, leaning, wont hold',
);
say('operates', 'lagging', 'lags, lagging, lags behind, out of sync, out of time, racks, racking, crabs');
say(
  'operates',
  'vibrating',
  'vibrates, vibration, vibrating, shimmy, shimmies, shudder, shudders, shakes, shaking, wobble, judder, pulsation, pulses, pulsates',
  noun,
);
say(
  'operates',
  'pulling',
  'pulls left, pulls right, pulls to the left, pulls to the right, wanders, wandering, pull to the right, pull to the left, drifts left, drifts right, tramlines',
);
say(
  'operates',
  'unhooked',
  'unhooked, disconnected, not hooked up, not connected, not plumbed, not wired, bypassed',
);
say('operates', 'discharged', 'discharged, flat, drained, in the red, swollen on charge');
say('operates', 'out', 'burned out bulb, out of commission');
say('operates', 'open', 'element open, open circuit, reads open');
say(
  'operates',
  'poor',
  'flaky connection, poor, sketchy, half dead, no bueno, not great, not good, not so good, not right, crap, trashed, hammered',
);
say(
  'swelling',
  'swollen',
  'bulge, bulges, swollen, bulging, bulged, swelled, swelling, puffed up, blistered, blisters, blistering',
);
say('sag', 'sagging', 'sag, sags, sagging, droop, droops, drooping, saggy, droopy, dips', noun);
say(
  'dirty',
  'dirty',
  'dirty, filthy, grimy, nasty, greasy, sooty, soot, black as tar, contaminated, milky, cloudy fluid, burnt smelling',
);
say('clogged', 'clogged', 'clogged, plugged up, plugged solid, blocked, blockage, restricted, plugged');
say('cooling', 'marginal', 'marginal, borderline, not ideal, on the edge');
say(
  'cooling',
  'warm',
  'warm, not cold, not cool, luke warm, lukewarm, not getting cold, not cooling, blows warm, blowing warm',
  near,
);
say(
  'lit',
  'lit',
  'check engine light is on, warning light is on, light is on, lamp is on, is lit, is lit up, light stays on, light came on',
);
say('safety', 'unsafe', 'unsafe, dangerous, red tag, red tagged, do not drive');
say(
  'reading',
  'fails',
  'false reading, reads wrong, reads full all the time, stuck on full, wrong reading, reads two thirds empty, sensors are suspect, inaccurate, way off',
);

say('rust', 'corroded', 'crud, green crud, gunk, residue, white powder, buildup on the terminals', noun);
say('operates', 'stuck', 'off its track, off the track, off track, off its hinge, off the hinge, came off');
say(
  'operates',
  'intermittent',
  'slips, slipping, slipped, sputters, sputtering, sputtered, sputter, skips, surges and drops, cuts in and out, flickered',
);
say(
  'operates',
  'surging',
  'surged, hunted, hunt, stumbled, stalled, misfired, misfire, shuddered going into gear',
);
say('operates', 'vibrating', 'pulse, pulsing, vibrate, vibrated, shook, shuddered, wobbled');
say('operates', 'sticky', 'dragged, stuck a little, sticks a bit, drag');
say('operates', 'lagging', 'lagged');
say('operates', 'drifting', 'leaned, sank, bled down');
say(
  'operates',
  'tripped',
  'pops off, popped the breaker, trips the main, blows the fuse, blows fuses, blew a fuse',
);
say('operates', 'unhooked', 'never been hooked up, never hooked up, unplugged from, capped off, disabled');
say(
  'speed',
  'slow',
  'hesitate, hesitated, takes a while, took forever, took a while, labors, labored, struggles, struggled',
);
say(
  'noise',
  'noisy',
  'squealed, clunked, rattled, knocked, hummed, hissed, ground, whistle, whistles, whistling, thump, thumps, thumping, creaks, creaking, creak, chatter, chatters, chattering, squeaky',
  noun,
);
say(
  'leak',
  'leaking',
  'leaked a little, dribbles, dribbling, spraying out, running down, wet with coolant, gushing',
);
say('leak', 'dripping', 'dripped');
say('wear', 'worn', 'wearing, wearing on the edge, wearing thin, down to metal, thin');
say('sag', 'sagging', 'sagged, hanging down, hangs down');
say('damage', 'scratched', 'gash down the side, curb damage, gouges, swirl marks', noun);
say('damage', 'dented', 'crease, creases, creased, crunched, pushed in, bashed in', noun);
say('damage', 'burnt', 'burn, burns, cigarette burn, cigarette burns', noun);
say(
  'reading',
  'fails',
  'always says full, always reads full, always shows full, reads full empty, sensor is lying, is lying, lying, does not read right, reads wrong, stuck at full, never reads right',
);
for (const [aspect, state, phrases, isNoun] of powerFailures)
  for (const p of phrases.split(',')) table[p.trim()] = { aspect, state, ...(isNoun ? noun : {}) };
for (const [aspect, state, nouns, others] of skinFailures) {
  for (const p of nouns.split(',')) if (p.trim() !== '') table[p.trim()] ??= { aspect, state, noun: true };
  for (const p of others.split(',')) if (p.trim() !== '') table[p.trim()] ??= { aspect, state };
}
say('wear', 'worn', 'hard', near);
for (const [aspect, state, phrases, more] of roomFailures) say(aspect, state, phrases, more);

for (const [aspect, state, phrases] of failureIdioms)
  for (const p of phrases.split(',')) table[p.trim()] ??= { aspect, state };
for (const [aspect, state, nouns, verbs] of failureVerbs)
  for (const [list, isNoun] of [
    [nouns, true],
    [verbs, false],
  ] as const)
    for (const verb of list.split(',').filter((v) => v.trim() !== '')) {
      const forms = formsOf(verb.trim());
      const add = (form: string, kind: DefectWord['verb'], asNoun: boolean): void => {
        const old = table[form];
        table[form] = old
          ? { ...old, ...(asNoun ? noun : {}), ...(kind ? { verb: kind } : {}) }
          : { aspect, state, ...(asNoun ? noun : {}), ...(kind ? { verb: kind } : {}) };
      };
      add(forms.past, 'past', false);
      add(forms.part, forms.part === forms.past ? 'past' : undefined, false);
      add(forms.ing, 'ing', isNoun);
      add(forms.s, 's', isNoun);
      add(forms.base, 'base', isNoun);
    }

/** Failure phrases -> what they say. */
export const defectTable: Readonly<Record<string, DefectWord>> = table;
