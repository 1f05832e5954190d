// Why: the journal's files on disk: how they are named, made so that they survive a power cut, and how a bad tail is set aside.
import { mkdir, open, readdir } from 'node:fs/promises';
import { dirname, join } from 'node:path';

const segmentName = /^(\d{6,12})\.jsonl$/;

export function nameOf(segment: number): string {
  return `${String(segment).padStart(6, '0')}.jsonl`;
}

/** Makes the names in a folder durable. Windows cannot open a folder and does not need it. */
export async function syncFolder(folder: string): Promise<void> {
  if (process.platform === 'win32') return;
  const handle = await open(folder, 'r');
  try {
    await handle.sync();
  } finally {
    await handle.close();
  }
}

/** Makes a folder, and its name in every folder above that had to be made, durable. */
export async function makeFolder(folder: string): Promise<void> {
  const first = await mkdir(folder, { recursive: true });
  if (first === undefined) return;
  for (let at = folder; at.length >= first.length; at = dirname(at)) await syncFolder(dirname(at));
}

/** The numbers of the segments there are, in order. */
export async function listSegments(folder: string): Promise<number[]> {
  const names = await readdir(folder);
  return names
    .flatMap((name) => segmentName.exec(name)?.[1] ?? [])
    .map(Number)
    .sort((a, b) => a - b);
}

/** Copies what follows `from` into a `.damaged` file, and only then cuts it off. Returns the file's name. */
export async function setTailAside(
  folder: string,
  segment: number,
  bytes: Buffer,
  from: number,
): Promise<string> {
  const taken = new Set(await readdir(folder));
  let name = `${nameOf(segment)}.damaged`;
  for (let again = 2; taken.has(name); again++) name = `${nameOf(segment)}.${again}.damaged`;
  const aside = await open(join(folder, name), 'wx');
  try {
    await aside.writeFile(bytes.subarray(from));
    await aside.sync();
  } finally {
    await aside.close();
  }
  await syncFolder(folder);
  const file = await open(join(folder, nameOf(segment)), 'r+');
  try {
    await file.truncate(from);
    await file.sync();
  } finally {
    await file.close();
  }
  return name;
}
