// Why: recognisers save UTF-8 and UTF-16, spreadsheets on Windows their old eight bits; what is not text must be refused, not guessed.
import { FileRefusal } from './walk-file.ts';

/** What eight-bit text does not hold and other bytes soon do. */
const controls = /[^\P{Cc}\t\n\r\f]/u;

/** The text of some bytes: UTF-8, UTF-16 with its mark, else Windows-1252 ("22\u00bd in"). Throws a FileRefusal `not-text` when they hold what no text holds. */
export function decodeText(bytes: Uint8Array, file: string): string {
  const [a, b] = bytes;
  const encoding = a === 0xff && b === 0xfe ? 'utf-16le' : a === 0xfe && b === 0xff ? 'utf-16be' : 'utf-8';
  const refusal = new FileRefusal({ file, line: 0, code: 'not-text', raw: '' });
  let text: string;
  try {
    text = new TextDecoder(encoding, { fatal: true }).decode(bytes);
  } catch {
    if (encoding !== 'utf-8') throw refusal;
    text = new TextDecoder('windows-1252').decode(bytes);
    if (controls.test(text)) throw refusal;
  }
  if (text.includes('\0')) throw refusal;
  return text;
}
