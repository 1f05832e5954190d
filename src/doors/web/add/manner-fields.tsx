// Why: who says so, how it was looked at and how sure that is belong to what is written, and are seldom needed.
import type { Manner } from './draft-observation.ts';

interface Props {
  readonly manner: Manner;
  readonly onChange: (manner: Manner) => void;
  readonly folded: boolean;
}

export function MannerFields({ manner, onChange, folded }: Props) {
  const fields = (
    <>
      <label>
        <span className="ask">Who told you, if you did not see it?</span>
        <input
          value={manner.saidBy}
          maxLength={120}
          placeholder="the seller"
          onChange={(e) => onChange({ ...manner, saidBy: e.target.value })}
        />
      </label>
      <label>
        <span className="ask">Anything to add?</span>
        <input
          value={manner.note}
          maxLength={2000}
          placeholder="gauge, photo, how you looked"
          onChange={(e) => onChange({ ...manner, note: e.target.value })}
        />
      </label>
      <label className="row all">
        <input
          type="checkbox"
          checked={manner.doubtful}
          onChange={(e) => onChange({ ...manner, doubtful: e.target.checked })}
        />
        <span>I am not quite sure of it</span>
      </label>
    </>
  );
  if (!folded) return fields;
  const isSaid = manner.doubtful || manner.saidBy !== '';
  return (
    <details className="all" open={isSaid}>
      <summary>Who told you, a note, a doubt</summary>
      <div className="form">{fields}</div>
    </details>
  );
}
