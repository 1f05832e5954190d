// Why: the main job in one command: a walk folder in, the whole packet out, and one screen that says what matters.
import { mkdir, rename, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { EntryOf } from '../../said/entry.ts';
import type { OpenWalk } from '../files/open-walk.ts';
import { BadInput, BadUsage, type Command } from './command.ts';
import { plain, progressLine } from './io.ts';
import { readArgs } from './read-args.ts';
import { complain, dayAsked, packetOf } from './read-walk-folder.ts';
import { summary } from './summary.ts';

/** Larger pictures stay out of the packet. */
const mostPhotoBytes = 50_000_000;

/** Pictures of the walk by their media entry. */
const photosOf =
  (walk: OpenWalk) =>
  async (media: EntryOf<'media'>): Promise<Uint8Array | undefined> => {
    const file = walk.files.find((f) => f.media.id === media.media);
    if (!file || file.size > mostPhotoBytes) return undefined;
    const pieces: Uint8Array[] = [];
    for await (const piece of file.bytes()) pieces.push(piece);
    return Buffer.concat(pieces);
  };

export const packetCommand: Command = {
  name: 'packet',
  summary: 'make the whole packet of a walk: report, listing, chapters, claims, figures',
  usage: 'packet WALK-FOLDER --out DIR [--on YYYY-MM-DD]',
  help: 'Reads a walk folder (docs/guide/walk-folder.md; every file in it is optional), writes the packet into DIR and prints a summary.\n\n  --out DIR   where the packet goes; made when it is not there\n  --on DAY    judge as of this day (today)',
  async run(argv, io) {
    const args = readArgs(argv, { out: 'text', on: 'text' }, ['WALK-FOLDER']);
    const out = args.text('out');
    if (!out) throw new BadUsage('--out is missing: say where the packet goes.');
    const { walk, packet } = await packetOf(args.positionals[0]!, dayAsked(args.text('on'), io), io);
    complain(walk, io);
    const progress = progressLine(io);
    progress.show(0.9, 'Writing the documents');
    const { packetFiles } = await import('../paper/packet-files.ts');
    const files = await packetFiles(packet, { photos: photosOf(walk) });
    await mkdir(out, { recursive: true }).catch((error: NodeJS.ErrnoException) => {
      throw new BadInput(
        out,
        `The folder cannot be made (${error.code}).`,
        'Give --out a folder that may be written.',
      );
    });
    for (const { name, bytes } of files) {
      const steps = name.split('/');
      if (steps.some((step) => step === '' || step.startsWith('.')))
        throw new Error(`packet: "${name}" is not a plain name`);
      await mkdir(join(out, ...steps.slice(0, -1)), { recursive: true });
      const part = join(out, `${name}.part`);
      try {
        await writeFile(part, bytes);
        await rename(part, join(out, name));
      } catch (error) {
        await rm(part, { force: true }).catch(() => undefined);
        throw error;
      }
    }
    progress.end();
    io.out(summary(packet, walk.account, io));
    io.out(
      `\nThe packet is in ${plain(out)}: ${files
        .filter((f) => !f.name.includes('/'))
        .map((f) => f.name)
        .join(', ')}\n`,
    );
    return 0;
  },
};
