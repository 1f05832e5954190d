// Why: what was heard in a transcript, before anything is made of it.
import { vehicleKinds } from '../../catalogue/vehicle-kind.ts';
import { hear } from '../../said/hear/hear.ts';
import { hearJson } from '../../said/hear/hear-json.ts';
import { readTranscript } from '../../said/transcript/read-transcript.ts';
import { readText } from '../files/read-folder.ts';
import { FileRefusal } from '../files/walk-file.ts';
import { minutes } from '../words/minutes.ts';
import { sayFileFault } from '../words/say-file-fault.ts';
import { aspectName, sayValue, subjectTitle } from '../words/say-value.ts';
import { BadInput, BadUsage, type Command } from './command.ts';
import { readArgs } from './read-args.ts';
import { badFile } from './read-walk-folder.ts';
import { table } from './table.ts';

export const hearCommand: Command = {
  name: 'hear',
  summary: 'the observations in a transcript (WebVTT, SRT, recogniser JSON, marked text)',
  usage: 'hear FILE [--kind KIND] [--json]',
  help: `Reads timed words and prints what was said of which part. Everything is a proposal until somebody has reviewed it.\n\n  --kind KIND   ${vehicleKinds.join(', ')}: parts that such a unit cannot have are not heard\n  --json        print a JSON array (docs/guide/json.md)`,
  async run(argv, io) {
    const args = readArgs(argv, { json: 'flag', kind: 'text' }, ['FILE']);
    const kind = args.text('kind');
    const vehicle = vehicleKinds.find((k) => k === kind);
    if (kind !== undefined && vehicle === undefined)
      throw new BadUsage(`--kind takes one of ${vehicleKinds.join(', ')}; "${kind}" is none.`);
    const file = args.positionals[0]!;
    const text = await readText(file, file, { links: true }).catch((error: unknown) => {
      if (error instanceof FileRefusal && error.fault.code === 'not-a-file')
        throw new BadInput(
          file,
          'This is a folder or a device, not a file.',
          'Give the transcript itself, such as FOLDER/walk.vtt.',
        );
      throw error instanceof FileRefusal ? badFile(error) : error;
    });
    const { cues, puzzles } = readTranscript(file, text);
    for (const p of puzzles) {
      const { says, remedy } = sayFileFault({ file, ...p });
      io.err(`${file}:${p.line}: ${says} ${remedy}\n`);
    }
    if (cues.length === 0)
      throw new BadInput(
        file,
        'There are no timed words in it.',
        'Give a WebVTT, SRT, recogniser JSON or text file with [m:ss] marks.',
      );
    const heard = hear(cues, vehicle ? { vehicle } : {});
    if (args.has('json')) {
      io.out(`${JSON.stringify(hearJson(heard), null, 2)}\n`);
      return 0;
    }
    const rows = heard.observations.map((o) => [
      minutes(o.start),
      subjectTitle(o),
      aspectName(o.part, o.aspect),
      sayValue(o.value, o.part, o.aspect),
      o.hedged ? 'maybe' : '',
      o.words,
    ]);
    io.out(table(['at', 'part', 'aspect', 'value', '', 'words'], rows, io.width));
    io.out(
      `\n${heard.observations.length} observations in ${cues.length} lines, ${minutes(cues.at(-1)!.end)} long\n`,
    );
    return 0;
  },
};
