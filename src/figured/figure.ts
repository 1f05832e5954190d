// Why: the shape of a figure: what it answers, what it needs, its formula and source, what it leaves out.
import type { Fact, Facts } from '../known/facts.ts';
import type { Value } from '../said/entry.ts';
import type { Citation } from '../standards/standard.ts';
import type { Quantity } from '../units/quantity.ts';
import type { Unit } from '../units/unit.ts';

/** One input of a figure. */
export interface Need {
  /** Key in `work`'s argument and in `figure NAME --json`. */
  readonly name: string;
  /** What a person calls it. */
  readonly what: string;
  readonly part: string;
  readonly aspect: string;
  /** UCUM; a quantity is handed to `work` in this unit. Absent: the input is a word or a date code. */
  readonly unit?: Unit;
  /** May be missing; `work` then gets undefined. */
  readonly optional?: boolean;
  /** Worked out from the facts some other way than part/aspect (least over places, a default with its citation). */
  readonly find?: (facts: Facts, place: string | undefined) => Given | undefined;
}

/** An input as found, supposed, or given by hand. */
export interface Given {
  readonly value: Value;
  readonly from: 'seen' | 'figured' | 'plate' | 'default' | 'given';
  readonly fact?: Fact;
  /** For a default: who says so. */
  readonly cites?: readonly Citation[];
}

/** What `work` is handed: numbers in the unit of the need, words as text. */
export type Have = Readonly<Record<string, number | string | undefined>>;

/** What `work` gives: a number in the unit of `gives`, or text; the steps of the working; what binds when it is a least-of. */
export interface Worked {
  readonly value: number | string;
  /** Doubt that does not come from an input (a table's step, a week that is seven days long), in the unit of `gives`. */
  readonly ownDoubt?: number;
  readonly working: readonly string[];
  readonly binds?: string;
  readonly note?: string;
}

/** Why it could not be worked out from what was given. Codes become sentences in doors/words. */
export interface Refused {
  readonly refused: string;
  readonly detail?: string;
  /** Names of optional needs, one of which would have made it possible. */
  readonly lacks?: readonly string[];
}

/** Why an input is missing. `several places`: said at more than one place, and the figure is of none of them in particular. */
export type Lack =
  | 'not said'
  | 'unknown'
  | 'conflict'
  | 'hearsay'
  | 'wrong unit'
  | 'not a number'
  | 'several places';

/** A calculator. */
export interface FigureCard {
  /** Also its folder's name. */
  readonly id: string;
  readonly asks: string;
  /** Where its answer stands among the facts. */
  readonly gives: { readonly part: string; readonly aspect: string; readonly unit?: Unit };
  /** Worked out once for each place where this part has something to say; absent: once. */
  readonly each?: string;
  readonly needs: readonly [Need, ...Need[]];
  readonly formula: string;
  readonly cites: readonly [Citation, ...Citation[]];
  /** What was left out, and how large that can be. */
  readonly neglects: string;
  readonly appliesTo?: (facts: Facts) => boolean;
  /** Pure. The day is handed in as a text "YYYY-MM-DD" under the name `on`. */
  readonly work: (have: Have) => Worked | Refused;
  /** Rounds for show, always to the careful side where one exists. */
  readonly round?: (q: Quantity) => Quantity;
  /** Who else published an answer that test/published checks; or why there is none. */
  readonly checkedAgainst: string;
}

/** A figure's answer on a unit. */
export interface Figure {
  readonly id: string;
  readonly card: FigureCard;
  readonly place?: string;
  readonly result:
    | {
        readonly is: 'worked';
        /** A quantity carries the propagated plus-or-minus. */
        readonly value: Value;
        readonly working: readonly string[];
        readonly binds?: string;
        readonly note?: string;
        /** Optional inputs that were spoken of and could not be used, and why: a conflict, hearsay. */
        readonly leftOut?: Readonly<Record<string, Lack>>;
      }
    | {
        readonly is: 'gap';
        readonly missing: readonly Need[];
        readonly refused?: Refused;
        readonly why?: Readonly<Record<string, Lack>>;
      };
  readonly inputs: readonly { readonly need: Need; readonly given: Given }[];
  /** Share of the variance by input ("method": the figure's own doubt), largest first: what would make it surer. */
  readonly drivenBy: readonly { readonly name: string; readonly share: number }[];
}
