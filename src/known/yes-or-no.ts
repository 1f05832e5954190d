// Why: "works", "yes" and "no trouble" are one answer; a rule and a conflict must see it as one.
import type { Aspect } from '../catalogue/part.ts';
import { states } from '../catalogue/state.ts';
import type { Value } from '../said/entry.ts';

/**
 * The answer a value gives to a yes-no aspect. A good or bad state answers through the aspect's good news: "dry" says no to a
 * leak, "fails" says no to operates. Undefined where the value answers neither ("repaired").
 */
export function yesOrNo(value: Value, aspect: Aspect | undefined): 'yes' | 'no' | undefined {
  if (value.is === 'text') {
    const word = value.text.trim().toLowerCase();
    return word === 'yes' || word === 'no' ? word : undefined;
  }
  const asksYesNo = aspect?.kind === 'yes-no';
  if (value.is === 'count') return asksYesNo ? (value.count > 0 ? 'yes' : 'no') : undefined;
  if (value.is !== 'state') return undefined;
  if (value.state === 'yes' || value.state === 'present') return 'yes';
  if (value.state === 'no' || value.state === 'absent') return 'no';
  if (!asksYesNo) return undefined;
  if (value.state === 'missing' && aspect.id === 'present') return 'no';
  const news = states[value.state];
  if (aspect.good === undefined || news === 'neutral') return undefined;
  return news === 'good' ? aspect.good : aspect.good === 'yes' ? 'no' : 'yes';
}
