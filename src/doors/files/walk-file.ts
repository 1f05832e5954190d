// Why: a walk's files come from a folder, an upload or a demo; the readers need only this of them.

/** One file of a walk, wherever it lies. */
export interface WalkFile {
  /** Relative path with "/" between folders: "photos/roof.jpg". */
  readonly name: string;
  readonly size: number;
  /** The id under which entries speak of it, and the hash of its bytes. */
  readonly media: { readonly id: string; readonly sha256: string };
  /** The whole file as text. Throws a FileRefusal when it is too large or not text. */
  text(): Promise<string>;
  /** The bytes as they are, a piece at a time. */
  bytes(): AsyncIterable<Uint8Array>;
}

/** Largest file that is read as text; larger ones are only kept. */
export const textLimit = 32 * 1024 * 1024;

/** What is wrong with a file or a row of it. Codes become sentences in doors/words/say-file-fault.ts. */
export interface FileFault {
  readonly file: string;
  /** From 1; 0 when it is about the file as a whole. */
  readonly line: number;
  readonly code: string;
  /** The words as they came, so that nothing is lost. */
  readonly raw: string;
  /** What the sentence needs beside the code: the word that was not known, the words that are. */
  readonly detail?: string;
}

/** Thrown where a file cannot be read at all: outside trouble with a code, never a programmer's mistake. */
export class FileRefusal extends Error {
  readonly fault: FileFault;
  constructor(fault: FileFault) {
    super(`${fault.file}: ${fault.code}`);
    this.fault = fault;
  }
}
