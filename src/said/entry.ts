// Why: the log is the truth, and this is every kind of line that may stand in it. Checked here, at the door, once.
import { z } from 'zod';
import { isState } from '../catalogue/state.ts';
import { vehicleKinds } from '../catalogue/vehicle-kind.ts';
import { type Unit, unitCodes } from '../units/unit.ts';

/** UUID version 7 (RFC 9562), made where the thing was observed, so that sending it again is harmless. */
const id = z
  .string()
  .regex(/^[0-9a-f]{8}-[0-9a-f]{4}-7[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/, 'must be a UUID version 7');
const instant = z.iso.datetime({ offset: true });
const word = z
  .string()
  .regex(/^[a-z0-9][a-z0-9_.-]*$/, 'must be a plain lower-case id')
  .max(80);
/** Some aspects of the catalogue carry the letter of a unit or of a current: outlet_F, load_A. */
const aspectWord = z
  .string()
  .regex(/^[a-z0-9][A-Za-z0-9_.-]*$/, 'must be a plain id')
  .max(80);
const line = z.string().min(1).max(400);
const text = z.string().max(20_000);
const unitCode = z.enum(unitCodes as [Unit, ...Unit[]]);
const seconds = z.number().min(0).max(200_000);

const value = z.discriminatedUnion('is', [
  z.strictObject({
    is: z.literal('quantity'),
    value: z.number(),
    unit: unitCode,
    plusOrMinus: z.number().min(0).optional(),
    /** The upper end where a range was said: "five to six gallons". */
    upTo: z.number().optional(),
  }),
  z.strictObject({ is: z.literal('text'), text: z.string().min(1).max(2000) }),
  z.strictObject({
    is: z.literal('count'),
    count: z.number().int().min(0),
    of: z.number().int().min(0).optional(),
  }),
  z.strictObject({
    is: z.literal('state'),
    state: z.string().refine(isState, 'is not a word of the list of states'),
  }),
  z.strictObject({ is: z.literal('unknown'), why: line }),
]);
/** What was said of an aspect. Units are UCUM codes; plus-or-minus is a half width in the same unit. */
export type Value = z.infer<typeof value>;

const source = z.discriminatedUnion('from', [
  z.strictObject({ from: z.literal('speech'), media: id, start: seconds, end: seconds, words: text }),
  z.strictObject({ from: z.literal('typed'), note: text.optional() }),
  z.strictObject({
    from: z.literal('photo'),
    media: id,
    /** Left, top, width, height as fractions of the picture. */
    region: z.tuple([z.number(), z.number(), z.number(), z.number()]).optional(),
    note: text.optional(),
  }),
  z.strictObject({ from: z.literal('instrument'), media: id, note: text.optional() }),
  z.strictObject({ from: z.literal('document'), media: id.optional(), title: line, note: text.optional() }),
]);

const envelope = {
  v: z.literal(1),
  id,
  /** The tenant. Every key in the store starts with it. */
  dealership: word,
  unit: id,
  at: instant,
  by: line,
  device: line,
};

export const senses = [
  'quantity',
  'identity',
  'condition',
  'defect',
  'operates',
  'absent',
  'unknown',
  'claim',
] as const;

const observation = z.strictObject({
  ...envelope,
  kind: z.literal('observation'),
  walk: id.optional(),
  part: word,
  place: word.optional(),
  aspect: aspectWord,
  value,
  sense: z.enum(senses),
  polarity: z.enum(['good', 'bad', 'neutral']),
  hedged: z.boolean(),
  /** Hearsay: who is said to have said it ("the seller"). */
  saidBy: line.optional(),
  /** Probability, 0 to 1, that this observation is right as it stands. */
  sure: z.number().min(0).max(1),
  source,
  /** Ids of observations that this one replaces. */
  replaces: z.array(id).max(50).optional(),
  note: text.optional(),
});

const ruling = z.strictObject({
  ...envelope,
  kind: z.literal('ruling'),
  on: id,
  /** `open`: earlier rulings on it no longer count; it waits for a person again. */
  ruling: z.enum(['accept', 'reject', 'open']),
  why: text.optional(),
});

/** What stands on paper about the unit before anybody walks it, and what it is called. A later entry replaces it field by field. */
const unit = z.strictObject({
  ...envelope,
  kind: z.literal('unit'),
  vehicle: z.enum(vehicleKinds).optional(),
  stock: z.string().max(80).optional(),
  name: line.optional(),
  maker: z.string().max(120).optional(),
  model: z.string().max(120).optional(),
  year: z.number().int().min(1900).max(2100).optional(),
  arrived: z.iso.date().optional(),
  consigned: z.boolean().optional(),
  askingCents: z.number().int().min(0).optional(),
  /** Options that decide what applies, as part ids: "slide", "generator". False: the unit has none. */
  equipment: z.record(word, z.boolean()).optional(),
  /** Marked in every document: the unit does not exist. */
  invented: z.boolean().optional(),
  /** Put away: no longer shown in the yard; nothing is lost. */
  putAway: z.boolean().optional(),
});

const walk = z.strictObject({ ...envelope, kind: z.literal('walk'), walk: id, title: line, began: instant });

export const mediaRoles = [
  'recording',
  'transcript',
  'photo',
  'drive',
  'motion',
  'readings',
  'comparables',
  'shop',
  'paper',
  'other',
] as const;
const media = z.strictObject({
  ...envelope,
  kind: z.literal('media'),
  media: id,
  walk: id.optional(),
  role: z.enum(mediaRoles),
  name: line,
  type: line,
  bytes: z.number().int().min(0),
  sha256: z.string().regex(/^[0-9a-f]{64}$/),
  part: word.optional(),
  place: word.optional(),
  caption: text.optional(),
  taken: instant.optional(),
});

const cue = z.strictObject({ start: seconds, end: seconds, text });
/** The words of a recording as they came, kept whole: also what nothing was made of. */
const transcript = z.strictObject({
  ...envelope,
  kind: z.literal('transcript'),
  walk: id,
  media: id,
  cues: z.array(cue).max(50_000),
});

/** Something in a file that could not be read, kept with its raw words so that nothing said is lost. */
const puzzle = z.strictObject({
  ...envelope,
  kind: z.literal('puzzle'),
  walk: id.optional(),
  media: id.optional(),
  file: line,
  line: z.number().int().min(0),
  code: word,
  raw: text,
});

const comparable = z.strictObject({
  ref: line,
  on: z.iso.date(),
  vehicle: z.enum(vehicleKinds),
  year: z.number().int(),
  lengthFt: z.number().optional(),
  miles: z.number().optional(),
  slides: z.number().int().optional(),
  powerHp: z.number().optional(),
  generatorHours: z.number().optional(),
  askCents: z.number().int().optional(),
  soldCents: z.number().int().optional(),
  state: z.string().max(40).optional(),
  milesAway: z.number().optional(),
  condition: z.string().max(400).optional(),
});
/** One unit offered or sold elsewhere, as the dealership's own list has it. */
export type Comparable = z.infer<typeof comparable>;
const comparables = z.strictObject({
  ...envelope,
  kind: z.literal('comparables'),
  media: id.optional(),
  rows: z.array(comparable).max(20_000),
});

const shop = z.strictObject({
  ...envelope,
  kind: z.literal('shop'),
  /** Cents an hour by skill; "default" stands for the rest. */
  laborCentsPerHour: z.record(word, z.number().int().min(0)),
  /** Hours a technician of a skill bills in a working day. */
  hoursPerDay: z.number().min(0.5).max(24),
  suppliesPercent: z.number().min(0).max(100).optional(),
  holdCentsPerDay: z.number().int().min(0).optional(),
});

/** A packet was given out: which documents, by their hash. */
const publication = z.strictObject({
  ...envelope,
  kind: z.literal('publication'),
  documents: z.array(z.strictObject({ name: line, sha256: z.string().regex(/^[0-9a-f]{64}$/) })).max(50),
  /** The last entry the packet was made from. */
  upTo: id,
});

export const entrySchema = z.discriminatedUnion('kind', [
  observation,
  ruling,
  unit,
  walk,
  media,
  transcript,
  puzzle,
  comparables,
  shop,
  publication,
]);

/** One line of the log. Never changed, never removed; a correction is another entry. */
export type Entry = z.infer<typeof entrySchema>;
export type EntryKind = Entry['kind'];
export type EntryOf<K extends EntryKind> = Extract<Entry, { kind: K }>;
export type Observation = EntryOf<'observation'>;
export type Ruling = EntryOf<'ruling'>;
export type Cue = z.infer<typeof cue>;

/** What is wrong with one field of an entry: where, and the schema's own code. */
export interface EntryFault {
  readonly path: string;
  readonly message: string;
}

/** Reads an entry from outside: the entry, or every fault in it. */
export function readEntry(
  raw: unknown,
): { readonly entry: Entry } | { readonly faults: readonly EntryFault[] } {
  const result = entrySchema.safeParse(raw);
  if (result.success) return { entry: result.data };
  return { faults: result.error.issues.map((i) => ({ path: i.path.join('.'), message: i.message })) };
}
