// Why: between a thing and its number stand words that only measure ("holds at about", "is pulling a"): what they lead back to is what the number is of.
import type { Marks } from './marks.ts';

const ofVerb = (stems: string): string[] =>
  stems.split(' ').flatMap((s) => {
    const stem = s.replace(/e$/, '');
    const twice = /[^aeiou][aeiou][bdgmnprt]$/.test(s) ? s + s.at(-1) : stem;
    return [
      s,
      `${s}s`,
      /[^aeiou]y$/.test(s) ? `${s.slice(0, -1)}ied` : `${stem}ed`,
      `${twice}ed`,
      `${stem}ing`,
      `${twice}ing`,
    ];
  });

/** Verbs that may stand between a thing and a reading of it, in every form. */
const verbs = new Set([
  ...ofVerb(
    'read show say get see hold sit run make put draw pull sag drop fall go come climb rise settle stay stand hover quit shut kick cut click pop turn test measure weigh register clock log start stop top max peak bottom idle charge build hit reach want take manage give need rate stamp label list check spin warm cool pin float rest blow push deliver supply produce output call figure find lose gain creep jump dip stick cycle trip pump look call catch hover average swing range bring lay lie point tell want wind budge hover park edge inch flicker wander head walk nudge sneak dance level bounce fluctuate',
  ),
  ...'crept spiked swung got gotten saw seen held sat ran run made put drew drawn fell fallen went gone came risen rose stood stuck took taken gave given found blew blown hit read reads cut shut said spun laid lay lost'.split(
    ' ',
  ),
]);
const small = new Set(
  (
    "is 's are 're was were be been being has have had 've do does did 'll will would should can could might may to at on in of a an the it that this they she he i me i'm we you us all each apiece " +
    'about around near nearly roughly maybe probably only just exactly right even still now then up down out off back over under almost like so for by from between with through until till past above below close good solid steady cold hot call your my our about there here well say uh um oh okay got already actually really pretty much again max total combined its his her their per somewhere somewheres something ish approximately approx not quite barely best most least reading readings guess reckon think believe figure front rear left right middle center centre driver passenger side street curb top bottom upper lower inside outside inner outer corner end no let lets'
  ).split(' '),
);

/** True for a word that only measures. */
export const isMeasuring = (norm: string): boolean => small.has(norm) || verbs.has(norm);

/** The first word of the run of measuring words that ends right before `at`; it never crosses a full stop. */
export function measuredFrom(marks: Marks, at: number, from: number): number {
  let i = at;
  while (i > from && (marks.words[i - 1]?.stop ?? 2) < 2 && isMeasuring(marks.words[i - 1]?.norm ?? '')) i--;
  return i;
}
