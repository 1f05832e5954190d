// Why: one command from a clean clone to a served yard with a worked example in it.
import { spawn } from 'node:child_process';
import { join } from 'node:path';
import { ensureBuilt, ensurePackages, requireNode, root } from './setup.mjs';

requireNode();
ensurePackages();
await ensureBuilt();
const child = spawn(
  process.execPath,
  ['--enable-source-maps', join(root, 'dist', 'walkwright.mjs'), 'start', ...process.argv.slice(2)],
  {
    cwd: root,
    stdio: 'inherit',
  },
);
for (const signal of ['SIGINT', 'SIGTERM']) process.on(signal, () => child.kill(signal));
child.on('exit', (code, signal) => process.exit(code ?? (signal ? 0 : 1)));
