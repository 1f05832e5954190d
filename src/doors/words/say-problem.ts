// Why: every refusal says what happened and what to do next; a code alone helps nobody, and a code unknown here is still shown.

/** What happened, and what to do about it. */
export interface SaidProblem {
  readonly says: string;
  readonly remedy: string;
}

const say = (says: string, remedy: string): SaidProblem => ({ says, remedy });
const keepRaw =
  'The line was kept as it is; correct the file and hand it in again, or enter the value by hand.';

/** Codes of the keeper, of files, of transcript and table readers, and of the server. */
export const problems: Readonly<Record<string, SaidProblem>> = {
  // the log
  locked: say(
    'The log is open in another program.',
    'Close the other program that uses this folder, or point this one at another folder.',
  ),
  'id-taken': say(
    'Another entry with the same id is in the log already; nothing was changed.',
    'Reload, so that you see what is kept, then enter yours again.',
  ),
  'cut-short': say(
    'The last line of the log was cut off, as by a power failure while it was written.',
    'Everything before it is kept. Say the last thing again if it is missing.',
  ),
  checksum: say(
    'A line of the log does not match its own checksum: the disk or a copy changed it.',
    'Everything before it is kept. Restore the rest from a backup, and check the disk.',
  ),
  'not-json': say(
    'A line of the log is not readable text.',
    'Everything before it is kept. Restore the rest from a backup.',
  ),
  'not-an-entry': say(
    'A line is readable but is not an entry of this software.',
    'It was left out. Check that the file is an export of this software, of this version or an older one.',
  ),
  'bad-entry': say(
    'Something handed in is not an entry that this software understands; nothing of it was kept.',
    'Bring both sides to the same version, then send it again.',
  ),
  'out-of-order': say(
    'The lines of the log are not in the order in which they were written.',
    'Use the export as it was made, without sorting or joining it by hand.',
  ),
  closed: say('The log has been closed.', 'Start the program again.'),
  'disk-full': say(
    'The disk is full; the last thing was not kept.',
    'Make room, then do it again. What was kept before is still there.',
  ),
  'too-large': say(
    'The file is larger than is taken in at once.',
    'Cut the recording into parts, or make the picture smaller, and hand the parts in.',
  ),
  'write-failed': say(
    'The log could not be written; the last thing was not kept.',
    'Check the disk and its rights, then do it again. What was kept before is still there.',
  ),
  'journal-failed': say(
    'The disk did not confirm what was written, so it is not known whether the last thing is kept.',
    'Start the program again: it reads back what the disk holds and tells what is missing.',
  ),
  'journal-damaged': say(
    'A line of the log that was sound is no longer so: the disk or another program changed it.',
    'Stop, copy the folder away, and restore from a backup. Check the disk.',
  ),
  'index-failed': say(
    'The index of the log could not be opened or built; the log itself is untouched.',
    'Start again: the index is made anew from the log. If that fails, check the room on the disk.',
  ),
  'database-unreachable': say(
    'The database does not answer.',
    'Check that it runs and that its address and password are right, then start again.',
  ),
  'database-not-durable': say(
    'The database is set up so that a power cut may lose what it said it kept.',
    'Turn on writing through to the disk (fsync, synchronous_commit) and start again.',
  ),
  'database-newer': say(
    'The database was made by a newer edition of this software.',
    'Start the newer edition.',
  ),
  // files
  'too-big': say(
    'The file is larger than is taken in at once.',
    'Cut the recording into parts, or make the picture smaller, and hand the parts in.',
  ),
  'outside-folder': say(
    'The name of the file points outside its folder; it was refused.',
    'Give the file a plain name without slashes or dots in front.',
  ),
  'not-found': say(
    'There is nothing of that name here.',
    'Check the spelling, or go back to the list and choose from it.',
  ),
  'unknown-file': say(
    'This kind of file is not known; it was kept as it is.',
    'Hand in words as WebVTT, SRT or JSON, tables as CSV, drives as GPX.',
  ),
  'empty-file': say('The file is empty.', 'Save it again from where it came from.'),
  // transcripts
  'not-a-transcript': say(
    'This file holds no timed words that can be read.',
    'Save the words as WebVTT or SRT, or as the JSON of the recogniser, and hand it in again.',
  ),
  'bad-cue': say('A part of the transcript has no words or no times that can be read.', keepRaw),
  'bad-time': say(
    'A time in the file cannot be read.',
    'Times are written 00:12:41.500. Correct the line and hand the file in again.',
  ),
  'no-transcript': say(
    'There is a recording but no words to it, so nothing could be understood from it.',
    'Make a transcript with timed words (WebVTT or SRT) and hand it in beside the recording.',
  ),
  // tables and papers
  'bad-csv-row': say('A row of the table cannot be read.', keepRaw),
  'unknown-part': say(
    'The name of a part is not in the catalogue.',
    'Use a name from the list of parts; the row was kept as it is.',
  ),
  'unknown-aspect': say(
    'That cannot be said of this part.',
    'Use one of the things listed under the part; the row was kept as it is.',
  ),
  'unknown-place': say(
    'The name of a place is not known.',
    'Use a place from the list, such as left-front; the row was kept as it is.',
  ),
  'unknown-unit': say(
    'The unit is not known.',
    'Write the unit as on the list, such as psi, V or in; the row was kept as it is.',
  ),
  'wrong-unit': say(
    'The unit measures something else than this reading.',
    'A pressure is in psi, a depth in 32nds of an inch: correct the unit.',
  ),
  'bad-number': say('Where a number should stand is something else.', keepRaw),
  'bad-date': say('A date cannot be read.', 'Write dates as 2026-11-24.'),
  'bad-json': say('The file is not JSON that can be read.', 'Export it again; nothing of it was used.'),
  'bad-gpx': say(
    'The file is not a track that can be read.',
    'Export the drive as GPX with times, and hand it in again.',
  ),
  // the server
  'other-host': say(
    'The server was asked under a name that is not its own.',
    'Open it as http://localhost with its port.',
  ),
  'other-origin': say("The request came from another site's page; it was refused.", 'Use the app itself.'),
  'bad-content-type': say(
    'The request is not marked as JSON.',
    'Send it with content-type application/json.',
  ),
  'bad-request': say(
    'What was sent cannot be read.',
    'The faults name each place; correct them and send it again.',
  ),
  'other-dealership': say(
    'An entry belongs to another dealership; nothing was kept.',
    'Send it to the server of that dealership.',
  ),
  'no-batch': say(
    'Nothing was handed in under this batch, or the server has been started anew since.',
    'Hand the files in again; what was understood already is not doubled.',
  ),
  'upload-broken': say('The file broke off on its way.', 'Send it again; nothing of it was used.'),
  'bad-range': say('The stretch that was asked for lies outside the file.', 'Ask for a stretch within it.'),
  'too-many-files': say('There are more files than are taken together.', 'Hand in one walk at a time.'),
  'port-not-allowed': say('This account may not listen on that port.', 'Take a port above 1023.'),
  'port-taken': say('Another program listens on that port already.', 'Close it, or start on another port.'),
  'signed-out': say('You are not signed in.', 'Sign in and try again; nothing you entered is lost.'),
  'not-allowed': say('This account may not do that.', 'Ask the one who looks after the accounts.'),
  'no-connection': say(
    'There is no connection to the server.',
    'Go on working: everything is kept here and sent when the connection is back.',
  ),
  stopped: say('It was stopped before it was done.', 'Start it again when you want it; nothing was lost.'),
  unexpected: say(
    'Something went wrong that nobody foresaw.',
    'Try once more. If it happens again, keep the message and tell the one who looks after the software.',
  ),
};

/** The words for a code. A code that is not known is shown as it is: better an odd word than silence. */
export const sayProblem = (code: string): SaidProblem =>
  Object.hasOwn(problems, code)
    ? (problems[code] as SaidProblem)
    : say(
        `Something went wrong (${code}).`,
        'Try once more. If it happens again, keep this code and tell the one who looks after the software.',
      );
