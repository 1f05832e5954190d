// Why: whoever does a job should see who asked for it, in their own words.
import type { Asked } from '../../planned/job.ts';

/** "Dana: “I would reseal that”". */
export const sayAsked = ({ by, words }: Asked): string => (words === '' ? by : `${by}: “${words}”`);
