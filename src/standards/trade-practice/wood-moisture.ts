// Why: from which reading of a pin meter wood is damp, and from which it rots.
import { day } from '../../units/day.ts';
import { limitOf } from '../limit-of.ts';
import type { Source } from '../standard.ts';

const readOn = day('2026-11-24');
const scope =
  'Written for buildings. Readings change with probe, material and weather: compare with a spot of the same wall that is known to be dry.';

export const moistureGuidance: Source = {
  id: 'wood-moisture-guidance',
  title: 'Guidance on moisture content of wood-based panel',
  publisher: 'a water-damage firm',
  edition: 'undated',
  standing: 'trade practice',
  address: 'https://www.watertownwaterdamage.com/?p=1851',
  scope,
};
export const meterGuidance: Source = {
  id: 'moisture-meter-guidance',
  title: 'Guidance on when wood decays',
  publisher: 'a maker of moisture meters (name withheld)',
  edition: 'undated',
  standing: 'maker',
  scope,
};

export const woodUsual = limitOf(
  'wood-moisture-usual',
  'pin meter, wood scale, usual for dry panel',
  '%',
  readOn,
  16,
  {
    source: moistureGuidance,
    clause: 'usual range',
    says: 'wood-based panel is usually under about 16 percent',
    read: readOn,
  },
);

export const woodRot = limitOf(
  'wood-moisture-rot',
  'pin meter, wood scale, where mold and rot can start',
  '%',
  readOn,
  20,
  {
    source: moistureGuidance,
    clause: 'start of decay',
    says: 'from 20 percent up mold and rot can start',
    read: readOn,
  },
  {
    source: meterGuidance,
    clause: 'start of decay',
    says: 'rot starts at about 20 percent; wood feels damp only above 30',
    read: readOn,
  },
);
