// Why: a fresh machine has only git, Node and npm; this brings in everything else, and does nothing when it is there.
import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

export const root = join(dirname(fileURLToPath(import.meta.url)), '..');

/** Stops with a plain sentence when this Node is too old. */
export function requireNode() {
  const [major = 0, minor = 0] = process.versions.node.split('.').map(Number);
  if (major > 20 || (major === 20 && minor >= 19)) return;
  console.error(
    `Walkwright needs Node 20.19 or newer; this is Node ${process.versions.node}. Install a newer Node and try again.`,
  );
  process.exit(1);
}

/** Runs a command in the project; returns its exit code. */
export function run(command, args, options = {}) {
  const result = spawnSync(command, args, { cwd: root, stdio: 'inherit', ...options });
  if (result.error) throw result.error;
  return result.status ?? 1;
}

const hashOf = (...texts) => {
  const hash = createHash('sha256');
  for (const t of texts) hash.update(t);
  return hash.digest('hex');
};

/** Installs the packages of the lock file when they are not there, or are those of another lock file. */
export function ensurePackages() {
  const lock = readFileSync(join(root, 'package-lock.json'));
  const stamp = join(root, 'node_modules', '.walkwright');
  const wanted = hashOf(lock);
  if (existsSync(stamp) && readFileSync(stamp, 'utf8') === wanted) return;
  console.log('Installing packages (once) ...');
  const npm = process.platform === 'win32' ? 'npm.cmd' : 'npm';
  if (run(npm, ['ci', '--no-audit', '--no-fund', '--loglevel=error']) !== 0) {
    console.error(
      'npm could not install the packages. Check that the npm registry can be reached, then run the same command again.',
    );
    process.exit(1);
  }
  writeFileSync(stamp, wanted);
}

function* filesBelow(folder) {
  for (const entry of readdirSync(folder, { withFileTypes: true })) {
    const path = join(folder, entry.name);
    if (entry.isDirectory()) yield* filesBelow(path);
    else if (entry.isFile() && !entry.name.endsWith('.test.ts')) yield path;
  }
}

/** A hash over what the build reads: changes when a source does. */
function sourceStamp() {
  const hash = createHash('sha256');
  for (const file of [
    ...filesBelow(join(root, 'src')),
    join(root, 'package-lock.json'),
    join(root, 'vite.config.ts'),
  ].sort()) {
    hash.update(file).update(readFileSync(file));
  }
  hash.update(readFileSync(join(root, 'scripts', 'build.mjs')));
  return hash.digest('hex');
}

/** Builds dist/ when a source has changed since it was built. */
export async function ensureBuilt() {
  const stamp = join(root, 'dist', '.built');
  const wanted = sourceStamp();
  if (existsSync(stamp) && readFileSync(stamp, 'utf8') === wanted) return false;
  console.log('Building (once for each change) ...');
  const { build } = await import('./build.mjs');
  await build();
  mkdirSync(join(root, 'dist'), { recursive: true });
  writeFileSync(stamp, wanted);
  return true;
}

/** True when the file is there. */
export const isFile = (path) => existsSync(path) && statSync(path).isFile();
