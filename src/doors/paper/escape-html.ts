// Why: what people say and type is text, in a page as much as anywhere; nothing of it may become markup.

const entities: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/** Control characters, which XML forbids, become a replacement sign; tab and line breaks stay. */
export const withoutControls = (text: string): string =>
  text.replace(/[\p{Cc}\p{Cs}\ufffe\uffff]/gu, (c) => ('\t\n\r'.includes(c) ? c : '\ufffd'));

/** Text for HTML, SVG and XML, in content and in quoted attributes. */
export const escapeHtml = (text: string): string =>
  withoutControls(text).replace(/[&<>"']/g, (c) => entities[c] ?? c);

/** JSON for a script element: no "<", so that no text can end the element. */
export const jsonForScript = (value: unknown): string =>
  JSON.stringify(value, undefined, 1)
    .replaceAll('<', '\\u003c')
    .replaceAll('>', '\\u003e')
    .replaceAll('&', '\\u0026')
    .replaceAll('\u2028', '\\u2028')
    .replaceAll('\u2029', '\\u2029');
