// Why: what is wrong with a file of a walk, as a sentence with the line and what to do.

/** What the sentence is made from. */
interface Fault {
  readonly file: string;
  readonly line: number;
  readonly code: string;
  readonly detail?: string;
}
export interface SaidFault {
  readonly says: string;
  readonly remedy: string;
}

type Say = (first: string, second: string, third: string) => readonly [says: string, remedy: string];
const perhaps = (near: string, otherwise: string): string => (near ? `Perhaps ${near} is meant.` : otherwise);

const sentences: Readonly<Record<string, Say>> = {
  'not-json': () => [
    'This is not JSON from here on.',
    'Look for a missing comma, quote or bracket just before this line.',
  ],
  'json-shape': (should) => [`The file does not hold ${should}.`, `Make the outermost thing ${should}.`],
  'not-text': () => ['The file is not text.', 'Save it as plain text in UTF-8.'],
  'too-big': (size, most) => [
    `The file is too large to be read as text (${size}; the most is ${most}).`,
    'Split it, or check that it is the right file. Its bytes are not lost where they were.',
  ],
  'outside-folder': () => [
    'The path leads out of the walk folder.',
    'Put the file itself into the folder; links and ".." are not followed.',
  ],
  'no-folder': () => ['There is no such folder.', 'Check the path.'],
  'no-file': () => ['There is no such file.', 'Check the path.'],
  'not-a-folder': () => ['This is a file, not a folder.', 'Give the folder that holds the walk.'],
  'not-a-file': () => [
    'This is not a plain file.',
    'Put the file itself there; folders, pipes and devices are not read.',
  ],
  'not-a-segment': () => [
    'This segment of the transcript has no words or no times.',
    'Its raw text is kept; the rest of the transcript was read.',
  ],
  unreadable: (why) => [`The file could not be opened (${why}).`, 'Check that it may be read.'],
  'too-many-files': (most) => [
    `The folder holds more than ${most} files.`,
    'Give the folder of one walk, not the one above it.',
  ],
  'csv-columns': (columns) => [
    `The first row lacks the columns: ${columns}.`,
    'Give the file a first row with the names of the columns.',
  ],
  'csv-quote': () => [
    'A quotation mark opens here and never closes.',
    'Close it, or write "" for a mark inside a cell.',
  ],
  'csv-cells': (count) => [
    `The row does not fit the first row: ${count}.`,
    'Put a cell that holds a comma into quotation marks.',
  ],
  'cell-missing': (column) => [`The cell "${column}" is empty.`, 'Fill it in.'],
  'cell-wrong': (column, was, should) => [
    `"${was}" in the column "${column}" cannot be read.`,
    `Write ${should}.`,
  ],
  'too-many-rows': (most) => [`There are more than ${most} rows.`, 'Leave out the least like this unit.'],
  'part-missing': () => ['No part is named.', 'Write a part id of the catalogue.'],
  'aspect-missing': () => [
    'No aspect is named.',
    'Write what was read of the part: tread_mid, condition, leak.',
  ],
  'part-unknown': (was, near) => [
    `There is no part "${was}".`,
    perhaps(near, 'Take a part id from docs/generated/parts.md.'),
  ],
  'place-unknown': (was, places) => [
    `There is no place "${was}".`,
    places ? `This part has: ${places}.` : 'Leave the place empty.',
  ],
  'aspect-unknown': (was, aspects) => [
    `The part has no aspect "${was}".`,
    `It has: ${aspects || 'condition, operates, present'}; and every part has condition, operates, present, count, crack, leak, damage, rust.`,
  ],
  'value-missing': () => [
    'There is no value.',
    'Write the number or the word; write unknown, and why in the note, when it could not be read.',
  ],
  'not-a-number': (was) => [
    `"${was}" is not a number.`,
    'Write 12.4, or 5..6 for a range, without a comma; or unknown.',
  ],
  'not-a-count': (was) => [`"${was}" is not a count.`, 'Write a whole number, or "3 of 12".'],
  'unit-missing': (should) => [
    'The number has no unit.',
    `Write a UCUM unit${should ? `, such as ${should}` : ''}.`,
  ],
  'unit-unknown': (was, should) => [
    `"${was}" is not a unit of the list.`,
    `Write a UCUM unit${should ? `, such as ${should}` : ''}.`,
  ],
  'unit-dimension': (was, should) => [
    `${was} does not measure this.`,
    `Write it in ${should} or a unit that converts to it.`,
  ],
  'plus-or-minus-bad': (was) => [
    `"${was}" is not a plus-or-minus.`,
    'Write a number of the same unit, 0 or more.',
  ],
  'at-unreadable': (was) => [
    `"${was}" is not a time.`,
    'Write 2026-05-04T10:15:00-05:00, or 12:41 for a time into the walk.',
  ],
  'word-unknown': (was, words) => [`"${was}" is not a word that this can be.`, `Write one of: ${words}.`],
  'unit-key': (known) => ['The unit has no such field.', `It has: ${known}.`],
  'unit-field': (key, should) => [`The field "${key}" cannot be read.`, `It should be ${should}.`],
  'unit-paper-key': (was) => [
    `"${was}" does not name a part and an aspect.`,
    'Write "part.aspect" or "part.aspect@place".',
  ],
  'shop-field': (key, should) => [`The field "${key}" cannot be read.`, `It should be ${should}.`],
  'photo-missing': (was) => [`There is no picture "${was}".`, 'Check its name, or put it into photos/.'],
  'xml-doctype': () => [
    'The drive log carries a document type or entities, which are not read.',
    'Export it again as plain GPX.',
  ],
  'xml-broken': (why) => [
    `The drive log is not sound XML from here on: ${why.replace(/\.$/, '')}.`,
    'Export it again; what stands before was used.',
  ],
  'gpx-points': (count) => [
    `${count} track points lack a place or a time, or go back in time.`,
    'They were left out; nothing need be done unless they are most of the track.',
  ],
  'gpx-empty': (count) => [
    `The drive log has ${count} usable track points.`,
    'Record the drive with times; two points are the least.',
  ],
  'motion-row': () => [
    'The row does not hold four numbers, or goes back in time.',
    'Write t, ax, ay, az as plain numbers.',
  ],
  'motion-rows-more': (count) => [`${count} more rows could not be read.`, 'Mend the ones named first.'],
  'transcript-empty': () => ['There are no words in it.', 'Check that it is the right file.'],
  'no-times': () => ['These words carry no times.', 'Give them times, as in 00:12:41.000 --> 00:12:44.500.'],
  'bad-timestamp': () => ['The time cannot be read.', 'Write it as 00:12:41.000 --> 00:12:44.500.'],
  'ends-before-it-starts': () => ['It ends before it starts.', 'Put the earlier time first.'],
  'time-runs-back': () => ['The time is earlier than the one before it.', 'Put the lines in order of time.'],
  'time-too-late': () => ['The time lies more than two days into the recording.', 'Check the hours.'],
  'words-before-times': () => ['There are words before the times.', 'Put an empty line before each cue.'],
  'no-words': () => ['There are no words at this time.', 'Nothing need be done unless something was said.'],
  'no-segments': () => [
    'There are no timed words in this JSON.',
    "Export the recogniser's result with segments or words and their times.",
  ],
  'no-webvtt-header': () => [
    'The file does not begin with WEBVTT.',
    'It was read all the same; put WEBVTT on the first line.',
  ],
};

/** The sentences for a fault. An unknown code is shown as it is: it is never hidden. */
export function sayFileFault(fault: Fault): SaidFault {
  const [first = '', second = '', third = ''] = (fault.detail ?? '').split('|');
  const say = sentences[fault.code];
  if (!say)
    return {
      says: `It could not be understood (${fault.code}).`,
      remedy: 'The words were kept as they are.',
    };
  const [says, remedy] = say(first, second, third);
  return { says, remedy };
}
