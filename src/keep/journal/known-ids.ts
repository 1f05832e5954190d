// Why: the journal must tell at once whether an id was kept before, and where, without asking the index.
import type { Position } from '../log.ts';

/** Where a line stands: bytes from `offset`, without the line feed. */
export interface Where {
  readonly segment: number;
  readonly offset: number;
  readonly length: number;
}

interface Dealership {
  last: Position;
  readonly ids: Map<string, Where>;
}

/** Every id kept, by dealership: one dealership's ids never get in the way of another's. */
export class KnownIds {
  readonly #dealerships = new Map<string, Dealership>();

  get(dealership: string, id: string): Where | undefined {
    return this.#dealerships.get(dealership)?.ids.get(id);
  }

  /** The last position of a dealership, 0 when it has nothing. */
  last(dealership: string): Position {
    return this.#dealerships.get(dealership)?.last ?? 0;
  }

  add(dealership: string, id: string, position: Position, where: Where): void {
    let of = this.#dealerships.get(dealership);
    if (!of) {
      of = { last: 0, ids: new Map() };
      this.#dealerships.set(dealership, of);
    }
    of.last = Math.max(of.last, position);
    of.ids.set(id, where);
  }
}
