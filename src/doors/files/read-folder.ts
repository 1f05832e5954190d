// Why: a walk folder on disk as walk files; nothing outside the folder is ever opened, whatever the folder holds.
import { createHash } from 'node:crypto';
import { createReadStream } from 'node:fs';
import { lstat, open, readdir, realpath, stat } from 'node:fs/promises';
import { join, sep } from 'node:path';
import { decodeText } from './decode-text.ts';
import { idFrom } from './make-entries.ts';
import { type FileFault, FileRefusal, textLimit, type WalkFile } from './walk-file.ts';

/** Bytes as a person reads them. */
export const sizeOf = (bytes: number): string =>
  bytes < 1e6
    ? `${Math.ceil(bytes / 1e3)} kB`
    : bytes < 1e9
      ? `${(bytes / 1e6).toFixed(1)} MB`
      : `${(bytes / 1e9).toFixed(2)} GB`;

const mostFiles = 5000;
const deepest = 3;

/** A file found in a walk folder, before its bytes have been looked at. */
interface Found {
  readonly name: string;
  readonly path: string;
  readonly size: number;
}

export interface Folder {
  readonly files: readonly WalkFile[];
  /** Links, devices and what could not be opened: named, not read. */
  readonly refused: readonly FileFault[];
}

/** The plain files of a folder and its sub-folders, sorted by name. Hidden files are passed over. Throws FileRefusal when the folder itself cannot be read. */
async function listFolder(
  folder: string,
): Promise<{ found: readonly Found[]; refused: readonly FileFault[] }> {
  const found: Found[] = [];
  const refused: FileFault[] = [];
  const refuse = (file: string, code: string, detail = ''): void =>
    void refused.push({ file, line: 0, code, raw: '', detail });
  await walk('', 0);
  return { found: found.sort((a, b) => (a.name < b.name ? -1 : 1)), refused };

  async function walk(below: string, depth: number): Promise<void> {
    const names = await readdir(join(folder, below)).catch((error: NodeJS.ErrnoException) => {
      refuse(below || folder, 'unreadable', error.code ?? '');
      return [];
    });
    for (const name of names.sort()) {
      if (name.startsWith('.')) continue;
      const relative = below ? `${below}/${name}` : name;
      const path = join(folder, below, name);
      // A name that is not UTF-8, or a file taken away meanwhile: not to be had under this name.
      const there = await lstat(path).catch((error: NodeJS.ErrnoException) => {
        refuse(relative, 'unreadable', error.code ?? '');
      });
      if (!there) continue;
      if (there.isSymbolicLink()) refuse(relative, 'outside-folder');
      else if (there.isDirectory() && depth < deepest) await walk(relative, depth + 1);
      else if (!there.isFile()) refuse(relative, 'not-a-file');
      else if (found.length >= mostFiles)
        throw new FileRefusal({
          file: relative,
          line: 0,
          code: 'too-many-files',
          raw: '',
          detail: String(mostFiles),
        });
      else found.push({ name: relative, path, size: there.size });
    }
  }
}

/** The SHA-256 of a file, read a piece at a time. */
async function hashFile(path: string, signal?: AbortSignal): Promise<string> {
  const hash = createHash('sha256');
  for await (const piece of createReadStream(path, { highWaterMark: 1 << 20, ...(signal ? { signal } : {}) }))
    hash.update(piece as Uint8Array);
  return hash.digest('hex');
}

/**
 * Reads a walk folder. Files are hashed as a stream; text is read when it is asked for.
 * @param at the instant the walk began, for ids; @param seed what sets this walk's ids apart
 * @throws FileRefusal: unreadable, not-a-folder, too-many-files
 */
export async function readFolder(
  folder: string,
  {
    at,
    seed,
    signal,
    progress = () => {},
  }: { at: string; seed: string; signal?: AbortSignal; progress?: (share: number, name: string) => void },
): Promise<Folder> {
  const root = await realpath(folder).catch((error: NodeJS.ErrnoException) => {
    throw new FileRefusal({
      file: folder,
      line: 0,
      code: error.code === 'ENOENT' ? 'no-folder' : 'unreadable',
      raw: '',
      detail: error.code ?? '',
    });
  });
  if (!(await lstat(root)).isDirectory())
    throw new FileRefusal({ file: folder, line: 0, code: 'not-a-folder', raw: '' });
  const { found, refused } = await listFolder(root);
  const all = Math.max(
    1,
    found.reduce((s, f) => s + f.size, 0),
  );
  const files: WalkFile[] = [];
  const faults = [...refused];
  let done = 0;
  for (const f of found) {
    progress(done / all, f.name);
    signal?.throwIfAborted();
    done += f.size;
    try {
      const real = await realpath(f.path);
      if (!real.startsWith(root.endsWith(sep) ? root : root + sep))
        throw new FileRefusal({ file: f.name, line: 0, code: 'outside-folder', raw: '' });
      const sha256 = await hashFile(real, signal);
      files.push({
        name: f.name,
        size: f.size,
        media: { id: idFrom(at, seed, f.name, sha256), sha256 },
        text: () => readText(real, f.name),
        bytes: () => createReadStream(real, { highWaterMark: 1 << 20 }),
      });
    } catch (error) {
      if (error instanceof FileRefusal) faults.push(error.fault);
      else if (error instanceof Error && 'code' in error && error.name !== 'AbortError')
        faults.push({ file: f.name, line: 0, code: 'unreadable', raw: '', detail: String(error.code) });
      else throw error;
    }
  }
  return { files, refused: faults };
}

/**
 * A text file, whole. Links are followed only when `links` says so: a path that a person typed may be one.
 * Throws FileRefusal: not-a-file (a folder, a pipe, a device), outside-folder, too-big (before anything is read), not-text,
 * unreadable.
 */
export async function readText(
  path: string,
  name: string,
  { links = false }: { readonly links?: boolean } = {},
): Promise<string> {
  const found = await (links ? stat : lstat)(path).catch(() => undefined);
  if (found && !found.isFile())
    throw new FileRefusal({
      file: name,
      line: 0,
      code: found.isSymbolicLink() ? 'outside-folder' : 'not-a-file',
      raw: '',
    });
  const handle = await open(path, 'r').catch((error: NodeJS.ErrnoException) => {
    throw new FileRefusal({
      file: name,
      line: 0,
      code: error.code === 'ENOENT' ? 'no-file' : 'unreadable',
      raw: '',
      detail: error.code ?? '',
    });
  });
  try {
    const { size } = await handle.stat();
    if (size > textLimit)
      throw new FileRefusal({
        file: name,
        line: 0,
        code: 'too-big',
        raw: '',
        detail: `${sizeOf(size)}|${sizeOf(textLimit)}`,
      });
    return decodeText(await handle.readFile(), name);
  } catch (error) {
    if (error instanceof FileRefusal) throw error;
    throw new FileRefusal({
      file: name,
      line: 0,
      code: 'unreadable',
      raw: '',
      detail: (error as NodeJS.ErrnoException).code ?? '',
    });
  } finally {
    await handle.close();
  }
}
