// Why: a toilet is in the bathroom and a hitch at the rear, also where nobody says so.
import { partOf } from '../../catalogue/index.ts';
import { wordTable } from './word-table.ts';

/** Where it is said otherwise than the catalogue would. */
const own: Readonly<Record<string, string>> = wordTable({
  tongue_jack: 'tongue',
  coupler: 'tongue',
  patio_awning: 'passenger side',
  awning_light: 'passenger side',
  entry_step: 'passenger side',
  grab_handle: 'passenger side',
  safety_chain: 'tongue',
  tv_living: 'living room',
  tail_lights: 'rear',
  spare_tire: 'rear',
  tow_plug: 'rear',
  camera_rear: 'rear',
});
const plain: Readonly<Record<string, string>> = wordTable({
  bath: 'bathroom',
  bedroom: 'bedroom',
  galley: 'galley',
  rear: 'rear',
  front: 'front',
  curb: 'passenger side',
  roof: 'roof',
});

/** The only place a part can be at, in plain words; undefined where there are several. */
export function homePlace(part: string): string | undefined {
  const places = partOf(part)?.places ?? [];
  return own[part] ?? (places.length === 1 ? plain[places[0] ?? ''] : undefined);
}
