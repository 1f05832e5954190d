// Why: some supposed values hang on the kind of vehicle; a kind without one has none.
import type { Supposed } from '../supposed.ts';

/** Kind of vehicle -> what is supposed of it. */
export type VehicleKindSupposed = Readonly<Partial<Record<string, Supposed>>>;
