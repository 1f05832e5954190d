// Why: a folder dropped on the page is its files, each with its path inside that folder.

export interface Chosen {
  /** "photos/roof.jpg": the path without the folder that was dropped. */
  readonly name: string;
  readonly file: File;
}

const asFile = (entry: FileSystemFileEntry): Promise<File> =>
  new Promise((done, fail) => entry.file(done, fail));

async function inside(folder: FileSystemDirectoryEntry): Promise<FileSystemEntry[]> {
  const reader = folder.createReader();
  const all: FileSystemEntry[] = [];
  // A reader hands out its entries in portions until an empty one.
  for (;;) {
    const some = await new Promise<FileSystemEntry[]>((done, fail) => reader.readEntries(done, fail));
    if (some.length === 0) return all;
    all.push(...some);
  }
}

async function walkInto(entry: FileSystemEntry, path: string): Promise<Chosen[]> {
  if (entry.name.startsWith('.')) return [];
  if (entry.isFile) return [{ name: path + entry.name, file: await asFile(entry as FileSystemFileEntry) }];
  const entries = await inside(entry as FileSystemDirectoryEntry);
  const found = await Promise.all(entries.map((e) => walkInto(e, `${path}${entry.name}/`)));
  return found.flat();
}

/** The files of a drop. The folder that was dropped itself is no part of their names. */
export async function droppedFiles(transfer: DataTransfer): Promise<readonly Chosen[]> {
  const entries = [...transfer.items].map((i) => i.webkitGetAsEntry()).filter((e) => e !== null);
  if (entries.length === 0) return [...transfer.files].map((file) => ({ name: file.name, file }));
  const found: Chosen[] = [];
  for (const e of entries) {
    if (e.isFile) found.push(...(await walkInto(e, '')));
    else
      for (const within of await inside(e as FileSystemDirectoryEntry))
        found.push(...(await walkInto(within, '')));
  }
  return found;
}

/** The files of a picker; of a folder picker, without the folder's own name. */
export const pickedFiles = (list: FileList): readonly Chosen[] =>
  [...list]
    .map((file) => ({
      name: file.webkitRelativePath ? file.webkitRelativePath.split('/').slice(1).join('/') : file.name,
      file,
    }))
    .filter((c) => !c.name.split('/').some((step) => step.startsWith('.')));
