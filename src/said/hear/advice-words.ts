// Why: jobs are spoken aloud in a few frames over many verbs of the shop; the verbs are written once, their forms are made.
// Trade usage (common practice, no source).
import { phraseList } from './phrase-index.ts';
import { formsOf } from './spoken-forms.ts';

const list = (text: string): string[] => text.split(',').map((p) => p.trim());
const verbs =
  'replace reseal seal fix repair patch rebuild realign align service flush swap change tighten snug grease lube recaulk caulk reattach rewire weld install fit order redo reglue glue bleed balance rotate remount refinish polish detail clean recharge rehang retorque address address overhaul rebush regasket rescreen resurface recoat repaint repack recharge sort rectify remedy mend';
/** The verbs of the shop, by form. */
export const shopBase = new Set(verbs.split(' '));
export const shopDone = new Set(verbs.split(' ').flatMap((v) => formsOf(v).past));
export const shopDoing = new Set(verbs.split(' ').map((v) => formsOf(v).ing));

/** "I'll", "we're going to", "you'll want to": a verb of the shop follows in its base. */
export const wishes = phraseList(
  list(
    "i'd, i would, we'd, we would, i'll, i will, we'll, we will, i'm going to, i'm gonna, i am going to, we're going to, we're gonna, we are going to, gonna, going to, i can, we can, i need to, we need to, i have to, we have to, i've got to, we've got to, we got to, i gotta, we gotta, gotta, let's, you'd want to, you'll want to, you're gonna want to, you will want to, should, ought to, want to, wants to, plan to, promised to, agreed to, will have to, has to, have to, needs to, somebody needs to, shop will, shop needs to, shop can, tech will, he'll, she'll, they'll",
  ),
);
/** A verb done follows: "needs to be replaced", "should be resealed", "get that aligned". */
export const wantsDone = phraseList(
  list(
    'needs to be, need to be, needs, need, wants, want, should be, ought to be, has to be, have to be, needs to get, should get, will be, to be, get it, get that, get them, get those, get this, get the, have it, have that, have them, have the, having it, having that, could stand to be, could use, will get',
  ),
);
/** A thing wanted follows: "wants an alignment", "due for service". */
export const wantsThing = phraseList(
  list(
    'needs, need, wants, want, could use, could stand, is due for, due for, overdue for, ready for, calls for, call for, in need of, is asking for, is begging for, begging for, time for, deserves, requires, gets, will get, will need, is going to need, gonna need, takes',
  ),
);
/** What a thing can want. */
export const jobNouns =
  /^(?:alignments?|reseal|resealing|cleaning|service|servicing|rebuild|rebuilding|replacement|replacing|batter(?:y|ies)|tires?|bulbs?|repair|repairs|attention|work|kit|seals?|gaskets?|filters?|bushings?|flush|caulk|sealant|paint|looking|tlc|adjusting|adjustment|greasing|grease|charge|charging|fixing|one|ones|set|pair|new|cartridge|recharge|balancing|hose|belt|belts|shocks?|pads|rotors|detailing|patch|patching|touch-up|cartridge|screws?|tightening|checking|oil)$/;
/** Spoken to whoever writes it down. */
export const notes = phraseList(
  list(
    "write that up, write it up, write this up, put that down, put it down, put this down, write that down, write it down, on my list, goes on the list, going on the list, put it on the list, put that on the list, on our list, put it on the sheet, put that on the sheet, goes on the sheet, on the work order, on the punch list, on the to do list, flag that, flag it, tag that, on order, is ordered, ordered a new, ordered new, on the bench for, recommend, i recommend, i'd recommend, i would recommend, we recommend, recommended, i suggest, i'd suggest, the shop to look at, shop needs to look, needs looking at, need looking at, wants looking at, needs looked at, needs a look, needs attention, due for service, agreed to a new, agreed to new, promised it a, promised a new, take care of that, take care of it, deal with that, see to that, see to it",
  ),
);
