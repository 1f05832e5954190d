// Why: one command that sets everything up and passes everything, and says so in one line.
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { ensureBuilt, ensurePackages, requireNode, root, run } from './setup.mjs';

const chromium = ['/usr/bin/chromium', '/usr/bin/chromium-browser', '/usr/bin/google-chrome'].some((p) =>
  existsSync(p),
);
const postgres = existsSync('/usr/lib/postgresql') && readdirSync('/usr/lib/postgresql').length > 0;

/** Installs the Debian packages that the tests need, when this machine lacks them and lets us. */
function ensureSystemPackages() {
  const wanted = [...(chromium ? [] : ['chromium']), ...(postgres ? [] : ['postgresql'])];
  if (wanted.length === 0) return;
  if (process.getuid?.() !== 0 || !existsSync('/usr/bin/apt-get')) {
    console.error(
      `The tests need ${wanted.join(' and ')}. Install them (Debian: apt-get install ${wanted.join(' ')}) and run npm test again.`,
    );
    process.exit(1);
  }
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
  console.log(`Installing ${wanted.join(' and ')} (once) ...`);
  run('apt-get', ['update', '-qq'], { env, stdio: ['ignore', 'ignore', 'inherit'] });
  if (
    run('apt-get', ['install', '-y', '-qq', '--no-install-recommends', ...wanted], {
      env,
      stdio: ['ignore', 'ignore', 'inherit'],
    }) !== 0
  ) {
    console.error(
      `apt-get could not install ${wanted.join(' and ')}. Install them by hand and run npm test again.`,
    );
    process.exit(1);
  }
}

requireNode();
ensurePackages();
ensureSystemPackages();
await ensureBuilt();

const bin = (name) => join(root, 'node_modules', '.bin', name);
const checks = [
  ['types of the core', bin('tsc'), ['-p', 'tsconfig.core.json']],
  ['types of the rest', bin('tsc'), ['-p', 'tsconfig.json']],
  ['types of the app', bin('tsc'), ['-p', 'tsconfig.web.json']],
  ['format and lint', bin('biome'), ['ci', '.']],
  ['unused code', bin('knip'), ['--no-progress']],
];
let passed = 0;
let failed = 0;
for (const [name, command, args] of checks) {
  const started = Date.now();
  const ok = run(command, args) === 0;
  console.log(`${ok ? 'passed' : 'FAILED'}: ${name} (${((Date.now() - started) / 1000).toFixed(1)} s)`);
  if (ok) passed++;
  else failed++;
}

const scratch = mkdtempSync(join(tmpdir(), 'walkwright-test-'));
const report = join(scratch, 'vitest.json');
run(bin('vitest'), [
  'run',
  '--reporter=default',
  '--reporter=json',
  `--outputFile.json=${report}`,
  ...process.argv.slice(2),
]);
if (existsSync(report)) {
  const r = JSON.parse(readFileSync(report, 'utf8'));
  passed += r.numPassedTests;
  failed += r.numFailedTests;
  const broken = r.testResults.filter(
    (f) => f.status === 'failed' && f.assertionResults.every((a) => a.status !== 'failed'),
  );
  failed += broken.length;
  if (r.numPendingTests + r.numTodoTests > 0) {
    console.error(
      `${r.numPendingTests + r.numTodoTests} tests were skipped: a skipped test counts as failed here.`,
    );
    failed += r.numPendingTests + r.numTodoTests;
  }
} else {
  console.error('The test runner ended without a report.');
  failed++;
}
rmSync(scratch, { recursive: true, force: true });
console.log(`${passed} passed, ${failed} failed`);
process.exit(failed === 0 ? 0 : 1);
