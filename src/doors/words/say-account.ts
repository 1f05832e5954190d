// Why: what was made of each file of a walk, in sentences for whoever handed it in.
import type { AccountLine } from '../wire/api.ts';
import { sayFileFault } from './say-file-fault.ts';

const many = (n: number, word: string): string => `${n.toLocaleString('en-US')} ${word}${n === 1 ? '' : 's'}`;
const rest = (faults: number): string =>
  faults === 0
    ? ''
    : ` ${many(faults, 'place')} could not be understood and ${faults === 1 ? 'was' : 'were'} kept as ${faults === 1 ? 'it is' : 'they are'}.`;
const did = (understood: number, faults: number): AccountLine['did'] =>
  faults === 0 ? 'understood' : understood === 0 ? 'refused' : 'partly';

export const sayRows = (file: string, what: string, understood: number, faults: number): AccountLine => ({
  file,
  did: did(understood, faults),
  says: `${many(understood, what)} read.${rest(faults)}`,
});

export const sayPaper = (
  file: string,
  fields: number,
  observations: number,
  faults: number,
): AccountLine => ({
  file,
  did: did(fields + observations, faults),
  says: `${many(fields, 'field')} of the unit and ${many(observations, 'value')} from its papers read.${rest(faults)}`,
});

export const sayShop = (file: string, skills: number, faults: number): AccountLine => ({
  file,
  did: did(skills, faults),
  says: `Labor rates of ${many(skills, 'skill')} read.${rest(faults)}`,
});

export const sayDrive = (file: string, fixes: number, observations: number, faults: number): AccountLine => ({
  file,
  did: did(observations, faults),
  says: `${many(fixes, 'fix').replace(/fixs$/, 'fixes')} of the drive read; ${many(observations, 'reading')} taken from them.${rest(faults)}`,
});

export const sayMotion = (
  file: string,
  rows: number,
  rate: number,
  hasPeak: boolean,
  bad: number,
): AccountLine => ({
  file,
  did: did(rows, bad),
  says: `${many(rows, 'row')} of motion kept${rate > 0 ? ` at ${rate.toFixed(1)} Hz` : ''}; ${hasPeak ? 'the hardest slowing was taken from them' : 'too few to tell how hard it was braked'}.${rest(bad)}`,
});

export const sayWalk = (file: string, cues: number, observations: number, puzzles: number): AccountLine => ({
  file,
  did: cues === 0 ? 'refused' : 'understood',
  says: `${many(cues, 'line')} of speech kept; ${many(observations, 'observation')} proposed from them${puzzles > 0 ? `; ${many(puzzles, 'place')} puzzled the reader` : ''}. Nothing is believed before somebody has reviewed it.`,
});

export const sayPhotos = (file: string, photos: number, described: number, faults: number): AccountLine => ({
  file,
  did: did(photos, faults),
  says: `${many(photos, 'picture')} kept, ${described} of them said to show a part.${rest(faults)}`,
});

export const sayKept = (file: string, why: 'recording' | 'unread' | 'second' | 'too-big'): AccountLine => ({
  file,
  did: 'kept',
  says: {
    recording: 'Kept to be played; nothing is read from the sound itself.',
    unread: 'Kept as it is; it is not a kind of file that is read.',
    second: 'Kept as it is; another file of this kind was read instead.',
    'too-big': 'Kept as it is; it is too large to be read.',
  }[why],
});

/** What is not known because a file is not there. */
const missingSays: Readonly<Record<string, string>> = {
  'unit.json': 'Not in the folder: kind, stock number and what is on paper are unknown.',
  'walk.vtt': 'No transcript (walk.vtt, .srt, .json or .txt): what was said on the walk is unknown.',
  recording: 'No recording: the words cannot be listened to again.',
  'readings.csv': 'Not in the folder: no readings were typed.',
  'photos/': 'No photos: nothing can be shown.',
  'drive.gpx': 'Not in the folder: how it drives is unknown unless somebody says so.',
  'motion.csv': 'Not in the folder: no motion was measured.',
  'comps.csv': 'Not in the folder: what such units ask and bring is unknown, so nothing can be priced.',
  'shop.json': "Not in the folder: the shop's rates are unknown, so jobs have no cost.",
};
export const sayMissing = (file: string): AccountLine => ({
  file,
  did: 'missing',
  says: missingSays[file] ?? 'Not in the folder: unknown.',
});

export const sayFault = (
  fault: { readonly file: string; readonly line: number; readonly code: string; readonly detail?: string },
  didWhat: AccountLine['did'],
): AccountLine => {
  const said = sayFileFault(fault);
  return {
    file: fault.file,
    did: didWhat,
    says: `${said.says} ${said.remedy}`,
    ...(fault.line > 0 ? { line: fault.line } : {}),
  };
};

export const sayMore = (file: string, more: number): AccountLine => ({
  file,
  did: 'partly',
  says: `${many(more, 'more place')} could not be understood; all are kept in the log.`,
});

/** What is being done, for a progress line. */
export const sayReading = (file: string): string => `Reading ${file}`;

export const sayNoStart = (at: string): AccountLine => ({
  file: 'unit.json',
  did: 'missing',
  says: `When the walk began is not written down ("walked" in unit.json); the files' own time is used: ${at}.`,
});
