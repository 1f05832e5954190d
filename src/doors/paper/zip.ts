// Why: a packet leaves the building as one file, and the same packet is the same file to the byte, so that its hash means something.
import { zipSync } from 'fflate';

/** The earliest moment a ZIP can hold: a date that says nothing, rather than one that differs from machine to machine. */
const fixed = new Date(1980, 0, 1);

export interface NamedBytes {
  readonly name: string;
  readonly bytes: Uint8Array;
}

/** Packs files, in the order given, into a ZIP. Pictures are stored as they are, everything else is deflated. Throws on a name given twice. */
export function zip(files: readonly NamedBytes[]): Uint8Array {
  const names = new Set(files.map((f) => f.name));
  if (names.size !== files.length) throw new RangeError('zip: two files of one name');
  return zipSync(
    Object.fromEntries(
      files.map((f) => [
        f.name,
        [
          f.bytes,
          { mtime: fixed, level: /\.(jpe?g|png|webp|pdf)$/i.test(f.name) ? 0 : 6, os: 3, attrs: 0o644 << 16 },
        ],
      ]),
    ),
  );
}
