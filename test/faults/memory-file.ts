// Why: faults are tried on files that never touch a disk.
import { createHash } from 'node:crypto';
import { decodeText } from '../../src/doors/files/decode-text.ts';
import { type About, idFrom } from '../../src/doors/files/make-entries.ts';
import type { WalkFile } from '../../src/doors/files/walk-file.ts';

export const about: About = {
  dealership: 'test-lot',
  unit: '01960000-0000-7000-8000-000000000001',
  walk: '01960000-0000-7000-8000-000000000002',
  by: 'R. Example',
  device: 'test',
  at: '2026-11-20T10:05:00-06:00',
  seed: 'faults',
};

/** A walk file that holds this text or these bytes. */
export function memoryFile(name: string, content: string | Uint8Array): WalkFile {
  const bytes = typeof content === 'string' ? new TextEncoder().encode(content) : content;
  const sha256 = createHash('sha256').update(bytes).digest('hex');
  return {
    name,
    size: bytes.length,
    media: { id: idFrom(about.at, about.seed, name, sha256), sha256 },
    text: async () => decodeText(bytes, name),
    async *bytes() {
      yield bytes;
    },
  };
}
