// Why: two entries are the same when they say the same, in whatever order their keys were written.

/** JSON with the keys of every object sorted; what JSON leaves out is left out. */
export function canonicalJson(value: unknown): string {
  return JSON.stringify(value, (_key, inner: unknown) => {
    if (inner === null || typeof inner !== 'object' || Array.isArray(inner)) return inner;
    const from = inner as Record<string, unknown>;
    const sorted: [string, unknown][] = Object.keys(from)
      .sort()
      .map((key) => [key, from[key]]);
    return Object.fromEntries(sorted);
  });
}
