// Why: lead and lithium rest at different volts, so a rule has to know which it is looking at.
import type { Facts } from '../../known/facts.ts';

function chemistry(facts: Facts): string | undefined {
  const said = facts.all('house_battery', 'chemistry').filter((f) => f.standing === 'known');
  const value = said[0]?.value;
  return value?.is === 'text' ? value.text.toLowerCase() : undefined;
}

/** True when the house bank is known to be flooded, AGM or gel. */
export const isLeadAcid = (facts: Facts): boolean => /flooded|agm|gel|lead/.test(chemistry(facts) ?? '');

/** True when the house bank is known to be lithium. */
export const isLithium = (facts: Facts): boolean => /lithium|lifepo/.test(chemistry(facts) ?? '');
