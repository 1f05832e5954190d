#!/usr/bin/env node
// Why: the program's name on the path: the built program when it is there, else the sources.
import { existsSync } from 'node:fs';

const built = new URL('../dist/walkwright.mjs', import.meta.url);
const isBuilt = existsSync(built);
process.setSourceMapsEnabled(true);
if (!isBuilt) (await import('tsx/esm/api')).register();
const { run } = await import(
  isBuilt ? built.href : new URL('../src/doors/cli/main.ts', import.meta.url).href
);
await run();
