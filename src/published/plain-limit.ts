// Why: a limit is told with who set it and how binding that is, never as a bare number.
import type { AppliedLimit } from '../judged/finding.ts';
import type { Standing } from '../standards/standard.ts';
import { plainQuantity } from './plain-value.ts';

/** A law or standard is nearly always written for somebody else's vehicle; its scope stands in the report's list of sources. */
export const standingWords: Readonly<Record<Standing, string>> = {
  law: 'law, used here as a benchmark',
  standard: 'standard, used here as a benchmark',
  maker: "the maker's own limit",
  'trade practice': 'trade practice, no publication',
  'house default': 'our own house limit',
};

/** "at least 2/32 in (law, used here as a benchmark: 49 CFR Part 393, 393.75(c))". */
export function plainLimit(limit: AppliedLimit): string {
  const number = plainQuantity(limit.value, limit.unit, limit.plusOrMinus);
  const clause = limit.clause === '' || limit.clause === 'no source' ? '' : `, ${limit.clause}`;
  const who =
    limit.standing === 'trade practice'
      ? standingWords[limit.standing]
      : `${standingWords[limit.standing]}: ${limit.source}${clause}`;
  return `${limit.must} ${number} (${who})`;
}
