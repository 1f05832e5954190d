// Why: `npm run docs` brings docs/generated up to date with the code.
import { mkdir, writeFile } from 'node:fs/promises';
import { generateDocs } from './generate.ts';

const folder = new URL('../../docs/generated/', import.meta.url);
await mkdir(folder, { recursive: true });
for (const [name, text] of Object.entries(generateDocs())) {
  await writeFile(new URL(name, folder), text);
  console.log(`docs/generated/${name}: ${text.split('\n').length} lines`);
}
