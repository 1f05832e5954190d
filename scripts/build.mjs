// Why: the terminal program, the index's worker and the app are each one bundle, so that a start takes a moment.
import { join } from 'node:path';
import { root } from './setup.mjs';

/** Writes dist/walkwright.mjs, dist/keep-worker.mjs and dist/web. */
export async function build() {
  const esbuild = await import('esbuild');
  const { build: buildWeb } = await import('vite');
  await esbuild.build({
    absWorkingDir: root,
    entryPoints: { walkwright: 'src/doors/cli/main.ts', 'keep-worker': 'src/keep/index-pglite/worker.ts' },
    outdir: join(root, 'dist'),
    outExtension: { '.js': '.mjs' },
    bundle: true,
    splitting: true,
    minifySyntax: true,
    platform: 'node',
    format: 'esm',
    target: 'node20',
    packages: 'external',
    sourcemap: true,
    logLevel: 'warning',
  });
  await buildWeb({ configFile: join(root, 'vite.config.ts'), logLevel: 'warn' });
}

if (process.argv[1] && import.meta.url === `file://${process.argv[1]}`) await build();
