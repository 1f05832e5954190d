// Why: the words that change what a clause is worth: denied, guessed, hearsay, about another coach, about no coach at all.
// Triggers of the trade; the method of trigger and scope is NegEx (Chapman et al. 2001) and ConText (Harkema et al. 2009).
import { phraseList, phrasesOf } from './phrase-index.ts';

const list = (text: string): string[] =>
  text
    .split(',')
    .map((p) => p.trim())
    .filter((p) => p !== '');

/** Deny what follows in the clause. */
export const denyBefore = phraseList(
  list(
    "no, not, without, never, none, nothing, no sign of, no signs of, no evidence of, don't see, don't see any, didn't see, didn't see any, haven't seen, free of, free from, zero, " +
      "isn't, aren't, wasn't, weren't, doesn't, don't, didn't, won't, can't, cannot, hasn't, haven't, not any, couldn't find, didn't find, no more, absence of, neither, nor, negative for, did not find, do not see, did not see, wouldn't, ain't, " +
      "not a single, not one, nary, nary a, ary a, no longer, nobody, neither one, none of the, clear of, devoid of, minus any, isnt, doesnt, dont, didnt, wont, arent, wasnt, hadn't, shows no, show no, showed no, nowhere, nil, not seeing, can't find a, can't find any, can't find no, cannot find a, cannot find any, can't see any, can't see a, can't hear, couldn't hear, don't hear, didn't hear, don't feel, didn't feel, don't smell, didn't smell, can't smell, couldn't smell, never saw, never seen, never had, never noticed, didn't notice, haven't noticed",
  ),
);
/** Deny what stands before them in the clause. */
export const denyAfter = phraseList(
  list(
    "is gone now, was ruled out, not seen, not found, none seen, none found, none noted, none visible, none, i cannot find, i can not find, i can't find, i couldn't find, i could not find, i don't find, i do not find, i didn't find, i don't see, i do not see, i didn't see, i can't see, i cannot see, i don't hear, i do not hear, i didn't hear, i don't feel, i didn't feel, i don't smell, i didn't smell, i do not smell, i found none, i find none, i see none, i saw none, is none, are none, was none, were none, to be found nowhere, nowhere to be seen",
  ),
);
/** Look like a denial and are none. */
export const notDenial = phraseList(
  list(
    "no wait, not only, not just, no doubt, no question, no kidding, no wonder, no surprise, no secret, no big deal, no good, no way, no hiding, no getting around, no denying, not without, not exactly, not the only, not unless, nothing but, no less than, no more than, not uncommon, not unusual, never mind, don't mind, don't worry, can't miss, cannot miss, can't hide, can't ignore, can't deny, don't let, not hiding, not gonna lie, not going to lie, i won't lie, won't lie, not because, doesn't mean, don't mean, not to say, don't forget, can't help but, no joke, not long before, not long until, why don't, why doesn't, no time, in no time, not to mention, no matter, not sure, not certain, no idea, not a lot of, no telling, not all of",
  ),
);
/** End the reach of a denial. */
export const scopeEnds = phraseList(
  list(
    'but, except, except for, however, although, though, aside from, other than, apart from, besides, still, yet, only, until, because, since, so, then, other than that, where, which',
  ),
);

export const guesses = phraseList(
  list(
    "maybe, probably, might, might be, may be, could be, possibly, perhaps, i think, i believe, i guess, i'm guessing, i suspect, i assume, i want to say, looks like, seems, seems like, seems to be, appears, appears to be, " +
      "kind of, sort of, supposedly, allegedly, apparently, presumably, as far as i know, as far as i can tell, if i remember, not sure, i'm not sure, not certain, must be, must have, " +
      "i would say, i'd say, suspect, likely, reportedly, somewhere around, more or less, pretty sure, my guess, sounds like, estimated, should be, i would guess, best guess, i'd call it, i would call it, i'd put it, i'd guess, call it, i reckon, reckon, i figure, i wanna say, i'd bet, i would bet, i do believe, i do not believe, i don't believe, i don't think, i've a notion, i have a notion, if you ask me, best i can tell, as best i can tell, far as i can tell, far as i know, that i know of, far as i was told, i suppose, odds are, chances are, i have a hunch, my hunch, more like, i gather, in my opinion, i'm pretty sure, i'm thinking, i'd think",
  ),
);
/** Somebody else said it. */
export const hearsay = phrasesOf<string>({
  'he says': 'the seller',
  'she says': 'the seller',
  'he said': 'the seller',
  'she said': 'the seller',
  'they said': 'the seller',
  'they say': 'the seller',
  'he told me': 'the seller',
  'she told me': 'the seller',
  'they told me': 'the seller',
  'they told us': 'the seller',
  'he told us': 'the seller',
  'told me': 'the seller',
  'told us': 'the seller',
  'owner says': 'the owner',
  'owner said': 'the owner',
  'the owner told': 'the owner',
  'owner told': 'the owner',
  'previous owner said': 'the previous owner',
  'previous owner says': 'the previous owner',
  'customer says': 'the customer',
  'customer said': 'the customer',
  'customer states': 'the customer',
  'customer stated': 'the customer',
  'seller says': 'the seller',
  'seller said': 'the seller',
  'according to': 'somebody',
  supposedly: 'somebody',
  reportedly: 'somebody',
  'i was told': 'somebody',
  'i am told': 'somebody',
  "i'm told": 'somebody',
  'was told': 'somebody',
  'were told': 'somebody',
  'been told': 'somebody',
  'so he says': 'the seller',
  'so she says': 'the seller',
  'so they say': 'the seller',
  'they tell me': 'the seller',
  'they tell us': 'the seller',
  'he tells me': 'the seller',
  'she tells me': 'the seller',
  'tells me': 'the seller',
  'tells us': 'the seller',
  'so the story goes': 'somebody',
  'word is': 'somebody',
  'the story is': 'somebody',
  'from what i hear': 'somebody',
  'from what i understand': 'somebody',
  'my understanding is': 'somebody',
  'i hear': 'somebody',
  'by all accounts': 'somebody',
  "i've been told": 'somebody',
  'we were told': 'somebody',
  'he claims': 'the seller',
  'she claims': 'the seller',
  'they claim': 'the seller',
  'owner claims': 'the owner',
  'he swears': 'the seller',
  'she swears': 'the seller',
  'owner reports': 'the owner',
  allegedly: 'somebody',
  'the guy told': 'the seller',
  'guy told': 'the seller',
  'the guy said': 'the seller',
  'guy said': 'the seller',
  'husband said': 'the seller',
  'wife said': 'the seller',
});

/** A story about something else: the rest of the sentence is no fact of this coach. */
export const stories = phraseList(
  list(
    'at home, one time, one day, on the last video, in the last video, at a campground, the last one, the last one we had, last coach, the other coach, other coach, another coach, another one of these, the other unit, the other trailer, other trailer, the other van, the other rig, different coach, a different one, sister unit, mine, not this one, on those, those other, ' +
      'the one next to it, the one beside it, the one over there, the one across, the one next door, one next door, out back one, years ago when, when i was a, when i was young, back in the day, back in those days, ' +
      'some people, most people, most folks, a lot of people, lot of people, people, folks, everybody, every seller, customers, sales guys, salesmen, the sales guy, somebody wrote, some guys, some folks, my rule, my boss, my old boss, my first boss',
  ),
);
/** Somebody else's coach, or coaches in general: the clause is no fact of this one. */
export const otherCoach = phraseList(
  list(
    'other one i had, other one we had, last one i had, the one i sold, the one we sold, most coaches, most of them, a lot of coaches, some coaches, lot of these, a lot of these, most of these, all of these, gas coaches, other units, other brands, other coaches, ' +
      'usually, normally, typically, generally, in general, as a rule, as a general rule, rule of thumb, always say, they always, these always, these all, these never, those always, these things, them things, used to be, used to have, no matter what, ' +
      'normal is, normal reading is, a good one reads, a good one should, a good battery, a healthy battery, ' +
      "you want at least, you want to be, you want to do, you wanna do, you wanna be, you're allowed, you ain't allowed, are allowed, is allowed, you're not allowed, ain't supposed to, not supposed to be, that's how a man, that is how a",
  ),
);
/** What is compared with: only what follows is of something else. */
export const comparisons = phraseList(
  list(
    'compared to, compared with, unlike, better than most, better than the, better than my, better than any, worse than the, worse than most, worse than my, same as my, than mine, than most, than the last, than the other, than any, than my, whereas, not like the',
  ),
);
/** Begin a sentence about somebody else, unless they did something to this coach. */
export const people = phraseList(
  [
    'a, some, one, another, this, that, this one, that one, this old, some old, an old',
    'my, his, her, our, your, their, my own, my old',
  ].flatMap((dets, k) =>
    list(dets).flatMap((d) =>
      list(
        k === 0
          ? 'fella, feller, fellow, guy, man, woman, lady, gentleman, customer, couple, kid, dealer, buyer, buddy, friend, dude, family'
          : 'cousin, brother, brother in law, sister, sister in law, father, father in law, mother, mother in law, dad, daddy, mom, mama, momma, uncle, aunt, nephew, niece, son, daughter, granddad, grandpa, grandmother, grandma, wife, husband, buddy, friend, neighbor, neighbour, partner, ex, kid, kids, grandkids, grandson, boss, old man',
      ).map((n) => `${d} ${n}`),
    ),
  ),
);
/** People named by no more than their kind, where a sentence begins with them. */
export const barePeople = phraseList(
  list('fella, feller, guy, some guys, fellas, lady, buddy of mine, friend of mine'),
);
/** Begin a side clause of what may be: what stands before them in the clause is said of the coach all the same. */
export const conditions = phraseList(
  list(
    'if you, if it, if they, if there, if the, if i, if we, if he, if she, if somebody, unless, in case, before you, until you',
  ),
);
/** Say "I would" or "you can", but tell of this coach. */
export const estimates = phraseList(
  list(
    "i'd say, i'd call, i'd put, i'd guess, i'd bet, i'd imagine, i would say, i would call, i would guess, i would bet, i'd estimate, i would put, would be about, i would estimate, you can see, you can feel, you can hear, you can smell, you can tell, you can read, you can make out, you can look, you could put, you could stick, you could throw, you could drive, you can put your, you can stick, you can poke, you could poke, you can get a finger, you can shove, you can fit, you can catch, you can wiggle, you can rock, you can twist, you can turn it by hand, i can twist, i can wiggle, you could see, you could feel, you could hear, you could smell, you can thump, you can push on it, " +
      "you'll have, you'll find, you'll see, you'll get, you will have, you will find, you will see, you're gonna have, you're gonna find, you're gonna see, you're gonna get, you're gonna love, you are gonna have, you are going to have, you're going to have, you get a, you get the, you get your, if you look, if you push, if you press, if you ask me, if you step, if you put your, if you lean, if you listen, if you feel, if you run your, if you pull on, if you shake, if you wiggle, if you turn, before i'd, before i would, wouldn't start, wouldn't run, wouldn't light, would not light, would not start, would not run, " +
      "i'd replace, i would replace, i'd reseal, i would reseal, i'd have it, i would have it, i'd have that, i'd want it looked, i'd get that, i'd fix",
  ),
);
/** What is not, but could be. */
export const hypothetical = phraseList(
  list(
    "would, you'd, you could, could get, you might, you want, you wanna, you can, you will, you'll, imagine, let's say, say you, say y'all, should you, were to, suppose, supposing, make sure, you need, you're gonna, you are gonna, you're going to, you buy, you ever, you get, try that, it'd, i'd, they'd, we'd, he'd, she'd, y'all could, y'all can, a man could, " +
      'i thought, i did think, i figured, i was afraid, i was worried, i expected',
  ),
);
/** What ought to be: the number that follows is none that was read. */
export const expectations = phraseList(
  list(
    "should be, should have been, ought to be, oughta be, supposed to be, supposed to have, spec is, the spec for, spec calls for, calls for, book says, i'd want, i want at least, i like to see, you like to see, they want, is allowed, minimum is, the limit is",
  ),
);
/** The weather and the hour, where the clause names no part. */
export const weather = phraseList(
  list(
    "it's raining, it rained, it's gonna rain, gonna rain, going to rain, fixing to rain, started raining, wind is, wind's, it's windy, gusting, sky is, sky's, sun is, sun's, overcast, o'clock, out here, degrees out here, degrees outside, it's hot out, it's cold out, in the morning, this morning at, the weather, forecast, it's snowing, it snowed",
  ),
);
/** Orders: "don't drive it". Other sentences that begin with "don't" only leave "I" out. */
export const orderVerbs: ReadonlySet<string> = new Set(
  list(
    'forget, worry, mind, quote, drive, trust, run, use, let, take, be, ask, tell, start, touch, get, go, pull, put, sweat, hold, mix, listen, buy, believe, try, lean, stand, step, walk, open, turn, remind, call, leave, lose, miss, fall, hit, drop, slip, laugh, say, make, quit, do',
  ),
);
/** Not checked, not known. The longest match wins. */
export const unknowns = phraseList(
  list(
    "i don't know, don't know, do not know, no idea, couldn't tell you, could not tell you, can't tell you, cannot tell you, can't tell, couldn't tell, cannot tell, haven't run, have not run, haven't tested, have not tested, haven't tried, have not tried, haven't checked, have not checked, " +
      "didn't check, did not check, didn't test, did not test, didn't try, did not try, didn't run, did not run, didn't get, did not get, didn't look, did not look, didn't drive, did not drive, didn't measure, did not measure, didn't open, didn't verify, didn't inspect, not checked, not tested, not verified, " +
      "not inspected, not tried, not run, not measured, not confirmed, unverified, untested, unchecked, unknown, cannot read, can't read, could not read, couldn't read, not readable, unreadable, illegible, can't see, cannot see, couldn't see, could not see, can't get to, couldn't get to, cannot get to, could not get to, can't reach, couldn't reach, cannot reach, could not reach, " +
      "unable to, couldn't check, could not check, can't check, cannot check, couldn't test, could not test, can't test, cannot test, can't verify, couldn't verify, cannot verify, could not verify, not going to run, not gonna run, not going to test, not going to try, not going to open, not gonna open, not gonna try, not gonna test, not sure, i'm not sure, not certain, no way to, not done, not accessible, no access, inaccessible, " +
      "forgot to, did not have time, didn't have time, ran out of time, not visible, not found, hard to say, can't say, couldn't say, no paper, no paperwork, no records, no record, don't have any paper, don't have any records, don't have any paperwork, haven't driven, have not driven, never got to, haven't been, have not been, to be determined, will have to check, need to check, needs to be checked, couldn't find, could not find, did not find, haven't found, have not found, can't find, haven't opened, have not opened, didn't turn, did not turn, can't confirm, cannot confirm, couldn't confirm, could not confirm, wasn't able to, was not able to, didn't want to, not looked at, didn't crawl, haven't crawled, skipped, still to check, have yet to, haven't had, have not had, don't have a date, no date, didn't go, did not go, haven't gotten, have not gotten, didn't pull, haven't pulled, can't vouch, haven't turned, have not turned, haven't fired, have not fired, haven't hooked, have not hooked, haven't filled, have not filled, not hooked to",
  ),
);
/** A recommendation, which is an opinion about what should be done. */
export const advice = phraseList(
  list(
    "recommend, recommended, i recommend, would reseal, i would reseal, i'd reseal, flush it, reseal it, i would replace, i'd replace, should be replaced, needs to be replaced, needs to be resealed, should be resealed, should be rebuilt, needs replaced, needs replacing, needs a reseal, needs resealing, i would have it",
  ),
);

/** The speaker takes back what came just before. */
export const corrections = phraseList(
  list(
    "no wait, wait no, wait, wait wait, wait a minute, wait a second, scratch that, strike, strike that, correction, i mean, i meant, make that, make it, no sorry, sorry, i'm sorry, i am sorry, excuse me, pardon me, let me correct, let me correct that, correct that, i take that back, take that back, let me take that back, let me take it back, no no, no no no, " +
      "no it's, no it is, no that's, no that is, no this is, no he's, rather, or rather, my mistake, my bad, no my bad, my fault, i misspoke, misspoke, i misread, misread that, misread it, i read it wrong, read that wrong, let me back up, i stand corrected, " +
      "no i'm thinking of, i'm thinking of the other, i was thinking of, actually, actually no, no actually, change that, change that to, hold on no, hang on no, no hang on, no hold on, check that, belay that, disregard, disregard that, ignore that, forget that, back up, oops, whoops, " +
      "i lied, i lie, i tell a lie, tell a lie, i'm lying, i'm a liar, not that, let me redo that, let me do that again, let me start over, let me say that again, say again, let me rephrase, shoot no, no shoot, no sir, no ma'am, uh no, um no, oh no, eh no, ah no, er no, well no, okay no, nope, no i lied, no i was, " +
      "no i'm reading, i was reading the wrong, i was looking at the wrong, i'm looking at the wrong, i'm reading the wrong, wrong line, wrong scale, wrong one, that's wrong, that was wrong, that's not right, that is not right, that ain't right, that can't be right, that cannot be right, i should say, i should have said, what am i saying, listen to me, better said, more like",
  ),
);
/** Another look at the same thing: a number that follows is the right one. */
export const looksAgain = phraseList(
  list(
    'hang on, hold on, hold still, hold the phone, one second, one sec, just a second, just a sec, look again, looking again, let me look, let me see, lemme see, let me check, lemme check, lemme look, let me read, let me get, let me try, let me do, let me wipe, let me wait, let me spit, let me put, let me measure, let me shine, let me go, let me double check, let me recheck, let it, check again, checking again, i look, i press again, try again, trying again, again, now that i, on second look, on second thought, come to think of it, my lead slipped, gimme it, give me a second, bear with me',
  ),
);
/** It is there. */
export const presences = phraseList(
  list(
    "it's got, it has, has, has a, got a, got, there's, there is, there are, there's a, you've got, you have, we've got, we have, it comes with, comes with, with a, you're gonna have, you're going to have, you'll have, you're getting, you get, you're gonna get, you got, you've also got, over here we have, over here is, over here you've got, in here you've got, it also has, goes with her, i got, i've got the, he's got the, she's got the, he left the, they left the, they left you, comes equipped with, set up with, equipped with, here's your, here is your, includes, included, features, and your, they put, they added, he added, she added, installed, we're talking, you're looking at, complete with, loaded with, fitted with, outfitted with, along with, together with, comes standard with, this has, this one has, has got, boasts, furnished with, all set up with, still has, still got, even has, even got, plus a, plus the, there is also, there's also, do have, we do have, i have all, i have both, i've got both, in here is, also got, and a",
  ),
);
