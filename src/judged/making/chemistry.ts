// Why: lead and lithium rest at different volts, and banks of 24 or 48 V at others again; a rule has to know what it looks at.
import type { Facts } from '../../known/facts.ts';
import { limitOn } from '../../standards/standard.ts';
import { twelveVoltLeast, twelveVoltMost } from '../../standards/trade-practice/battery-voltages.ts';

function chemistry(facts: Facts): string | undefined {
  const said = facts.all('house_battery', 'chemistry').filter((f) => f.standing === 'known');
  const value = said[0]?.value;
  return value?.is === 'text' ? value.text.toLowerCase() : undefined;
}

/** True when the house bank is known to be flooded, AGM or gel. */
export const isLeadAcid = (facts: Facts): boolean => /flooded|agm|gel|lead/.test(chemistry(facts) ?? '');

/** True when the house bank is known to be lithium. */
export const isLithium = (facts: Facts): boolean => /lithium|lifepo/.test(chemistry(facts) ?? '');

/** False when the bank is known, or shown by its own volts, to be no 12 V bank: the limits are for 12 V. */
export function mayBeTwelveVolt(facts: Facts): boolean {
  const volts = (aspect: string): readonly number[] =>
    facts
      .all('house_battery', aspect)
      .flatMap((f) => (f.value.is === 'quantity' && f.value.unit === 'V' ? [f.value.value] : []));
  const most = limitOn(twelveVoltMost, facts.on).value;
  const isOther = volts('nominal_voltage').some(
    (v) => v < limitOn(twelveVoltLeast, facts.on).value || v > most,
  );
  return !isOther && [...volts('rest_voltage'), ...volts('load_voltage')].every((v) => v <= most);
}
