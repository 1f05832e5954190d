// Why: three commands start from a walk folder and a day; what is wrong with either is told once, here.
import { flow } from '../../flow.ts';
import type { Packet } from '../../published/document.ts';
import { type Day, readDay } from '../../units/day.ts';
import { type OpenWalk, openWalk } from '../files/open-walk.ts';
import { FileRefusal } from '../files/walk-file.ts';
import { sayFileFault } from '../words/say-file-fault.ts';
import { BadInput, BadUsage } from './command.ts';
import { type Io, plain, progressLine } from './io.ts';

/** The day that --on names, or today. */
export function dayAsked(text: string | undefined, io: Io): Day {
  const read = readDay(text ?? io.today);
  if (!read && text === undefined)
    throw new BadUsage(`WALKWRIGHT_TODAY takes a calendar day, YYYY-MM-DD; "${io.today}" is none.`);
  if (!read) throw new BadUsage(`--on takes a calendar day, YYYY-MM-DD; "${text}" is none.`);
  return read;
}

/** A file's refusal as a complaint of the terminal. */
export function badFile(error: FileRefusal): BadInput {
  const { says, remedy } = sayFileFault(error.fault);
  return new BadInput(
    `${error.fault.file}${error.fault.line > 0 ? `:${error.fault.line}` : ''}`,
    says,
    remedy,
  );
}

/** Reads a walk folder with progress on standard error. */
export async function readWalkFolder(folder: string, io: Io): Promise<OpenWalk> {
  const dealership = io.env.WALKWRIGHT_DEALERSHIP || 'home-lot';
  if (!/^[a-z0-9][a-z0-9_.-]{0,79}$/.test(dealership))
    throw new BadUsage(`WALKWRIGHT_DEALERSHIP must be a plain lower-case id; "${dealership}" is none.`);
  const progress = progressLine(io);
  try {
    const walk = await openWalk(folder, {
      dealership,
      progress: progress.show,
    });
    if (walk.files.length === 0) {
      complain(walk, io);
      throw new BadInput(
        folder,
        'The folder holds no file of a walk.',
        'docs/guide/walk-folder.md says what may be in it.',
      );
    }
    return walk;
  } catch (error) {
    if (error instanceof FileRefusal) throw badFile(error);
    throw error;
  } finally {
    progress.end();
  }
}

/** A walk folder all the way to its packet. */
export async function packetOf(
  folder: string,
  on: Day,
  io: Io,
): Promise<{ readonly walk: OpenWalk; readonly packet: Packet }> {
  const walk = await readWalkFolder(folder, io);
  return { walk, packet: flow(walk.entries, on) };
}

/** Files that could not be used, and rows that could not be read: on standard error, with file, line and remedy. */
export function complain(walk: OpenWalk, io: Io): void {
  for (const line of walk.account) {
    if (line.line === undefined && line.did !== 'refused' && line.did !== 'partly') continue;
    const told = `${line.file}${line.line === undefined ? '' : `:${line.line}`}: ${line.says}`;
    io.err(`${plain(told).replace(/\s+/g, ' ')}\n`);
  }
}
