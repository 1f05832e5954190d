// Why: the import table. This test IS the architecture: what it refuses, nobody needs to review.
import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, relative, resolve } from 'node:path';
import { describe, expect, test } from 'vitest';

const root = resolve(import.meta.dirname, '..');
const src = join(root, 'src');

/** Folder -> folders of src it may import. */
const mayImport: Record<string, readonly string[]> = {
  units: [],
  catalogue: ['units'],
  standards: ['units'],
  said: ['units', 'catalogue'],
  known: ['units', 'catalogue', 'said'],
  figured: ['units', 'catalogue', 'standards', 'known', 'said'],
  judged: ['units', 'catalogue', 'standards', 'known', 'said'],
  planned: ['units', 'catalogue', 'known', 'judged', 'figured', 'said'],
  priced: ['units', 'catalogue', 'standards', 'known', 'judged', 'figured', 'planned', 'said'],
  published: ['units', 'catalogue', 'standards', 'known', 'judged', 'figured', 'planned', 'priced', 'said'],
  'flow.ts': ['units', 'said', 'known', 'figured', 'judged', 'planned', 'priced', 'published'],
  keep: ['units', 'said'],
};
const core = Object.keys(mayImport).filter((f) => f !== 'keep');
/** Doors that stand open to people. None may import another. */
const doors = ['cli', 'server', 'web'];
/** Rooms that doors share. None of them opens to a person by itself. */
const sharedRooms = ['words', 'paper', 'files', 'wire'];
const roomMayImport: Record<string, readonly string[]> = {
  words: ['wire'],
  wire: [],
  paper: ['words', 'wire'],
  files: ['words', 'wire'],
};

/** Packages the core may use: pure computation, no I/O. */
const corePackages: Record<string, string> = {
  zod: 'checks what comes from outside against the schema of the log; pure',
};

function* sources(folder: string): Generator<string> {
  for (const entry of readdirSync(folder, { withFileTypes: true })) {
    const path = join(folder, entry.name);
    if (entry.isDirectory()) yield* sources(path);
    else if (/\.tsx?$/.test(entry.name)) yield path;
  }
}

interface Import {
  readonly file: string;
  readonly to: string;
}

const importPattern =
  /(?:^|\n)\s*(?:import|export)\s+(?:type\s+)?(?:[^'"`;]*?\sfrom\s+)?['"]([^'"]+)['"]|import\(\s*['"]([^'"]+)['"]\s*\)/g;

function importsOf(file: string): Import[] {
  const text = readFileSync(file, 'utf8');
  return [...text.matchAll(importPattern)].map((m) => ({ file, to: (m[1] ?? m[2])! }));
}

const isTest = (file: string): boolean => /\.test\.tsx?$/.test(file);
const folderOf = (path: string): string => relative(src, path).split('/')[0]!;
const doorOf = (path: string): string | undefined => {
  const steps = relative(src, path).split('/');
  return steps[0] === 'doors' ? steps[1] : undefined;
};
const all = [...sources(src)].filter((f) => !isTest(f));
const here = (file: string): string => relative(root, file);

describe('who may look at whom', () => {
  test('a stage imports only what the table allows', () => {
    const broken: string[] = [];
    for (const file of all) {
      const from = folderOf(file);
      if (from === 'doors') continue;
      const allowed = mayImport[from];
      if (!allowed) {
        broken.push(
          `${here(file)}: src/${from} is not in the table; add it to test/layers.test.ts with what it may import`,
        );
        continue;
      }
      for (const { to } of importsOf(file)) {
        if (!to.startsWith('.')) continue;
        const target = folderOf(resolve(dirname(file), to));
        if (target !== from && !allowed.includes(target))
          broken.push(
            `${here(file)} imports ${target}: ${from} may import only ${allowed.join(', ') || 'nothing'}`,
          );
      }
    }
    expect(broken).toEqual([]);
  });

  test('a door imports no other door, and the app no server-side keep', () => {
    const broken: string[] = [];
    for (const file of all) {
      const door = doorOf(file);
      if (!door) continue;
      for (const { to } of importsOf(file)) {
        if (!to.startsWith('.')) continue;
        const path = resolve(dirname(file), to);
        const target = doorOf(path);
        if (
          target &&
          target !== door &&
          doors.includes(target) &&
          !(door === 'cli' && target === 'server' && to.endsWith('/server/serve.ts'))
        ) {
          broken.push(
            `${here(file)} imports the door ${target}: put what both need into doors/${sharedRooms.join(' or doors/')}`,
          );
        }
        if (
          target &&
          target !== door &&
          sharedRooms.includes(door) &&
          !(roomMayImport[door] ?? []).includes(target)
        ) {
          broken.push(
            `${here(file)} imports doors/${target}: doors/${door} may import only ${(roomMayImport[door] ?? []).join(', ') || 'the core'}`,
          );
        }
        if (door === 'web' && folderOf(path) === 'keep' && !to.endsWith('keep/log.ts')) {
          broken.push(`${here(file)} imports ${to}: the app knows the log's contract only (keep/log.ts)`);
        }
      }
    }
    expect(broken).toEqual([]);
  });

  test('the core uses no package but the listed ones', () => {
    const broken: string[] = [];
    for (const file of all.filter((f) => core.includes(folderOf(f)))) {
      for (const { to } of importsOf(file)) {
        if (to.startsWith('.') || corePackages[to]) continue;
        broken.push(
          `${here(file)} imports the package ${to}: the core does no I/O; hand it in from a door, or list it here with a reason`,
        );
      }
    }
    expect(broken).toEqual([]);
  });

  test('the core has no clock and no dice', () => {
    const banned = /\bDate\.now\(|new Date\(\s*\)|\bMath\.random\(|\bperformance\.now\(/;
    const broken = all
      .filter((f) => core.includes(folderOf(f)))
      .filter((f) => banned.test(readFileSync(f, 'utf8').replace(/\/\/.*$|\/\*[\s\S]*?\*\//gm, '')))
      .map((f) => `${here(f)}: the day, the seed and ids are arguments`);
    expect(broken).toEqual([]);
  });

  test('every source file says first why it exists', () => {
    const broken = all.filter((f) => !/^(\/\/|\/\*)/.test(readFileSync(f, 'utf8'))).map(here);
    expect(broken).toEqual([]);
  });

  test('files are kebab-case and small', () => {
    const broken: string[] = [];
    for (const file of all) {
      const name = file.split('/').pop()!;
      if (!/^[a-z0-9]+(-[a-z0-9]+)*(\.config|\.d)?\.tsx?$/.test(name))
        broken.push(`${here(file)}: name it in kebab-case`);
      if (/(^|-)(utils?|helpers?|common|manager|service)\.ts$/.test(name))
        broken.push(`${here(file)}: name it for what it does`);
      const isTable =
        ['catalogue', 'standards'].includes(folderOf(file)) || /-table\.ts$|\/table\//.test(file);
      const lines = readFileSync(file, 'utf8').split('\n').length;
      if (!isTable && lines > 320) broken.push(`${here(file)}: ${lines} lines; split it by what it does`);
    }
    expect(broken).toEqual([]);
  });
});
