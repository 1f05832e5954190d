// Why: the shape of one row of the shop's usual work: what goes wrong, how it is said, what it takes to put right.

/** The shop's trades, by which labor is charged. Ids as in a shop's own rates; "default" stands for those it has no rate for. */
export const skills = {
  lp: 'licensed LP technician',
  air: 'heavy chassis or air brake technician',
  chassis: 'chassis and engine mechanic',
  electrical: 'RV electrical technician or electrician',
  body: 'body and fiberglass',
  roof: 'roof and sealant',
  appliance: 'appliance technician',
  plumbing: 'plumbing',
  hydraulic: 'slide, jack and hydraulic technician',
  glass: 'glass shop',
  tires: 'tire shop',
  trim: 'interior trim and upholstery',
  detail: 'detail',
  lot: 'lot technician',
} as const;

export type Skill = keyof typeof skills;

/** One defect and the usual work on it. Ranges are [low, high]. Common practice, no source. */
export interface DefectWork {
  readonly id: string;
  readonly part: string;
  readonly defect: string;
  /** How a person says it on a walk. */
  readonly cues: readonly string[];
  /** "part/aspect": what a failed check of it usually comes down to. */
  readonly means: readonly string[];
  /** Only at these places. */
  readonly onlyAt?: readonly string[];
  /** unsafe: can hurt someone; major: thousands, or structure; moderate: works badly or will fail. */
  readonly severity: 'unsafe' | 'major' | 'moderate' | 'minor' | 'cosmetic';
  readonly work: string;
  readonly hours: readonly [low: number, high: number];
  readonly partsDollars: readonly [low: number, high: number];
  /** Whether hours and parts are for the whole job or for one place ("parts by place": hours for all, parts for one). */
  readonly counted: 'once' | 'by place' | 'parts by place';
  readonly skill: Skill;
  readonly leadDays: readonly [low: number, high: number];
  readonly policy: 'before sale' | 'optional' | 'disclose';
  readonly note?: string;
}
