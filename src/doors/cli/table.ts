// Why: a table in a terminal: columns as wide as they need, the last one cut to fit.
import { plain } from './io.ts';

/** Rows as aligned text. The last column takes what is left of the width, and is cut there. */
export function table(head: readonly string[], rows: readonly (readonly string[])[], width: number): string {
  const clean = [head, ...rows].map((r) => r.map((c) => plain(c).replace(/\s+/g, ' ')));
  const widths = head.map((_, i) => Math.min(44, Math.max(...clean.map((r) => (r[i] ?? '').length))));
  const used = widths.slice(0, -1).reduce((s, w) => s + w + 2, 0);
  widths[widths.length - 1] = Math.max(20, width - used);
  const cut = (text: string, w: number): string =>
    text.length > w ? `${text.slice(0, Math.max(1, w - 1))}…` : text;
  const line = (r: readonly string[]): string =>
    r
      .map((c, i) => cut(c, widths[i]!).padEnd(widths[i]!))
      .join('  ')
      .trimEnd();
  return `${[line(clean[0]!), line(widths.map((w, i) => '-'.repeat(i === widths.length - 1 ? Math.min(w, 20) : w))), ...clean.slice(1).map(line)].join('\n')}\n`;
}
