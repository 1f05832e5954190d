// Why: whoever works quickly must see what he has just done, and have the way back under the same finger.
import { Key } from './key.tsx';
import type { Rulings } from './use-rulings.ts';

export function LastStep({
  says,
  steps,
  onUndo,
}: Pick<Rulings, 'says' | 'steps'> & { readonly onUndo: () => void }) {
  return (
    <div className="last-step">
      <p role="status">{says}</p>
      {steps.length > 0 && (
        <button type="button" aria-keyshortcuts="u" onClick={onUndo}>
          Undo <Key name="u" />
          <span className="soft small">{steps.length === 1 ? '1 step' : `${steps.length} steps`}</span>
        </button>
      )}
    </div>
  );
}
