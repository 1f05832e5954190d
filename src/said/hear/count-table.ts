// Why: what is counted under a part, and what is never counted, as data.
// Trade usage (common practice, no source).
import { wordTable } from './word-table.ts';

/** Things counted under a part: what follows the number, the parts it may be of, and the aspect. */
export const nouns: Readonly<
  Record<string, { readonly parts: readonly string[]; readonly aspect: string; readonly alone?: true }>
> = wordTable({
  speed: { parts: ['transmission'], aspect: 'gears', alone: true },
  burner: { parts: ['cooktop', 'induction'], aspect: 'burners', alone: true },
  burners: { parts: ['cooktop', 'induction'], aspect: 'burners', alone: true },
  point: { parts: ['levelling_jacks'], aspect: 'count', alone: true },
  pin: { parts: ['tow_plug'], aspect: 'pins', alone: true },
  way: { parts: ['tow_plug'], aspect: 'pins' },
  cylinder: { parts: ['engine'], aspect: 'cylinders' },
  cylinders: { parts: ['engine'], aspect: 'cylinders' },
  zone: { parts: ['thermostats', 'ac_roof'], aspect: 'count' },
  zones: { parts: ['thermostats', 'ac_roof'], aspect: 'count' },
  panel: { parts: ['solar_array'], aspect: 'count' },
  panels: { parts: ['solar_array'], aspect: 'count' },
  stored: { parts: ['engine_ecm'], aspect: 'stored' },
  active: { parts: ['engine_ecm'], aspect: 'active' },
  recliners: { parts: ['dinette_sofa'], aspect: 'count' },
  owner: { parts: ['title_doc'], aspect: 'owners_named', alone: true },
  owners: { parts: ['title_doc'], aspect: 'owners_named', alone: true },
});

export const betweens = new Set(
  'of the those them these big large small new led more separate different flat screen roof power dead single total good 12 volt twelve deep cycle solid little bottles cylinders sets banks strings pieces'.split(
    ' ',
  ),
);

export const uncounted = new Set([
  'coach',
  'body_paint',
  'floor_main',
  'roof_membrane',
  'interior',
  'road_test_drive',
  'records_folder',
  'wall_stains',
  'coolant',
  'engine_oil',
  'electric_panel',
]);

/** Pounds of gas by which cylinders go. */
export const bottleSizes = new Set([5, 10, 11, 20, 25, 30, 33, 40, 60, 100]);
