// Why: a page that is handed over brings its typefaces along, so that it looks the same on a machine that has never seen them.
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';

const faces = [
  [
    'Atkinson Hyperlegible Next',
    400,
    '@fontsource/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-400-normal.woff2',
  ],
  [
    'Atkinson Hyperlegible Next',
    700,
    '@fontsource/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-700-normal.woff2',
  ],
  ['B612 Mono', 400, '@fontsource/b612-mono/files/b612-mono-latin-400-normal.woff2'],
  ['B612 Mono', 700, '@fontsource/b612-mono/files/b612-mono-latin-700-normal.woff2'],
] as const;

let made: string | undefined;

/** Style rules with the faces inside, some 85 kB; read from the disk once. */
export function fontRules(): string {
  if (made !== undefined) return made;
  const { resolve } = createRequire(import.meta.url);
  made = faces
    .map(
      ([family, weight, file]) =>
        `@font-face{font-family:'${family}';font-weight:${weight};font-style:normal;src:url(data:font/woff2;base64,${readFileSync(resolve(file)).toString('base64')}) format('woff2')}`,
    )
    .join('');
  return made;
}
