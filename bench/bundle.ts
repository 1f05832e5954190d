// Why: the app comes down once over a phone's link; its weight is watched.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import type { Measured } from './main.ts';

export async function benchBundle(): Promise<readonly Measured[]> {
  const assets = join(import.meta.dirname, '..', 'dist', 'web', 'assets');
  const weigh = (ending: string): number =>
    readdirSync(assets)
      .filter((f) => f.endsWith(ending))
      .reduce((n, f) => n + gzipSync(readFileSync(join(assets, f))).length, 0);
  const kib = (n: number): string => `${(n / 1024).toFixed(0)} KiB`;
  const code = weigh('.js');
  // A photo a phone takes, of the kind the page would otherwise be compared with: 3 MB.
  const photo = 3_000_000;
  return [
    {
      name: 'the app, code gzipped (style beside it)',
      measured: `${kib(code)} (${kib(weigh('.css'))})`,
      instead: 'one photo as a phone takes it: about 3 MB',
      ratio: `${(photo / code).toFixed(0)} times lighter`,
    },
  ];
}
