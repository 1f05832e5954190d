// Why: a guess at a reason has its own words; which of them stand before the reason, which after it, and which alone.
// Trade usage (common practice, no source).
import { phraseList } from './phrase-index.ts';

const list = (text: string): string[] => text.split(',').map((p) => p.trim());
const modal =
  'could, might, may, can, would, must, has got to, has to, have to, gotta, got to, ought to, should';
const adverbs = ['', ' just', ' well', ' also', ' easily', ' only', ' possibly', ' very well'];
/** "could just be", "might be", "may well have been", "could come from". */
const modals = list(modal).flatMap((m) =>
  adverbs.flatMap((a) =>
    [
      'be',
      ...(/^(?:could|might|may|must)$/.test(m)
        ? ['have been', 'come from', 'be coming from']
        : m === 'can'
          ? ['come from']
          : []),
    ].map((v) => `${m}${a} ${v}`),
  ),
);
const thought =
  "i suspect, i'd suspect, i would suspect, my guess, my guess is, my guess would be, best guess, i guess, i'd guess, i would guess, i'm guessing, i 'm guessing it 's, guessing, i'd bet, i bet, i'll bet, i would bet, my bet, my bet is, betting, my money 's on, i'd say, i would say, i'm gonna say, i'm going to say, i figure, i reckon, i'm thinking, i'm thinking it 's, thinking, i think it 's, i think, sounds to me like, suspect, i'd put it down to, i blame, i'd blame";
const adverb =
  "probably, probably just, most probably, maybe, maybe just, perhaps, possibly, likely, most likely, more than likely, presumably, i suppose, i would think, i'd think, if i had to guess, if you ask me, as likely as not";
const open =
  "don't know if it 's, do not know if it is, don't know whether it 's, not sure if it 's, can't tell if it 's, can't say if it 's, cannot say whether it is, can't tell whether it 's, couldn't tell you if it 's, don't know if that 's, not sure if that 's, either it 's, either";

/** Begin a guess: the reason follows. */
export const guessBefore = phraseList([...modals, ...list(thought), ...list(adverb), ...list(open)]);
/** Words that make what stood before the comma a guess. */
export const guessAlone = phraseList([
  ...modals,
  ...list(thought).filter((t) => !/(?:say|think|figure|reckon)$/.test(t)),
  ...list(adverb),
  ...list(
    "don't know, i don't know, don't know which, i don't know which, not sure, i'm not sure, not sure which, i'm not certain, i ain't certain, no idea which, hard to say which, couldn't say which, who knows, or something, or something like that, one or the other",
  ),
]);
/** After a guess word these describe the thing itself: "could be better" is no reason. */
export const noReason = new Set(
  'better worse nicer tighter newer cleaner cheaper more less good fine wrong nice interesting fun bigger smaller a_little original okay ok great perfect able done used ready fixed older easier'.split(
    ' ',
  ),
);
/** Asks for the reason: "where it's coming from I couldn't say". */
export const asksReason = /^(?:why|where|cause|causes|causing|caused|reason|source|behind|whence|culprit)$/;
