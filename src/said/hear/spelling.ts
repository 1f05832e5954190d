// Why: a recogniser set to British English writes "fibreglass", "colour" and "tyre"; one spelling is looked up.
// Plain English (common practice, no source).
import { wordTable } from './word-table.ts';

const pairs =
  'fibre fiber,fibres fibers,fibreglass fiberglass,glassfibre fiberglass,fiberglas fiberglass,colour color,colours colors,coloured colored,discoloured discolored,discolouration discoloration,' +
  'centre center,centres centers,metre meter,metres meters,aluminium aluminum,kerb curb,kerbs curbs,kerbside curbside,odour odor,odours odors,mouldy moldy,moulding molding,mouldings moldings,' +
  'vapour vapor,harbour harbor,labour labor,labours labors,armour armor,guage gauge,guages gauges,' +
  'licence license,rumour rumor,flavour flavor,favour favor,neighbour neighbor,neighbours neighbors,sceptical skeptical,' +
  'winterised winterized,galvanised galvanized,oxidised oxidized,oxidisation oxidation,vulcanised vulcanized,organised organized,pressurised pressurized,stabiliser stabilizer,stabilisers stabilizers,leveller leveler,levellers levelers,' +
  'gelcote gelcoat,silicon silicone,sillicone silicone';

const table: Readonly<Record<string, string>> = wordTable(
  Object.fromEntries(pairs.split(',').map((p) => p.split(' ') as [string, string])),
);

/** The spelling that is looked up. */
export const spelled = (norm: string): string => table[norm] ?? norm;
