// Why: some habits of the trade stand in a publication that was not at hand; a citation of those says "from memory".
import type { Citation } from '../standard.ts';
import { practice } from './practice.ts';

/** A citation of trade practice written down from memory. */
export const practiceFromMemory = (says: string): Citation => ({ ...practice(says), read: 'from memory' });
