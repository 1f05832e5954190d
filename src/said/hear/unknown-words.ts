// Why: the words by which people say that they did not look, could not see, or do not know; forms are made, not listed.
// Trade usage (common practice, no source).

import { phrasesOf } from './phrase-index.ts';
import { formsOf } from './spoken-forms.ts';

/** Why something is not known. */
export type Why = 'could not be seen or reached' | 'not tried' | 'not known';

/**
 * How freely a verb may be denied: `look` and `know` by anybody; `strong` also of the thing itself ("was not tested");
 * `weak` only where a person denies it or an object follows, for "it did not light" is a failure.
 */
export type VerbClass = 'look' | 'know' | 'strong' | 'weak';
const verbs: Readonly<Record<VerbClass, string>> = {
  look: 'see read find reach access view spot locate trace decipher eyeball',
  know: 'know tell say vouch speak swear promise confirm guarantee remember recall identify attest',
  strong:
    'check test try verify inspect measure examine torque weigh probe sample scan look touch mess fool play crawl climb ' +
    'investigate rinse calibrate exercise diagnose chase monkey bother tinker hook retest recheck operate demo sniff survey connect',
  weak:
    'run light fire start open close turn use pull push drive take put have fill spray plug unplug extend unroll roll deploy flip ' +
    'cycle pump crank drop press hit dump flush lower raise level power remove lay stick shine set jack lift spin do get charge load ' +
    'cook heat cool call go count time tow ride record log poke clean dip crack swing throw hold send track unbolt disassemble leave wait',
};

interface VerbWord {
  readonly kind: VerbClass;
  readonly base: string;
}
const table = <T>(): Record<string, T> => Object.create(null) as Record<string, T>;
const bases = table<VerbWord>();
const pasts = table<VerbWord>();
const ings = table<VerbWord>();
for (const kind of ['weak', 'strong', 'know', 'look'] as const)
  for (const base of verbs[kind].split(' ')) {
    const f = formsOf(base);
    bases[base] = { kind, base };
    for (const p of f.past) pasts[p] = { kind, base };
    ings[f.ing] = { kind, base };
  }
// "ain't had a look", "never load tested": the noun as verb
export const baseVerbs: Readonly<Record<string, VerbWord>> = bases;
export const pastVerbs: Readonly<Record<string, VerbWord>> = pasts;
export const ingVerbs: Readonly<Record<string, VerbWord>> = ings;

/** Form of the verb that a denial asks for. */
export type Form = 'base' | 'past' | 'ing';

const join = (text: string): string[] => text.split(',').map((p) => p.trim());
const withForm = (form: readonly Form[], text: string): [string, readonly Form[]][] =>
  join(text).map((p) => [p, form]);

/** What denies a verb after it, with the forms the verb may have. */
export const deniers = phrasesOf<readonly Form[]>(
  Object.fromEntries(
    [
      ...withForm(
        ['past'],
        "haven't, hasn't, hadn't, havent, have not, has not, had not, 've not, nobody 's, no one 's, nobody has, no one has, nobody 's ever, was not, were not, wasn't, weren't, is not, isn't, are not, aren't, not, not been, 's not, 're not",
      ),
      ...withForm(
        ['past', 'base'],
        "never, 've never, have never, has never, never once, never even, nobody, no one, nobody ever",
      ),
      ...withForm(['past', 'ing', 'base'], "ain't, aint"),
      ...withForm(
        ['base'],
        "didn't, did not, didnt, don't, do not, dont, can't, cannot, can not, cant, couldn't, could not, couldnt, won't, will not, wouldn't, would not, ain't going to, ain't gonna, not going to, not gonna, not about to, unable to, not able to, ain't able to, no way to, no good way to, no way i can, forgot to, forgotten to, neglected to, failed to, yet to, impossible to, no time to, no chance to, no reason to, too dark to, too dirty to, too muddy to, too faded to, too high to, too tight to, too dim to, too cold to, too wet to, too late to, too far to, tough to, still have to, still need to, still got to, still gotta, still to, refuse to, nobody to, nobody here to, nobody was here to, no one to, no one here to, time to",
      ),
      ...withForm(
        ['ing'],
        "not, without, no way of, no means of, stopped short of, held off, held off on, put off, i'm not, we 're not",
      ),
    ].reduce<[string, Form[]][]>((all, [p, f]) => {
      const before = all.find(([q]) => q === p);
      if (before) before[1].push(...f);
      else all.push([p, [...f]]);
      return all;
    }, []),
  ),
);

/** Words that may stand between a denial and its verb. */
export const between = new Set(
  'really actually even ever yet once been had have get got gotten getting able to a the any chance chances opportunity time around going gone go went want wanted care bother bothered dare dared manage managed manged personally physically fully completely properly thoroughly formally load pressure leak road drop start began honestly rightly quite exactly truly so far just either also totally wanting trying moment occasion minute day'.split(
    ' ',
  ),
);

/** Whole phrases. Shorter ones that grammar gives are not here. */
const notKnown =
  "no idea, no clue, not a clue, no telling, no earthly idea, no earthly, who knows, lord knows, god knows, goodness knows, heaven knows, beats me, search me, dunno, don't rightly know, i wouldn't know, wouldn't know, " +
  "your guess is as good as mine, as good as mine, anybody's guess, anyone's guess, a mystery, unknown, unsure, not sure, not certain, not positive, not a hundred percent, hard to say, hard to tell, tough to say, remains to be seen, time will tell, jury 's out, jury 's still out, " +
  "to be determined, tbd, undetermined, unconfirmed, ask somebody else, ask someone else, ask the office, have to ask, a question for, office would have it, office will have it, news to me, escapes me, slips my mind, i forget, i forgot, it 's a blank, is a blank, it 's blank, is blank, " +
  "can't make it out, cannot make it out, couldn't make it out, could not make it out, can't make out, couldn't make out, can't make them out, can't hardly read, can hardly read, " +
  'no way of knowing, no way to know, nobody knows, nobody seems to know, nobody remembers, never said, did not say, unidentified, no answer for, no answer on, over my head, above my pay grade, out of my depth';
const notTried =
  'untested, unchecked, unverified, uninspected, untried, unproven, n t, left that alone, left it alone, left them alone, left those alone, left alone, leave it alone, leave that alone, leave alone, leave them alone, leave open, left open, leave that open, leave it open, leave that blank, leave it blank, left blank, ' +
  'ran out of time, ran out of day, ran out of daylight, ran out of light, ran out of hours, run out of time, run out of day, run out of daylight, out of daylight, comes later, come later, do later, do that later, do it later, do that tomorrow, do it tomorrow, another day, for another day, next time, for next time, for tomorrow, for later, ' +
  "i skipped, we skipped, i skipped it, i skipped that, skipped that one, skipped it, got skipped, was skipped, were skipped, i 'm skipping, we 're skipping, i 'm not doing, we 're not doing, i am not doing, we are not doing, not doing that one, " +
  'waits for the lift, wait for the lift, waiting for the lift, waits for the hoist, wait for the hoist, waits for the pit, wait for the pit, waits for the shop, wait for the shop, waits for the tech, wait for the tech, wait for daylight, waits for daylight, wait for tomorrow, waits for tomorrow, wait till tomorrow, waits till tomorrow, ' +
  "to be checked, to be tested, to be verified, to be confirmed, to be inspected, still to check, still to do, still to test, still to come, need to check, needs to be checked, needs to be tested, needs to be verified, needs checking, needs testing, have to check, i'd have to check, have to look, have to look that up, have to look it up, i'd have to look, gotta check, got to check, will have to check, will need to check, " +
  'for the shop to check, for the shop to look, for the tech to check, leaving that for the shop, leave that for the shop, leave that to the shop, leave it to the shop, leave that to the tech, leaving it for the shop, leaving for the shop, pending, awaiting, not yet, not done, not run, not driven, not opened, no test, no test done, no road test, no test drive, no test drive yet';
const notSeen =
  'not visible, not readable, not legible, unreadable, illegible, not accessible, inaccessible, no access, out of reach, out of sight, painted over, worn off, rubbed off, too dark, hidden from view, faces in, faces inward, facing in, facing inward, turned in, turned inward, turned to the inside, looks to the inside, on the back side, on the inside of it, packed in mud, caked in mud, caked with mud, covered in mud, covered in snow, covered with snow, under snow, under the snow, buried';

/** Phrases that say by themselves that something is not known. */
export const unknownPhrases = phrasesOf<Why>(
  Object.fromEntries([
    ...join(notKnown).map((p) => [p, 'not known'] as const),
    ...join(notTried).map((p) => [p, 'not tried'] as const),
    ...join(notSeen).map((p) => [p, 'could not be seen or reached'] as const),
  ]),
);

/** A tool that is not at hand: what it would have measured is not known. */
export const tools = new Set(
  'gauge meter ladder scale tester multimeter thermometer flashlight torch key keys wrench hose adapter remote manometer probe hydrometer gun camera dipstick scanner reader code lamp mirror creeper jack'.split(
    ' ',
  ),
);
