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
      "i would say, i'd say, suspect, likely, reportedly, somewhere around, more or less, pretty sure, my guess, sounds like, feels like, smells like, estimated, should be, i would guess, best guess, i'd call it, i would call it, i'd put it, i'd guess, call it",
  ),
);
/** Words of a guess at a reason: what follows is no finding. */
export const causeGuesses = phraseList(
  list(
    "could be, might be, may be, probably, maybe, possibly, i'm guessing, i suspect, could just be, might just be, i guess, my guess is, i would guess, might have been, could have been, suspect, i don't know if it's, don't know if it's, i don't know whether it's, not sure if it's, i'm not sure if it's, either it's",
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

/** A story about somebody or something else: the rest of the sentence is no fact of this coach. */
export const stories = phraseList(
  list(
    "next door, my own, my old, our old, at home, my truck, my buddy, my buddy's, my brother, my wife, my husband, neighbor, neighbors, a fella, a guy, a customer, one time, last summer, on the last video, at a campground, campground, he drove, he ran, i had one, i had a, we had one, the one we sold, the one i sold, the last one, last one we had, last one i had, last coach, the other coach, other coach, another coach, the other unit, the other trailer, other trailer, different coach, sister unit, the one next to it, the one beside it, the one over there, the blue one, the white one, the red one, the one across, years ago, when i was, back in the day, some people, most people, a lot of people, every seller",
  ),
);
/** Somebody else's coach, or coaches in general. */
export const otherCoach = phraseList(
  list(
    'other coach, other coaches, another coach, other one i had, the last one, last one we had, last one i had, last coach, the one i sold, most coaches, a lot of coaches, some coaches, lot of these, most of these, gas coach, gas coaches, other units, other brands, ' +
      "next door, the one beside it, the one next to it, sister unit, my own, my old, our old, at home, mine, my truck, my buddy, my buddy's, my brother, my wife, my husband, neighbor, a fella, this guy, a guy, a customer, one time, last week, last month, last year we, last summer, " +
      'on the last video, usually, normally, typically, generally, every seller, these days, back in the day, used to, years ago, when i was, some people, most people, people, everybody, folks, nobody, somebody wrote, he drove, he ran, the other coach, compared to, better than, than the, unlike, yesterday, the day before, the blue one, the white one, the one over there, the one we sold, the other unit, the one across, the other trailer, other trailer, a different one, different coach, in general, as a rule, rule of thumb, always say, they always, whereas, instead of, not this one, on those, those other',
  ),
);
/** Begin a side clause of what may be: what stands before them in the clause is said of the coach all the same. */
export const conditions = phraseList(
  list(
    'if you, if it, if they, if there, if the, if i, if we, if he, if she, if somebody, unless, in case, whenever, when you, once you, before you, until you, so you can, so that you can',
  ),
);
/** Say "I would", but give an estimate of this coach. */
export const estimates = phraseList(
  list(
    "i'd say, i'd call, i'd put, i'd guess, i would say, i would call, i would guess, i'd estimate, i would put, would be about, i would estimate",
  ),
);
/** What is not, but could be. */
export const hypothetical = phraseList(
  list(
    "would, you'd, you could, could get, you would, you might, you want, you wanna, you can, you will, you'll, imagine, let's say, say you, should you, were to, suppose, make sure, you need, you're gonna, you are gonna, you're going to, you buy, you ever, you get, try that, it'd, it would, i'd, they'd, we'd, wouldn't",
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
    "it's got, it has, has, has a, got a, got, there's, there is, there are, there's a, you've got, you have, we've got, we have, it comes with, comes with, with a, equipped with, here's your, here is your, includes, included, features, and your, they put, they added, he added, she added, installed, do have, we do have, i have all, i have both, i've got both, in here is, also got, and a",
  ),
);
