// Why: a walk's files become entries of the log and a plain account of what was made of each; what is missing is named, never guessed.

import type { VehicleKind } from '../../catalogue/vehicle-kind.ts';
import type { Entry } from '../../said/entry.ts';
import type { AccountLine } from '../wire/api.ts';
import { sayFault, sayKept, sayMissing, sayMore, sayPhotos, sayReading } from '../words/say-account.ts';
import { type About, type Draft, makeEntries } from './make-entries.ts';
import { readComparables } from './read-comparables.ts';
import { readDrive } from './read-drive.ts';
import { readMotion } from './read-motion.ts';
import { photoFields, readPhotoList } from './read-photos.ts';
import { readReadings } from './read-readings.ts';
import { readShop } from './read-shop.ts';
import { readUnit } from './read-unit.ts';
import { readWalk } from './read-walk.ts';
import type { Reader, Reading } from './reading.ts';
import { roleOf, sortFiles, typeOf } from './sort-files.ts';
import { type FileFault, FileRefusal, type WalkFile } from './walk-file.ts';

export interface Understood {
  readonly entries: readonly Entry[];
  readonly account: readonly AccountLine[];
}

const mostTold = 100;

/** Lets others have their turn: an upload must not stop the server, nor a click the page. */
const breathe = (): Promise<void> => new Promise((resolve) => setTimeout(resolve, 0));

/**
 * Reads a walk's files. The same files with the same `about` give the same entries, ids and all.
 * @param progress called with a share from 0 to 1 and what is being done
 * @param vehicle the kind of the unit where it is known already; unit.json goes before it
 * @throws what the signal was aborted with; nothing else that lies in the files
 */
export async function understand(
  files: readonly WalkFile[],
  about: About,
  progress: (share: number, doing: string) => void = () => {},
  signal?: AbortSignal,
  vehicle?: VehicleKind,
): Promise<Understood> {
  const account: AccountLine[] = [];
  const { entries, make } = makeEntries(about);
  const sorted = await sortFiles(files);
  const faultsTold = new Map<string, number>();
  const steps = 10;
  let step = 0;
  const next = async (doing: string): Promise<void> => {
    progress(Math.min(0.99, step++ / steps), sayReading(doing));
    await breathe();
    signal?.throwIfAborted();
  };

  await next('photos');
  const tellPhotos = sorted.photoList ? await listPhotos(sorted.photoList) : undefined;
  make({ kind: 'walk', walk: about.walk, title: about.title ?? 'Walk', began: about.at });
  for (const file of files) {
    make({
      kind: 'media',
      media: file.media.id,
      walk: about.walk,
      role: roleOf(sorted, file),
      name: file.name.slice(0, 400),
      type: typeOf(file.name),
      bytes: file.size,
      sha256: file.media.sha256,
      ...(sorted.photos.includes(file) ? photoFields(tellPhotos, file) : {}),
    });
  }

  let kind = vehicle;
  const unit = await readOne(sorted.unit, 'unit.json', readUnit);
  for (const e of unit) if (e.kind === 'unit' && e.vehicle) kind = e.vehicle;
  if (sorted.walk) {
    await next(sorted.walk.name);
    const { name } = sorted.walk;
    await readSafely(sorted.walk, (reader) =>
      readWalk(reader, make, kind, async (share) => {
        progress(Math.min(0.99, (step - 1 + share) / steps), sayReading(name));
        await breathe();
        signal?.throwIfAborted();
      }),
    );
  } else account.push(sayMissing('walk.vtt'));
  for (const file of sorted.recordings) account.push(sayKept(file.name, 'recording'));
  if (sorted.recordings.length === 0) account.push(sayMissing('recording'));
  await readOne(sorted.readings, 'readings.csv', readReadings);
  if (sorted.photos.length === 0) account.push(sayMissing('photos/'));
  else if (!sorted.photoList) account.push(sayPhotos('photos/', sorted.photos.length, 0, 0));
  await readOne(sorted.drive, 'drive.gpx', readDrive);
  await readOne(sorted.motion, 'motion.csv', readMotion);
  await readOne(sorted.comparables, 'comps.csv', readComparables);
  await readOne(sorted.shop, 'shop.json', readShop);
  for (const file of sorted.second) account.push(sayKept(file.name, 'second'));
  for (const file of sorted.others) account.push(sayKept(file.name, 'unread'));
  for (const [name, told] of faultsTold) if (told > mostTold) account.push(sayMore(name, told - mostTold));
  progress(1, '');
  return { entries, account };

  async function readOne(
    file: WalkFile | undefined,
    name: string,
    read: (r: Reader) => Reading,
  ): Promise<readonly Draft[]> {
    if (!file) {
      account.push(sayMissing(name));
      return [];
    }
    await next(file.name);
    return readSafely(file, read, (drafts) => drafts.forEach(make));
  }

  /** A refusal of a whole file is a line of the account and a puzzle like any other fault. */
  async function readSafely(
    file: WalkFile,
    read: (r: Reader) => Reading | Promise<Reading>,
    take: (drafts: readonly Draft[]) => void = () => {},
  ): Promise<readonly Draft[]> {
    try {
      const reading = await read({ file, text: await file.text(), about });
      take(reading.drafts);
      account.push(...reading.account);
      for (const fault of reading.faults)
        puzzle(
          file,
          fault,
          reading.drafts.length === 0 && reading.account.length === 0 ? 'refused' : 'partly',
        );
      return reading.drafts;
    } catch (error) {
      if (!(error instanceof FileRefusal)) throw error;
      puzzle(file, error.fault, 'refused');
      return [];
    }
  }

  /** Every fault is in the log; the account names the first ones of a file, or nobody would read it. */
  function puzzle(file: WalkFile, fault: FileFault, did: AccountLine['did']): void {
    make({
      kind: 'puzzle',
      walk: about.walk,
      media: file.media.id,
      file: fault.file.slice(0, 400),
      line: fault.line,
      code: fault.code,
      raw: fault.raw.slice(0, 20_000),
    });
    const told = (faultsTold.get(file.name) ?? 0) + 1;
    faultsTold.set(file.name, told);
    if (told <= mostTold) account.push(sayFault(fault, did));
  }

  async function listPhotos(file: WalkFile): Promise<ReturnType<typeof readPhotoList> | undefined> {
    try {
      const list = readPhotoList(await file.text(), file.name, sorted.photos, about);
      account.push(sayPhotos(file.name, sorted.photos.length, list.rows.size, list.faults.length));
      for (const fault of list.faults) puzzle(file, fault, 'partly');
      return list;
    } catch (error) {
      if (!(error instanceof FileRefusal)) throw error;
      puzzle(file, error.fault, 'refused');
      return undefined;
    }
  }
}
