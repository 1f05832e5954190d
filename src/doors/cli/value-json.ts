// Why: values and their evidence as documented JSON (docs/guide/json.md), the same in every command.
import type { Observation, Value } from '../../said/entry.ts';

/** One of: {value, unit, plus_or_minus?, up_to?}, {text}, {count, of?}, {state}, {unknown: why}. */
export function valueJson(value: Value): Record<string, unknown> {
  switch (value.is) {
    case 'quantity':
      return {
        value: value.value,
        unit: value.unit,
        ...(value.plusOrMinus === undefined ? {} : { plus_or_minus: value.plusOrMinus }),
        ...(value.upTo === undefined ? {} : { up_to: value.upTo }),
      };
    case 'text':
      return { text: value.text };
    case 'count':
      return { count: value.count, ...(value.of === undefined ? {} : { of: value.of }) };
    case 'state':
      return { state: value.state };
    case 'unknown':
      return { unknown: value.why };
  }
}

/** Where an observation comes from. */
export function evidenceJson(o: Observation): Record<string, unknown> {
  const { from, ...source } = o.source;
  return {
    id: o.id,
    at: o.at,
    by: o.by,
    ...(o.saidBy === undefined ? {} : { said_by: o.saidBy }),
    from,
    ...source,
  };
}
