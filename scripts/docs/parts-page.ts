// Why: every part, what can be said of it and the words that name it, for whoever adds a word.

import type { Aspect, Part, Station } from '../../src/catalogue/part.ts';
import { vehicleKindNames } from '../../src/catalogue/vehicle-kind.ts';
import { unitFact } from '../../src/units/unit.ts';
import { head, page, row } from './page.ts';

/** Every part by station. */
export function partsPage(parts: readonly Part[], stations: readonly Station[]): string {
  const body = stations.flatMap((s) => {
    const here = parts.filter((p) => p.station === s.id);
    return [
      `## ${s.name}`,
      '',
      `${s.where}. About ${s.minutes} minutes.`,
      '',
      ...head('part', 'also said', 'places', 'what can be said of it', 'not on'),
      ...here.map(partRow),
      '',
    ];
  });
  return page(
    'Parts',
    `${parts.length} parts at ${stations.length} stations. Every part also has the general aspects (condition, operates, leak, crack, ...).`,
    body,
  );
}

const partRow = (p: Part): string =>
  row(
    `${p.name} (\`${p.id}\`)`,
    p.say.join(', '),
    p.places.join(', '),
    p.aspects.map(aspectText).join('; '),
    Object.entries(vehicleKindNames)
      .flatMap(([kind, name]) => (p.kinds.includes(kind as keyof typeof vehicleKindNames) ? [] : [name]))
      .join(', '),
  );

function aspectText(a: Aspect): string {
  const unit = a.unit === undefined ? '' : unitFact(a.unit).symbol;
  return `${a.name} (${[a.kind, unit, a.of?.join('/')].filter(Boolean).join(', ')})`;
}
