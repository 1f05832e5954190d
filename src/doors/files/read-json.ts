// Why: a JSON file that cannot be read must say at which line, and one that can is still somebody else's data.
import { FileRefusal } from './walk-file.ts';

export type Fields = Readonly<Record<string, unknown>>;

/** True for a plain JSON object. */
export const isFields = (raw: unknown): raw is Fields =>
  typeof raw === 'object' && raw !== null && !Array.isArray(raw);

/** The object in a JSON text. Throws a FileRefusal: not-json (with the line), json-shape. */
export function readJsonObject(text: string, file: string): Fields {
  let raw: unknown;
  try {
    raw = JSON.parse(text.replace(/^\ufeff/, ''));
  } catch (error) {
    const said = error instanceof Error ? error.message : '';
    const at = /position (\d+)/.exec(said);
    const end = at ? Number(at[1]) : text.length;
    throw new FileRefusal({
      file,
      line: text.slice(0, end).split('\n').length,
      code: 'not-json',
      raw: text.slice(0, 2000),
    });
  }
  if (!isFields(raw))
    throw new FileRefusal({
      file,
      line: 1,
      code: 'json-shape',
      raw: text.slice(0, 2000),
      detail: 'an object { ... }',
    });
  return raw;
}

/** The line on which a key stands, as well as can be told without a parser that keeps places; 1 when it is not found. */
export function lineOfKey(text: string, key: string): number {
  const at = text.indexOf(JSON.stringify(key));
  return at < 0 ? 1 : text.slice(0, at).split('\n').length;
}
