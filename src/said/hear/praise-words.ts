// Why: praise has a grammar too: superlatives, likenesses, "you won't find a better one"; these are its words.
// Trade usage (common practice, no source).
import { phraseList } from './phrase-index.ts';

const list = (text: string): string[] => text.split(',').map((p) => p.trim());
const degrees =
  'nice sweet fine pretty neat sharp slick clean smooth handsome comfy cozy cool grand solid stout tight straight'
    .split(' ')
    .flatMap((a) => {
      const stem = a.endsWith('e') ? a.slice(0, -1) : a.endsWith('y') ? `${a.slice(0, -1)}i` : a;
      return [`${stem}est`];
    });
/** Said by themselves. */
export const praiseAlone = phraseList([
  ...degrees,
  ...list(
    "dandy, sharp looking, good looking, decent little, nice little, sweet little, beautiful, showstopper, show stopper, showpiece, sweetheart, peach of a, gem, honey of a, little honey, a jewel, ridiculous, insane, unreal, outlive, outlast, run forever, last forever, finest kind, head and shoulders, a beauty, a beaut, real looker, looker, cat's meow, bee's knees, jaw dropping, magnificent, splendid, exquisite, elegant, classy, tasteful, exceptional, superior, unmatched, unbeatable, you'll love, gonna love, going to love, fall in love, lose it, lose her mind, knock your socks off, blow you away, turns heads, pride of, pride and joy, palace, ritzy, mansion, four star, five star, keeps it like, kept it like, kept her like, rides like, follows like, sleeps like, a pleasure to, a joy to, joy to drive, pleasure to drive, worth every penny, hell of a, heck of a, one heck, helluva, something else, out of this world, to die for, can't be beat, hard to beat, better than new, good as new, as good as new, built like a, like a million bucks, like a champ, like a charm, like a top, like a clock, like a mule, like a kitten, like a puppy, like a church, like a rock, like a baby, like a glove, like a cadillac, like a brand new, like the day it, don't build them like, don't make them like, they don't build, they don't make, work of art, better work, finest, loaded, sweet, real sweet, deal of, wow factor, stately, stunner, knockout, bells and whistles",
  ),
]);
/** "You won't", "couldn't": with a verb of finding and a better one after it. */
export const noBetter = phraseList(
  list(
    "won't find, will not find, wouldn't find, not gonna find, not going to find, ain't gonna find, couldn't ask for, could not ask for, can't ask for, can't beat, cannot beat, couldn't beat, won't see, not gonna see, can't go wrong, never find, never see, couldn't find a better, couldn't want, can't find a better, hard pressed to find",
  ),
);
/** What of it there is none better. */
export const better =
  /^(?:better|nicer|sweeter|cleaner|finer|prettier|straighter|anything|another|sharper|more|it|this|wrong|one)$/;
/** A comparison that flatters: "more counter space than my apartment". */
export const flattered = /^(?:apartment|house|home|kitchen|condo|hotel|room|castle|truck|bedroom)$/;
