// Why: who speaks English after another language carries over its phrases; each stands here beside what a native speaker would say.
// Spanish, Portuguese, French, German, Polish, Chinese and Indian colourings (common knowledge, no source).
import { loanDenials } from './loan-denials.ts';
import { loanNames } from './loan-names.ts';
import { PhraseIndex } from './phrase-index.ts';
import { formsOf } from './verb-forms.ts';

const split = (text: string): string[] =>
  text
    .split(/[,\n]/)
    .map((p) => p.trim())
    .filter((p) => p !== '');

/** Asides of a speaker looking for the word: they say nothing and come between what belongs together. */
export const asides = new PhraseIndex<true>();
for (const p of split(`
  how you say, how you say it, how do you say, how do you say it, how do we say, how we say, how to say, how to say it, how to call it, how you call it,
  how you call, how you call this, how do you call it, how do you call this, how do you call that, how is it called, how is called, how it is called, how it calls,
  how is the word, what is the word, what's the word, how is the name, i don't know the word, i don't know how you say, i don't know how to say,
  i forgot the word, i forget the word, in english, excuse my english, sorry my english, sorry for my english, how is it in english, you know what i mean,
  you understand, you understand me, if you understand`))
  asides.add(p, true);

/** Verbs of a part's work as they are denied abroad: "no works", "closes not", "doesn't opens". */
const worked = split(
  'work, function, open, close, turn, start, go, come, burn, light, heat, cool, hold, keep, shut, move, charge, cut, fit, react, respond, ignite, stay, run, stop, lock, latch, give, make, show, flush, drain, pump, blow, spin, rotate, warm, fill, seal, pull, leak, smell, drip, exist, catch, engage, rise, lift, slide, extend, retract',
);
/** Third person -> base. */
export const baseOf: ReadonlyMap<string, string> = new Map(
  worked.flatMap((v) => formsOf(v).flatMap(([f, as]) => (as === 'third' ? [[f, v] as const] : []))),
);
export const workedBases: ReadonlySet<string> = new Set(worked);

/** Phrases carried over -> what is meant by them. */
export const carriedOver = new PhraseIndex<string>();
const say = (meant: string, phrases: string): void => {
  for (const p of split(phrases)) carriedOver.add(p, meant);
};
/** A phrase with a verb in every form, on both sides. */
const verb = (meant: string, phrases: string): void => {
  const [to = '', ...toTail] = meant.split(' ');
  for (const p of split(phrases)) {
    const [from = '', ...tail] = p.split(' ');
    const target = formsOf(to);
    for (const [form, as] of formsOf(from)) {
      const same = target.find((t) => t[1] === as)?.[0] ?? to;
      carriedOver.add([form, ...tail].join(' '), [same, ...toTail].join(' '));
    }
  }
};

// verbs taken over word for word
verb(
  'leak',
  'enter water, enter rain, lets enter water, let enter water, let enter rain, let pass water, let come water, let water pass',
);
say(
  'leaks',
  'water comes inside, rain comes inside, water enters, rain enters, comes water inside, comes water in, comes in water, water is entering, rain is entering, rain comes in, comes in the rain, comes the water in, water comes through, enters the water',
);
say("doesn't engage", "doesn't enter, don't enter, does not enter");
say('no problem', 'without error, without errors, no error, without any error, without complaint');
verb(
  'turn itself off',
  'switch off alone, switch off by itself, switch off by himself, turn off alone, turn off by itself, go off alone, go off by itself, shut off alone, shut off by itself, go out alone, stop alone, stop by himself, die alone, disconnect alone, disconnect itself, disconnect by itself',
);
verb(
  'bubble',
  'make a wave, make waves, make a belly, make bubbles, make a bubble, make a bump, make bumps, make blisters, make a balloon',
);
verb(
  'take forever',
  'take long, take long time, take much time, take very long, take a long time, take too much time, take too long time, need long time, need much time, need long, need a long time, need too much time, take his time, take a lot of time',
);
verb(
  'make noise',
  'make click, make clack, make clac, make tac, make toc, make tick, make krr, make bum, make boom, make knack, make crack, make klong, make trr, make click click, make tac tac, make toc toc, make tick tick, make clack clack, make clonk, make plop, make crac, make cric, make brr, make pum, make pum pum, make tuk, make tuk tuk',
);
say('no stains', 'no spots, without spots, not spots, no spot, without spot, without marks, no marks');
say('has stains', 'has spots, with spots, is with spots, is with stains, has marks of water');
say(
  'hot air comes out',
  'comes hot air, comes warm air, comes out hot air, comes out warm air, comes the hot air, comes the warm air, is coming hot air, is coming warm air, comes heat, comes warm',
);
say(
  'cold air comes out',
  'comes cold air, comes out cold air, comes the cold air, is coming cold air, comes cold, comes fresh air',
);
say(
  'hot water comes out',
  'comes hot water, comes warm water, comes out hot water, comes the hot water, is coming hot water, comes out warm water',
);
say(
  'reads wrong',
  'shows everything zero, shows all zero, shows zero always, shows nonsense, shows wrong values, shows false, shows false values, indicates wrong, indicates false, marks wrong, marks always full, indicates always full, shows everything full, shows what it wants, marks always the same, shows always the same, always shows the same, always shows zero',
);
say(
  'has a dead battery',
  'has no battery, have no battery, battery empty, has battery empty, battery is empty, its battery is empty',
);
say('hard to turn', 'goes heavy to turn, difficult to turn, is hard for turning');
say(
  'rolls away',
  'car still rolls, still rolls, rolls anyway, still is rolling, is still rolling, rolls still, rolls also, goes rolling',
);
verb(
  'fold out',
  'become a bed, become bed, transform in bed, transform in a bed, transform to bed, transform into a bed, transform into bed, convert in bed, convert in a bed',
);
say(
  'gas smell',
  'smell of gas, smell of the gas, odor of gas, smell of propane, smell gas, smells gas, smelling gas, smell the gas, smells of gas, smells like gas, smells after gas, smell like gas, smelling of gas, smells to gas, stinks of gas, smell propane, smells of propane, smells propane, gas i smell',
);
say(
  'stone chip',
  'hit of stone, hit of a stone, hit from a stone, hit from stone, stone hit, impact of stone, stone impact, impact of a stone, blow of stone, stone blow, mark of stone, rock hit, strike of stone, stone strike',
);
say(
  'stone chips',
  'hits of stones, hits of stone, stone hits, impacts of stone, stone impacts, stone strikes, hits from stones',
);
say(
  'oil leak',
  'drops of oil, drop of oil, oil drops, oil drop, traces of oil, trace of oil, oil traces, stain of oil below, spots of oil, puddle of oil, wet of oil, wet with oil, dirty of oil, full of oil, oily below',
);
say(
  'water leak',
  'drops of water, traces of water, trace of water, water drops, water traces, filtration of water, filtrations of water, entry of water, entrance of water, water entrance, infiltration of water, water infiltration, infiltration, infiltrations',
);
for (const thing of split(
  'water, pressure, air, charge, vacuum, gas, temperature, height, load, level, cold',
))
  verb(`hold ${thing}`, `keep the ${thing}, maintain the ${thing}, conserve the ${thing}`);
verb('hold water', 'keep water, conserve water, retain water, maintain water');
verb('hold pressure', 'keep pressure, maintain pressure, conserve pressure, keeps the pressure');
verb('hold air', 'keep air, maintain air, retain air');
verb(
  'hold a charge',
  'keep charge, keep load, hold the load, keep the charge, maintain charge, hold the current',
);
verb(
  'lose water',
  'lose the water, lose some water, lose a bit of water, lose a little water, lose little water, loose water, throw water, drop water',
);
verb(
  'lose oil',
  'lose the oil, lose some oil, lose a bit of oil, lose a little oil, lose little oil, loose oil, throw the oil, drop oil, sweat oil, spit the oil',
);
verb(
  'lose air',
  'lose the air, lose some air, lose a bit of air, lose a little air, loose air, lose the pressure, lose gas, loose pressure',
);
verb(
  'leak',
  'let go water, filter water, filtrate, filter the water, escape water, pass water, drop drops, make drops, throw drops',
);
verb(
  'make noise',
  'make a noise like, make strange noise, make a strange noise, make some noise, make a lot of noise, make much noise, do noise, do a noise, make sounds, make a sound, make a strange sound, make strange sound, make strange noises, make noises, make bad noise, make ugly noise, make big noise, give noise, give a noise, make weird noise, give sound, make loud noise',
);
verb(
  'jerk',
  'give a hit, give a kick, give a jump, give a blow, give a punch, give hits, give kicks, give jumps, make a jump, make jumps, make a kick, give a push, make hits, give a jerk',
);
verb('turn on', 'put on itself, turn itself on, switch itself on, put itself on');
verb(
  'turn off',
  'turn itself off, switch itself off, put itself off, turn off itself, switch off itself, stop itself, stop by itself',
);
verb('get hot', 'warm itself up, heat itself, heat itself up, warm itself');
verb('close', 'close itself, shut itself');
verb('open', 'open itself');
say('out of air', 'without air, is without air');
say('no power', 'no current, no tension, no electricity, not current, no energy, no light inside, no force');
say(
  'has no power',
  'has no current, has not current, without current, without electricity, without power, without tension, without energy, without force',
);
say('dead', 'without charge, without battery, is kaput, is kaputt, is caput, is malogrado');
say(
  'broken',
  'kaputt, kaput, caput, defect already, is defect, spoilt, spoiled, got spoiled, got spoilt, gone kaput, destroyed, ruined, damaged already, out of function, out of the function, not in order, not in function, without function, malfunctioning, desperfect',
);
say(
  'is worn',
  'is consumed, is gasted, is wasted, is spent, is used up, is eaten already, is finished already',
);
say(
  'are worn',
  'are consumed, are gasted, are wasted, are spent, are used up, are eaten already, are finished already',
);
say(
  'works',
  'is in function, is in functioning, is functional, is operative, is operational, is functionable, is in operation, goes well, goes good, goes perfect, goes perfectly, is doing his job, does his work, does his job, is doing its job, does its work',
);
say('work', 'are in function, are functional, are operative, are operational, are in operation');
say(
  'good condition',
  'good state, a good state, good conservation, good conserved, well conserved, good preserved, well preserved, good maintained, well kept, good kept, good estate, state good, condition good',
);
say(
  'in good order',
  'in order, all in order, everything in order, like it must be, as it must be, like it has to be, how it should be, how it must be',
);
say(
  'no problem',
  'without problem, without problems, without any problem, without a problem, without issue, without issues, without trouble, not any problem, without defect, without defects, without damage, without damages, without failure, no failure, without fault, no any problem',
);
say('crack', 'fissure, crackle, fisure, rupture');
say('cracks', 'fissures, crackles, fisures, ruptures');
say('cracked', 'fissured, fisured');
say('damp', 'humid, umid, humidity inside, wetty');
say(
  'leak',
  'leakage, leaking point, fuga, filtration, escape of water, escape of air, escape of gas, loss of water, loss of air, loss of oil, loss of gas, loss of pressure',
);
say(
  'no leaks',
  'no leakages, not leaks, no drops, not drops, no filtrations, without leaks, without leak, no loss of oil, no loss of water, no loss of air',
);
say('rust', 'oxide, oxid, oxidation, ferrugem, rouille');
say('rusted', 'oxidized, oxidated, oxided, rusten');
say('scratches', 'rayas, rayures, scratchings, grattages');
say('soft', 'softy, mellow, spongious, esponge');
say('dirty', 'contaminated, sucio');
say('a hole', 'with hole, with a hole, one hole, have hole, with holes');
say('has a hole', 'has hole, has holes, is having hole');
say('has a crack', 'has crack, is with crack, is with cracks, has one crack, got crack');
say('has scratches', 'is with scratches, with scratches');
say(
  'hard to open',
  'difficult to open, goes difficult to open, opens with difficulty, opens difficult, opens hard, opens heavy, is opening hard',
);
say(
  'hard to close',
  'closes with difficulty, closes difficult, closes hard, closes heavy, difficult to close, needs force to close, needs force for closing, must be slammed, you must slam, you have to slam',
);
say(
  'hard to move',
  'goes heavy, goes hard, goes difficult, goes with difficulty, moves with difficulty, moves difficult, is going heavy, goes up with difficulty, goes down with difficulty, turns with difficulty, needs force, needs much force, goes out with difficulty',
);
say(
  'hard to start',
  'starts with difficulty, starts difficult, difficult to start, starts hard, starts bad, starts badly',
);
say('works badly', 'works bad, functions bad, functions badly, goes bad');
say(
  'low',
  'on the minimum, at the minimum, in minimum, on minimum, at minimum, in the minimum, near the minimum, almost on minimum, below of minimum, under minimum',
);
say(
  'between the marks',
  'between minimum and maximum, between min and max, between the minimum and the maximum, in the middle of minimum and maximum, between the min and the max, between minimum and the maximum',
);
say('in the red', 'in red, on red, on the red');
say('in the green', 'in green, on green, on the green');
say(
  'expired',
  'date is passed, passed of date, out of date already, out of validity, is overdue, passed the date, over the date, date is over, date has passed, caducated',
);
say('bad', 'no good, not good anymore');
say('nothing comes out', 'comes nothing, comes nothing out, comes out nothing, does not come nothing');
say(
  'no water comes',
  'water comes not, comes no water, comes not water, is not coming water, does not come water, no comes water',
);
say('no heat', 'no warm air, comes no heat, comes no warm air');
say(
  'loose',
  'lose already, loosed, not fixed good, not fix, is lose, are lose, not fixed well, not tight, not fixed',
);
say('tight', 'good fixed, well fixed, fix and strong, firmly fixed, fixed strong');
say(
  'pulls to the left',
  'pulls to left, is pulling to left, goes to left, goes to the left alone, goes alone to the left, is going to left, pulls on left, draws to left',
);
say(
  'pulls to the right',
  'pulls to right, is pulling to right, goes to right, goes alone to the right, is going to right, pulls on right, draws to right',
);
say('like new', 'as new, how new, same as new, like a new');
say('too worn', 'almost finish, almost finished, nearly finish, nearly finished, near to finish');
say('more or less', 'plus or minus, more less, mas o menos');
say(
  'maybe',
  'perhaps maybe, can be that, it can be that, can be, could to be, probable, is probable that, aproximate, approximative, approximatively, aproximadamente, circa, something around, like approximately',
);
say(
  'the owner says',
  'the owner is saying, the owner say, the owner he says, the owner has said, the owner have said',
);
say(
  'they told me',
  'they say me, they said me, they have said me, they explained me, they told to me, he told to me, he said me, he said to me, they said to me, they informed me, the man told to me, they are saying, they are telling, he is saying',
);

for (const [meant, phrases] of [...loanDenials, ...loanNames]) say(meant, phrases);

/** "I see nothing": what the loans say for not finding or not knowing, with who says it. */
export const seesNothing = new PhraseIndex<true>();
for (const [meant, phrases] of loanDenials)
  if (/^i (?:see|found) none$|^i don't know$/.test(meant))
    for (const p of split(phrases)) if (/^(?:i|we) /.test(p)) seesNothing.add(p, true);
