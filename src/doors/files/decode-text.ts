// Why: recognisers and spreadsheets save UTF-8 and UTF-16, with and without a mark; what is not text must be refused, not guessed.
import { FileRefusal } from './walk-file.ts';

/** The text of some bytes. Throws a FileRefusal `not-text` when they hold what no text holds. */
export function decodeText(bytes: Uint8Array, file: string): string {
  const [a, b] = bytes;
  const encoding = a === 0xff && b === 0xfe ? 'utf-16le' : a === 0xfe && b === 0xff ? 'utf-16be' : 'utf-8';
  const text = new TextDecoder(encoding).decode(bytes);
  if (text.includes('\0')) throw new FileRefusal({ file, line: 0, code: 'not-text', raw: '' });
  return text;
}
